/**
 * What is kept on the phone, checked field by field when it is read back: a part that does not
 * fit is left to its default, so a damaged record never stops the app.
 * @import {Check} from './forms.js'
 * @import {Phone, Settings, Putt, Station, Player, Read, Window, PathPoint, Answered, Calibration, Sighted, Felt, You,
 *   Practice, Draft, Logging, State} from '../types.js'
 * @typedef {Pick<State, 'settings' | 'putt' | 'player' | 'read' | 'window' | 'cautioned' | 'calibration' | 'sighted' | 'felt' |
 *   'you' | 'practice' | 'place' | 'draft' | 'logging' | 'card' | 'unkept'>} Saved
 */
import {
  asked,
  between,
  field,
  isBoolean,
  isDate,
  isNumber,
  isRecord,
  isText,
  list,
  oneOf,
  orNull,
  OWN,
  record,
  whole,
} from './forms.js';
import { PRESETS } from '../engine/fields.js';
import { pick } from '../pick.js';
import { SOURCES } from '../doubt.js';
import { CARD, isCard as isRoundCard } from './card.js';
import { fitting, olderEntries } from './older.js';

export const SCHEMA = 4;

/**
 * What makes what was kept of a schema one of the next.
 * @type {Record<number, (data: Record<string, any>) => Record<string, unknown>>}
 */
const NEXT = {
  1: (data) => ({
    ...data,
    place: data.calibration?.place,
    unkept: olderEntries(data.practice?.finished, data.calibration?.speeds),
  }),
  2: (data) => data, // lay in localStorage
  3: ({ putt, felt, ...data }) => ({
    ...newerPhone(data),
    felt,
    putt: felt && putt?.slope_percent !== undefined ? { ...putt, ...feltAs(felt) } : putt,
  }),
};

/** @type {Settings} */
export const SETTINGS = {
  distance: 'ft',
  aim: 'in',
  pace_m: 0.9144,
  handed: 'right',
  theme: 'system',
  stimp_ft: 10,
  past_m: 0.3048,
  name: '',
  against: 'tour',
};

const { start_line_sd_deg, pace_sd_fraction, slope_sd_percent } = pick(PRESETS, 0);
/** @type {Player} */
export const PLAYER = {
  start_line_sd_deg,
  pace_sd_fraction,
  slope_sd_percent,
  start_line_bias_deg: 0,
  pace_bias_fraction: 0,
};

/** An aim could be held up at arm's length once, and light was what nobody had chosen. @param {unknown} settings */
const asNow = (settings) =>
  isRecord(settings)
    ? {
        ...settings,
        ...(settings.aim === 'arm' && { aim: SETTINGS.aim }),
        ...(settings.theme === 'light' && { theme: SETTINGS.theme }),
      }
    : settings;

/** What a phone of schema 3 kept, or a file of version 3 tells of it. @param {Record<string, unknown> | undefined} phone */
export const newerPhone = (phone) => ({
  ...phone,
  ...(phone?.settings !== undefined && { settings: asNow(phone.settings) }),
  ...(phone?.player !== undefined && { player: withMisread(phone.player) }),
});

/** @param {Felt} felt */
const feltAs = ({ slope_sd_percent }) => ({ tilt_source: 'felt', tilt_sd_percent: Math.min(slope_sd_percent, 4) });

/** Players of before had no misread, or that of the slope measured last: a preset gets its own. @param {unknown} player */
function withMisread(player) {
  const own = /** @type {Partial<Player>} */ (isRecord(player) ? player : {});
  const { start_line_sd_deg: start = PLAYER.start_line_sd_deg, pace_sd_fraction: pace = PLAYER.pace_sd_fraction } = own;
  const preset = PRESETS.find(
    ({ start_line_sd_deg, pace_sd_fraction }) =>
      Math.abs(start_line_sd_deg - start) < 1e-9 && Math.abs(pace_sd_fraction - pace) < 1e-9,
  );
  const read = preset ?? (own.slope_sd_percent ? own : PLAYER);
  return isRecord(player) ? { ...player, slope_sd_percent: read.slope_sd_percent } : player;
}

/** @type {Putt} */
const PUTT = { distance_m: 3.048, slope_percent: 2, fall_deg: 90, stimp_ft: 10, past_m: 0.3048 };

