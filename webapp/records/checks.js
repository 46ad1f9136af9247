/**
 * What a single value of an entry may be: the engine's own ranges, and words. Each throws what is wrong, in words.
 */
import { pick } from '../pick.js';
import { FIELDS } from '../engine/fields.js';

/** @param {import('../engine/protocol.js').NumberTaken} taken @returns {[number, number]} */
const pair = ({ low, high }) => [low, high];
const {
  LoggedFields: PUTT,
  FinishFields: FINISH,
  StationFields: STATION,
  HoleFields: HOLE,
  RoundPuttFields: ROUND,
  ReadFields: DOUBT,
} = FIELDS;

/** Of what goes to the engine, its own. @satisfies {Record<string, [number, number]>} */
export const RANGES = {
  distance_m: pair(PUTT.distance_m),
  stimp_ft: pair(PUTT.stimp_ft),
  slope_percent: pair(PUTT.slope_percent),
  fall_deg: pair(PUTT.fall_deg),
  past_m: pair(PUTT.past_m),
  aim_deg: pair(PUTT.aim_deg),
  x_m: pair(FINISH.x_m),
  y_m: pair(FINISH.y_m),
  line_error_deg: pair(PUTT.line_error_deg),
  felt_percent: pair(PUTT.felt_percent),
  start_deg: pair(PUTT.start_deg),
  start_sd_deg: pair(PUTT.start_sd_deg),
  launch_mps: pair(PUTT.launch_mps),
  launch_sd_mps: pair(PUTT.launch_sd_mps),
  finish_sd_m: [0, 30],
  at_m: pair(STATION.at_m),
  tilt_sd_percent: pair(DOUBT.tilt_sd_percent),
  stimp_sd_ft: [0, PUTT.stimp_ft.high],
  spent_s: [0, 86_400],
  good: [0, 100_000],
  bad: [0, 100_000],
  hole: pair(HOLE.hole),
  /** From where a putt of a round was struck. */
  from_m: pair(ROUND.distance_m),
};
export const WHOLE = ['good', 'bad', 'hole'];
const [EARLIEST, LATEST] = [Date.UTC(1900, 0), Date.UTC(2200, 0)];
export const LONGEST_TEXT = 4000;
export const LONGEST_ID = 64;

/** @param {string} name @param {unknown} value @param {string} [range] */
export function checkNumber(name, value, range = name) {
  const [low, high] = pick(RANGES, range);
  if (typeof value !== 'number' || !(value >= low && value <= high))
    throw new Error(`${name} is ${shown(value)}; it takes a number from ${low} to ${high}`);
  if (WHOLE.includes(name) && !Number.isInteger(value)) throw new Error(`${name} is ${value}; it takes a whole number`);
  return value;
}

/** @param {string} name @param {unknown} value @param {number} longest @param {number} [shortest] */
export function checkText(name, value, longest, shortest = 0) {
  if (typeof value !== 'string' || value.length > longest || value.length < shortest)
    throw new Error(`${name} is ${shown(value)}; it takes a text of ${shortest} to ${longest} characters`);
  return value;
}

/** A time, always written alike so that times sort as texts. @param {string} name @param {unknown} value */
export function checkTime(name, value) {
  const time = typeof value === 'string' && /^\d{4}-\d\d-\d\d/.test(value) ? Date.parse(value) : NaN;
  if (!(time >= EARLIEST && time < LATEST))
    throw new Error(`${name} is ${shown(value)}; it takes a date and time as 2026-05-03T17:30:00Z, from 1900 to 2199`);
  return new Date(time).toISOString();
}

/**
 * A word, where there is one.
 * @template {string} Word @param {Record<string, unknown>} data @param {string} name @param {readonly Word[]} words
 * @returns {Record<string, Word>}
 */
export function wordOf(data, name, words) {
  const value = data[name];
  if (value === undefined || value === null) return {};
  if (!words.includes(/** @type {Word} */ (value)))
    throw new Error(`${name} is ${shown(value)}; it takes ${words.join(', ')} or nothing`);
  return { [name]: /** @type {Word} */ (value) };
}

/** @param {Record<string, unknown>} data @param {string[]} names */
export const numbersOf = (data, names) => Object.fromEntries(names.map((name) => [name, checkNumber(name, data[name])]));
/** @param {Record<string, unknown>} data @param {string[]} names */
export const known = (data, names) => names.filter((name) => (data[name] ?? undefined) !== undefined);

/** @param {unknown} value */
export const shown = (value) => (value === undefined ? 'missing' : (JSON.stringify(value) ?? '?').slice(0, 40));
