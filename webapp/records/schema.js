/**
 * What is kept on the phone, checked field by field when it is read back: a part that does not
 * fit is left to its default, so a damaged record never stops the app.
 * @import {Phone, Settings, Putt, Station, Player, Read, Window, PathPoint, Answered, Calibration, Sighted, Felt, Practice, Draft, State} from '../types.js'
 * @typedef {Pick<State, 'settings' | 'putt' | 'player' | 'read' | 'window' | 'cautioned' | 'calibration' | 'sighted' | 'felt' | 'practice' | 'place' | 'draft' | 'unkept'>} Saved
 */
import { isRecord } from './entry.js';
import { fitting, olderEntries } from './older.js';

export const SCHEMA = 3;

/** What makes what was kept of a schema one of the next. @type {Record<number, (data: Record<string, any>) => Record<string, unknown>>} */
const NEXT = {
  1: (data) => ({
    ...data,
    place: data.calibration?.place,
    unkept: olderEntries(data.practice?.finished, data.calibration?.speeds),
  }),
  2: (data) => data, // lay in localStorage
};

/** @type {Settings} */
export const SETTINGS = {
  distance: 'ft',
  aim: 'in',
  pace_m: 0.9144,
  arm_m: 0.66,
  handed: 'right',
  theme: 'light',
  stimp_ft: 10,
  past_m: 0.3048,
};

/** @type {Player} */
export const PLAYER = {
  start_line_sd_deg: 1,
  pace_sd_fraction: 0.065,
  slope_sd_percent: 0,
  start_line_bias_deg: 0,
  pace_bias_fraction: 0,
};

/** @type {Putt} */
const PUTT = { distance_m: 3.048, slope_percent: 2, fall_deg: 90, stimp_ft: 10, past_m: 0.3048 };

/** @type {Calibration} */
const CALIBRATION = { phone: null, rolls: [], ball: 'rolled', home_stimp_ft: 10, feet: [], eye: [] };

/** @type {Practice} */
const PRACTICE = {
  minutes: 20,
  place: 'room',
  at_hand: ['level_floor'],
  weights: {},
  blocks: [],
  planned: null,
  run: null,
  spoken: false,
  chime: false,
  strokes: [],
  lie_deg: 70,
  length_m: 0.864,
  above_grip_m: 0.45,
  gap_m: null,
  eyes_m: 0.02,
  tempo: { forward_s: 0.3, ratio: 2, rest_s: 2.4, strokes: 20, volume: 0.8, muted: false, vibrate: true, delay_s: 0 },
};

/** @type {Draft} */
export const DRAFT = { text: '', weather: '', speed: '' };

/** @type {Sighted} */
const SIGHTED = {
  eye: 'standing',
  standing_m: 1.6,
  crouching_m: 0.7,
  back_m: 2,
  lens_mm: 26,
  live_mm: 26,
  lens_date: '',
  live_date: '',
  thing_m: 0.9144,
  away_m: 1.524,
  roll_deg: 0,
  height_m: null,
  rolled_m: null,
  rolled_stimp_ft: null,
};

/** @param {unknown} value */
const isNumber = (value) => typeof value === 'number' && Number.isFinite(value);
/** @param {...string} words @returns {(value: unknown) => boolean} */
const oneOf =
  (...words) =>
  (value) =>
    words.includes(/** @type {string} */ (value));
/** @param {unknown} value */
const isPath = (value) =>
  Array.isArray(value) && value.length > 1 && value.every((p) => Array.isArray(p) && p.length === 4 && p.every(isNumber));

const SETTINGS_CHECKS = {
  distance: oneOf('ft', 'm', 'paces'),
  aim: oneOf('in', 'cm', 'cups', 'balls', 'degrees', 'arm'),
  pace_m: isNumber,
  arm_m: isNumber,
  handed: oneOf('right', 'left'),
  theme: oneOf('light', 'dark', 'system'),
  stimp_ft: isNumber,
  past_m: isNumber,
};
const PLAYER_CHECKS = {
  start_line_sd_deg: isNumber,
  pace_sd_fraction: isNumber,
  slope_sd_percent: isNumber,
  start_line_bias_deg: isNumber,
  pace_bias_fraction: isNumber,
};
const SURFACE_CHECKS = { slope_percent: isNumber, fall_deg: isNumber };
const STATION_CHECKS = { at_m: isNumber, ...SURFACE_CHECKS };
const READ_CHECKS = {
  aim_deg: isNumber,
  aim_offset_m: isNumber,
  launch_mps: isNumber,
  entry_mps: isNumber,
  entry_deg: isNumber,
  time_s: isNumber,
  plays_like_m: isNumber,
  apex: (/** @type {unknown} */ value) => fits(value, { x_m: isNumber, y_m: isNumber }),
  path: isPath,
};
const WINDOW_CHECKS = { make_probability: isNumber, high_line: isPath, low_line: isPath };

