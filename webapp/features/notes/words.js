/**
 * An entry in few words.
 * @import {Entry, Point, PuttEntry, Settings} from '../../types.js'
 */
import { clock, distanceUnit, number, smallUnit, withUnit } from '../../format.js';

/** @param {number} value_m @param {string} more @param {string} less @param {Settings} settings */
const sided = (value_m, more, less, settings) => `${withUnit(Math.abs(value_m), smallUnit(settings))} ${value_m < 0 ? less : more}`;

/** @param {'holed' | Point} result @param {Settings} settings */
export function resultWords(result, settings) {
  if (result === 'holed') return 'Holed';
  const along = sided(result.x_m, 'past', 'short', settings);
  return Math.abs(result.y_m) < smallUnit(settings).si ? along : `${along}, ${sided(result.y_m, 'left', 'right', settings)}`;
}

/** As a field of date and time has it. @param {string} at */
export function inputTime(at) {
  const date = new Date(at);
  return new Date(date.getTime() - date.getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

/** @param {Entry} entry @param {Settings} settings */
export function entryWords(entry, settings) {
  if (entry.kind === 'note') return [entry.stimp_ft && `Stimp ${number(entry.stimp_ft, 1)}`, entry.weather, entry.text].filter(Boolean).join(' · ');
  if (entry.kind === 'drill') return `${entry.name} · ${entry.good || entry.bad ? `${entry.good} of ${entry.good + entry.bad}` : clock(entry.spent_s)}`;
  return `${withUnit(entry.distance_m, distanceUnit(settings))} · ${resultWords(entry.result, settings)}`;
}

/** @param {PuttEntry} putt */
export const greenWords = ({ stations, slope_percent, fall_deg, stimp_ft }) =>
  `${stations ? `${stations.length} slopes` : `${slope_percent} % at ${Math.round(fall_deg ?? 0)}°`}, Stimp ${stimp_ft}`;