/** The putt that is there before the first of one's own. @param {Settings} settings @returns {Putt} */
const exampleOf = ({ stimp_ft, past_m }) => ({ ...PUTT, stimp_ft, past_m });
/** @param {Putt} putt @param {Settings} settings */
export const isExample = (putt, settings) => JSON.stringify(putt) === JSON.stringify(exampleOf(settings));

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
  week: { first_tee: '', days_before: 4, done: [] },
  ear: { wall_m: 2.5, paper_m: 0, meant_m: 4, floor_ft: 9, floor_sd_ft: 0.45 },
  tempo: { forward_s: 0.3, ratio: 2, rest_s: 2.4, strokes: 20, volume: 0.8, muted: false, vibrate: true, delay_s: 0 },
};

/** @type {Draft} */
export const DRAFT = { text: '', weather: '', speed: '' };

/** @type {Logging} */
const LOGGING = { read: '', by: 'picture' };

/** @type {Sighted} */
const SIGHTED = {
  eye: 'standing',
  standing_m: 1.6,
  crouching_m: 0.7,
  back_m: 2,
  lens_mm: 26,
  live_mm: 26,
  film_m: 0.4,
  film_mm: 28,
  lens_date: '',
  live_date: '',
  thing_m: 0.9144,
  away_m: 1.524,
  roll_deg: 0,
  height_m: null,
  rolled_m: null,
  rolled_stimp_ft: null,
};

/** @typedef {{each: Check}} Each a list of which the entries that fit are kept */

/**
 * A source and its spread, both or none.
 * @param {string} source @param {string} sd @param {Check} isSd @returns {(value: Record<string, unknown>) => boolean}
 */
const isTold = (source, sd, isSd) => (value) =>
  (value[source] === undefined && value[sd] === undefined) || (SOURCES.some((one) => one === value[source]) && isSd(value[sd]));
const isTiltTold = isTold('tilt_source', 'tilt_sd_percent', field('ReadFields', 'tilt_sd_percent'));
const isSpeedTold = isTold('stimp_source', 'stimp_sd_ft', field('ReadFields', 'stimp_sd_ft'));

/** Whether the sources and spreads that a putt tells can be. @param {Record<string, any>} putt */
export const isSurelyTold = (putt) => isSpeedTold(putt) && (putt.stations ?? [putt]).every(isTiltTold);

const SURFACE = { slope_percent: field('StationFields', 'slope_percent'), fall_deg: field('StationFields', 'fall_deg') };
const PACE = { stimp_ft: field('PuttFields', 'stimp_ft'), past_m: field('PuttFields', 'past_m') };
const FELT = field('FeltFields', 'felt_percent');
const isFall = field('FeltFields', 'fall');
const isPath = list((point) => Array.isArray(point) && point.length === 4 && point.every(isNumber), 2, 20_000);

/** @type {Record<keyof Settings, Check>} */
const SETTINGS_CHECKS = {
  distance: oneOf('ft', 'm', 'paces'),
  aim: oneOf('in', 'cm', 'cups', 'balls', 'degrees'),
  pace_m: between(...OWN.pace_m),
  handed: oneOf('right', 'left'),
  theme: oneOf('light', 'dark', 'system'),
  name: isText,
  against: oneOf('tour', 'amateur'),
  ...PACE,
};
const player = (/** @type {keyof Player} */ name) => field('PlayerFields', name);
/** @type {Record<keyof Player, Check>} */
const PLAYER_CHECKS = {
  start_line_sd_deg: player('start_line_sd_deg'),
  pace_sd_fraction: player('pace_sd_fraction'),
  slope_sd_percent: player('slope_sd_percent'),
  start_line_bias_deg: player('start_line_bias_deg'),
  pace_bias_fraction: player('pace_bias_fraction'),
};
const isPlayer = record(PLAYER_CHECKS);
const isYou = record({
  value: isPlayer,
  low: isPlayer,
  high: isPlayer,
  putts: whole(...OWN.count),
  date: isDate,
  sample: isBoolean,
});
const READ = record({
  aim_deg: isNumber,
  aim_offset_m: isNumber,
  launch_mps: isNumber,
  entry_mps: isNumber,
  entry_deg: isNumber,
  time_s: isNumber,
  plays_like_m: isNumber,
  apex: record({ x_m: isNumber, y_m: isNumber }),
  path: isPath,
});
const OFF = record({ aim_sd_deg: orNull(isNumber), aim_offset_sd_m: orNull(isNumber) });
const WINDOW = record({ make_probability: between(0, 1), high_line: isPath, low_line: isPath });
/** @type {Each} */
const TRIALS = {
  each: record({
    felt_percent: FELT,
    measured_percent: field('FeltTrialFields', 'measured_percent'),
    fall: isFall,
    date: isDate,
  }),
};
/** @type {Record<keyof Calibration, Check | Each>} */
const CALIBRATION_CHECKS = {
  phone: orNull(record({ bias_deg: list(between(...OWN.bias_deg), 2, 2), date: isDate })),
  rolls: { each: asked('BallFields') },
  ball: field('RollTestFields', 'skid'),
  home_stimp_ft: PACE.stimp_ft,
  feet: TRIALS,
  eye: TRIALS,
};
const height = field('ViewFields', 'eye_height_m');
/** @type {Record<keyof Sighted, Check>} */
const SIGHTED_CHECKS = {
  eye: oneOf('standing', 'crouching'),
  standing_m: height,
  crouching_m: height,
  back_m: field('ViewFields', 'back_m'),
  lens_mm: between(...OWN.lens_mm),
  live_mm: between(...OWN.lens_mm),
  film_m: field('WatchedFields', 'eye_height_m'),
  film_mm: between(...OWN.lens_mm),
  lens_date: isDate,
  live_date: isDate,
  thing_m: field('LensFields', 'length_m'),
  away_m: field('LensFields', 'distance_m'),
  roll_deg: between(...OWN.roll_deg),
  height_m: orNull(between(...OWN.ramp_m)),
  rolled_m: orNull(field('PuttFields', 'distance_m')),
  rolled_stimp_ft: orNull(PACE.stimp_ft),
};
const isFelt = record({
  felt_percent: FELT,
  fall: isFall,
  slope_percent: between(0, 100),
  slope_sd_percent: between(0, 100),
  correction_percent: between(-100, 100),
  trials: whole(0, 5000),
});