/** @param {unknown} value @param {Record<string, (value: unknown) => boolean>} checks */
const fits = (value, checks) => isRecord(value) && Object.entries(checks).every(([name, check]) => check(value[name]));

const isText = (/** @type {unknown} */ value) => typeof value === 'string';
const isFall = oneOf('left', 'right', 'toes', 'heels');
/** @typedef {(value: unknown) => boolean} Check */
/** @param {Record<string, Check>} checks @returns {Check} a list that is worth nothing with a part missing */
const listOf = (checks) => (value) => Array.isArray(value) && value.every((entry) => fits(entry, checks));
/** @param {Record<string, Check>} checks @returns {{each: Check}} a list of which the entries that fit are kept */
const eachOf = (checks) => ({ each: (entry) => fits(entry, checks) });
const isTrials = eachOf({ felt_percent: isNumber, measured_percent: isNumber, fall: isFall, date: isText });
const CALIBRATION_CHECKS = {
  phone: (/** @type {unknown} */ value) =>
    fits(value, { bias_deg: (pair) => Array.isArray(pair) && pair.length === 2 && pair.every(isNumber), date: isText }),
  rolls: eachOf({ distance_m: isNumber, time_s: isNumber, way: oneOf('out', 'back') }),
  ball: oneOf('rolled', 'putted'),
  home_stimp_ft: isNumber,
  feet: isTrials,
  eye: isTrials,
};
const SIGHTED_CHECKS = {
  eye: oneOf('standing', 'crouching'),
  standing_m: isNumber,
  crouching_m: isNumber,
  back_m: isNumber,
  lens_mm: isNumber,
  live_mm: isNumber,
  lens_date: isText,
  live_date: isText,
  thing_m: isNumber,
  away_m: isNumber,
  roll_deg: isNumber,
  height_m: isNumber,
  rolled_m: isNumber,
  rolled_stimp_ft: isNumber,
};
const FELT_CHECKS = {
  felt_percent: isNumber,
  fall: isFall,
  slope_percent: isNumber,
  slope_sd_percent: isNumber,
  correction_percent: isNumber,
  trials: isNumber,
};

const isBoolean = (/** @type {unknown} */ value) => typeof value === 'boolean';
const isTexts = (/** @type {unknown} */ value) => Array.isArray(value) && value.every(isText);
const COUNT_CHECKS = { session: isText, spent_s: isNumber, good: isNumber, bad: isNumber };
const TEMPO_CHECKS = {
  forward_s: isNumber,
  ratio: isNumber,
  rest_s: isNumber,
  strokes: isNumber,
  volume: isNumber,
  muted: isBoolean,
  vibrate: isBoolean,
  delay_s: isNumber,
};
const PRACTICE_CHECKS = {
  minutes: isNumber,
  place: oneOf('room', 'green'),
  at_hand: isTexts,
  spoken: isBoolean,
  chime: isBoolean,
  lie_deg: isNumber,
  length_m: isNumber,
  above_grip_m: isNumber,
  gap_m: isNumber,
  eyes_m: isNumber,
  weights: (/** @type {unknown} */ value) => isRecord(value) && Object.values(value).every(isNumber),
  blocks: listOf({ drill: isText, minutes: isNumber, why: isText, instead: isTexts }),
  planned: (/** @type {unknown} */ value) =>
    value === null || fits(value, { minutes: isNumber, place: isText, at_hand: isTexts, weights: isRecord }),
  run: (/** @type {unknown} */ value) => value === null || fits(value, { block: isNumber, paused: isBoolean, ...COUNT_CHECKS }),
  tempo: (/** @type {unknown} */ value) => fits(value, TEMPO_CHECKS),
  strokes: eachOf({ backswing_m: isNumber, roll_m: isNumber, stimp_ft: isNumber }),
};

/** @param {unknown} value */
const isPutt = (value) =>
  fits(value, { distance_m: isNumber, stimp_ft: isNumber, past_m: isNumber }) &&
  (fits(value, SURFACE_CHECKS) ||
    fits(value, { stations: (list) => Array.isArray(list) && list.length > 0 && list.every((s) => fits(s, STATION_CHECKS)) }));

