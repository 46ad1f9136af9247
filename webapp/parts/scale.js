/**
 * A ruler that lies still: a touch on it sets the value, a finger that slides on mends it.
 */
import { nearest } from './ruler.js';
import { html, svg } from 'lit-html';

const WIDTH = 350;
const HEIGHT = 76;
const EDGE = 18;

/**
 * @param {object} scale
 * @param {string} scale.label
 * @param {string} scale.words the value as it is said aloud
 * @param {number | null} scale.value
 * @param {readonly number[]} scale.stops ascending
 * @param {(stop: number) => string} scale.mark the number to write at a stop; empty for a plain tick
 * @param {(value: number) => void} scale.onValue
 */
export function scale({ label, words, value, stops, mark, onValue }) {
  const step = (WIDTH - 2 * EDGE) / (stops.length - 1);
  const x = (/** @type {number} */ i) => EDGE + i * step;
  const at = value === null ? -1 : stops.findIndex((stop) => Math.abs(stop - value) < 1e-9);
  const set = (/** @type {number} */ i) => {
    const next = nearest(stops, i);
    if (next !== value) onValue(next);
  };
  /** @param {PointerEvent} event */
  const touch = (event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    set(Math.round((((event.clientX - box.left) / box.width) * WIDTH - EDGE) / step));
  };
  /** @param {PointerEvent} event */
  const down = (event) => {
    /** @type {Element} */ (event.currentTarget).setPointerCapture(event.pointerId);
    touch(event);
  };
  /** @param {KeyboardEvent} event */
  const key = (event) => {
    /** @type {Record<string, number>} */
    const steps = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 5, PageDown: -5 };
    const by = event.key === 'Home' ? -stops.length : event.key === 'End' ? stops.length : steps[event.key];
    if (!by) return;
    event.preventDefault();
    set(at + by);
  };
  return html`<div class="scale" role="slider" tabindex="0" aria-label=${label} aria-valuemin=${stops[0]}
    aria-valuemax=${stops[stops.length - 1]}
    aria-valuenow=${value ?? stops[0]} aria-valuetext=${words} @keydown=${key} @pointerdown=${down}
    @pointermove=${(/** @type {PointerEvent} */ event) => event.buttons && touch(event)}>
    <svg viewBox="0 0 ${WIDTH} ${HEIGHT}" aria-hidden="true">
      ${stops.map((stop, i) => {
        const text = mark(stop);
        return svg`<path class="tick" d="M${x(i)} 14V${text ? 46 : 34}"></path>${
          text ? svg`<text class="tick-text" x=${x(i)} y="68">${text}</text>` : ''
        }`;
      })}
      ${at < 0 ? '' : svg`<path class="scale-mark" d="M${x(at)} 0V50M${x(at) - 7} 0H${x(at) + 7}L${x(at)} 12Z"></path>`}
    </svg>
  </div>`;
}
