/**
 * What the phone knows of its own turning.
 * @import {Tilt, Zero} from '../../types.js'
 */

import { pick } from '../../pick.js';

/** How exactly a phone is turned by hand, degrees. */
const NEAR_DEG = 30;

/** Which way its top points, from some direction or other. @param {Tilt} tilt */
export const alphaOf = (tilt) => (tilt.kind === 'live' ? tilt.alpha_deg : null);

/** How far apart two directions are, degrees. @param {number} one @param {number} other */
const apart = (one, other) => Math.abs(((one - other + 540) % 360) - 180);

/**
 * Whether it points a number of degrees away from where it pointed first; null where the phone does not tell.
 * @param {number | null} first @param {number | null} now @param {number} turned_deg clockwise
 */
export function isTurned(first, now, turned_deg) {
  if (first === null || now === null) return null;
  // alpha counts anticlockwise
  return apart(first - now, turned_deg) < NEAR_DEG;
}

/** Positions held so far. @param {Zero} zero */
export const held = ({ alphas }) => alphas.length;

/** Whether it told of each turn so far: a phone without a gyroscope shows the same direction for ever. @param {Zero} zero */
export const tellsTurns = ({ alphas: [first = null, ...others], turns: [, ...turns] }) =>
  first !== null && others.every((alpha, i) => isTurned(first, alpha, pick(turns, i)) === true);
