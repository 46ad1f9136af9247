/** Words and measures drawn on the picture. @import {Frame} from './frame.js' */
import { svg } from 'lit-html';
import { pick } from '../../pick.js';

const LINE_PX = 19;

/**
 * @typedef {{text: string, at: [number, number], strong?: boolean}} Note  `at`: the point of the screen that it names
 */

/** Each a line or more after the one before. @param {number[]} ys @param {number} [first] */
function spaced(ys, first = -Infinity) {
  let next = first;
  return ys.map((wanted) => {
    const y = Math.max(wanted, next);
    next = y + LINE_PX;
    return y;
  });
}

/**
 * Notes in a column on the low side, a hairline from each to what it names; kept apart, in order.
 * @param {Note[]} notes @param {number} x where the words begin @param {1 | -1} side to which they run: 1 right, -1 left @param
 *   {number} top none stands above it
 */
export function notes(notes, x, side, top) {
  if (!notes.length) return '';
  const sorted = notes.toSorted((a, b) => a.at[1] - b.at[1]);
  // the middle one stands where it names, the others give way to it
  const wanted = sorted.map((note) => note.at[1]);
  const middle = Math.ceil(sorted.length / 2);
  const above = spaced(
    wanted
      .slice(0, middle)
      .map((y) => -y)
      .reverse(),
  )
    .map((y) => -y)
    .reverse();
  const ys = spaced([...above, ...wanted.slice(middle)], top);
  return sorted.map(
    ({ text, at, strong }, i) => svg`<path class="leader" d="M${at[0]} ${at[1]}L${x - 4 * side} ${pick(ys, i)}"></path>
      <text class=${strong ? 'note strong' : 'note'} x=${x} y=${pick(ys, i) + 4.5}
        text-anchor=${side > 0 ? 'start' : 'end'}>${text}</text>`,
  );
}

/**
 * How far the aim lies from the hole's centre, as a measured length.
 * @param {[number, number]} hole @param {[number, number]} spot @param {string} text
 */
export function measure(hole, spot, text) {
  const y = hole[1] - 18;
  const length = Math.abs(spot[0] - hole[0]);
  const textPx = text.length * 8 + 8;
  const out = Math.sign(spot[0] - hole[0]);
  const beside = length < textPx;
  const x = beside ? spot[0] + 8 * out : (hole[0] + spot[0]) / 2;
  const anchor = !beside ? 'middle' : out > 0 ? 'start' : 'end';
  return svg`<g class="measure">
    <path d="M${hole[0]} ${y}H${spot[0]}M${hole[0]} ${y - 5}V${y + 5}M${spot[0]} ${y - 5}V${y + 5}"></path>
    <text x=${x} y=${beside ? y + 5 : y - 9} text-anchor=${anchor}>${text}</text>
  </g>`;
}

/**
 * The round length that a scale bar shows: 1, 2 or 5 times a power of ten, at most so many pixels.
 * @param {number} unitPx pixels of one unit @param {number} mostPx
 */
export function roundLength(unitPx, mostPx) {
  const most = mostPx / unitPx;
  const power = 10 ** Math.floor(Math.log10(most));
  return [5, 2, 1].map((n) => n * power).find((n) => n <= most) ?? power;
}

/** @param {Frame} frame @param {{si: number, unit: string}} unit @param {number} x @param {number} y @param {1 | -1} side */
export function scaleBar(frame, unit, x, y, side) {
  const length = roundLength(frame.scale * unit.si, 84);
  const end = x + side * length * frame.scale * unit.si;
  return svg`<g class="scale-bar"><path d="M${x} ${y - 4}V${y}H${end}V${y - 4}"></path>
    <text x=${(x + end) / 2} y=${y - 8} text-anchor="middle">${Number(length.toPrecision(1))} ${unit.unit}</text></g>`;
}
