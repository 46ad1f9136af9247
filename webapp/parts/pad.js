/**
 * The hole from above and to scale, with the line of the putt up the screen: a touch says where the ball finished.
 * @import {Point, Putt} from '../types.js'
 */
import './pad.css';
import { svg, html } from 'lit-html';
import { BALL_M, HOLE_M } from '../format.js';

const SIZE = 320;
/** Of the picture's height, above the hole: most misses are past it. */
const ABOVE = 0.6;
const RINGS = 3;

/** @param {number} reach_m */
const scaleOf = (reach_m) => SIZE / (2 * reach_m);

/** How many finishes lie outside the picture. @param {Point[]} finishes @param {number} reach_m */
export const outside = (finishes, reach_m) =>
  finishes.filter(({ x_m, y_m }) => Math.abs(y_m) > reach_m || x_m > 2 * ABOVE * reach_m || x_m < -2 * (1 - ABOVE) * reach_m)
    .length;

/**
 * @param {{reach_m: number, putt: Pick<Putt, 'past_m'>, finishes: Point[], words: string, ringWords: (radius_m: number) =>
 *   string, onPoint?: (point: Point) => void}} pad
 */
export function pad({ reach_m, putt, finishes, words, ringWords, onPoint }) {
  const scale = scaleOf(reach_m);
  /** @returns {[number, number]} */
  const px = (/** @type {number} */ x, /** @type {number} */ y) => [SIZE / 2 - y * scale, SIZE * ABOVE - x * scale];
  const [hx, hy] = px(0, 0);
  const [, past] = px(putt.past_m, 0);
  const touch = (/** @type {PointerEvent} */ event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    const [left, down] = [((event.clientX - box.left) / box.width) * SIZE, ((event.clientY - box.top) / box.height) * SIZE];
    onPoint?.({ x_m: Number(((SIZE * ABOVE - down) / scale).toFixed(3)), y_m: Number(((SIZE / 2 - left) / scale).toFixed(3)) });
  };
  const rings = Array.from({ length: RINGS }, (_, i) => ((i + 1) * reach_m) / RINGS);
  return html`<div class="pad-frame"><svg class="pad" role="img" aria-label=${words} viewBox="0 0 ${SIZE} ${SIZE}"
    @click=${onPoint ? touch : null}>
    ${rings.map(
      (r) => svg`<circle class="pad-ring" cx=${hx} cy=${hy} r=${r * scale}></circle><text class="pad-text" x=${hx + 4}
      y=${hy + r * scale - 4}>${ringWords(r)}</text>`,
    )}
    <path class="pad-line" d="M${hx} ${SIZE}V0"></path>
    <circle class="hole" cx=${hx} cy=${hy} r=${(HOLE_M / 2) * scale}></circle>
    ${finishes.map(({ x_m, y_m }) => {
      const [cx, cy] = px(x_m, y_m);
      return svg`<circle class="ball" cx=${cx} cy=${cy} r=${Math.max(3, (BALL_M / 2) * scale)}></circle>`;
    })}
    <path class="pad-meant" d="M${hx - 7} ${past}h14M${hx} ${past - 7}v14"></path>
  </svg></div>`;
}
