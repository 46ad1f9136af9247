/**
 * One chart a question; each stands beside its table.
 * @import {BandAnswer, CostAnswer, PublishedAnswer, WeekAnswer} from '../../engine/protocol.js'
 * @import {Settings} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { svg, html } from 'lit-html';
import { dayWords, distanceUnit, number } from '../../format.js';
import { NAMES } from './words.js';

const WIDTH = 350;
const ROW = 46;

/** What each fault costs, with its interval. @param {CostAnswer[]} costs */
export function costChart(costs) {
  const most = Math.max(5, ...costs.map(({ high }) => high));
  const x = (/** @type {number} */ value) => (Math.max(0, value) / most) * (WIDTH - 8);
  return html`<svg class="chart" role="img" aria-label="What each fault costs, largest first; the table below has the numbers."
    viewBox="0 0 ${WIDTH} ${costs.length * ROW}">
    ${costs.map(
      (cost, i) => svg`<g transform="translate(0 ${i * ROW})">
      <text x="0" y="16">${NAMES[cost.skill]}, ${number(cost.putts_per_100, 0)} in 100</text>
      <rect class=${i ? 'bar' : 'bar first'} x="0" y="22" height="12" width=${x(cost.putts_per_100)}></rect>
      <path class="reach" d="M${x(cost.low)} 28H${x(cost.high)}M${x(cost.low)} 23v10M${x(cost.high)} 23v10"></path></g>`,
    )}
  </svg>`;
}

const HEIGHT = 200;
const FOOT = 24;
const SIDE = 30;
const STEPS = [1, 2, 5, 10];
const LARGEST_STEP = 20;
const MOST_TICKS = 6;

/**
 * Make share by distance, beside what was published.
 * @param {BandAnswer[]} make @param {PublishedAnswer[]} published @param {Settings} settings
 */
export function makeChart(make, published, settings) {
  const unit = distanceUnit(settings);
  const far = Math.max(6.5, ...make.map(({ mean_m }) => mean_m + 0.5));
  const x = (/** @type {number} */ m) => SIDE + (Math.min(m, far) / far) * (WIDTH - SIDE - 8);
  const y = (/** @type {number} */ share) => 8 + (1 - share) * (HEIGHT - FOOT - 8);
  const step = STEPS.find((each) => (each * unit.si) / far > 1 / MOST_TICKS) ?? LARGEST_STEP;
  const ticks = Array.from({ length: Math.floor(far / unit.si / step) }, (_, i) => (i + 1) * step);
  return html`<svg class="chart" role="img"
    aria-label="Putts made by distance, beside tour players and 1995; the table below has yours."
    viewBox="0 0 ${WIDTH} ${HEIGHT}">
    ${[0, 0.5, 1].map(
      (share) =>
        svg`<path class="grid" d="M${SIDE} ${y(share)}H${WIDTH}"></path>
          <text class="small" x="0" y=${y(share) + 4}>${share * 100}</text>`,
    )}
    ${ticks.map(
      (at) =>
        svg`<path class="grid" d="M${x(at * unit.si)} ${y(0)}v5"></path>
          <text class="small" text-anchor="middle" x=${x(at * unit.si)} y=${HEIGHT - 4}>${at}</text>`,
    )}
    <text class="small" x="0" y=${HEIGHT - 4}>${unit.unit}</text>
    ${published.map(({ name, shares }) => {
      const inside = shares.filter(([m]) => m <= far);
      const [m, share] = pick(inside, inside.length - 1);
      return svg`<path class=${name === 'tour' ? 'tour' : 'past-tour'}
        d="M${inside.map(([at, made]) => `${x(at)} ${y(made)}`).join('L')}"></path>
        <text class="small" text-anchor=${m < far / 2 ? 'start' : 'end'} x=${x(m)}
          y=${m < far / 2 ? y(share) - 5 : y(share) + 14}>${name}</text>`;
    })}
    ${make.map(({ mean_m, tries, made, low, high, usual }) => {
      const at = x(mean_m);
      return svg`<path class="usual" d="M${at - 7} ${y(usual)}h14"></path>
        <path class="reach" d="M${at} ${y(low)}V${y(high)}"></path>
        <circle class="mine" cx=${at} cy=${y(made / tries)} r="5"></circle>`;
    })}
  </svg>`;
}

