/**
 * Versions of what is kept on the phone: each is made one of the next.
 * @import {Felt, Player} from '../types.js'
 */
import { PRESETS } from '../engine/fields.js';
import { pick } from '../pick.js';
import { isRecord } from './forms.js';
import { olderEntries } from './older.js';

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

/** An aim could be held up at arm's length once, and light was what nobody had chosen. @param {unknown} settings */
const asNow = (settings) =>
  isRecord(settings)
    ? {
        ...settings,
        ...(settings.aim === 'arm' && { aim: 'in' }),
        ...(settings.theme === 'light' && { theme: 'system' }),
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
  const tour = pick(PRESETS, 0);
  const { start_line_sd_deg: start = tour.start_line_sd_deg, pace_sd_fraction: pace = tour.pace_sd_fraction } = own;
  const preset = PRESETS.find(
    ({ start_line_sd_deg, pace_sd_fraction }) =>
      Math.abs(start_line_sd_deg - start) < 1e-9 && Math.abs(pace_sd_fraction - pace) < 1e-9,
  );
  const read = preset ?? (own.slope_sd_percent ? own : tour);
  return isRecord(player) ? { ...player, slope_sd_percent: read.slope_sd_percent } : player;
}

/** Whether it was written by an app that knows more than this one. @param {unknown} data */
export const isNewer = (data) => isRecord(data) && typeof data.schema === 'number' && data.schema > SCHEMA;

/** As this version has it; nothing where it is none of ours or a newer one's. @param {unknown} data */
export function asOfNow(data) {
  /** @type {Record<string, unknown>} */
  let saved = isRecord(data) && Number.isInteger(data.schema) && Number(data.schema) >= 1 && !isNewer(data) ? data : {};
  for (let at = Number(saved.schema ?? SCHEMA); at < SCHEMA; at++) saved = pick(NEXT, at)(saved);
  return saved;
}
