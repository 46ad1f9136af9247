/**
 * How the green lies on the screen: to one scale, the ball at the bottom and the hole at the top.
 * @import {Point, PathPoint} from '../../types.js'
 * @typedef {{scale: number, px: (x_m: number, y_m: number) => [number, number]}} Frame
 */
import { HOLE_M } from '../../format.js';
import { pick } from '../../pick.js';
import { stretch } from '../stretch.js';

const TOP_PX = 46;
const BOTTOM_PX = 34;
const HIGH_SIDE_PX = 64;

/**
 * @param {{width: number, height: number}} size
 * @param {number} distance_m
 * @param {number} offset_m the aim's, whose sign tells the high side
 * @param {number} lowSidePx room for the notes and the magnified hole
 * @param {(readonly [number, number])[]} points all that must be in sight, x and y in metres
 * @returns {Frame}
 */
export function frame(size, distance_m, offset_m, lowSidePx, points) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const top = Math.max(distance_m + HOLE_M / 2, ...xs);
  const bottom = Math.min(0, ...xs);
  const left = Math.max(HOLE_M / 2, ...ys);
  const right = Math.min(-HOLE_M / 2, ...ys);
  const scale = Math.min(
    (size.height - TOP_PX - BOTTOM_PX) / (top - bottom),
    (size.width - HIGH_SIDE_PX - lowSidePx) / (left - right),
  );
  // The drawing leans to the high side by as much as the putt breaks, so that it glides across when the break turns over.
  const lean = Math.max(-1, Math.min(1, offset_m / HOLE_M));
  const centre = size.width / 2 - (lean * (lowSidePx - HIGH_SIDE_PX)) / 2;
  const foot = (size.height + (top + bottom) * scale + TOP_PX - BOTTOM_PX) / 2;
  const axis = centre + ((left + right) / 2) * scale;
  return { scale, px: (x, y) => [axis - y * scale, foot - x * scale] };
}

/**
 * Magnified: the hole at a point of the screen.
 * @param {number} scale @param {number} distance_m @param {number} cx @param {number} cy @returns {Frame}
 */
export const frameAtHole = (scale, distance_m, cx, cy) => ({
  scale,
  px: (x, y) => [cx - y * scale, cy - (x - distance_m) * scale],
});

/** To a tenth of a pixel; of hundreds of numbers in each frame toFixed takes several times as long. @param {number} px */
export const tenth = (px) => Math.round(px * 10) / 10;

/** @param {Frame} frame @param {readonly PathPoint[]} path */
export const line = (frame, path) => `M${path.map(([, x, y]) => frame.px(x, y).map(tenth).join(' ')).join('L')}`;

/** @param {readonly PathPoint[]} path @param {number} x_m @returns {PathPoint} the path's first point at or beyond x */
export const pointBeyond = (path, x_m) => path.find(([, x]) => x >= x_m) ?? pick(path, path.length - 1);

/**
 * A place between two points of a path.
 * @param {PathPoint} from @param {PathPoint} to @param {number} share @returns {[number, number]}
 */
export const pointAt = ([, x0, y0], [, x1, y1], share) => [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];

/**
 * Where the ball is at a time, between two points of its path.
 * @param {readonly PathPoint[]} path @param {number} t_s @returns {[number, number]}
 */
export function ballAt(path, t_s) {
  const { from, to, share } = stretch(path, t_s);
  return pointAt(from, to, Math.max(0, Math.min(1, share)));
}

/**
 * The path up to a time, ending exactly there.
 * @param {readonly PathPoint[]} path @param {number} t_s @returns {PathPoint[]}
 */
export const pathUntil = (path, t_s) => [...path.filter(([t]) => t < t_s), [t_s, ...ballAt(path, t_s), 0]];

/** @param {readonly PathPoint[]} path @param {number} t_s @returns {PathPoint[]} */
export const pathAfter = (path, t_s) => [[t_s, ...ballAt(path, t_s), 0], ...path.filter(([t]) => t > t_s)];
