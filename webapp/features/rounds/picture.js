/**
 * A round hole by hole, and a season round by round: what was gained stands above the line, what was lost below it.
 * @import {HoleAnswer, RoundAnswer} from '../../engine/protocol.js'
 */
import { html, svg } from 'lit-html';
import { number, signed } from '../../format.js';

const WIDTH = 350;
const HEIGHT = 170;
const LABELS = 18;

/** @param {HoleAnswer[]} holes */
export function roundPicture(holes) {
  const most = Math.max(1, ...holes.map(({ gained }) => Math.abs(gained)));
  const middle = (HEIGHT - LABELS) / 2;
  const y = (/** @type {number} */ gained) => middle - (gained / most) * (middle - 8);
  const step = WIDTH / Math.max(9, holes.length);
  return html`<svg class="chart" role="img" aria-label="Gained and lost, hole by hole; the table below has the numbers."
    viewBox="0 0 ${WIDTH} ${HEIGHT}">
    <path class="grid" d="M0 ${middle}H${WIDTH}"></path>
    ${holes.map(({ hole, gained }, i) => {
      const [x, to] = [i * step + 2, y(gained)];
      return svg`<rect class=${gained < 0 ? 'lost' : 'won'} x=${x} y=${Math.min(middle, to)} width=${step - 4}
        height=${Math.abs(to - middle)}></rect>
        <text class="small" text-anchor="middle" x=${i * step + step / 2} y=${HEIGHT - 3}>${hole}</text>`;
    })}
    <text class="small" x="0" y="10">gained</text><text class="small" x="0" y=${HEIGHT - LABELS - 3}>lost</text>
  </svg>`;
}

/** @param {RoundAnswer[]} rounds oldest first @param {string} words */
export function seasonPicture(rounds, words) {
  const most = Math.max(1, ...rounds.flatMap(({ gained_low, gained_high }) => [Math.abs(gained_low), Math.abs(gained_high)]));
  const step = (WIDTH - 40) / Math.max(1, rounds.length - 1);
  const x = (/** @type {number} */ i) => 30 + i * step;
  const y = (/** @type {number} */ gained) => HEIGHT / 2 - (gained / most) * (HEIGHT / 2 - 8);
  return html`<svg class="chart" role="img" aria-label=${words} viewBox="0 0 ${WIDTH} ${HEIGHT}">
    ${[most, 0, -most].map(
      (at) =>
        svg`<path class="grid" d="M30 ${y(at)}H${WIDTH}"></path>
          <text class="small" x="0" y=${y(at) + 4}>${at ? signed(at, 0) : number(at, 0)}</text>`,
    )}
    <path class="tour" d="M${rounds.map(({ gained }, i) => `${x(i)} ${y(gained)}`).join('L')}"></path>
    ${rounds.map(
      ({ gained, gained_low, gained_high }, i) =>
        svg`<path class="reach" d="M${x(i)} ${y(gained_low)}V${y(gained_high)}"></path>
          <circle class="mine" cx=${x(i)} cy=${y(gained)} r="4"></circle>`,
    )}
  </svg>`;
}
