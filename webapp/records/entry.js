/**
 * What an entry of the record may hold, checked wherever one comes in: typed, measured or from a file.
 * @import {Entry, Heard} from '../types.js'
 */
import { SOURCES } from '../doubt.js';
import { FIELDS } from '../engine/fields.js';
import { checkNumber, checkText, checkTime, known, LONGEST_ID, LONGEST_TEXT, numbersOf, shown, wordOf } from './checks.js';
import { asked, between, field, isHeard, isRecord, whole } from './forms.js';
import { checkPicture } from './pictures.js';
import { checkHoles } from './round.js';

export const GATES = /** @type {const} */ (['left', 'clean', 'right']);
export const READS = /** @type {const} */ (['app', 'own']);
/** Of a green: how long a side may be, and at how many places it is walked. @satisfies {Record<string, [number, number]>} */
export const GREEN = /** @type {const} */ ({ side_m: [3, 80], places: [3, FIELDS.MapFields.points.high] });
const isOnMap = field('PlacedFields', 'hole');
const MOST_STATIONS = FIELDS.LoggedFields.stations.high;

const OPTIONAL = [
  'aim_deg',
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

/**
 * Where a number came from, and how far it may be off: both or none.
 * @param {Record<string, unknown>} data @param {'tilt_source' | 'stimp_source'} source @param {'tilt_sd_percent' |
 *   'stimp_sd_ft'} sd
 */
function told(data, source, sd) {
  const known = wordOf(data, source, SOURCES);
  return source in known ? { ...known, [sd]: checkNumber(sd, data[sd]) } : {};
}

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
  const own = OWN[/** @type {keyof typeof OWN} */ (data.kind)];
  if (!own || !Object.hasOwn(OWN, /** @type {string} */ (data.kind)))
    throw new Error(`kind is ${shown(data.kind)}; it takes ${Object.keys(OWN).join(', ')}`);
  return /** @type {Entry} */ (/** @type {unknown} */ ({ kind: data.kind, ...head, ...own(data) }));
}

/** What each kind holds of its own. */
const OWN = {
  putt,
  /** @param {Record<string, unknown>} data */
  note: (data) => ({
    ...(data.weather === undefined ? {} : { weather: checkText('weather', data.weather, LONGEST_TEXT) }),
    ...numbersOf(data, known(data, OF_A_NOTE)),
    ...told(data, 'stimp_source', 'stimp_sd_ft'),
  }),
  /** @param {Record<string, unknown>} data */
  drill: (data) => ({
    session: checkText('session', data.session, LONGEST_ID, 1),
    drill: checkText('drill', data.drill, LONGEST_ID, 1),
    name: checkText('name', data.name, LONGEST_TEXT, 1),
    ...numbersOf(data, OF_A_DRILL),
    ...(data.heard === undefined ? {} : { heard: checkHeard(data.heard) }),
  }),
  green: walkedOf,
  /** @param {Record<string, unknown>} data */
  round: (data) => ({
    name: checkText('name', data.name ?? '', LONGEST_TEXT),
    ...(data.competition === true ? { competition: true } : {}),
    holes: checkHoles(data.holes),
  }),
  /** @param {Record<string, unknown>} data */
  worth: (data) => ({
    name: checkText('name', data.name ?? '', LONGEST_TEXT),
    ...ofGreen(data, true),
    ...(data.picture === undefined ? {} : { picture: checkPicture(data.picture) }),
  }),
};

