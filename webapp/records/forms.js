/**
 * What a value that comes in must be, from a file, an older version or the disk: the engine's own table of fields, and for
 * what is no question of the engine's the forms named here.
 */
import { FIELDS } from '../engine/fields.js';

/** @typedef {(value: unknown) => boolean} Check */

/** Ranges of what is kept and never asked of the engine, SI. @satisfies {Record<string, [number, number]>} */
export const OWN = /** @type {const} */ ({
  pace_m: [0.3, 1.5],
  bias_deg: [-45, 45],
  lens_mm: [10, 500],
  roll_deg: [-45, 45],
  ramp_m: [0.02, 1.5],
  delay_s: [0, 0.6],
  wall_m: [0.5, 10],
  paper_m: [0, 9],
  gap_m: [0.044, 0.15], // a ball passes, and the gate still tells something
  block_minutes: [0, 120],
  spent_s: [0, 86_400],
  count: [0, 100_000],
});
/** The same, as `rangeOf` gives those of the engine. @param {keyof typeof OWN} name */
export const ownRange = (name) => ({ low: OWN[name][0], high: OWN[name][1] });
const [EARLIEST, LATEST] = [Date.UTC(1900, 0), Date.UTC(2200, 0)];
const LONGEST_TEXT = 4000;
/** What a conversion of units may leave over. */
const ROUNDING = 1e-9;

/** @param {unknown} value @returns {value is Record<string, unknown>} */
export const isRecord = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);
/** @type {Check} */
export const isNumber = (value) => typeof value === 'number' && Number.isFinite(value);
/** @type {Check} */
export const isBoolean = (value) => typeof value === 'boolean';
/** @type {Check} */
export const isText = (value) => typeof value === 'string' && value.length <= LONGEST_TEXT;
/** A day or a time of one; empty where there was none yet. @type {Check} */
export const isDate = (value) => value === '' || timeOf(value) !== null;

/** @param {unknown} value @returns {number | null} */
export function timeOf(value) {
  const time = typeof value === 'string' && /^\d{4}-\d\d-\d\d/.test(value) ? Date.parse(value) : NaN;
  return time >= EARLIEST && time < LATEST ? time : null;
}

/** @param {number} low @param {number} high @returns {Check} */
export const between = (low, high) => (value) =>
  typeof value === 'number' && value >= low - ROUNDING && value <= high + ROUNDING;
/** A focal length, as for 35 mm film, that lenses have. */
export const isLens = between(...OWN.lens_mm);
/** @param {number} low @param {number} high @returns {Check} */
export const whole = (low, high) => (value) => Number.isInteger(value) && between(low, high)(value);
/** @param {...string} words @returns {Check} */
export const oneOf =
  (...words) =>
  (value) =>
    words.includes(/** @type {string} */ (value));
/** @param {Check} check @returns {Check} */
export const orNull = (check) => (value) => value === null || check(value);
/** @param {Check} each @param {number} [low] @param {number} [high] @returns {Check} */
export const list =
  (each, low = 0, high = 5000) =>
  (value) =>
    Array.isArray(value) && value.length >= low && value.length <= high && value.every(each);
/** @param {Record<string, Check>} checks @returns {Check} */
export const record = (checks) => (value) =>
  isRecord(value) && Object.entries(checks).every(([name, check]) => check(value[name]));

/**
 * @typedef {{kind: string, nullable?: boolean, low?: number | null, high?: number | null, words?: string[], entry?: Form,
 *   type?: string}} Form as the engine's table has it
 */

/** @param {Form} form @returns {Check} */
function checkOf({ kind, nullable, low, high, words, entry, type }) {
  const [least, most] = [low ?? -Number.MAX_VALUE, high ?? Number.MAX_VALUE];
  /** @type {Record<string, () => Check>} */
  const kinds = {
    number: () => between(least, most),
    integer: () => whole(least, most),
    word: () => oneOf(...(words ?? [])),
    list: () => list(checkOf(/** @type {Form} */ (entry)), low ?? 0, high ?? undefined),
    object: () => asked(/** @type {any} */ (type)),
    truth: () => isBoolean,
  };
  const check = (kinds[kind] ?? (() => isText))();
  return nullable ? orNull(check) : check;
}

/**
 * A field as the engine takes it.
 * @template {keyof typeof FIELDS} Name @param {Name} type @param {keyof (typeof FIELDS)[Name] & string} field
 * @returns {Check}
 */
export const field = (type, field) => checkOf(/** @type {any} */ (FIELDS[type])[field]);

/** All that the engine asks for in one of its types. @param {keyof typeof FIELDS} type @returns {Check} */
export function asked(type) {
  const forms = Object.entries(/** @type {Record<string, Form & {needed: boolean}>} */ (/** @type {unknown} */ (FIELDS[type])));
  return (value) =>
    isRecord(value) && forms.every(([name, form]) => (value[name] === undefined ? !form.needed : checkOf(form)(value[name])));
}

/** A block of putts that were heard. @type {Check} */
export const isHeard = record({
  meant_m: field('HeardBlockFields', 'meant_m'),
  rolls_m: field('HeardBlockFields', 'rolls_m'),
  roll_sd_m: field('HeardBlockFields', 'roll_sd_m'),
});
