/**
 * The hole magnified, for it is a speck on a long putt: how the ball enters, ball and hole to scale.
 * @import {Answered, Read, Window} from '../../types.js'
 */
import { svg } from 'lit-html';
import { BALL_M, HOLE_M } from '../../format.js';
import { frameAtHole, line, pathUntil } from './frame.js';

export const RADIUS_PX = 56;
const SCALE = 560;
const NEEDED_BELOW_PX = 44;

/** @param {number} scale pixels a metre */
export const needed = (scale) => scale * HOLE_M < NEEDED_BELOW_PX;

/**
 * @param {number} cx @param {number} cy
 * @param {[number, number]} hole where the hole lies on the picture
 * @param {number} distance_m
 * @param {Read | undefined} read @param {Window | undefined} window
 */
export function loupe(cx, cy, hole, distance_m, read, window) {
  const close = frameAtHole(SCALE, distance_m, cx, cy);
  const away = Math.hypot(cx - hole[0], cy - hole[1]);
  const edge = [cx + ((hole[0] - cx) * RADIUS_PX) / away, cy + ((hole[1] - cy) * RADIUS_PX) / away];
  return svg`<g class="loupe">
    <path class="leader" d="M${edge[0]} ${edge[1]}L${hole[0]} ${hole[1]}"></path>
    <clipPath id="loupe-clip"><circle cx=${cx} cy=${cy} r=${RADIUS_PX}></circle></clipPath>
    <circle class="loupe-ground" cx=${cx} cy=${cy} r=${RADIUS_PX}></circle>
    <g clip-path="url(#loupe-clip)">
      ${window ? svg`<path class="band" d="${band(close, window)}"></path>` : ''}
      <circle class="hole" cx=${cx} cy=${cy} r=${(SCALE * HOLE_M) / 2}></circle>
      ${window ? svg`<path class="high" d=${line(close, window.high_line)}></path><path class="low" d=${line(close, window.low_line)}></path>` : ''}
      ${read ? svg`<path class="path" d=${line(close, pathUntil(read.path, read.time_s))}></path>` : ''}
      <circle class="ball rolling" data-ball r=${(SCALE * BALL_M) / 2} cx=${cx} cy=${cy + 4 * RADIUS_PX}></circle>
    </g>
    <circle class="loupe-ring" cx=${cx} cy=${cy} r=${RADIUS_PX}></circle>
  </g>`;
}

/** @param {number} distance_m @param {number} cx @param {number} cy */
export const loupeFrame = (distance_m, cx, cy) => frameAtHole(SCALE, distance_m, cx, cy);

/** The ground between the soft high line and the firm low line. @param {import('./frame.js').Frame} frame @param {Window} window */
export const band = (frame, window) => `${line(frame, window.high_line)}${line(frame, window.low_line.toReversed()).replace('M', 'L')}Z`;
