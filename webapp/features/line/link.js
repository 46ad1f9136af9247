/**
 * A putt as a link: all of it stands behind the #, which no server gets to see.
 * @import {Putt} from '../../types.js'
 */
import { isSurelyTold } from '../../records/putt.js';

const MARK = 'putt?';
const PARTS = /** @type {const} */ ([
  ['m', 'distance_m'],
  ['stimp', 'stimp_ft'],
  ['past', 'past_m'],
  ['slope', 'slope_percent'],
  ['fall', 'fall_deg'],
  ['slope-sd', 'tilt_sd_percent'],
  ['stimp-sd', 'stimp_sd_ft'],
]);
const SOURCES = /** @type {const} */ ([
  ['slope-by', 'tilt_source'],
  ['stimp-by', 'stimp_source'],
]);
/** Of a place along the line; the last two where it was measured. */
const PLACE = /** @type {const} */ (['at_m', 'slope_percent', 'fall_deg', 'tilt_sd_percent', 'tilt_source']);
const OF_ONE_SLOPE = ['slope_percent', 'fall_deg', 'tilt_sd_percent', 'tilt_source'];

/** @param {Putt} putt */
export function fragmentOf(putt) {
  const parts = new URLSearchParams();
  for (const [short, name] of [...PARTS, ...SOURCES])
    if (putt[name] !== undefined && !(putt.stations && OF_ONE_SLOPE.includes(name))) parts.set(short, String(putt[name]));
  if (putt.stations)
    parts.set(
      'at',
      putt.stations
        .map((station) =>
          PLACE.map((name) => station[name])
            .filter((value) => value !== undefined)
            .join('_'),
        )
        .join('~'),
    );
  return MARK + parts;
}

/** @param {Putt} putt */
export const addressOf = (putt) => `${location.origin}${location.pathname}#${fragmentOf(putt)}`;

/**
 * The putt that a fragment holds: undefined where it is of another kind, null where it is damaged.
 * @param {string} fragment @returns {Putt | null | undefined}
 */
export function puttIn(fragment) {
  if (!fragment.startsWith('putt')) return undefined;
  const plain = fragment.replace(/^putt%3F/i, MARK); // as some messengers write it
  if (!plain.startsWith(MARK)) return null;
  const parts = new URLSearchParams(plain.slice(MARK.length));
  /** @type {Record<string, unknown>} */
  const putt = {};
  for (const [short, name] of PARTS) if (parts.has(short)) putt[name] = numberIn(parts.get(short));
  for (const [short, name] of SOURCES) if (parts.has(short)) putt[name] = parts.get(short);
  const at = parts.get('at');
  if (at)
    putt.stations = at.split('~').map((station) => {
      const [at_m, slope_percent, fall_deg, sd, source] = station.split('_');
      const told = source === undefined ? {} : { tilt_source: source, tilt_sd_percent: numberIn(sd) };
      return { at_m: numberIn(at_m), slope_percent: numberIn(slope_percent), fall_deg: numberIn(fall_deg), ...told };
    });
  const values = Object.values(putt).flatMap((value) => (Array.isArray(value) ? value.flatMap(Object.values) : [value]));
  const whole =
    ['distance_m', 'stimp_ft', 'past_m'].every((name) => name in putt) &&
    ('stations' in putt || ('slope_percent' in putt && 'fall_deg' in putt)) &&
    values.every((value) => typeof value === 'string' || Number.isFinite(value));
  return whole && isSurelyTold(putt) ? /** @type {Putt} */ (/** @type {unknown} */ (putt)) : null;
}

/** @param {string | null | undefined} text */
const numberIn = (text) => (text?.trim() ? Number(text) : NaN);