const isCount = whole(...OWN.count);
const isSpent = between(...OWN.spent_s);
const PLAN = {
  minutes: field('PlanFields', 'minutes'),
  place: field('PlanFields', 'place'),
  at_hand: field('PlanFields', 'at_hand'),
};
const isLines = list(isText);
const isCard = record({
  name: isText,
  picture: isText,
  setup: isLines,
  cues: list(isText, 1),
  good: isText,
  bad: isText,
  cautions: isLines,
  needs: isLines,
});
const isWeights = (/** @type {unknown} */ value) => asked('WeightFields')(value);
const tempo = (/** @type {'forward_s' | 'ratio' | 'rest_s' | 'strokes'} */ name) => field('TempoFields', name);
/** @type {Record<keyof Practice, Check | Each>} */
const PRACTICE_CHECKS = {
  ...PLAN,
  spoken: isBoolean,
  chime: isBoolean,
  lie_deg: field('ArcFields', 'lie_deg'),
  length_m: field('ArcFields', 'length_m'),
  above_grip_m: field('ArcFields', 'above_grip_m'),
  gap_m: orNull(between(...OWN.gap_m)),
  eyes_m: field('EyesFields', 'left_m'),
  week: record({ first_tee: isDate, days_before: field('TournamentFields', 'days_before'), done: list(isText) }),
  ear: record({
    wall_m: between(...OWN.wall_m),
    paper_m: between(...OWN.paper_m),
    meant_m: field('PacesFields', 'meant_m'),
    floor_ft: field('HeardFields', 'stimp_ft'),
    floor_sd_ft: field('HeardFields', 'stimp_sd_ft'),
  }),
  weights: isWeights,
  blocks: list(
    record({
      drill: isText,
      minutes: between(...OWN.block_minutes),
      why: isText,
      instead: list(isText),
      card: (value) => value === undefined || isCard(value),
    }),
  ),
  planned: orNull(record({ ...PLAN, weights: isWeights })),
  run: orNull(record({ block: isCount, paused: isBoolean, session: isText, spent_s: isSpent, good: isCount, bad: isCount })),
  tempo: record({
    forward_s: tempo('forward_s'),
    ratio: tempo('ratio'),
    rest_s: tempo('rest_s'),
    strokes: tempo('strokes'),
    volume: between(0, 1),
    muted: isBoolean,
    vibrate: isBoolean,
    delay_s: between(...OWN.delay_s),
  }),
  strokes: { each: asked('OwnStroke') },
};

