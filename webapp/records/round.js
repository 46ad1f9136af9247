/**
 * What a round may hold.
 * @import {RoundHole, RoundPutt} from '../types.js'
 */
import { FIELDS } from '../engine/fields.js';
import { checkNumber, known, numbersOf, shown, wordOf } from './checks.js';
import { isRecord } from './forms.js';

const MOST_HOLES = FIELDS.RoundFields.holes.high;
const MOST_PUTTS = FIELDS.HoleFields.putts.high;
/** What may be added to a putt later. */
const LATER = ['slope_percent', 'fall_deg', 'felt_percent'];

/** @param {unknown} holes @returns {RoundHole[]} */
export function checkHoles(holes) {
  if (!Array.isArray(holes) || holes.length > MOST_HOLES) throw new Error(`holes takes a list of up to ${MOST_HOLES}`);
  const good = holes.map((each) => {
    if (!isRecord(each)) throw new Error('each of holes takes hole and putts');
    const { putts } = each;
    const hole = checkNumber('hole', each.hole);
    if (!Array.isArray(putts) || putts.length > MOST_PUTTS)
      throw new Error(`putts of hole ${hole} takes a list of up to ${MOST_PUTTS}`);
    return { hole, putts: putts.map((one, i) => checkPutt(one, i, putts.length, `hole ${hole}`)) };
  });
  if (new Set(good.map(({ hole }) => hole)).size < good.length) throw new Error('holes has one hole twice');
  return good;
}

/** @param {unknown} data @param {number} i @param {number} of @param {string} where @returns {RoundPutt} */
function checkPutt(data, i, of, where) {
  if (!isRecord(data)) throw new Error(`each of the putts of ${where} takes distance_m and result`);
  const { result } = data;
  const distance_m = data.distance_m ?? null;
  if (!i && distance_m === null) throw new Error(`distance_m of the first putt of ${where} is missing`);
  if (result !== 'holed' && result !== 'missed') throw new Error(`result is ${shown(result)}; it takes holed or missed`);
  if (result === 'holed' && i < of - 1) throw new Error(`a putt follows one that was holed on ${where}`);
  return {
    distance_m: distance_m === null ? null : checkNumber('distance_m', distance_m, 'from_m'),
    result,
    ...wordOf(data, 'side', /** @type {const} */ (['left', 'right'])),
    ...wordOf(data, 'length', /** @type {const} */ (['short', 'long'])),
    ...wordOf(data, 'read', /** @type {const} */ (['app', 'own'])),
    ...numbersOf(data, known(data, LATER)),
  };
}
