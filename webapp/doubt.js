/**
 * How sure the putt's numbers are: each slope and the green's speed go with where they came from and how far they may be off.
 * What has no source was typed or dragged, and is as good as the player's own reading.
 * @import {Putt, Slope, Source, State} from './types.js'
 */
import { rangeOf } from './fields.js';

/** How far a green's speed that was guessed or told may be off, ft; assumed. */
export const TOLD_SD_FT = 0.5;
/** How much a green's speed differs from one day to another, ft; assumed. */
export const DAYS_SD_FT = 0.7;
const WIDEST_TILT = rangeOf('ReadFields', 'tilt_sd_percent').high;
const WIDEST_STIMP = rangeOf('ReadFields', 'stimp_sd_ft').high;

/** @type {Source[]} */
export const SOURCES = ['felt', 'level', 'rolls', 'stimpmeter', 'kept', 'surveyed', 'filmed'];

/** Putts on a walked green by what was asked of them. @type {WeakMap<object, Putt>} */
const walked = new WeakMap();

/**
 * The putt as the engine knows it. One on a green that was walked is told by where ball and hole lie on the map: its length and
 * the slopes along its line, which the screens show and the record keeps, follow from that.
 * @param {Putt} putt @returns {Putt}
 */
export function plain(putt) {
  const { tilt_source: _, tilt_sd_percent: __, stimp_source: ___, stimp_sd_ft: ____, stations, survey, ...rest } = putt;
  if (survey) {
    const asked = /** @type {Putt} */ ({ survey, stimp_ft: rest.stimp_ft, past_m: rest.past_m });
    walked.set(asked, putt);
    return asked;
  }
  if (!stations) return rest;
  return { ...rest, stations: stations.map(({ at_m, slope_percent, fall_deg }) => ({ at_m, slope_percent, fall_deg })) };
}

/** The putt that was asked about. @param {Putt} asked @returns {Putt} */
export const puttAsked = (asked) => walked.get(asked) ?? asked;

/**
 * A putt of another length or other slopes than before lies on no map.
 * @param {Putt} putt @param {Putt} before @returns {Putt}
 */
export function offMap({ survey, ...putt }, before) {
  const same = putt.distance_m === before.distance_m && putt.stations === before.stations;
  return survey && same ? { ...putt, survey } : putt;
}

/**
 * A slope with what it was measured by.
 * @param {Slope} slope @param {Source} source @param {number} sd_percent of each of its parts @returns {Slope}
 */
export const measured = ({ slope_percent, fall_deg }, source, sd_percent) => ({
  slope_percent,
  fall_deg,
  tilt_source: source,
  tilt_sd_percent: Number(Math.min(sd_percent, WIDEST_TILT).toFixed(2)),
});

/** A speed with what it was measured by. @param {number} stimp_ft @param {Source} source @param {number} sd_ft */
export const clocked = (stimp_ft, source, sd_ft) => ({
  stimp_ft: Number(stimp_ft.toFixed(1)),
  stimp_source: source,
  stimp_sd_ft: Number(Math.min(sd_ft, WIDEST_STIMP).toFixed(2)),
});

/**
 * A putt of another slope, or place of it, whose slope is no longer what was measured.
 * @template {Partial<Slope>} T
 * @param {T} slope @returns {Omit<T, 'tilt_source' | 'tilt_sd_percent'>}
 */
export function untilted({ tilt_source: _, tilt_sd_percent: __, ...slope }) {
  return slope;
}

/** A putt with another green speed, typed. @param {Putt} putt @param {number} stimp_ft @returns {Putt} */
export function withSpeed({ stimp_source: _, stimp_sd_ft: __, ...putt }, stimp_ft) {
  return { ...putt, stimp_ft };
}

/** @typedef {{source: Source | 'typed', sd: number}} Told */

/** The tilt's: of several slopes the least sure. @param {Pick<State, 'putt' | 'player' | 'answers'>} state @returns {Told} */
export function tiltTold({ putt, player, answers }) {
  const own = answers.ownFeel?.sd_percent ?? player.slope_sd_percent;
  const all = (putt.stations ?? [putt]).map(
    ({ tilt_source, tilt_sd_percent }) => /** @type {Told} */ ({ source: tilt_source ?? 'typed', sd: tilt_sd_percent ?? own }),
  );
  return all.reduce((least, each) => (each.sd > least.sd ? each : least));
}

/** The green speed's. @param {Pick<State, 'putt'>} state @returns {Told} */
export const speedTold = ({ putt: { stimp_source, stimp_sd_ft } }) => ({
  source: stimp_source ?? 'typed',
  sd: stimp_sd_ft ?? TOLD_SD_FT,
});

/** @type {Source[]} */
const MEASURING = ['level', 'surveyed', 'filmed'];

/**
 * How far each part of a tilt may be off that was measured, by the least sure of its places; null where one was guessed.
 * @param {Partial<Slope> & {stations?: Slope[]}} putt
 */
export function tiltMeasured(putt) {
  const places = putt.stations ?? [putt];
  if (!places.every(({ tilt_source }) => tilt_source && MEASURING.includes(tilt_source))) return null;
  return Math.max(...places.map(({ tilt_sd_percent }) => tilt_sd_percent ?? 0));
}