/** @param {unknown} value */
export function isPutt(value) {
  if (!isRecord(value) || !record({ distance_m: field('PuttFields', 'distance_m'), ...PACE })(value)) return false;
  const { stations, distance_m, survey } = /** @type {Record<string, any>} */ (value);
  if (survey !== undefined && !asked('PlacedFields')(survey)) return false;
  if (stations === undefined) return record(SURFACE)(value) && isSurelyTold(value);
  return (
    field('PuttFields', 'stations')(stations) &&
    isSurelyTold(value) &&
    stations?.every(
      (/** @type {Station} */ { at_m }, /** @type {number} */ i) => at_m <= distance_m && (!i || at_m > stations[i - 1].at_m),
    )
  );
}

/** @typedef {{what: string, value: unknown}} Misfit what did not fit, by its place */

/**
 * @template {object} T @param {string} part @param {unknown} value @param {T} defaults
 * @param {Record<keyof T & string, Check | Each>} checks @param {Misfit[]} aside what does not fit goes there @returns {T}
 */
function kept(part, value, defaults, checks, aside) {
  const result = { ...defaults };
  if (!isRecord(value)) {
    if (value !== undefined && value !== null) aside.push({ what: part, value });
    return result;
  }
  for (const name of /** @type {(keyof T & string)[]} */ (Object.keys(checks))) {
    const [check, found, what] = [checks[name], value[name], `${part}.${name}`];
    // What was never measured stands as its default, which a check may not know
    if (found === undefined || found === defaults[name]) continue;
    const good = typeof check === 'function' ? check(found) : Array.isArray(found);
    if (!good) aside.push({ what, value: found });
    else if (typeof check === 'function') result[name] = /** @type {T[typeof name]} */ (found);
    else {
      const all = /** @type {unknown[]} */ (found);
      aside.push(...all.filter((each) => !check.each(each)).map((each) => ({ what, value: each })));
      result[name] = /** @type {T[typeof name]} */ (/** @type {unknown} */ (all.filter(check.each)));
    }
  }
  return result;
}

/**
 * One that does not fit is set aside.
 * @template T @param {string} what @param {unknown} value @param {Check} check @param {T} instead @param {Misfit[]} aside
 * @returns {T}
 */
function one(what, value, check, instead, aside) {
  if (value === undefined || value === null) return instead;
  if (check(value)) return /** @type {T} */ (value);
  aside.push({ what, value });
  return instead;
}

/** @template T @param {unknown} value @param {Check} check @param {Check} [isOff] @returns {Answered<T> | null} */
const answered = (value, check, isOff = (off) => off === undefined) =>
  isRecord(value) && isPutt(value.putt) && check(value.value) && isOff(value.off)
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

/**
 * @param {unknown} data what was read back, of any age and in any state @param {Misfit[]} [aside] what does not fit goes there
 * @returns {Saved}
 */
export function restore(data, aside = []) {
  /** @type {Record<string, unknown>} */
  let saved = isRecord(data) && Number.isInteger(data.schema) && Number(data.schema) >= 1 && !isNewer(data) ? data : {};
  for (let at = Number(saved.schema ?? SCHEMA); at < SCHEMA; at++) saved = pick(NEXT, at)(saved);
  const settings = kept('settings', saved.settings, SETTINGS, SETTINGS_CHECKS, aside);
  return {
    settings,
    putt: one('putt', saved.putt, isPutt, exampleOf(settings), aside),
    player: kept('player', saved.player, PLAYER, PLAYER_CHECKS, aside),
    read: answered(saved.read, READ, (off) => off === undefined || OFF(off)),
    window: answered(saved.window, WINDOW),
    cautioned: saved.cautioned === true,
    place: one('place', saved.place, isText, '', aside),
    draft: kept('draft', saved.draft, DRAFT, { text: isText, weather: isText, speed: isText }, aside),
    logging: kept('logging', saved.logging, LOGGING, { read: oneOf('', 'app', 'own'), by: oneOf('picture', 'words') }, aside),
    card: one('card', saved.card, isRoundCard, CARD, aside),
    unkept: fitting(saved.unkept),
    calibration: kept('calibration', saved.calibration, CALIBRATION, CALIBRATION_CHECKS, aside),
    practice: practised(kept('practice', saved.practice, PRACTICE, PRACTICE_CHECKS, aside)),
    sighted: kept('sighted', saved.sighted, SIGHTED, SIGHTED_CHECKS, aside),
    you: one('you', saved.you, isYou, /** @type {You | null} */ (null), aside),
    felt: one('felt', saved.felt, isFelt, /** @type {Felt | null} */ (null), aside),
  };
}

/** @type {Record<keyof Phone, [object, Record<string, Check | Each>]>} */
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
