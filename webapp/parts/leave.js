/**
 * How a miss was left, in one touch: short, hole high or long, and left or right; the middle says no more than that it missed.
 * @import {Leave, Side} from '../types.js'
 */
import { html } from 'lit-html';

/** @typedef {{side?: Side, length?: Leave}} Left */

/** @type {(Leave | undefined)[]} */
const LENGTHS = ['long', undefined, 'short'];
/** @type {(Side | undefined)[]} */
const SIDES = ['left', undefined, 'right'];

/** @param {Left} left */
export const leaveWords = ({ side, length }) => [length, side].filter(Boolean).join(', ');

/**
 * @param {{label: string, value: Left | null, middle: string, onLeave: (left: Left) => void}} leave `value` null: nothing is
 *   chosen yet
 */
export const leave = ({ label, value, middle, onLeave }) => html`<div class="leave" role="group" aria-label=${label}>
  ${LENGTHS.flatMap((length) =>
    SIDES.map((side) => {
      const words = leaveWords({ side, length }) || middle;
      const chosen = value !== null && value.side === side && value.length === length;
      const left = { ...(side && { side }), ...(length && { length }) };
      return html`<button type="button" aria-pressed=${chosen} @click=${() => onLeave(left)}>${words}</button>`;
    }),
  )}
</div>`;
