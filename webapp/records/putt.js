/**
 * What a putt may be: by its fields the engine's own, and of where it is from, both source and spread or none.
 * @import {Station} from '../types.js'
 */
import { SOURCES } from '../doubt.js';
import { asked, field, isRecord, record } from './forms.js';

const SURFACE = { slope_percent: field('StationFields', 'slope_percent'), fall_deg: field('StationFields', 'fall_deg') };
export const PACE = { stimp_ft: field('PuttFields', 'stimp_ft'), past_m: field('PuttFields', 'past_m') };
const isLong = record({ distance_m: field('PuttFields', 'distance_m'), ...PACE });

/**
 * A source and its spread, both or none.
 * @param {'tilt' | 'stimp'} what @param {'tilt_sd_percent' | 'stimp_sd_ft'} sd
 * @returns {(value: Record<string, unknown>) => boolean}
 */
function isTold(what, sd) {
  const source = `${what}_source`;
  const isSd = field('ReadFields', sd);
  return (value) =>
    (value[source] === undefined && value[sd] === undefined) ||
    (SOURCES.some((one) => one === value[source]) && isSd(value[sd]));
}
const isTiltTold = isTold('tilt', 'tilt_sd_percent');
const isSpeedTold = isTold('stimp', 'stimp_sd_ft');

/** Whether the sources and spreads that a putt tells can be. @param {Record<string, any>} putt */
export const isSurelyTold = (putt) => isSpeedTold(putt) && (putt.stations ?? [putt]).every(isTiltTold);

/** @param {unknown} value */
export function isPutt(value) {
  if (!isRecord(value) || !isLong(value)) return false;
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
