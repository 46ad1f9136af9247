/**
 * The numbers behind each chart, as they stand on the screen and in the report.
 * @import {ChangeAnswer, FindingsAnswer} from '../../engine/protocol.js'
 * @import {Point, Settings} from '../../types.js'
 * @typedef {{title: string, head: string[], rows: (string | number)[][]}} Table
 */
import { dayWords, distanceUnit, inUnit, number, smallUnit, withUnit } from '../../format.js';
import { changeWords, inHundred, NAMES, YARDSTICK } from './words.js';

const MOST_WEEKS = 12;

/** @param {FindingsAnswer} value @param {Settings} settings @returns {Table} */
export const costTable = ({ costs, cost_set: { from_m, to_m, slope_percent } }, settings) => ({
  title:
    `Fewer putts on 100 holes of a fixed set, ${inUnit(from_m, distanceUnit(settings))} to ` +
    `${withUnit(to_m, distanceUnit(settings))} over ${slope_percent}\u00a0%, with the skill of ${YARDSTICK[settings.against]}`,
  head: ['Fault', 'Putts', 'Range'],
  rows: costs.map(({ skill, putts_per_100, low, high }) => [
    NAMES[skill],
    number(putts_per_100, 1),
    `${number(low, 1)} to ${number(high, 1)}`,
  ]),
});

/** @param {FindingsAnswer['make']} make @param {Settings} settings @returns {Table} */
export const makeTable = (make, settings) => ({
  title: 'Putts made by distance',
  head: [distanceUnit(settings).unit, 'Made', 'Of', 'In 100', 'Usual'],
  rows: make.map(({ from_m, to_m, made, tries, low, high, usual }) => [
    `${inUnit(from_m, distanceUnit(settings))} to ${inUnit(to_m, distanceUnit(settings))}`,
    made,
    tries,
    `${inHundred(low)} to ${inHundred(high)}`,
    inHundred(usual),
  ]),
});

/** @param {FindingsAnswer['published']} published @param {Settings} settings @returns {Table} */
export function publishedTable(published, settings) {
  const places = [...new Set(published.flatMap(({ shares }) => shares.map(([m]) => m)))].sort((a, b) => a - b);
  const made = (/** @type {[number, number][]} */ shares, /** @type {number} */ at) => shares.find(([m]) => m === at);
  return {
    title: 'Made of 100, as published',
    head: [distanceUnit(settings).unit, ...published.map(({ name }) => name)],
    rows: places.map((at) => [
      inUnit(at, distanceUnit(settings)),
      ...published.map(({ shares }) => inHundred(made(shares, at)?.[1])),
    ]),
  };
}

/**
 * Misses by how far off they stopped: within each ring of the picture, and beyond.
 * @param {Point[]} misses @param {number[]} rings_m @param {Settings} settings @returns {Table}
 */
export function finishTable(misses, rings_m, settings) {
  const unit = smallUnit(settings);
  const sides = [
    [1, 1],
    [1, -1],
    [-1, 1],
    [-1, -1],
  ];
  return {
    title: 'Where misses stopped, by distance from the hole',
    head: [unit.unit, 'Past, left', 'Past, right', 'Short, left', 'Short, right'],
    rows: [...rings_m, Infinity].map((far, i) => {
      const near = rings_m[i - 1] ?? 0;
      const inside = misses.filter(({ x_m, y_m }) => near <= Math.hypot(x_m, y_m) && Math.hypot(x_m, y_m) < far);
      const name = far === Infinity ? `over ${inUnit(near, unit)}` : `${inUnit(near, unit)} to ${inUnit(far, unit)}`;
      return [
        name,
        ...sides.map(
          ([on, left]) => inside.filter(({ x_m, y_m }) => (x_m < 0 ? -1 : 1) === on && (y_m < 0 ? -1 : 1) === left).length,
        ),
      ];
    }),
  };
}

const STARTS = /** @type {const} */ ([
  ['over 2° left', 2, Infinity],
  ['1° to 2° left', 1, 2],
  ['within 1°', -1, 1],
  ['1° to 2° right', -2, -1],
  ['over 2° right', -Infinity, -2],
]);
const ROLLS = /** @type {const} */ ([
  ['Long', 0.1, Infinity],
  ['Within 10\u00a0%', -0.1, 0.1],
  ['Short', -Infinity, -0.1],
]);

/** @param {FindingsAnswer['strikes']} strikes @returns {Table} */
export const strikeTable = (strikes) => ({
  title: 'Misses by start line and roll',
  head: ['Start', ...ROLLS.map(([name]) => name)],
  rows: STARTS.map(([name, right, left]) => [
    name,
    ...ROLLS.map(
      ([, least, most]) => strikes.filter(([deg, part]) => right <= deg && deg < left && least <= part && part < most).length,
    ),
  ]),
});

/** @param {ChangeAnswer[]} changes @returns {Table} */
export const changeTable = (changes) => ({
  title: 'Before and in the last four weeks; changed only where it is beyond chance',
  head: ['Skill', 'Before', 'Now', 'Changed'],
  rows: changes.map(changeWords),
});

/** @param {FindingsAnswer['weeks']} weeks */
export const lastWeeks = (weeks) => weeks.slice(-MOST_WEEKS);

/** @param {FindingsAnswer['weeks']} weeks @returns {Table} */
export const weekTable = (weeks) => ({
  title: 'Putts made, by week',
  head: ['Week of', 'Made', 'Of', 'In 100'],
  rows: lastWeeks(weeks).map(({ monday, made, tries, low, high }) => [
    dayWords(monday),
    made,
    tries,
    `${inHundred(low)} to ${inHundred(high)}`,
  ]),
});
