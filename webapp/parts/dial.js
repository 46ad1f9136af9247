/** The fall of the green on a dial, as seen from the ball: up the dial is towards the hole. */
import { html, svg } from 'lit-html';
import { grip } from './grip.js';

const STEP_DEG = 5;
const PAGE_DEG = 45;

/** @param {number} deg */
const turned = (deg) => ((deg % 360) + 360) % 360;

/** @param {PointerEvent} event @param {Element} dial */
function pointedAt(event, dial) {
  const box = dial.getBoundingClientRect();
  const deg = (Math.atan2(event.clientX - box.left - box.width / 2, box.top + box.height / 2 - event.clientY) * 180) / Math.PI;
  return turned(Math.round(deg / STEP_DEG) * STEP_DEG);
}

/** @type {Record<string, (deg: number) => number>} */
const KEYS = {
  ArrowRight: (deg) => (Math.floor(deg / STEP_DEG) + 1) * STEP_DEG,
  ArrowUp: (deg) => (Math.floor(deg / STEP_DEG) + 1) * STEP_DEG,
  ArrowLeft: (deg) => (Math.ceil(deg / STEP_DEG) - 1) * STEP_DEG,
  ArrowDown: (deg) => (Math.ceil(deg / STEP_DEG) - 1) * STEP_DEG,
  PageUp: (deg) => deg + PAGE_DEG,
  PageDown: (deg) => deg - PAGE_DEG,
  Home: () => 0,
  End: () => 180,
};

const TICKS = Array.from(
  { length: 24 },
  (_, i) => svg`<line class="tick" x1="80" x2="80" y1="3" y2=${i % 6 ? 8 : 14} transform="rotate(${i * 15} 80 80)"></line>`,
);

/** @param {{label: string, words: string, value: number, onValue: (deg: number) => void}} dial */
export function dial({ label, words, value, onValue }) {
  const deg = turned(value);
  /** @param {KeyboardEvent} event */
  const key = (event) => {
    const by = KEYS[event.key];
    if (!by) return;
    event.preventDefault();
    onValue(turned(by(deg)));
  };
  /** @param {PointerEvent} event */
  const down = (event) => {
    const element = /** @type {Element} */ (event.currentTarget);
    onValue(pointedAt(event, element));
    grip(event, { start: element, move: (_dx, dial, moved) => onValue(pointedAt(moved, dial)) });
  };
  return html`<div class="dial" role="slider" tabindex="0" id="dial" aria-label=${label} aria-valuemin="0" aria-valuemax="359"
    aria-valuenow=${deg}
    aria-valuetext=${words} @keydown=${key} @pointerdown=${down}>
    <svg viewBox="0 0 160 160" aria-hidden="true">
      <circle class="dial-ring" cx="80" cy="80" r="77"></circle>${TICKS}
      <line class="dial-line" x1="80" y1="128" x2="80" y2="32"></line>
      <circle class="dial-hole" cx="80" cy="27" r="5"></circle><circle class="dial-ball" cx="80" cy="133" r="4"></circle>
      <g transform="rotate(${deg} 80 80)"><path class="dial-fall" d="M80 122V46"></path><path class="dial-head"
        d="M80 18L71 46H89Z"></path></g>
    </svg>
  </div>`;
}
