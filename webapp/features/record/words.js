/**
 * An entry in few words.
 * @import {Entry, PuttEntry, Settings} from '../../types.js'
 */
import { clock, dayWords, distanceUnit, localTime, number, several, smallUnit, timeWords, withUnit } from '../../format.js';
import { leaveWords } from '../../parts/leave.js';
import { entryUnit, fromEdge } from './finish.js';

/** @param {number} value_m @param {string} more @param {string} less @param {Settings} settings */
const sided = (value_m, more, less, settings) =>
  `${withUnit(Math.abs(value_m), smallUnit(settings))} ${value_m < 0 ? less : more}`;

/**
 * How a putt ended, measured from the hole's edge.
 * @param {Pick<PuttEntry, 'result' | 'side' | 'length'>} putt @param {Settings} settings
 */
export function resultWords({ result, side, length }, settings) {
  if (result === 'holed') return 'Holed';
  if (result === 'missed') return ['Missed', leaveWords({ side, length })].filter(Boolean).join(' ');
  const { x_m, y_m } = fromEdge(result);
  const small = smallUnit(settings).si / 2;
  const along = sided(x_m, 'past', 'short', settings);
  const across = sided(y_m, 'left', 'right', settings);
  if (Math.abs(y_m) < small) return along;
  return Math.abs(x_m) < small ? across : `${along}, ${across}`;
}

/** As a field of date and time has it. @param {string} at */
export const inputTime = (at) => localTime(at).slice(0, 16);

/** @param {Entry} entry @param {Settings} settings */
export function entryWords(entry, settings) {
  if (entry.kind === 'note')
    return [entry.stimp_ft && `Stimp ${number(entry.stimp_ft, 1)}`, entry.weather, entry.text].filter(Boolean).join(' · ');
  if (entry.kind === 'worth')
    return [entry.name || 'Putt kept', withUnit(entry.distance_m, distanceUnit(settings))].join(' · ');
  if (entry.kind === 'round') return [entry.name || 'Round', several(entry.holes.length, 'hole')].join(' · ');
  if (entry.kind === 'drill')
    return `${entry.name} · ${entry.good || entry.bad ? `${entry.good} of ${entry.good + entry.bad}` : clock(entry.spent_s)}`;
  if (entry.kind === 'green') return `${entry.name || 'A green'} · ${several(entry.points.length, 'reading')}`;
  return `${withUnit(entry.distance_m, distanceUnit(settings))} · ${resultWords(entry, settings)}`;
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
  read: 'Whose aim',
  side: 'Side',
  length: 'Length',
  name: 'Name',
  competition: 'Competition',
  holes: 'Holes',
  gate: 'Gate',
  line_error_deg: 'Ball’s line off',
  felt_percent: 'Slope felt',
  weather: 'Weather',
  good: 'Good',
  bad: 'Not',
};

/** What an entry was where the next one differs. @param {Entry} old @param {Entry} next @param {Settings} settings */
export function beforeWords(old, next, settings) {
  const [was, is] = /** @type {[Record<string, any>, Record<string, any>]} */ ([old, next]);
  const names = [...new Set([...Object.keys(was), ...Object.keys(is)])].filter(
    (name) => name !== 'changed' && name !== 'picture' && JSON.stringify(was[name]) !== JSON.stringify(is[name]),
  );
  return names
    .map((name) => `${LABELS[name] ?? (old.kind === 'note' ? 'Note' : 'Remark')}: ${fieldWords(name, was, settings)}`)
    .join(' · ');
}

/** @param {string} name @param {Record<string, any>} was @param {Settings} settings */
function fieldWords(name, was, settings) {
  const value = was[name];
  if (name === 'gone' || name === 'competition') return value ? 'yes' : 'no';
  if (value === undefined || value === '') return 'nothing';
  if (name === 'result') return resultWords(/** @type {PuttEntry} */ (/** @type {unknown} */ (was)), settings);
  if (name === 'at') return `${timeWords(value)}, ${dayWords(value)}`;
  if (name === 'stations') return several(value.length, 'place');
  if (name === 'holes') return several(value.length, 'hole');
  if (name === 'read') return value === 'app' ? 'the app’s' : 'own';
  if (name === 'aim_deg') return `${number(value, 1)}°`;
  return typeof value === 'number' ? withUnit(value, entryUnit(name, settings)).trim() : value;
}

/** What is kept besides entries, as a player knows it. @type {Record<string, string>} */
const PARTS = {
  settings: 'Settings',
  putt: 'The putt in hand',
  player: 'The player',
  you: 'Your own figures',
  felt: 'The slope as felt',
  calibration: 'Green',
  sighted: 'Line',
  practice: 'Practice',
  draft: 'A note half written',
  logging: 'Logging',
  place: 'The place',
  card: 'A round half entered',
};
const UNITS = /(_(m|mm|deg|ft|percent|mps|s|sd))+$/;

/** One thing that did not fit. @param {{what: string, value: unknown}} misfit */
export function asideWords({ what, value }) {
  const [part = '', name = ''] = what.split('.');
  const named = [PARTS[part] ?? what, name.replace(UNITS, '').replaceAll('_', ' ')].filter(Boolean).join(', ');
  return `${named}: ${(JSON.stringify(value) ?? '').slice(0, 80)}`;
}
