/**
 * The one place where SI values become the player's units and back. Display only: no physics.
 * @import {Settings, Read} from './types.js'
 * @typedef {{name: string, unit: string, si: number, digits: number}} Unit  `si`: how much of the wire's unit one of these is
 */

import { pick } from './pick.js';

export const HOLE_M = 0.108;
export const BALL_M = 0.04267;
export const FOOT_M = 0.3048;
const INCH_M = 0.0254;

/** @type {Record<Settings['distance'], (settings: Settings) => Unit>} */
const DISTANCE = {
  ft: () => ({ name: 'feet', unit: 'ft', si: FOOT_M, digits: 1 }),
  m: () => ({ name: 'metres', unit: 'm', si: 1, digits: 2 }),
  paces: (settings) => ({ name: 'paces', unit: 'paces', si: settings.pace_m, digits: 1 }),
};

/** @param {Settings} settings */
const metric = (settings) => settings.distance === 'm' || settings.aim === 'cm';

/** @param {Settings} settings @returns {Unit} */
export const smallUnit = (settings) =>
  metric(settings)
    ? { name: 'centimetres', unit: 'cm', si: 0.01, digits: 0 }
    : { name: 'inches', unit: 'in', si: INCH_M, digits: 0 };

/** Where tenths of an inch count. @param {Settings} settings @returns {Unit} */
export const fineUnit = (settings) =>
  metric(settings)
    ? { name: 'millimetres', unit: 'mm', si: 0.001, digits: 0 }
    : { name: 'inches', unit: 'in', si: INCH_M, digits: 1 };

/**
 * How far apart dots of chalk are, and the unit in which lengths along the green are told.
 * @param {Settings} settings @returns {{si: number, shown: Unit}}
 */
export const chalkStep = (settings) =>
  metric(settings)
    ? { si: 0.25, shown: { name: 'metres', unit: 'm', si: 1, digits: 2 } }
    : { si: FOOT_M, shown: { name: 'feet', unit: 'ft', si: FOOT_M, digits: 0 } };

/** @param {Settings} settings @returns {Unit} */
export const distanceUnit = (settings) => DISTANCE[settings.distance](settings);

/** @type {Record<string, (settings: Settings) => Unit>} */
const FIELD_UNITS = {
  distance_m: distanceUnit,
  at_m: distanceUnit,
  past_m: smallUnit,
  slope_percent: () => ({ name: 'percent', unit: '%', si: 1, digits: 1 }),
  fall_deg: () => ({ name: 'degrees', unit: '°', si: 1, digits: 0 }),
  stimp_ft: () => ({ name: 'feet on the Stimpmeter', unit: 'ft', si: 1, digits: 1 }),
  pace_m: (settings) =>
    metric(settings)
      ? { name: 'centimetres', unit: 'cm', si: 0.01, digits: 0 }
      : { name: 'inches', unit: 'in', si: INCH_M, digits: 1 },
  start_line_sd_deg: () => ({ name: 'degrees', unit: '°', si: 1, digits: 2 }),
  pace_sd_fraction: () => ({ name: 'percent', unit: '%', si: 0.01, digits: 1 }),
  slope_sd_percent: () => ({ name: 'percent', unit: '%', si: 1, digits: 2 }),
  tilt_sd_percent: () => ({ name: 'percent', unit: '%', si: 1, digits: 2 }),
  stimp_sd_ft: () => ({ name: 'feet', unit: 'ft', si: 1, digits: 1 }),
};

/** @param {string} field a field of the wire or of the settings @param {Settings} settings */
export const unitOf = (field, settings) => pick(FIELD_UNITS, field)(settings);

/**
 * The same of any field of the wire, whose own unit stands where the player has no other.
 * @param {string} field @param {string} unit @param {Settings} settings @returns {Unit}
 */
export const unitOfWire = (field, unit, settings) =>
  FIELD_UNITS[field]?.(settings) ?? (unit === 'm' ? distanceUnit(settings) : { name: unit, unit, si: 1, digits: 2 });

const FILM_DIAGONAL_MM = Math.hypot(36, 24);

/**
 * Vertical field of view, degrees, of a lens whose focal length is told as for 35 mm film.
 * @param {number} lens_mm @param {{width: number, height: number}} picture
 */
