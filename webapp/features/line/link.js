/**
 * A putt as a link: all of it stands behind the #, which no server gets to see.
 * @import {Putt} from '../../types.js'
 */
const MARK = 'putt?';
const PARTS = /** @type {const} */ ([
  ['m', 'distance_m'],
  ['stimp', 'stimp_ft'],
  ['past', 'past_m'],
  ['slope', 'slope_percent'],
  ['fall', 'fall_deg'],
]);

/** @param {Putt} putt */
export function fragmentOf(putt) {
  const parts = new URLSearchParams();
  for (const [short, name] of PARTS)
    if (putt[name] !== undefined && !(putt.stations && (name === 'slope_percent' || name === 'fall_deg')))
      parts.set(short, String(putt[name]));
  if (putt.stations)
    parts.set(
      'at',
      putt.stations.map(({ at_m, slope_percent, fall_deg }) => [at_m, slope_percent, fall_deg].join('_')).join('~'),
    );
  return MARK + parts;
}

/** @param {Putt} putt */
export const addressOf = (putt) => `${location.origin}${location.pathname}#${fragmentOf(putt)}`;

/** The putt that a fragment holds: undefined where it is of another kind, null where it is damaged. @param {string} fragment @returns {Putt | null | undefined} */
export function puttIn(fragment) {
  if (!fragment.startsWith('putt')) return undefined;
  const plain = fragment.replace(/^putt%3F/i, MARK); // as some messengers write it
  if (!plain.startsWith(MARK)) return null;
  const parts = new URLSearchParams(plain.slice(MARK.length));
  /** @type {Record<string, number | object[]>} */
  const putt = {};
  for (const [short, name] of PARTS) if (parts.has(short)) putt[name] = numberIn(parts.get(short));
  const at = parts.get('at');
  if (at)
    putt.stations = at.split('~').map((station) => {
      const [at_m, slope_percent, fall_deg] = station.split('_').map(numberIn);
      return { at_m, slope_percent, fall_deg };
    });
  const numbers = Object.values(putt).flatMap((value) => (typeof value === 'number' ? [value] : value.flatMap(Object.values)));
  const whole =
    ['distance_m', 'stimp_ft', 'past_m'].every((name) => name in putt) &&
    ('stations' in putt || ('slope_percent' in putt && 'fall_deg' in putt));
  return whole && numbers.every(Number.isFinite) ? /** @type {Putt} */ (/** @type {unknown} */ (putt)) : null;
}

/** @param {string | null} text */
const numberIn = (text) => (text?.trim() ? Number(text) : NaN);
