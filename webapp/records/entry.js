/**
 * What an entry of the record may hold, checked wherever one comes in: typed, measured or from a file.
 * @import {Entry} from '../types.js'
 */
import { asked, between, field, isRecord, whole } from './forms.js';

import { SOURCES } from '../doubt.js';
import { FIELDS } from '../engine/fields.js';

/** @param {import('../engine/protocol.js').NumberTaken} taken @returns {[number, number]} */
const pair = ({ low, high }) => [low, high];
const { LoggedFields: PUTT, FinishFields: FINISH, StationFields: STATION, ReadFields: DOUBT } = FIELDS;

/** Of what goes to the engine, its own. @type {Record<string, [number, number]>} */
export const RANGES = {
  distance_m: pair(PUTT.distance_m),
  stimp_ft: pair(PUTT.stimp_ft),
  slope_percent: pair(PUTT.slope_percent),
  fall_deg: pair(PUTT.fall_deg),
  past_m: pair(PUTT.past_m),
  aim_deg: pair(PUTT.aim_deg),
  x_m: pair(FINISH.x_m),
  y_m: pair(FINISH.y_m),
  line_error_deg: pair(PUTT.line_error_deg),
  felt_percent: pair(PUTT.felt_percent),
  start_deg: pair(PUTT.start_deg),
  start_sd_deg: pair(PUTT.start_sd_deg),
  launch_mps: pair(PUTT.launch_mps),
  launch_sd_mps: pair(PUTT.launch_sd_mps),
  finish_sd_m: [0, 30],
  at_m: pair(STATION.at_m),
  stimp_sd_ft: [0, PUTT.stimp_ft.high],
  tilt_sd_percent: pair(DOUBT.tilt_sd_percent),
  spent_s: [0, 86_400],
  good: [0, 100_000],
  bad: [0, 100_000],
};
/** Of a green: how long a side may be, and at how many places it is walked. @satisfies {Record<string, [number, number]>} */
export const GREEN = /** @type {const} */ ({ side_m: [3, 80], places: [3, FIELDS.MapFields.points.high] });
const isOnMap = field('PlacedFields', 'hole');
export const WHOLE = ['good', 'bad'];
export const GATES = ['left', 'clean', 'right'];
const [EARLIEST, LATEST] = [Date.UTC(1900, 0), Date.UTC(2200, 0)];
const LONGEST_TEXT = 4000;
const LONGEST_ID = 64;
const MOST_STATIONS = PUTT.stations.high;

const NEEDED = ['distance_m', 'stimp_ft', 'past_m', 'aim_deg'];
const OPTIONAL = [
  'slope_percent',
  'fall_deg',
  'line_error_deg',
  'felt_percent',
  'start_deg',
  'start_sd_deg',
  'launch_mps',
  'launch_sd_mps',
  'finish_sd_m',
];
const OF_A_NOTE = ['stimp_ft', 'stimp_sd_ft'];
const OF_A_DRILL = ['spent_s', 'good', 'bad'];

/** @param {string} name @param {unknown} value */
function checkNumber(name, value) {
  const [low, high] = RANGES[name];
  if (typeof value !== 'number' || !(value >= low && value <= high))
    throw new Error(`${name} is ${shown(value)}; it takes a number from ${low} to ${high}`);
  if (WHOLE.includes(name) && !Number.isInteger(value)) throw new Error(`${name} is ${value}; it takes a whole number`);
  return value;
}

/** @param {string} name @param {unknown} value @param {number} longest @param {number} [shortest] */
function checkText(name, value, longest, shortest = 0) {
  if (typeof value !== 'string' || value.length > longest || value.length < shortest)
    throw new Error(`${name} is ${shown(value)}; it takes a text of ${shortest} to ${longest} characters`);
  return value;
}

/** A time, always written alike so that times sort as texts. @param {string} name @param {unknown} value */
function checkTime(name, value) {
  const time = typeof value === 'string' && /^\d{4}-\d\d-\d\d/.test(value) ? Date.parse(value) : NaN;
  if (!(time >= EARLIEST && time < LATEST))
    throw new Error(`${name} is ${shown(value)}; it takes a date and time as 2026-05-03T17:30:00Z, from 1900 to 2199`);
  return new Date(time).toISOString();
}

/** @param {Record<string, unknown>} data @param {string[]} names */
const numbersOf = (data, names) => Object.fromEntries(names.map((name) => [name, checkNumber(name, data[name])]));
/** @param {Record<string, unknown>} data @param {string[]} names */
const known = (data, names) => names.filter((name) => data[name] !== undefined);

/** Where a number came from, and how far it may be off: both or none. @param {Record<string, unknown>} data @param {'tilt_source' | 'stimp_source'} source @param {'tilt_sd_percent' | 'stimp_sd_ft'} sd */
function told(data, source, sd) {
  if (data[source] === undefined) return {};
  if (!SOURCES.some((one) => one === data[source]))
    throw new Error(`${source} is ${shown(data[source])}; it takes ${SOURCES.join(', ')}`);
  return { [source]: data[source], [sd]: checkNumber(sd, data[sd]) };
}

