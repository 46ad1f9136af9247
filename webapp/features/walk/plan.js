/**
 * Where to lay the phone down: a grid over the green, walked to and fro, its places in whole paces where there is room.
 * @import {GreenEntry, OnMap, Settings, State} from '../../types.js'
 * @import {Unit} from '../../format.js'
 */
import { inUnit, unitOf } from '../../format.js';
import { GREEN } from '../../records/entry.js';
import { surveyOf } from './greens.js';

/** Of the grid's step: nearer than that to a reading, a place has been taken. */
const TAKEN = 0.34;
/** Side of a green that nobody has told yet: fourteen paces of three feet. */
export const SIDE_M = 12.8016;
/** Readings that a green takes. */
export const [, MOST] = GREEN.places;
const M = { name: 'metres', unit: 'm', si: 1, digits: 1 };

/** A green is paced off, or measured. @param {Settings} settings @returns {Unit} */
export const walkUnit = (settings) =>
  settings.distance === 'm' ? M : { name: 'paces', unit: 'paces', si: settings.pace_m, digits: 1 };

/**
 * Columns and rows of about so many places, as square as the green allows.
 * @param {number} breadth_m @param {number} length_m @param {number} places @returns {[number, number]}
 */
function sides(breadth_m, length_m, places) {
  const columns = Math.max(1, Math.round(Math.sqrt((places * breadth_m) / length_m)));
  return [columns, Math.max(1, Math.round(places / columns))];
}

/**
 * @param {Pick<GreenEntry, 'breadth_m' | 'length_m' | 'places'>} green @param {Settings} settings
 * @returns {OnMap[]} in the order of the walk
 */
export function gridOf({ breadth_m, length_m, places }, settings) {
  const [columns, rows] = sides(breadth_m, length_m, places);
  const step = walkUnit(settings).si * (settings.distance === 'm' ? 0.5 : 1);
  const middle = (/** @type {number} */ side, /** @type {number} */ count, /** @type {number} */ i) => {
    const at = (side * (i + 0.5)) / count;
    const fine = side / count >= 2 * step ? step : step / 2;
    return Number((Math.round(at / fine) * fine).toFixed(4));
  };
  return Array.from({ length: rows * columns }, (_, n) => {
    const row = Math.floor(n / columns);
    const column = row % 2 ? columns - 1 - (n % columns) : n % columns;
    return [middle(breadth_m, columns, column), middle(length_m, rows, row)];
  });
}

/**
 * Places of the walk at which nothing has been read yet, in its order; when all are done, where one more would teach most.
 * @param {State} state @param {GreenEntry} green @returns {OnMap[]}
 */
export function leftOf({ settings, walkPage: { passed } }, green) {
  const [columns, rows] = sides(green.breadth_m, green.length_m, green.places);
  const near = TAKEN * Math.min(green.breadth_m / columns, green.length_m / rows);
  const open = (/** @type {OnMap} */ [x, y]) =>
    !green.points.some(({ x_m, y_m }) => Math.hypot(x_m - x, y_m - y) < near) &&
    !passed.some(([u, v]) => Math.hypot(u - x, v - y) < near);
  return gridOf(green, settings).filter(open);
}

/**
 * Where one more reading would teach most, once the map is there.
 * @param {State} state @param {GreenEntry} green @returns {OnMap[]}
 */
export const moreOf = ({ answers: { survey } }, green) =>
  survey && survey.asked.points.length === green.points.length && surveyOf(green) && green.points.length < MOST
    ? survey.next.map(([x, y]) => [Math.min(green.breadth_m, Math.max(0, x)), Math.min(green.length_m, Math.max(0, y))])
    : [];

/**
 * Where the next reading is taken: at a place that was touched or typed, else the first that is left, else where one more
 * teaches most.
 * @param {State} state @param {GreenEntry} green @returns {OnMap | undefined}
 */
export function nextOf(state, green) {
  const { x_m, y_m } = state.walkPage.draft;
  const planned = leftOf(state, green)[0] ?? moreOf(state, green)[0];
  return x_m === undefined && y_m === undefined ? planned : [x_m ?? planned?.[0] ?? 0, y_m ?? planned?.[1] ?? 0];
}

/** A place as it is told on a green. @param {Readonly<OnMap>} at @param {Settings} settings */
export function placeWords([x, y], settings) {
  const unit = walkUnit(settings);
  return `${inUnit(y, unit)} on, ${inUnit(x, unit)} from the left`;
}

/** The same to be heard. @param {Readonly<OnMap>} at @param {Settings} settings */
export const placeSaid = (at, settings) => placeWords(at, settings).replace('−', 'minus ').replaceAll('.', ' point ');

/** Numbers that are typed of a place or of a green, with what they take. @param {string} name @param {Settings} settings */
export const unitFor = (name, settings) =>
  name === 'slope_percent' || name === 'fall_deg' ? unitOf(name, settings) : walkUnit(settings);