const LOW = 150;

/** Make share week by week, each with its range. @param {WeekAnswer[]} weeks oldest first */
export function weekChart(weeks) {
  const [first, last] = [pick(weeks, 0).monday, pick(weeks, weeks.length - 1).monday];
  const since = (/** @type {string} */ monday) => Date.parse(monday) - Date.parse(first);
  const x = (/** @type {string} */ monday) => SIDE + 8 + (since(monday) / since(last)) * (WIDTH - SIDE - 16);
  const y = (/** @type {number} */ share) => 8 + (1 - share) * (LOW - FOOT - 8);
  return html`<svg class="chart" role="img"
    aria-label="Putts made in 100, week by week, each with its range; the table below has the numbers."
    viewBox="0 0 ${WIDTH} ${LOW}">
    ${[0, 0.5, 1].map(
      (share) =>
        svg`<path class="grid" d="M${SIDE} ${y(share)}H${WIDTH}"></path>
          <text class="small" x="0" y=${y(share) + 4}>${share * 100}</text>`,
    )}
    ${weeks.map(
      ({ monday, made, tries, low, high }) =>
        svg`<path class="reach" d="M${x(monday)} ${y(low)}V${y(high)}"></path>
          <circle class="mine" cx=${x(monday)} cy=${y(made / tries)} r="5"></circle>`,
    )}
    <text class="small" x=${SIDE} y=${LOW - 4}>${dayWords(first)}</text>
      <text class="small" text-anchor="end" x=${WIDTH} y=${LOW - 4}>${dayWords(last)}</text>
  </svg>`;
}

const LONG = 0.3;
const WIDE_DEG = 4;

const READ_SO =
  ': left and right of the line meant, long above and short below, over what a level putt takes; ' +
  'the table below has the numbers.';

/** @param {[number, number]} strike */
const inside = ([deg, part]) => Math.abs(deg) <= WIDE_DEG && Math.abs(part) <= LONG;

/** How many strikes lie outside the picture. @param {[number, number][]} strikes */
export const offChart = (strikes) => strikes.filter((strike) => !inside(strike)).length;

/**
 * Start and pace of the misses over what a level putt takes.
 * @param {[number, number][]} strikes degrees left, fraction long @param {[number, number, number][]} opening fraction long,
 *   degrees right and left
 */
export function strikeChart(strikes, opening) {
  const x = (/** @type {number} */ deg) => WIDTH / 2 - (deg / WIDE_DEG) * (WIDTH / 2 - 8);
  const y = (/** @type {number} */ part) => HEIGHT / 2 - (part / LONG) * (HEIGHT / 2 - 8);
  const taken = [
    ...opening.map(([part, right]) => ({ deg: right, part })),
    ...opening.toReversed().map(([part, , left]) => ({ deg: left, part })),
  ];
  return html`<svg class="chart cut" role="img"
    aria-label=${`Start and pace of ${strikes.length} misses${READ_SO}`} viewBox="0 0 ${WIDTH} ${HEIGHT}">
    <path class="taken" d="M${taken.map(({ deg, part }) => `${x(deg)} ${y(part)}`).join('L')}Z"></path>
    <path class="grid" d="M0 ${HEIGHT / 2}H${WIDTH}M${WIDTH / 2} 0V${HEIGHT}"></path>
    <text class="small" x="2" y=${HEIGHT / 2 - 4}>${WIDE_DEG}° left</text>
      <text class="small" text-anchor="end" x=${WIDTH - 2} y=${HEIGHT / 2 - 4}>${WIDE_DEG}° right</text>
    <text class="small" x="2" y="12">${LONG * 100}\u00a0% long</text>
      <text class="small" x="2" y=${HEIGHT - 4}>${LONG * 100}\u00a0% short</text>
    ${strikes.filter(inside).map(([deg, part]) => svg`<circle class="strike" cx=${x(deg)} cy=${y(part)} r="3.5"></circle>`)}
  </svg>`;
}
