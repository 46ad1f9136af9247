/**
 * The tilt of the green as a map-maker's hachures: each stroke points downhill, longer where it is steeper.
 * @import {Putt} from '../../types.js'
 * @import {Frame} from './frame.js'
 */
import { tenth } from './frame.js';

const COLUMN_PX = 40;
const ROW_PX = 30;

/**
 * One stroke, broad uphill and pointed downhill.
 * @param {number} cx @param {number} cy @param {number} percent @param {number} fall_deg
 */
function stroke(cx, cy, percent, fall_deg) {
  const half = (5 + 2.6 * percent) / 2;
  const broad = 1.4;
  const a = (fall_deg * Math.PI) / 180;
  const [dx, dy] = [Math.sin(a), -Math.cos(a)];
  const at = (/** @type {number} */ along, /** @type {number} */ across) =>
    `${tenth(cx + along * dx - across * dy)} ${tenth(cy + along * dy + across * dx)}`;
  return `M${at(half, 0)}L${at(-half, broad)}L${at(-half, -broad)}Z`;
}

/**
 * @param {number} to @param {number} through one of the places @param {number} step
 * @returns {number[]} places from the screen's edge on
 */
function every(to, through, step) {
  const first = ((through % step) + step) % step;
  return Array.from({ length: Math.ceil((to - first) / step) + 1 }, (_, i) => first + i * step);
}

/**
 * @param {Frame} frame @param {{width: number, height: number}} size @param {Putt} putt
 * @returns {string} one path for all strokes: everywhere on a plane, across the line at each station otherwise
 */
export function hachures(frame, size, putt) {
  const [axis, foot] = frame.px(0, 0);
  /** @param {number} shift */
  const columns = (shift) => every(size.width, axis + COLUMN_PX * shift, COLUMN_PX);
  if (!putt.stations) {
    const { slope_percent: percent = 0, fall_deg = 0 } = putt;
    if (percent === 0) return '';
    const rows = every(size.height, foot, ROW_PX);
    return rows.flatMap((y, row) => columns(row % 2 ? 0.25 : 0.75).map((x) => stroke(x, y, percent, fall_deg))).join('');
  }
  return putt.stations
    .filter(({ slope_percent }) => slope_percent > 0)
    .flatMap(({ at_m, slope_percent, fall_deg }) =>
      columns(0.5).map((x) => stroke(x, frame.px(at_m, 0)[1], slope_percent, fall_deg)),
    )
    .join('');
}
