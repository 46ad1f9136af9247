/**
 * The hole magnified, for it is a speck on a long putt: how the ball enters, ball and hole to scale.
 * @import {PathPoint, Read, Window} from '../../types.js'
 * @import {Frame} from './frame.js'
 */
import { svg } from 'lit-html';
import { BALL_M, HOLE_M } from '../../format.js';
import { frameAtHole, line, pathUntil, pointAt } from './frame.js';

/** How much green it shows, from its centre to its rim. */
const REACH_M = 0.12;
const RIM_PX = 12;
const NEEDED_BELOW_PX = 44;

/** @typedef {{cx: number, cy: number, radius: number, frame: Frame}} Loupe */

/** @param {{width: number, height: number}} size */
export const radiusIn = ({ width, height }) => Math.round(Math.max(40, Math.min(96, 0.145 * Math.min(width, height))));

/**
 * Where it stands: in the top corner of the low side; nowhere when the hole is large enough to see.
 * @param {{width: number, height: number}} size @param {1 | -1} side @param {number} distance_m @param {Frame} view @returns
 *   {Loupe | null}
 */
export function place(size, side, distance_m, view) {
  if (view.scale * HOLE_M >= NEEDED_BELOW_PX) return null;
  const radius = radiusIn(size);
  const [holeX] = view.px(distance_m, 0);
  const cx =
    side > 0 ? Math.min(size.width - radius - RIM_PX, holeX + 3 * radius) : Math.max(radius + RIM_PX, holeX - 3 * radius);
  const cy = radius + RIM_PX;
  return { cx, cy, radius, frame: frameAtHole(radius / REACH_M, distance_m, cx, cy) };
}

/**
 * @param {Loupe} at
 * @param {[number, number]} hole where the hole lies on the picture
 * @param {number} distance_m
 * @param {Read | undefined} read @param {Window | undefined} window
 */
export function loupe({ cx, cy, radius, frame: close }, hole, distance_m, read, window) {
  const away = Math.hypot(cx - hole[0], cy - hole[1]);
  const edge = [cx + ((hole[0] - cx) * radius) / away, cy + ((hole[1] - cy) * radius) / away];
  const lip = read && atTheLip(read, distance_m);
  const entering = lip && close.px(...lip);
  return svg`<g class="loupe">
    <path class="leader" d="M${edge[0]} ${edge[1]}L${hole[0]} ${hole[1]}"></path>
    <clipPath id="loupe-clip"><circle cx=${cx} cy=${cy} r=${radius}></circle></clipPath>
    <circle class="loupe-ground" cx=${cx} cy=${cy} r=${radius}></circle>
    <g clip-path="url(#loupe-clip)">
      ${window ? svg`<path class="band" d="${band(close, window)}"></path>` : ''}
      ${
        window
          ? svg`<path class="high" d=${line(close, window.high_line)}></path><path class="low"
        d=${line(close, window.low_line)}></path>`
          : ''
      }
      ${read ? svg`<path class="path" d=${line(close, pathUntil(read.path, read.time_s))}></path>` : ''}
      <circle class="hole" cx=${cx} cy=${cy} r=${(close.scale * HOLE_M) / 2}></circle>
      ${entering ? svg`<circle class="ball" cx=${entering[0]} cy=${entering[1]} r=${(close.scale * BALL_M) / 2}></circle>` : ''}
      <circle class="ball rolling" data-ball r=${(close.scale * BALL_M) / 2} cx=${cx} cy=${cy + 4 * radius}></circle>
    </g>
    <circle class="loupe-ring" cx=${cx} cy=${cy} r=${radius}></circle>
  </g>`;
}

/**
 * Where the ball is when it comes to the edge of the hole.
 * @param {Read} read @param {number} distance_m @returns {[number, number] | undefined}
 */
function atTheLip({ path, time_s }, distance_m) {
  const away = (/** @type {PathPoint} */ [, x, y]) => Math.hypot(x - distance_m, y) - (HOLE_M + BALL_M) / 2;
  const i = path.findLastIndex((point) => point[0] < time_s && away(point) >= 0);
  const [from, to] = [path[i], path[i + 1]];
  return from && to && pointAt(from, to, away(from) / (away(from) - Math.min(0, away(to))));
}

/** The ground between the soft high line and the firm low line. @param {Frame} frame @param {Window} window */
export const band = (frame, window) =>
  `${line(frame, window.high_line)}${line(frame, window.low_line.toReversed()).replace('M', 'L')}Z`;