/** What is told of the green, all of it or nothing. @param {Record<string, unknown>} data @param {boolean} needed */
function ofGreen(data, needed) {
  const distance_m = checkNumber('distance_m', data.distance_m);
  const numbers = numbersOf(data, [...known(data, ['stimp_ft', 'past_m', 'slope_percent', 'fall_deg'])]);
  const stations = data.stations ?? undefined;
  const named = Object.keys(numbers);
  const whole = stations === undefined ? named.length === 4 : named.join() === 'stimp_ft,past_m';
  if (!whole && (needed || named.length || stations !== undefined))
    throw new Error(
      'a putt takes stimp_ft, past_m, slope_percent and fall_deg, stations in place of both slopes, or none of them',
    );
  return {
    distance_m,
    ...numbers,
    ...told(data, 'stimp_source', 'stimp_sd_ft'),
    ...(stations === undefined
      ? told(data, 'tilt_source', 'tilt_sd_percent')
      : { stations: checkStations(stations, distance_m) }),
  };
}

/** @param {Record<string, unknown>} data */
function putt(data) {
  const { result } = data;
  const side = wordOf(data, 'side', /** @type {const} */ (['left', 'right']));
  const length = wordOf(data, 'length', /** @type {const} */ (['short', 'long']));
  if (result !== 'missed' && Object.keys({ ...side, ...length }).length)
    throw new Error('side and length go with a result of missed alone');
  return {
    ...ofGreen(data, false),
    ...numbersOf(data, known(data, OPTIONAL)),
    ...wordOf(data, 'gate', GATES),
    ...wordOf(data, 'read', READS),
    result: result === 'holed' || result === 'missed' ? result : checkFinish(result),
    ...side,
    ...length,
    ...(data.picture === undefined ? {} : { picture: checkPicture(data.picture) }),
  };
}

/**
 * A green may be as large as its map reaches, and is walked at as many places as the engine takes.
 * @type {Record<string, import('./forms.js').Check>}
 */
const OF_A_GREEN = {
  breadth_m: between(...GREEN.side_m),
  length_m: between(...GREEN.side_m),
  places: whole(...GREEN.places),
  points: (value) => Array.isArray(value) && value.length <= GREEN.places[1] && value.every(asked('PointFields')),
  holes: (value) => isRecord(value) && Object.entries(value).every(([day, at]) => /^\d{4}-\d\d-\d\d$/.test(day) && isOnMap(at)),
};

/** @param {Record<string, unknown>} data */
function walkedOf(data) {
  const [bad] = Object.entries(OF_A_GREEN).find(([name, fits]) => !fits(data[name])) ?? [];
  if (bad) throw new Error(`${bad} is ${shown(data[bad])}; it is none of a green`);
  return {
    name: checkText('name', data.name, LONGEST_TEXT),
    ...Object.fromEntries(Object.keys(OF_A_GREEN).map((name) => [name, data[name]])),
  };
}

/** @param {unknown} heard */
function checkHeard(heard) {
  if (!isHeard(heard)) throw new Error(`heard is ${shown(heard)}; it takes meant_m, rolls_m and roll_sd_m`);
  const { meant_m, rolls_m, roll_sd_m } = /** @type {Heard} */ (heard);
  return { meant_m, rolls_m, roll_sd_m };
}

/** @param {unknown} result */
function checkFinish(result) {
  if (!isRecord(result)) throw new Error(`result is ${shown(result)}; it takes holed, missed, or x_m and y_m`);
  return { x_m: checkNumber('x_m', result.x_m), y_m: checkNumber('y_m', result.y_m) };
}

/** @param {unknown} list @param {number} distance_m */
function checkStations(list, distance_m) {
  if (!Array.isArray(list) || !list.length || list.length > MOST_STATIONS)
    throw new Error(`stations takes a list of 1 to ${MOST_STATIONS}`);
  const stations = list.map((each) => {
    if (!isRecord(each)) throw new Error('each of stations takes at_m, slope_percent and fall_deg');
    const slope = numbersOf(each, ['slope_percent', 'fall_deg']);
    return { at_m: checkNumber('at_m', each.at_m), ...slope, ...told(each, 'tilt_source', 'tilt_sd_percent') };
  });
  if (stations.some(({ at_m }, i) => at_m > distance_m || at_m - (stations[i - 1]?.at_m ?? -1) < 0.01))
    throw new Error('stations take rising at_m, up to distance_m');
  return stations;
}
