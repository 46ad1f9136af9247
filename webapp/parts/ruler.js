/**
 * A tape that slides under a fixed mark: drag it, or use the arrow keys. Its stops need not be
 * evenly spaced, so a long range stays fine where it matters.
 */
import { pick } from '../pick.js';
import { html, svg } from 'lit-html';
import { grip } from './grip.js';

const STOP_PX = 11;
const HALF_PX = 400;
const PAGE = 10;
/** The tape is drawn anew at each so many stops only; between them it is moved. */
const DRAWN_ANEW = 24;

/**
 * @typedef {object} Ruler
 * @property {string} label
 * @property {string} words the value as it is said aloud
 * @property {number} value
 * @property {readonly number[]} stops ascending
 * @property {(stop: number) => string} mark the number to write at a stop; empty for a plain tick
 * @property {(value: number) => void} onValue
 */

/**
 * Where a value lies among the stops, between two of them if need be.
 * @param {readonly number[]} stops @param {number} value
 */
export function placeOf(stops, value) {
  const above = stops.findIndex((stop) => stop >= value - 1e-9);
  const [low, high] = [stops[above - 1], stops[above]];
  if (high === undefined) return stops.length - 1;
  return low === undefined || Math.abs(high - value) < 1e-9 ? above : above - 1 + (value - low) / (high - low);
}

/** @param {readonly number[]} stops @param {number} place */
export const nearest = (stops, place) => pick(stops, Math.max(0, Math.min(stops.length - 1, Math.round(place))));

/**
 * @param {string} key @param {number} place @param {number} last @returns {number | undefined} the place that a key leads to
 */
function placeAfter(key, place, last) {
  /** @type {Record<string, number>} */
  const places = {
    ArrowRight: Math.floor(place + 1),
    ArrowUp: Math.floor(place + 1),
    ArrowLeft: Math.ceil(place - 1),
    ArrowDown: Math.ceil(place - 1),
    PageUp: Math.floor(place + PAGE),
    PageDown: Math.ceil(place - PAGE),
    Home: 0,
    End: last,
  };
  return places[key];
}

/** @param {Ruler} ruler */
export function ruler({ label, words, value, stops, mark, onValue }) {
  const place = placeOf(stops, value);
  const last = stops.length - 1;
  /** @param {number} to */
  const goTo = (to) => {
    const next = nearest(stops, to);
    if (next !== value) onValue(next);
  };
  /** @param {KeyboardEvent} event */
  const key = (event) => {
    const to = placeAfter(event.key, place, last);
    if (to === undefined) return;
    event.preventDefault();
    goTo(to);
  };
  const middle = Math.round(place / DRAWN_ANEW) * DRAWN_ANEW;
  const reach = Math.ceil(HALF_PX / STOP_PX) + DRAWN_ANEW / 2;
  const numbers = [];
  let ticks = '';
  for (let i = Math.max(0, middle - reach); i <= Math.min(last, middle + reach); i++) {
    const x = HALF_PX + (i - middle) * STOP_PX;
    const text = mark(pick(stops, i));
    ticks += `M${x} 14V${text ? 54 : 38}`;
    if (text) numbers.push(svg`<text class="tick-text" x=${x} y="86">${text}</text>`);
  }
  return html`<div class="ruler" role="slider" tabindex="0" id="ruler" aria-label=${label} aria-valuemin=${stops[0]}
    aria-valuemax=${stops[last]}
    aria-valuenow=${value} aria-valuetext=${words} @keydown=${key}
    @pointerdown=${(/** @type {PointerEvent} */ event) =>
      grip(event, { start: place, move: (dx, start) => onValue(nearest(stops, start - dx / STOP_PX)) })}>
    <svg class="tape" width=${2 * HALF_PX} height="104" viewBox="0 0 ${2 * HALF_PX} 104" aria-hidden="true"><g
      transform="translate(${(middle - place) * STOP_PX} 0)"><path class="tick" d=${ticks}></path>${numbers}</g></svg>
    <svg class="ruler-mark" width="16" height="104" viewBox="0 0 16 104" aria-hidden="true"><path
      d="M8 0V62M1 0H15L8 11Z"></path></svg>
  </div>`;
}
