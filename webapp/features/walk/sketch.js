/**
 * The walk drawn: what is taken, what is to come, and how the phone lies.
 * @import {GreenEntry, OnMap} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html, nothing, svg } from 'lit-html';

/** The drawing's longer side, and its rim, in its own units. */
const SIDE = 300;
const RIM = 10;

/** @param {GreenEntry} green @param {OnMap[]} left @param {OnMap | undefined} next @param {WalkActions} act */
export function sketch({ breadth_m, length_m, points, name }, left, next, act) {
  const scale = SIDE / Math.max(breadth_m, length_m);
  const [width, height] = [breadth_m * scale + 2 * RIM, length_m * scale + 2 * RIM];
  /** @returns {[number, number]} */
  const px = (/** @type {OnMap} */ [x, y]) => [RIM + x * scale, height - RIM - y * scale];
  const at = next && px(next);
  /** @param {MouseEvent} event */
  function touch({ clientX, clientY, currentTarget }) {
    const matrix = /** @type {SVGSVGElement} */ (currentTarget).getScreenCTM();
    if (!matrix) return;
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
    act.goTo([(x - RIM) / scale, (height - RIM - y) / scale]);
  }
  return html`<svg class="sketch" @click=${touch} role="img"
    aria-label="Plan of ${name}: ${points.length} places read, ${left.length} to come" viewBox="0 0 ${width} ${height}">
    <rect class="edge" x=${RIM} y=${RIM} width=${breadth_m * scale} height=${length_m * scale}></rect>
    ${left.map((place) => svg`<circle class="to-come" cx=${px(place)[0]} cy=${px(place)[1]} r="4"></circle>`)}
    <path class="readings" d=${points
      .map(({ x_m, y_m }) => px([x_m, y_m]))
      .map(([u, v]) => `M${u - 5} ${v}h10M${u} ${v - 5}v10`)
      .join('')}></path>
    ${
      at
        ? svg`<g transform="translate(${at[0]} ${at[1]})"><rect class="phone" x="-8" y="-15" width="16" height="30"
          rx="3"></rect><path class="phone-arrow" d="M0 8V-8M-4 -4L0 -9L4 -4"></path></g>`
        : nothing
    }
    <circle class="you" cx=${RIM} cy=${height - RIM} r="7"></circle>
  </svg>`;
}
