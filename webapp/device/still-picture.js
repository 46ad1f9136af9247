/**
 * Whether a picture stands still, and whether it is still the same: how much of it changes, and whether all of it has shifted.
 * @import {Patch} from './ball-finder.js'
 */

/** Places by which a picture is known again: their side, and how far they are looked for, px. */
const ANCHOR = 40;
const SHIFT = 8;
const ANCHORS = [
  { across: 0.15, down: 0.3 },
  { across: 0.85, down: 0.3 },
  { across: 0.2, down: 0.6 },
  { across: 0.8, down: 0.6 },
  { across: 0.15, down: 0.85 },
  { across: 0.85, down: 0.85 },
  { across: 0.5, down: 0.4 },
];
const MOVED_PX = 2;
/** As many have to say so: one may have a leg before it. */
const FEWEST = 2;
/** Of the places, that may seem to have stayed: a pattern that repeats looks alike farther on. */
const SEEM = 1 / 4;
/** A place fits so much better where it was than elsewhere; of less than that many levels, squared, there is nothing to fit. */
const FITS = 0.6;
const SMOOTH = 4;
/** As good as the best. */
const ALIKE = 1.15;

/** @param {Uint8Array} light */
export function mean(light) {
  let sum = 0;
  for (const each of light) sum += each;
  return sum / light.length;
}

/**
 * The share of pixels that differ by more than so much, what all of them are lit by apart.
 * @param {Patch} now @param {Patch} before @param {number} lit @param {number} most
 */
export function changed(now, before, lit, most) {
  let count = 0;
  for (let i = 0; i < now.light.length; i++) if (Math.abs((now.light[i] ?? 0) - (before.light[i] ?? 0) - lit) > most) count++;
  return count / now.light.length;
}

/**
 * Whether the camera has moved: next to nothing is where it was. What stands before the green (feet, a bag) moves by itself, so
 * few places that have stayed are enough to tell that the camera has.
 * @param {Patch} before @param {Patch} now both whole pictures
 */
export function hasMoved(before, now) {
  const told = ANCHORS.flatMap(({ across, down }) => {
    const found = shiftAt(before, now, Math.round(across * before.width), Math.round(down * before.height));
    return found === null ? [] : [found];
  });
  const stayed = told.filter((shift) => shift <= MOVED_PX).length;
  return told.length >= FEWEST && stayed <= SEEM * told.length;
}

/**
 * How far (px) what was at a place has gone, Infinity where it is not found near by; null where nothing there tells.
 * @param {Patch} before @param {Patch} now @param {number} x @param {number} y
 */
function shiftAt(before, now, x, y) {
  const half = ANCHOR / 2;
  if (x < half + SHIFT || y < half + SHIFT || x + half + SHIFT >= before.width || y + half + SHIFT >= before.height)
    return null;
  let best = Infinity;
  let here = 0;
  let far = 0;
  let total = 0;
  for (let dy = -SHIFT; dy <= SHIFT; dy++)
    for (let dx = -SHIFT; dx <= SHIFT; dx++) {
      const spread = apart(before, now, x, y, dx, dy);
      total += spread;
      if (dx === 0 && dy === 0) here = spread;
      if (spread < best) {
        best = spread;
        far = Math.hypot(dx, dy);
      }
    }
  const usual = total / (2 * SHIFT + 1) ** 2;
  if (usual < SMOOTH) return null;
  if (best <= FITS * usual) return here <= best * ALIKE ? 0 : far;
  // it fits nowhere: gone farther than that, hidden, or lost in noise, which fits alike everywhere
  return here <= best * ALIKE ? null : Infinity;
}

/**
 * How much two places differ, their light apart: the variance of what one has more than the other.
 * @param {Patch} before @param {Patch} now @param {number} x @param {number} y @param {number} dx @param {number} dy
 */
function apart(before, now, x, y, dx, dy) {
  const half = ANCHOR / 2;
  let sum = 0;
  let offs = 0;
  let n = 0;
  for (let row = -half; row < half; row += 2)
    for (let column = -half; column < half; column += 2) {
      const off =
        (now.light[(y + row + dy) * now.width + x + column + dx] ?? 0) -
        (before.light[(y + row) * before.width + x + column] ?? 0);
      sum += off;
      offs += off * off;
      n++;
    }
  return offs / n - (sum / n) ** 2;
}
