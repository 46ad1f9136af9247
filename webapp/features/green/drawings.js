/** The phone as it lies, from above: its long edge, its top, and where the green runs down to. */
import { html, svg } from 'lit-html';

const phone = svg`<rect class="phone" x="52" y="18" width="56" height="112" rx="9"></rect><path class="phone-top"
  d="M72 25H88"></path>`;

/** The phone on the line to the hole, with the fall under it. @param {number} fall_deg @param {string} words */
export const lying = (fall_deg, words) => html`<svg class="lying" viewBox="0 0 160 148" role="img" aria-label=${words}>
  <path class="aim-line" d="M80 146V2"></path><circle class="cup" cx="80" cy="6" r="5"></circle>
  <text class="end" x="90" y="12">hole</text><text class="end" x="90" y="145">ball</text>
  ${phone}
  <g transform="rotate(${fall_deg} 80 74)"><path class="fall" d="M80 96V54"></path><path class="fall-head"
    d="M80 34L71 56H89Z"></path></g>
</svg>`;

/** Where along the line the phone is laid: nearer the hole, where the ball is slow and turns most. */
export const onTheLine = html`<svg class="lying" viewBox="0 0 160 148" role="img"
  aria-label="The phone on the line, two thirds of the way from ball to hole, its top to the hole">
  <path class="aim-line" d="M80 140V10"></path><circle class="cup" cx="80" cy="8" r="5"></circle><circle class="ball" cx="80"
    cy="140" r="4"></circle>
  <text class="end" x="92" y="13">hole</text><text class="end" x="92" y="145">ball</text>
  <rect class="phone" x="68" y="28" width="24" height="48" rx="4"></rect><path class="phone-arrow"
    d="M80 66V42M74 49L80 41L86 49"></path>
</svg>`;

/** The phone from the side: the camera's bump, or the case, under the same end each time. */
export const sideways = html`<svg class="sideways" viewBox="0 0 160 40" role="img"
  aria-label="From the side: the screen up, the same side down each time">
  <path class="turf" d="M4 34H156"></path><g transform="rotate(-3 36 34)"><rect class="phone" x="36" y="24" width="88"
    height="9" rx="3"></rect></g><path class="bump" d="M108 30H120V34H108Z"></path>
</svg>`;

/** The way from the position before. @type {Record<number, unknown>} */
const ARCS = {
  0: '',
  90: svg`<path class="turn" d="M80 6A68 68 0 0 1 146 60"></path><path class="turn-head" d="M150 72L138 58L152 55Z"></path>`,
  180: svg`<path class="turn" d="M80 6A68 68 0 0 1 92 141"></path><path class="turn-head" d="M80 142L95 133L97 147Z"></path>`,
};

/**
 * A position to hold in a zeroing, and the turn that leads there.
 * @param {number} turned_deg @param {number} by_deg @param {string} words
 */
export const turned = (
  turned_deg,
  by_deg,
  words,
) => html`<svg class="lying" viewBox="0 0 160 148" role="img" aria-label=${words}>
  <g transform="rotate(${turned_deg} 80 74)">${phone}<path class="phone-arrow"
    d="M80 100V58M70 68L80 54L90 68"></path></g>${ARCS[by_deg]}
</svg>`;
