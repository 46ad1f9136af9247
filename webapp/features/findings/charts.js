/**
 * One chart a question; each stands beside its table.
 * @import {BandAnswer, CostAnswer, PublishedAnswer} from '../../engine/protocol.js'
 * @import {Settings} from '../../types.js'
 */
import { svg, html } from 'lit-html';
import { distanceUnit, number } from '../../format.js';
import { NAMES } from './words.js';

const WIDTH = 350;
const ROW = 46;

/** What each fault costs, with its interval. @param {CostAnswer[]} costs */
export function costChart(costs) {
  const most = Math.max(5, ...costs.map(({ high }) => high));
  const x = (/** @type {number} */ value) => (Math.max(0, value) / most) * (WIDTH - 8);
  return html`<svg class="chart" role="img" aria-label="What each fault costs, largest first; the table below has the numbers." viewBox="0 0 ${WIDTH} ${costs.length * ROW}">
    ${costs.map((cost, i) => svg`<g transform="translate(0 ${i * ROW})">
      <text x="0" y="16">${NAMES[cost.skill]}, ${number(cost.putts_per_100, 0)} in 100</text>
      <rect class=${i ? 'bar' : 'bar first'} x="0" y="22" height="12" width=${x(cost.putts_per_100)}></rect>
      <path class="reach" d="M${x(cost.low)} 28H${x(cost.high)}M${x(cost.low)} 23v10M${x(cost.high)} 23v10"></path></g>`)}
  </svg>`;
}

const HEIGHT = 200;
const FOOT = 24;
const SIDE = 30;

/** Make share by distance, beside what was published. @param {BandAnswer[]} make @param {PublishedAnswer[]} published @param {Settings} settings */
export function makeChart(make, published, settings) {
  const unit = distanceUnit(settings);
  const far = Math.max(6.5, ...make.filter(({ tries }) => tries).map(({ from_m }) => from_m + 1));
  const x = (/** @type {number} */ m) => SIDE + (Math.min(m, far) / far) * (WIDTH - SIDE - 8);
  const y = (/** @type {number} */ share) => 8 + (1 - share) * (HEIGHT - FOOT - 8);
  const ticks = [0.25, 0.5, 0.75, 1].map((part) => part * far);
  return html`<svg class="chart" role="img" aria-label="Putts made by distance, beside tour players and 1995; the table below has yours." viewBox="0 0 ${WIDTH} ${HEIGHT}">
    ${[0, 0.5, 1].map((share) => svg`<path class="grid" d="M${SIDE} ${y(share)}H${WIDTH}"></path><text class="small" x="0" y=${y(share) + 4}>${share * 100}</text>`)}
    ${ticks.map((m) => svg`<text class="small" text-anchor="end" x=${x(m)} y=${HEIGHT - 4}>${number(m / unit.si, 0)} ${unit.unit}</text>`)}
    ${published.map(({ name, shares }) => {
      const inside = shares.filter(([m]) => m <= far);
      const [m, share] = inside[inside.length - 1];
      return svg`<path class=${name === 'tour' ? 'tour' : 'past-tour'} d="M${inside.map(([at, made]) => `${x(at)} ${y(made)}`).join('L')}"></path>
        <text class="small" x=${x(m) - 24} y=${y(share) - 6}>${name}</text>`;
    })}
    ${make.map(({ from_m, to_m, tries, made, low, high }) => {
      const at = x((from_m + Math.min(to_m, far)) / 2);
      return svg`<path class="reach" d="M${at} ${y(low)}V${y(high)}"></path><circle class="mine" cx=${at} cy=${y(made / tries)} r="5"></circle>`;
    })}
  </svg>`;
}

const LONG = 0.3;
const WIDE_DEG = 4;

/**
 * Start and pace of the misses over what a level putt of 3 m takes.
 * @param {[number, number][]} strikes degrees left, fraction long @param {[number, number, number][]} opening fraction long, degrees right and left
 */
export function strikeChart(strikes, opening) {
  const x = (/** @type {number} */ deg) => WIDTH / 2 - (Math.max(-WIDE_DEG, Math.min(WIDE_DEG, deg)) / WIDE_DEG) * (WIDTH / 2 - 8);
  const y = (/** @type {number} */ part) => HEIGHT / 2 - (Math.max(-LONG, Math.min(LONG, part)) / LONG) * (HEIGHT / 2 - 8);
  return html`<svg class="chart" role="img" aria-label="Start and pace of ${strikes.length} misses: left and right of the line meant, long above and short below, over what a level 3 m putt takes." viewBox="0 0 ${WIDTH} ${HEIGHT}">
    <path class="taken" d="M${[...opening.map(([part, right]) => `${x(right)} ${y(part)}`), ...opening.toReversed().map(([part, , left]) => `${x(left)} ${y(part)}`)].join('L')}Z"></path>
    <path class="grid" d="M0 ${HEIGHT / 2}H${WIDTH}M${WIDTH / 2} 0V${HEIGHT}"></path>
    <text class="small" x="2" y=${HEIGHT / 2 - 4}>${WIDE_DEG}° left</text><text class="small" text-anchor="end" x=${WIDTH - 2} y=${HEIGHT / 2 - 4}>right</text>
    <text class="small" x=${WIDTH / 2 + 4} y="12">${LONG * 100} % long</text><text class="small" x=${WIDTH / 2 + 4} y=${HEIGHT - 4}>short</text>
    ${strikes.map(([deg, part]) => svg`<circle class="strike" cx=${x(deg)} cy=${y(part)} r="3.5"></circle>`)}
  </svg>`;
}