/** @param {unknown} value */
const shown = (value) => (value === undefined ? 'missing' : (JSON.stringify(value) ?? '?').slice(0, 40));

/** The entry with only what belongs to it. Throws what is wrong, in words. @param {unknown} data @returns {Entry} */
export function checked(data) {
  if (!isRecord(data)) throw new Error('it is no entry');
  const head = {
    id: checkText('id', data.id, LONGEST_ID, 1),
    at: checkTime('at', data.at),
    changed: checkTime('changed', data.changed ?? data.at),
    place: checkText('place', data.place ?? '', LONGEST_TEXT),
    text: checkText('text', data.text ?? '', LONGEST_TEXT),
    ...(data.sample === true ? { sample: true } : {}),
    ...(data.gone === true ? { gone: true } : {}),
  };
  if (data.kind === 'note') {
    const weather = data.weather === undefined ? {} : { weather: checkText('weather', data.weather, LONGEST_TEXT) };
    const speed = { ...numbersOf(data, known(data, OF_A_NOTE)), ...told(data, 'stimp_source', 'stimp_sd_ft') };
    return { kind: 'note', ...head, ...weather, ...speed };
  }
  if (data.kind === 'drill') {
    const [session, drill] = ['session', 'drill'].map((name) => checkText(name, data[name], LONGEST_ID, 1));
    const drilled = {
      kind: 'drill',
      ...head,
      session,
      drill,
      name: checkText('name', data.name, LONGEST_TEXT, 1),
      ...numbersOf(data, OF_A_DRILL),
    };
    return /** @type {Entry} */ (/** @type {unknown} */ (drilled));
  }
  if (data.kind === 'green')
    return /** @type {Entry} */ (/** @type {unknown} */ ({ kind: 'green', ...head, ...walkedOf(data) }));
  if (data.kind !== 'putt') throw new Error(`kind is ${shown(data.kind)}; it takes putt, note, drill or green`);
  const numbers = numbersOf(data, [...NEEDED, ...known(data, OPTIONAL)]);
  const { stations, result, gate } = data;
  if (
    stations === undefined
      ? numbers.slope_percent === undefined || numbers.fall_deg === undefined
      : numbers.slope_percent !== undefined || numbers.fall_deg !== undefined
  )
    throw new Error('a putt takes slope_percent and fall_deg, or stations in their place');
  if (gate !== undefined && !GATES.includes(/** @type {string} */ (gate)))
    throw new Error(`gate is ${shown(gate)}; it takes ${GATES.join(', ')}`);
  const putt = {
    kind: 'putt',
    ...head,
    ...numbers,
    ...told(data, 'stimp_source', 'stimp_sd_ft'),
    ...(stations === undefined ? told(data, 'tilt_source', 'tilt_sd_percent') : {}),
    ...(gate === undefined ? {} : { gate }),
    ...(stations === undefined ? {} : { stations: checkStations(stations, numbers.distance_m) }),
    result: result === 'holed' ? result : checkFinish(result),
  };
  return /** @type {Entry} */ (/** @type {unknown} */ (putt));
}

/** A green may be as large as its map reaches, and is walked at as many places as the engine takes. @type {Record<string, import('./forms.js').Check>} */
const OF_A_GREEN = {
  breadth_m: between(...GREEN.side_m),
  length_m: between(...GREEN.side_m),
  places: whole(...GREEN.places),
  points: (value) => Array.isArray(value) && value.length <= GREEN.places[1] && value.every(asked('PointFields')),
  holes: (value) => isRecord(value) && Object.entries(value).every(([day, at]) => /^\d{4}-\d\d-\d\d$/.test(day) && isOnMap(at)),
};

/** @param {Record<string, unknown>} data */
function walkedOf(data) {
  const bad = Object.keys(OF_A_GREEN).find((name) => !OF_A_GREEN[name](data[name]));
  if (bad) throw new Error(`${bad} is ${shown(data[bad])}; it is none of a green`);
  return {
    name: checkText('name', data.name, LONGEST_TEXT),
    ...Object.fromEntries(Object.keys(OF_A_GREEN).map((name) => [name, data[name]])),
  };
}

/** @param {unknown} result */
function checkFinish(result) {
  if (!isRecord(result)) throw new Error(`result is ${shown(result)}; it takes holed, or x_m and y_m`);
  return { x_m: checkNumber('x_m', result.x_m), y_m: checkNumber('y_m', result.y_m) };
}

/** @param {unknown} list @param {number} distance_m */
function checkStations(list, distance_m) {
  if (!Array.isArray(list) || !list.length || list.length > MOST_STATIONS)
    throw new Error(`stations takes a list of 1 to ${MOST_STATIONS}`);
  const stations = list.map((each) => {
    if (!isRecord(each)) throw new Error('each of stations takes at_m, slope_percent and fall_deg');
    const { at_m, ...slope } = numbersOf(each, ['at_m', 'slope_percent', 'fall_deg']);
    return { at_m, ...slope, ...told(each, 'tilt_source', 'tilt_sd_percent') };
  });
  if (stations.some(({ at_m }, i) => at_m > distance_m || (i && at_m - stations[i - 1].at_m < 0.01)))
    throw new Error('stations take rising at_m, up to distance_m');
  return stations;
}