export const fieldOfView = (lens_mm, { width, height }) =>
  (360 / Math.PI) * Math.atan((height / Math.hypot(width, height)) * (FILM_DIAGONAL_MM / 2 / lens_mm));

/** The number without trailing noughts, with a true minus. @param {number} value @param {number} digits */
export const number = (value, digits) => String(Number(value.toFixed(digits)) || 0).replace('-', '−');

/** @param {number} value in SI @param {Unit} unit */
export const inUnit = (value, unit) => number(value / unit.si, unit.digits);

/** @param {number} value in SI @param {Unit} unit */
export const withUnit = (value, unit) => `${inUnit(value, unit)}${unit.unit === '°' ? '' : '\u00a0'}${unit.unit}`;

/** What was typed, in SI; NaN when it is no number. @param {string} text @param {Unit} unit */
export function fromText(text, unit) {
  const plain = text.trim().replace(',', '.').replace('−', '-');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) * unit.si : NaN;
}

/**
 * What a field takes, said to whoever typed something else.
 * @param {string} name @param {string} text @param {number} low in SI @param {number} high in SI @param {Unit} unit
 */
export function doesNotFit(name, text, low, high, unit) {
  // rounded inwards: what is told would do
  const step = unit.si / 10 ** unit.digits;
  const [least, most] = [Math.ceil(low / step - 1e-6) * step, Math.floor(high / step + 1e-6) * step];
  return `${name} takes ${inUnit(least, unit)} to ${withUnit(most, unit)}; “${text}” does not fit.`;
}

/** @param {number} count @param {string} one @param {string} [many] */
export const several = (count, one, many = `${one}s`) => `${count} ${count === 1 ? one : many}`;

/** @param {number} value @param {string} one @param {string} many */
const counted = (value, one, many) => (number(value, 1) === '1' ? one : many);

/**
 * @type {Record<Settings['aim'], (read: Pick<Read, 'aim_deg' | 'aim_offset_m'>, settings: Settings) => {number: string, unit:
 *   string}>}
 */
const AIM = {
  in: ({ aim_offset_m }) => tape(Math.abs(aim_offset_m) / INCH_M, 'in'),
  cm: ({ aim_offset_m }) => tape(Math.abs(aim_offset_m) * 100, 'cm'),
  cups: ({ aim_offset_m }) => whole(Math.abs(aim_offset_m) / HOLE_M, 'cup', 'cups'),
  balls: ({ aim_offset_m }) => whole(Math.abs(aim_offset_m) / BALL_M, 'ball', 'balls'),
  degrees: ({ aim_deg }) => ({ number: number(Math.abs(aim_deg), 1), unit: '°' }),
};

/** @param {number} value @param {string} unit */
const tape = (value, unit) => ({ number: number(value, value < 10 ? 1 : 0), unit });

/** @param {number} value @param {string} one @param {string} many */
const whole = (value, one, many) => ({ number: number(value, 1), unit: counted(value, one, many) });

/**
 * How far from the cup's centre to start the ball, in the unit the player thinks in.
 * @param {Pick<Read, 'aim_deg' | 'aim_offset_m'>} read @param {Settings} settings
 */
export const aim = (read, settings) => AIM[settings.aim](read, settings);

/**
 * How far that aim may be off, in its unit; empty where it is not known.
 * @param {Pick<Read, 'aim_sd_deg' | 'aim_offset_sd_m'>} read @param {Settings} settings
 */
export function aimSpread({ aim_sd_deg, aim_offset_sd_m }, settings) {
  if (aim_sd_deg === null || aim_offset_sd_m === null) return '';
  const { number: shown, unit } = aim({ aim_deg: aim_sd_deg, aim_offset_m: aim_offset_sd_m }, settings);
  // tenths of a spread as wide as that say nothing
  const coarse = unit === 'in' || unit === 'cm' ? 1 : 3;
  return Number(shown) >= coarse ? String(Math.round(Number(shown))) : shown;
}

/**
 * @type {Record<Settings['aim'], (settings: Settings, distance_m: number) => {unit: string, digits: number, of_m: number, at_m:
 *   number}>}
 */
