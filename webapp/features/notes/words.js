/**
 * An entry in few words.
 * @import {Entry, Point, PuttEntry, Settings} from '../../types.js'
 */
import { distanceUnit, smallUnit, withUnit } from '../../format.js';

/** @param {number} value_m @param {string} more @param {string} less @param {Settings} settings */
const sided = (value_m, more, less, settings) => `${withUnit(Math.abs(value_m), smallUnit(settings))} ${value_m < 0 ? less : more}`;

/** @param {'holed' | Point} result @param {Settings} settings */
export function resultWords(result, settings) {
  if (result === 'holed') return 'Holed';
  const along = sided(result.x_m, 'past', 'short', settings);
  return Math.abs(result.y_m) < smallUnit(settings).si ? along : `${along}, ${sided(result.y_m, 'left', 'right', settings)}`;
}

// made once: each takes longer to make than a hundred rows to draw
const DAY = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short', year: 'numeric' });
const TIME = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit' });

/** @param {string} at */
export const dayWords = (at) => DAY.format(new Date(at));

/** @param {string} at */
export const timeWords = (at) => TIME.format(new Date(at));

/** @param {Entry} entry @param {Settings} settings */
export function entryWords(entry, settings) {
  if (entry.kind === 'note') return entry.text;
  return `${withUnit(entry.distance_m, distanceUnit(settings))} · ${resultWords(entry.result, settings)}`;
}

/** @param {PuttEntry} putt */
export const greenWords = ({ stations, slope_percent, fall_deg, stimp_ft }) =>
  `${stations ? `${stations.length} slopes` : `${slope_percent} % at ${Math.round(fall_deg ?? 0)}°`}, Stimp ${stimp_ft}`;
