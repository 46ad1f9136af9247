/**
 * The ground of a map in a surveyor's ink: height lines and falls, fainter the less is known.
 * @import {OnMap, Survey, WalkPage} from '../../types.js'
 * @import {Frame} from './frame.js'
 * @typedef {'known' | 'fair' | 'guessed'} Sure
 */
import { svg } from 'lit-html';
import { number } from '../../format.js';
import { pick } from '../../pick.js';
import { away, line } from './frame.js';

/** Spread of each part of the tilt, %, up to which it is known well, and fairly. */
const KNOWN_PERCENT = 0.25;
const FAIR_PERCENT = 0.5;
/** Length of a stroke for each per cent that the green falls, and the longest, m of the grid's step. */
const STROKE = 0.16;
const LONGEST = 0.7;
/** A height line shorter than this has no room for its height. */
const NAMED_PX = 90;

/** @param {number} sd_percent @returns {Sure} */
export const sureOf = (sd_percent) => (sd_percent <= KNOWN_PERCENT ? 'known' : sd_percent <= FAIR_PERCENT ? 'fair' : 'guessed');

/**
 * @typedef {{runs: {sure: Sure, points: OnMap[]}[], lines: Survey['contours'], lowest_m: number, step_m:
 *   number, grid_m: number}} Ground
 */
/** @type {WeakMap<Survey, Ground>} */
const grounds = new WeakMap();

/** What is drawn of a survey, worked out once. @param {Survey} survey @returns {Ground} */
export function groundOf(survey) {
  const known = grounds.get(survey);
  if (known) return known;
  const { contours, grid } = survey;
  const about = (/** @type {OnMap} */ [x, y]) =>
    grid.reduce((best, each) =>
      Math.hypot(each.x_m - x, each.y_m - y) < Math.hypot(best.x_m - x, best.y_m - y) ? each : best,
    );
  /** @type {Ground['runs']} */
  const runs = [];
  for (const { points } of contours)
    for (const [i, to] of points.slice(1).entries()) {
      const from = pick(points, i);
      const sure = sureOf(about(from).sd_percent);
      const last = runs.at(-1);
      if (i && last?.sure === sure) last.points.push(to);
      else runs.push({ sure, points: [from, to] });
    }
  const [lowest_m = 0, next_m = lowest_m] = new Set(contours.map(({ height_m }) => height_m).toSorted((a, b) => a - b));
  const [left_m = 0, beside_m = left_m + 1] = new Set(grid.map(({ x_m }) => x_m).toSorted((a, b) => a - b));
  const ground = {
    runs,
    lines: contours,
    lowest_m,
    step_m: next_m - lowest_m,
    grid_m: beside_m - left_m,
  };
  grounds.set(survey, ground);
  return ground;
}

/**
 * A stroke at a place of the grid, broad uphill and pointed downhill.
 * @param {Frame} frame @param {Survey['grid'][number]} at @param {number} grid_m
 */
function stroke({ px, scale }, { x_m, y_m, slope_percent, fall_deg }, grid_m) {
  const length = scale * grid_m * Math.min(LONGEST, STROKE * slope_percent);
  const [u, v] = px([x_m, y_m]);
  const [dx, dy] = [Math.sin((fall_deg * Math.PI) / 180), -Math.cos((fall_deg * Math.PI) / 180)];
  const broad = Math.min(2.2, 0.6 + length / 14);
  const [x0, y0] = [u - (dx * length) / 2, v - (dy * length) / 2];
  const at = (/** @type {number} */ x, /** @type {number} */ y) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  const [left, right] = [at(x0 - dy * broad, y0 + dx * broad), at(x0 + dy * broad, y0 - dx * broad)];
  return `M${left}L${right}L${at(u + (dx * length) / 2, v + (dy * length) / 2)}Z`;
}

/**
 * Where a height is written: every other line that is long enough, at its middle.
 * @param {Frame} frame @param {Survey} survey @param {WalkPage['size']} size @param {{si: number}} unit of the heights
 */
export function heights({ px }, survey, { width, height }, unit) {
  const { lines, lowest_m, step_m } = groundOf(survey);
  return lines.flatMap(({ height_m, points }) => {
    const drawn = points.map(px).filter(([u, v]) => u > 14 && u < width - 14 && v > 14 && v < height - 14);
    const long = drawn.slice(1).reduce((sum, to, i) => sum + away(pick(drawn, i), to), 0);
    const order = Math.round((height_m - lowest_m) / (step_m || 1));
    if (order % 2 || long < NAMED_PX) return [];
    const [u, v] = pick(drawn, Math.floor(drawn.length / 2));
    return [svg`<text class="height" x=${u} y=${v + 4}>${number((height_m - lowest_m) / unit.si, 0)}</text>`];
  });
}

/** @param {Frame} frame @param {Survey} survey */
export function groundInk(frame, survey) {
  const ground = groundOf(survey);
  const of = (/** @type {Sure} */ sure) =>
    ground.runs
      .filter((run) => run.sure === sure)
      .map(({ points }) => line(frame, points))
      .join('');
  const falls = (/** @type {Sure} */ sure) =>
    survey.grid
      .filter(({ sd_percent }) => sureOf(sd_percent) === sure)
      .map((each) => stroke(frame, each, ground.grid_m))
      .join('');
  const all = /** @type {Sure[]} */ (['known', 'fair', 'guessed']);
  return svg`${all.map(
    (sure) => svg`<path class="contour ${sure}" d=${of(sure)}></path><path class="fall-ink ${sure}"
    d=${falls(sure)}></path>`,
  )}`;
}