const AIM_UNITS = {
  in: (_, at_m) => ({ unit: 'in', digits: 1, of_m: INCH_M, at_m }),
  cm: (_, at_m) => ({ unit: 'cm', digits: 0, of_m: 0.01, at_m }),
  cups: (_, at_m) => ({ unit: 'cups', digits: 1, of_m: HOLE_M, at_m }),
  balls: (_, at_m) => ({ unit: 'balls', digits: 1, of_m: BALL_M, at_m }),
  degrees: () => ({ unit: '°', digits: 1, of_m: 0, at_m: 0 }),
};

/**
 * A start line to type, left positive, in the unit the player thinks in.
 * @param {Settings} settings @param {number} distance_m
 */
export function aimField(settings, distance_m) {
  const { unit, digits, of_m, at_m } = AIM_UNITS[settings.aim](settings, distance_m);
  const plain = { name: '', unit, si: 1, digits };
  const turn = 180 / Math.PI;
  return {
    unit,
    /** @param {number} deg */
    text: (deg) => number(at_m ? (at_m * Math.tan(deg / turn)) / of_m : deg, digits),
    /** Degrees; NaN when it is no number. @param {string} text */
    deg(text) {
      const value = fromText(text, plain);
      return at_m ? Math.atan((value * of_m) / at_m) * turn : value;
    },
  };
}

/** A chance as odds in a hundred. @param {number} probability */
export function percent(probability) {
  if (probability >= 0.995) return '>99\u00a0%';
  if (probability < 0.005) return '<1\u00a0%';
  return `${Math.round(probability * 100)}\u00a0%`;
}

/** Which way a green runs, from behind the ball. @param {number} fall_deg */
export function fallWords(fall_deg) {
  const deg = ((Math.round(fall_deg) % 360) + 360) % 360;
  const side = deg < 180 ? 'right' : 'left';
  const off = deg < 180 ? deg : 360 - deg;
  if (off < 5) return 'straight downhill';
  if (off > 175) return 'straight uphill';
  if (off < 70) return `downhill, falls ${side}`;
  if (off > 110) return `uphill, falls ${side}`;
  return `falls ${side}`;
}

/** @param {number} value per cent of slope @param {number} [digits] */
export const percents = (value, digits = 1) => `${number(value, digits)}\u00a0%`;

/** @param {number} value @param {number} digits */
export const signed = (value, digits) => `${value > 0 ? '+' : ''}${number(value, digits)}`;

/** A clock's reading. @param {number} seconds */
export function clock(seconds) {
  const whole = Math.ceil(seconds - 1e-6);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

// by hand: the platform's first formatter takes as long to make as half the app's script to run
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'];

/** @param {string | Date} when a time, or a day as 2026-05-03 */
export function dayWords(when) {
  const date = new Date(typeof when === 'string' && !when.includes('T') ? `${when}T12:00` : when);
  return `${date.getDate()} ${MONTHS[date.getMonth()]} ${date.getFullYear()}`;
}

/** The day that the player's clock shows, as 2026-05-03. */
export const today = () => dayOf(new Date());

/** The day on which something was, by the player's clock. @param {string | Date} at */
export function dayOf(at) {
  const now = new Date(at);
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}

/** @param {string} when */
export function timeWords(when) {
  const date = new Date(when);
  return [date.getHours(), date.getMinutes()].map((part) => String(part).padStart(2, '0')).join(':');
}

/** A time with the day and hour that the player's clock shows, and how far that is from UTC. @param {string} at */
export function localTime(at) {
  const date = new Date(at);
  const off_min = -date.getTimezoneOffset();
  const two = (/** @type {number} */ value) => String(Math.trunc(Math.abs(value))).padStart(2, '0');
  const shown = new Date(date.getTime() + off_min * 60_000).toISOString().slice(0, -1);
  return `${shown}${off_min < 0 ? '-' : '+'}${two(off_min / 60)}:${two(off_min % 60)}`;
}

/** A smaller offset is none. */
export const STRAIGHT_M = BALL_M / 4;

/** @param {number} y_m to the left */
export const sideOf = (y_m) => (y_m > 0 ? 'left' : 'right');

/** Where the aim lies. @param {Pick<Read, 'aim_offset_m'>} read */
export function aimWords({ aim_offset_m: offset }) {
  if (Math.abs(offset) < STRAIGHT_M / 2) return 'dead centre';
  return Math.abs(offset) <= HOLE_M / 2 ? `${sideOf(offset)} of centre, in the cup` : `${sideOf(offset)} of the cup`;
}