/** @template {object} T @param {unknown} value @param {T} defaults @param {Record<keyof T & string, Check | {each: Check}>} checks @returns {T} */
function kept(value, defaults, checks) {
  const result = { ...defaults };
  if (isRecord(value))
    for (const name of /** @type {(keyof T & string)[]} */ (Object.keys(checks))) {
      const [check, found] = [checks[name], value[name]];
      const good =
        typeof check === 'function' ? [found].filter(check)[0] : Array.isArray(found) ? found.filter(check.each) : undefined;
      if (good !== undefined) result[name] = /** @type {T[typeof name]} */ (good);
    }
  return result;
}

/** @template T @param {unknown} value @param {Record<string, (value: unknown) => boolean>} checks @returns {Answered<T> | null} */
const answered = (value, checks) =>
  isRecord(value) && isPutt(value.putt) && fits(value.value, checks)
    ? /** @type {Answered<T>} */ (/** @type {unknown} */ (value))
    : null;

/** A session whose block is not there has no place to go on from. @param {Practice} practice @returns {Practice} */
function practised(practice) {
  const { minutes, place, at_hand, weights, blocks, run } = practice;
  // versions that did not say what a plan was for kept the newest one
  const whole = blocks.reduce((sum, block) => sum + block.minutes, 0) === minutes;
  const planned = practice.planned ?? (whole ? { minutes, place, at_hand, weights } : null);
  return { ...practice, planned, run: run && blocks[run.block] ? run : null };
}

/** @param {unknown} data what was read back, of any age and in any state @returns {Saved} */
export function restore(data) {
  /** @type {Record<string, unknown>} */
  let saved = isRecord(data) && Number.isInteger(data.schema) && Number(data.schema) >= 1 && !isNewer(data) ? data : {};
  for (let at = Number(saved.schema ?? SCHEMA); at < SCHEMA; at++) saved = NEXT[at](saved);
  const settings = kept(saved.settings, SETTINGS, SETTINGS_CHECKS);
  return {
    settings,
    putt: isPutt(saved.putt)
      ? /** @type {Putt} */ (saved.putt)
      : { ...PUTT, stimp_ft: settings.stimp_ft, past_m: settings.past_m },
    player: kept(saved.player, PLAYER, PLAYER_CHECKS),
    read: answered(saved.read, READ_CHECKS),
    window: answered(saved.window, WINDOW_CHECKS),
    cautioned: saved.cautioned === true,
    place: typeof saved.place === 'string' ? saved.place : '',
    draft: kept(saved.draft, DRAFT, { text: isText, weather: isText, speed: isText }),
    unkept: fitting(saved.unkept),
    calibration: kept(saved.calibration, CALIBRATION, CALIBRATION_CHECKS),
    practice: practised(kept(saved.practice, PRACTICE, PRACTICE_CHECKS)),
    sighted: kept(saved.sighted, SIGHTED, SIGHTED_CHECKS),
    felt: fits(saved.felt, FELT_CHECKS) ? /** @type {Felt} */ (/** @type {unknown} */ (saved.felt)) : null,
  };
}

/** @type {Record<keyof Phone, [object, Record<string, Check | {each: Check}>]>} */
const PHONE = {
  settings: [SETTINGS, SETTINGS_CHECKS],
  player: [PLAYER, PLAYER_CHECKS],
  calibration: [CALIBRATION, CALIBRATION_CHECKS],
  sighted: [SIGHTED, SIGHTED_CHECKS],
};

/** What a file tells of the phone: the parts of which everything fits, and the names of the others. @param {unknown} data */
export function phoneOf(data) {
  const told = isRecord(data) ? data : {};
  /** @type {Record<string, object>} */
  const good = {};
  const bad = [];
  for (const [name, [defaults, checks]] of Object.entries(PHONE)) {
    const part = told[name];
    if (part === undefined) continue;
    const own = isRecord(part)
      ? Object.entries(checks)
          .filter(([each]) => part[each] !== undefined)
          .map(([each, check]) => ({ each, check, value: part[each] }))
      : [];
    // what was never measured stands as its default, which the checks do not know
    const whole = own.every(
      ({ each, check, value }) =>
        value === /** @type {any} */ (defaults)[each] ||
        (typeof check === 'function' ? check(value) : Array.isArray(value) && value.every(check.each)),
    );
    if (own.length && whole) good[name] = Object.fromEntries(own.map(({ each, value }) => [each, value]));
    else bad.push(name);
  }
  return { good: /** @type {Partial<Phone>} */ (good), bad };
}

/** Whether it was written by an app that knows more than this one. @param {unknown} data */
export const isNewer = (data) => isRecord(data) && typeof data.schema === 'number' && data.schema > SCHEMA;
