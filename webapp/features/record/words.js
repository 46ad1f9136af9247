/**
 * An entry in few words.
 * @import {Entry, Point, Settings} from '../../types.js'
 */
import { clock, dayWords, distanceUnit, localTime, number, several, smallUnit, timeWords, withUnit } from '../../format.js';
import { entryUnit } from './actions.js';

/** @param {number} value_m @param {string} more @param {string} less @param {Settings} settings */
const sided = (value_m, more, less, settings) =>
  `${withUnit(Math.abs(value_m), smallUnit(settings))} ${value_m < 0 ? less : more}`;

/** @param {'holed' | Point} result @param {Settings} settings */
export function resultWords(result, settings) {
  if (result === 'holed') return 'Holed';
  const along = sided(result.x_m, 'past', 'short', settings);
  return Math.abs(result.y_m) < smallUnit(settings).si ? along : `${along}, ${sided(result.y_m, 'left', 'right', settings)}`;
}

/** As a field of date and time has it. @param {string} at */
export const inputTime = (at) => localTime(at).slice(0, 16);

/** @param {Entry} entry @param {Settings} settings */
export function entryWords(entry, settings) {
  if (entry.kind === 'note')
    return [entry.stimp_ft && `Stimp ${number(entry.stimp_ft, 1)}`, entry.weather, entry.text].filter(Boolean).join(' · ');
  if (entry.kind === 'drill')
    return `${entry.name} · ${entry.good || entry.bad ? `${entry.good} of ${entry.good + entry.bad}` : clock(entry.spent_s)}`;
  if (entry.kind === 'green') return `${entry.name || 'A green'} · ${several(entry.points.length, 'reading')}`;
  return `${withUnit(entry.distance_m, distanceUnit(settings))} · ${resultWords(entry.result, settings)}`;
}

/** @type {Record<string, string>} */
const LABELS = {
  at: 'When',
  place: 'Place',
  gone: 'Deleted',
  result: 'Result',
  distance_m: 'Distance',
  stimp_ft: 'Stimp',
  slope_percent: 'Slope',
  fall_deg: 'Falls',
  stations: 'Slopes',
  past_m: 'Past the hole',
  aim_deg: 'Start line meant',
  gate: 'Gate',
  line_error_deg: 'Ball’s line off',
  felt_percent: 'Slope felt',
  weather: 'Weather',
  good: 'Good',
  bad: 'Not',
};

/** What an entry was where the next one differs. @param {Entry} old @param {Entry} next @param {Settings} settings */
export function beforeWords(old, next, settings) {
  const [was, is] = /** @type {Record<string, any>[]} */ ([old, next]);
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter(
    (name) => name !== 'changed' && JSON.stringify(was[name]) !== JSON.stringify(is[name]),
  );
  return names
    .map((name) => `${LABELS[name] ?? (old.kind === 'note' ? 'Note' : 'Remark')}: ${fieldWords(name, was[name], settings)}`)
    .join(' · ');
}

/** @param {string} name @param {any} value @param {Settings} settings */
function fieldWords(name, value, settings) {
  if (name === 'gone') return value ? 'yes' : 'no';
  if (value === undefined || value === '') return 'nothing';
  if (name === 'result') return resultWords(value, settings);
  if (name === 'at') return `${timeWords(value)}, ${dayWords(value)}`;
  if (name === 'stations') return several(value.length, 'place');
  return typeof value === 'number' ? withUnit(value, entryUnit(name, settings)).trim() : value;
}
