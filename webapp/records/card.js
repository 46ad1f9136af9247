/**
 * A round that is being entered, and the entry that comes of it.
 * @import {Card, CardHole, RoundEntry, RoundHole, RoundPutt} from '../types.js'
 */
import { mostOf } from '../fields.js';
import { RANGES } from './checks.js';
import { between, isBoolean, isDate, isRecord, isText, list, OWN, orNull, record, whole } from './forms.js';

/** None in hand. @type {Card | null} */
export const CARD = null;
const MOST_TAKEN = mostOf('HoleFields', 'putts');
const MOST_HOLES = mostOf('RoundFields', 'holes');

const isHole = record({
  hole: whole(...RANGES.hole),
  distance_m: orNull(between(...RANGES.from_m)),
  taken: orNull(whole(0, MOST_TAKEN)),
  gaveUp: isBoolean,
  told: isBoolean,
  putts: list(isRecord, 0, MOST_TAKEN),
});
const isWhole = record({
  id: isText,
  at: isDate,
  name: isText,
  place: isText,
  competition: isBoolean,
  at_hole: whole(...OWN.count),
  holes: list(isHole, 1, MOST_HOLES),
});
/** @param {unknown} value */
export const isCard = (value) =>
  value === null || (isWhole(value) && /** @type {Card} */ (value).at_hole < /** @type {Card} */ (value).holes.length);

/** @param {number} hole @returns {CardHole} */
export const blankHole = (hole) => ({ hole, distance_m: null, taken: null, gaveUp: false, told: false, putts: [] });

/** Whether all is said of a hole. @param {CardHole} hole */
export const isDone = ({ distance_m, taken, gaveUp, told }) =>
  taken === 0 || (distance_m !== null && (gaveUp || taken === 1 || (taken !== null && told)));

/** @param {CardHole} hole @returns {RoundHole | null} null where nothing is said of it */
function holeOf({ hole, distance_m, taken, gaveUp, putts }) {
  if (taken === 0) return { hole, putts: [] };
  if (distance_m === null) return null;
  const count = gaveUp || taken === null ? 1 : taken;
  const holed = !gaveUp && taken !== null;
  const rolled = Array.from({ length: count }, (_, i) => {
    const { side, length, ...rest } = putts[i] ?? {};
    const last = holed && i === count - 1;
    const left = last ? {} : { ...(side && { side }), ...(length && { length }) };
    const from = { distance_m: i ? (rest.distance_m ?? null) : distance_m };
    return /** @type {RoundPutt} */ ({ ...rest, ...from, result: last ? 'holed' : 'missed', ...left });
  });
  return { hole, putts: rolled };
}

/** The round as it is kept. @param {Card} card @returns {Omit<RoundEntry, 'changed'>} */
export const roundOf = ({ id, at, name, place, competition, holes }) => ({
  kind: 'round',
  id,
  at,
  place,
  text: '',
  name,
  ...(competition && { competition }),
  holes: holes.flatMap((each) => holeOf(each) ?? []),
});

/** A round that was kept, to be mended. @param {RoundEntry} round @returns {Card} */
export function cardOf({ id, at, name, place, competition = false, holes }) {
  const known = new Map(holes.map((each) => [each.hole, each.putts]));
  const most = Math.max(9, ...known.keys());
  const count = most > 9 && most < 18 ? 18 : most;
  const all = Array.from({ length: count }, (_, i) => {
    const putts = known.get(i + 1);
    if (!putts) return blankHole(i + 1);
    const [first] = putts;
    if (!first) return { ...blankHole(i + 1), taken: 0 };
    const gaveUp = putts.at(-1)?.result === 'missed';
    return { hole: i + 1, distance_m: first.distance_m, taken: gaveUp ? null : putts.length, gaveUp, told: true, putts };
  });
  return { id, at, name, place, competition, at_hole: 0, holes: all };
}
