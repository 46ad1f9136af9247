/**
 * The putt from above and to scale.
 * @import {Read, Putt, Window, PathPoint} from '../../types.js'
 * @typedef {object} Picture
 * @property {{width: number, height: number}} size
 * @property {Putt} putt
 * @property {Read} [read]
 * @property {Window} [window]
 * @property {number} [off_m] how far to either side the aim may be off
 * @property {boolean} stale the window is of a moment ago
 * @property {number} [station] the station in hand
 * @property {{aim: string, apex: string, high: string, low: string}} words
 * @property {{si: number, unit: string}} unit of the scale bar
 * @property {string} alternative the picture in words
 */
import { pick } from '../../pick.js';
import './picture.css';
import { html, svg, nothing } from 'lit-html';
import { BALL_M, HOLE_M } from '../../format.js';
import { frame, line, pathAfter, pathUntil, pointBeyond } from './frame.js';
import { hachures } from './slope.js';
import { band, loupe, place, radiusIn } from './loupe.js';
import { measure, notes, scaleBar } from './marks.js';

const HIGH_NOTE_AT = 0.66;
const LOW_NOTE_AT = 0.36;
const NOTE_GAP_PX = 16;
const LOW_SIDE_PX = 24;
const ROOM_FOR_NOTES_PX = 220;

/** @param {PathPoint} point @returns {[number, number]} */
const xy = ([, x, y]) => [x, y];

/** What every drawing of one putt shares. @param {Picture} picture */
export function layout({ size, read, putt, window }) {
  const L = putt.distance_m;
  const offset = read?.aim_offset_m ?? 0;
  /** @type {(readonly [number, number])[]} */
  const points = [
    [0, 0],
    [L, 0],
  ];
  if (read) points.push([L, offset], ...read.path.map(xy));
  if (window) points.push(...window.high_line.map(xy), ...window.low_line.map(xy));
  const view = frame(size, L, offset, 2 * radiusIn(size) + LOW_SIDE_PX, points);
  /** @type {1 | -1} */
  const side = offset < 0 ? -1 : 1;
  return { view, side, magnified: read ? place(size, side, L, view) : null };
}

/** @param {Picture} picture @param {ReturnType<typeof layout>} laid */
function answer({ size, read, putt, window, stale, words, off_m = 0 }, { view, side, magnified }) {
  if (!read) return svg`<path class="chord" d="${chord(view, putt.distance_m)}"></path>`;
  const { px } = view;
  const L = putt.distance_m;
  const hole = px(L, 0);
  const spot = px(L, read.aim_offset_m);
  const ball = px(0, 0);
  const into = pathUntil(read.path, read.time_s);
  const past = pathAfter(read.path, read.time_s);
  const stop = px(...xy(pick(past, past.length - 1)));
  const apex = px(read.apex.x_m, read.apex.y_m);
  const lowEdge =
    Math.max(...[...into, ...(window?.low_line ?? [])].map((point) => px(...xy(point))[0] * side), ball[0] * side) * side;
  const named = words.apex ? [{ text: words.apex, at: apex, strong: true }] : [];
  if (window && size.height > ROOM_FOR_NOTES_PX) {
    named.push({ text: words.high, at: px(...xy(pointBeyond(window.high_line, L * HIGH_NOTE_AT))), strong: false });
    named.push({ text: words.low, at: px(...xy(pointBeyond(window.low_line, L * LOW_NOTE_AT))), strong: false });
  }
  const notesX = Math.max(8, Math.min(size.width - 8, lowEdge + NOTE_GAP_PX * side));
  return svg`
    ${
      window
        ? svg`<g class=${stale ? 'window stale' : 'window'}><path class="band" d="${band(view, window)}"></path>
      <path class="high" d=${line(view, window.high_line)}></path><path class="low"
        d=${line(view, window.low_line)}></path></g>`
        : ''
    }
    <path class="chord" d=${chord(view, L)}></path>
    ${off_m ? give(view, L, read.aim_offset_m, off_m) : ''}
    <path class="start-line" d="M${ball[0]} ${ball[1]}L${spot[0]} ${spot[1]}"></path>
    <path class="past" d=${line(view, past)}></path>
    <path class="finish" d="M${stop[0] - 3.5} ${stop[1] - 3.5}l7 7m0 -7l-7 7"></path>
    <path class="path" d=${line(view, into)}></path>
    ${notes(named, notesX, side, magnified ? magnified.cy + magnified.radius + NOTE_GAP_PX : 0)}
    ${words.apex ? svg`<circle class="apex" cx=${apex[0]} cy=${apex[1]} r="4"></circle>` : ''}
    ${words.aim ? measure(hole, spot, words.aim) : ''}
    <path class="spot" d="M${spot[0] - 7} ${spot[1]}h14M${spot[0]} ${spot[1] - 7}v14"></path>`;
}

/**
 * The aims that may be the true one, from the ball on.
 * @param {import('./frame.js').Frame} view @param {number} distance_m @param {number} offset_m @param {number} off_m
 */
function give({ px }, distance_m, offset_m, off_m) {
  const [ball, [left, y], [right]] = [px(0, 0), px(distance_m, offset_m + off_m), px(distance_m, offset_m - off_m)];
  return svg`<path class="give-ground" d="M${ball[0]} ${ball[1]}L${left} ${y}H${right}Z"></path>
    <path class="give" d="M${left} ${y}H${right}M${left} ${y - 5}v10M${right} ${y - 5}v10"></path>`;
}

/** @param {import('./frame.js').Frame} view @param {number} distance_m */
function chord(view, distance_m) {
  const [[x0, y0], [x1, y1]] = [view.px(0, 0), view.px(distance_m, 0)];
  return `M${x0} ${y0}L${x1} ${y1}`;
}

/** @param {Picture} picture */
export function picture(picture) {
  const { size, read, putt, window, unit, station, alternative } = picture;
  const laid = layout(picture);
  const { view, side, magnified } = laid;
  const hole = view.px(putt.distance_m, 0);
  const ball = view.px(0, 0);
  const holePx = (view.scale * HOLE_M) / 2;
  const ballPx = (view.scale * BALL_M) / 2;
  const small = holePx < 20;
  const barX = side > 0 ? 20 : size.width - 20;
  return html`<svg class="picture" role="img" aria-label=${alternative} width=${size.width} height=${size.height}
    viewBox="0 0 ${size.width} ${size.height}">
    <defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse"
      patternTransform="rotate(${side > 0 ? 45 : -45})"><path class="hatch-line" d="M0 2.5H5"></path></pattern></defs>
    <path class="hachures" d=${hachures(view, size, putt)}></path>
    ${(putt.stations ?? []).map(({ at_m }, i) => {
      const [x, y] = view.px(at_m, 0);
      return svg`<path class=${i === station ? 'station active' : 'station'} d="M${x - 7} ${y}h14"></path>`;
    })}
    <circle class="hole" cx=${hole[0]} cy=${hole[1]} r=${holePx}></circle>
    ${small ? svg`<circle class="ring" cx=${hole[0]} cy=${hole[1]} r=${Math.max(9, holePx + 4)}></circle>` : ''}
    ${answer(picture, laid)}
    ${magnified ? loupe(magnified, hole, putt.distance_m, read, window) : ''}
    <g data-rolling transform="translate(${ball[0]} ${ball[1]})">
      <circle class="ball" r=${ballPx}></circle>
      ${small ? svg`<circle class="ring" r="9"></circle>` : nothing}
    </g>
    ${scaleBar(view, unit, barX, size.height - 14, side)}
  </svg>`;
}
