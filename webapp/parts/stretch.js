import { pick } from '../pick.js';

/**
 * The two points of a curve between which a place lies, and how far on from the first: below 0 or above 1 where the place lies
 * before or beyond the curve.
 * @template {readonly [number, number, ...number[]]} P
 * @param {readonly P[]} curve two points or more, rising in their first number @param {number} place
 */
export function stretch(curve, place) {
  const after = curve.findIndex(([each]) => each >= place);
  const i = after < 0 ? curve.length - 1 : Math.max(1, after);
  const [from, to] = [pick(curve, i - 1), pick(curve, i)];
  return { from, to, share: (place - from[0]) / (to[0] - from[0]) };
}
