/**
 * The head's way on the floor, on one page of paper at its true size: back and through, with a ruler to check the print.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html, svg } from 'lit-html';
import { sides } from '../words.js';

const MM = 1000;
const WIDE = 250;
const HIGH = 84;
/** Below the floor line. */
const LOW = 40;
const BAR = 100;

/** @param {State} state @param {PracticeActions} act */
export function strip({ answers, practice, settings }, act) {
  const points = (answers.arc?.points ?? [])
    .map(({ along_m, inside_m }) => [along_m * MM, inside_m * MM])
    .filter(([x]) => x <= WIDE - 10);
  /** @param {string} side @param {number} sign */
  const half = (side, sign) => {
    const edge = sign < 0 ? -WIDE : 0;
    return svg`<svg class="strip" viewBox=${`${edge} ${LOW - HIGH} ${WIDE} ${HIGH}`} role="img" aria-label="${side}, true size when printed">
    <line class="d-aim" x1=${-WIDE} x2=${WIDE} y1="0" y2="0"></line>
    <path class="d-mark" d=${points.length ? `M${points.map(([x, y]) => `${(sign * x).toFixed(2)} ${(-y).toFixed(2)}`).join('L')}` : ''}></path>
    ${[0, 50, 100, 150, 200].map((at) => svg`<line class="d-line" x1=${sign * at} x2=${sign * at} y1="-4" y2="4"></line><text class="s-text" x=${sign * (at + 2)} y="10" text-anchor=${sign < 0 ? 'end' : 'start'}>${at}</text>`)}
    <path class="d-line" d=${`M${edge + 20} 24h${BAR}m0 -4v8m${-BAR} 0v-8m${BAR / 2} 2v4`}></path><text class="s-text" x=${edge + 20} y="34">This bar is ${BAR} mm. If not, print at 100 %.</text>
    <text class="s-text" x=${edge + 130} y="26">${side}. Lie ${practice.lie_deg}°, putter ${Math.round(practice.length_m * MM)} mm.</text>
    <text class="s-text" x=${edge + 130} y="34">Straight line on the floor line, feet on the curve’s side.</text>
  </svg>`;
  };
  const [left, right] = sides(settings);
  return html`<h1>Strip to print</h1>
    <p>One page at true size. Print at 100 %, measure the bar, cut in two, join at 0.</p>
    <button type="button" class="go" @click=${() => window.print()}>Print</button>
    <div class="strips">${half(left, -1)}${half(right, 1)}</div>
    <button type="button" class="word" @click=${() => act.go('drill')}>Back to the drill</button>`;
}
