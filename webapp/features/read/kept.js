/**
 * What is kept of a read: the putt in hand and its player; its answers for the first paint.
 * @import {Answered, Felt, Player, Putt, Settings, Read, Window, You} from '../../types.js'
 * @import {Check} from '../../records/forms.js'
 * @import {Part} from '../../records/part.js'
 */
import { PRESETS } from '../../engine/fields.js';
import { pick } from '../../pick.js';
import {
  between,
  field,
  isBoolean,
  isDate,
  isNumber,
  isRecord,
  list,
  OWN,
  orNull,
  record,
  whole,
} from '../../records/forms.js';
import { fields, single } from '../../records/part.js';
import { isPutt } from '../../records/putt.js';

const { start_line_sd_deg, pace_sd_fraction, slope_sd_percent } = pick(PRESETS, 0);
/** @type {Player} */
export const PLAYER = {
  start_line_sd_deg,
  pace_sd_fraction,
  slope_sd_percent,
  start_line_bias_deg: 0,
  pace_bias_fraction: 0,
};

/** @type {Putt} */
const PUTT = { distance_m: 3.048, slope_percent: 2, fall_deg: 90, stimp_ft: 10, past_m: 0.3048 };

/** The putt that is there before the first of one's own. @param {Settings} settings @returns {Putt} */
const exampleOf = ({ stimp_ft, past_m }) => ({ ...PUTT, stimp_ft, past_m });
/** @param {Putt} putt @param {Settings} settings */
export const isExample = (putt, settings) => JSON.stringify(putt) === JSON.stringify(exampleOf(settings));

const isPath = list((point) => Array.isArray(point) && point.length === 4 && point.every(isNumber), 2, 20_000);

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
const isFelt = record({
  felt_percent: field('FeltFields', 'felt_percent'),
  fall: field('FeltFields', 'fall'),
  slope_percent: between(0, 100),
  slope_sd_percent: between(0, 100),
  correction_percent: between(-100, 100),
  trials: whole(0, 5000),
});

/** @template T @param {Check} check @param {Check} [isOff] @returns {Part<Answered<T> | null>} */
const answered = (check, isOff = () => false) => ({
  painted: true,
  passing: true,
  read: (value) =>
    isRecord(value) && isPutt(value.putt) && check(value.value) && (value.off === undefined || isOff(value.off))
      ? /** @type {Answered<T>} */ (/** @type {unknown} */ (value))
      : null,
});

export const keeps = {
  putt: single('putt', isPutt, (others) => exampleOf(others('settings')), { painted: true, ofTab: true }),
  player: fields('player', PLAYER, PLAYER_CHECKS, { painted: true, inFiles: true }),
  you: single('you', isYou, /** @type {You | null} */ (null), { painted: true }),
  felt: single('felt', isFelt, /** @type {Felt | null} */ (null), { painted: true, ofTab: true }),
  read: /** @type {Part<Answered<Read> | null>} */ (answered(READ, OFF)),
  window: /** @type {Part<Answered<Window> | null>} */ (answered(WINDOW)),
};
