/**
 * The five things that the player sets, each with its stops on the tape.
 * @import {InputField, Settings, Putt} from '../../types.js'
 */
import { untilted, withSpeed } from '../../doubt.js';
import { rangeOf } from '../../fields.js';
import { distanceUnit, fallWords, smallUnit, unitOf, withUnit } from '../../format.js';

/** From a first number to a last, both kept, by a step. @param {number} from @param {number} to @param {number} step */
const range = (from, to, step) =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => Number((from + i * step).toFixed(4)));

/**
 * In the player's unit: fine where putts are holed, coarse where they are lagged.
 * @type {Record<Settings['distance'], (most: number) => number[]>}
 */
const DISTANCES = {
  ft: (most) => [...range(1, 20, 0.5), ...range(21, most, 1)],
  m: (most) => [...range(0.3, 6, 0.1), ...range(6.25, most, 0.25)],
  paces: (most) => [...range(0.5, most, 0.5)],
};
const LONGEST_M = rangeOf('PuttFields', 'distance_m').high;
const FARTHEST_PAST_M = rangeOf('PuttFields', 'past_m').high;
const SLOPE = rangeOf('PuttFields', 'slope_percent');
const STIMP = rangeOf('PuttFields', 'stimp_ft');

/**
 * @typedef {object} Input
 * @property {InputField} field
 * @property {string} name
 * @property {(settings: Settings) => number[]} stops in the player's unit
 * @property {(stop: number, unit: string) => number} marked a number is written at each multiple of this, in the player's unit
 */

/** @param {number} stop @param {string} unit */
const distanceMarked = (stop, unit) => (unit === 'm' ? (stop <= 6 ? 0.5 : 1) : unit === 'ft' && stop > 20 ? 5 : 2);

/** @type {Input[]} */
export const INPUTS = [
  {
    field: 'distance_m',
    name: 'Distance',
    stops: (settings) => DISTANCES[settings.distance](LONGEST_M / distanceUnit(settings).si),
    marked: distanceMarked,
  },
  { field: 'slope_percent', name: 'Slope', stops: () => range(SLOPE.low, SLOPE.high, 0.1), marked: () => 0.5 },
  { field: 'fall_deg', name: 'Falls', stops: () => range(0, 355, 5), marked: () => 45 },
  { field: 'stimp_ft', name: 'Stimp', stops: () => range(STIMP.low, STIMP.high, 0.1), marked: () => 0.5 },
  {
    field: 'past_m',
    name: 'Past',
    stops: (settings) => range(0, FARTHEST_PAST_M / smallUnit(settings).si, smallUnit(settings).unit === 'cm' ? 2 : 1),
    marked: (_, unit) => (unit === 'cm' ? 10 : 6),
  },
];

/** @param {InputField} field */
export const inputOf = (field) => /** @type {Input} */ (INPUTS.find((input) => input.field === field));

/**
 * What a field holds: that of the station in hand where the green has several.
 * @param {Putt} putt @param {number} station @param {InputField} field
 */
export const inputValue = (putt, station, field) =>
  (field === 'slope_percent' || field === 'fall_deg' ? (putt.stations?.[station] ?? putt)[field] : putt[field]) ?? 0;

/**
 * The same putt with one field changed.
 * @param {Putt} putt @param {number} station @param {InputField} field @param {number} value @returns {Putt}
 */
export function withValue(putt, station, field, value) {
  const tilts = field === 'slope_percent' || field === 'fall_deg';
  if (putt.stations && tilts)
    return { ...putt, stations: putt.stations.map((s, i) => (i === station ? { ...untilted(s), [field]: value } : s)) };
  if (putt.stations && field === 'distance_m')
    return { ...putt, distance_m: value, stations: stretched(putt.stations, putt.distance_m, value) };
  if (tilts) return { ...untilted(putt), [field]: value };
  return field === 'stimp_ft' ? withSpeed(putt, value) : { ...putt, [field]: value };
}

/**
 * Stations keep their share of the way when the distance changes.
 * @param {NonNullable<Putt['stations']>} stations @param {number} from_m @param {number} distance_m
 */
const stretched = (stations, from_m, distance_m) =>
  stations.map((s) => ({ ...s, at_m: Math.min(distance_m, (s.at_m * distance_m) / from_m) }));

/** @param {InputField} field @param {number} value in SI @param {Settings} settings */
export const inWords = (field, value, settings) =>
  field === 'fall_deg' ? `${fallWords(value)}, ${Math.round(value)} degrees` : withUnit(value, unitOf(field, settings));
