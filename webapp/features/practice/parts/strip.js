/**
 * The head's way on the floor, on paper at its true size: two sheets, back and through, with a ruler to check the print.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html, svg } from 'lit-html';

const MM = 1000;
const WIDE = 250;
const HIGH = 120;

/** @param {State} state @param {PracticeActions} act */
export function strip({ practising, practice }, act) {
  const points = (practising.arc?.points ?? []).map(({ along_m, inside_m }) => [along_m * MM, inside_m * MM]).filter(([x]) => x <= WIDE - 10);
  /** @param {string} side @param {number} sign */
  const sheet = (side, sign) => svg`<svg class="strip" viewBox=${`${sign < 0 ? -WIDE : 0} ${-HIGH + 50} ${WIDE} ${HIGH}`} role="img" aria-label="${side}, true size when printed">
    <line class="d-aim" x1=${-WIDE} x2=${WIDE} y1="0" y2="0"></line>
    <path class="d-mark" d=${points.length ? `M${points.map(([x, y]) => `${(sign * x).toFixed(2)} ${(-y).toFixed(2)}`).join('L')}` : ''}></path>
    ${[0, 50, 100, 150, 200].map((at) => svg`<line class="d-line" x1=${sign * at} x2=${sign * at} y1="-4" y2="4"></line><text class="s-text" x=${sign * (at + 2)} y="10" text-anchor=${sign < 0 ? 'end' : 'start'}>${at}</text>`)}
    <text class="s-text" x=${sign * 8} y="-60" text-anchor=${sign < 0 ? 'end' : 'start'}>${side}. Lie ${practice.lie_deg}°, putter ${Math.round(practice.length_m * MM)} mm. Lay 0 to 0, the straight line on the floor line, feet on this side.</text>
    <path class="d-line" d=${`M${sign < 0 ? -WIDE + 20 : 20} 34h100m0 -4v8m-100 0v-8m50 2v4`}></path><text class="s-text" x=${sign < 0 ? -WIDE + 20 : 20} y="46">This bar is 100 mm. If not, print at 100 %.</text>
  </svg>`;
  return html`<h1>Strip to print</h1>
    <p>Two sheets at true size. Print at 100 %, measure the bar, join them at 0.</p>
    <button type="button" class="go" @click=${() => window.print()}>Print</button>
    <div class="strips">${sheet('Back', -1)}${sheet('Through', 1)}</div>
    <button type="button" class="word" @click=${() => act.go('drill')}>Back to the drill</button>`;
}
