/** What drills are drawn with; to scale one unit is a millimetre. */
import { svg } from 'lit-html';
import { BALL_M } from '../../../format.js';

export const MM = 1000;
export const R = (BALL_M / 2) * MM;

/** @param {number} x @param {number} y @param {number} [r] */
export const ball = (x, y, r = R) => circle('d-ball', x, y, r);
/** @param {string} name @param {number} x @param {number} y @param {number} r */
export const circle = (name, x, y, r) => svg`<circle class=${name} cx=${x} cy=${y} r=${r}></circle>`;
/**
 * @param {string} name @param {number} x @param {number} y @param {number} width @param {number} height @param {number} [rx]
 */
export const rect = (name, x, y, width, height, rx = 0) =>
  svg`<rect class=${name} x=${x} y=${y} width=${width} height=${height} rx=${rx}></rect>`;
/** @param {number} x @param {number} y @param {number} [r] */
export const hole = (x, y, r = 9) => svg`<ellipse class="d-hole" cx=${x} cy=${y} rx=${r} ry=${r * 0.55}></ellipse>`;
/** @param {string} d @param {string} [name] */
export const line = (d, name = 'd-line') => svg`<path class=${name} d=${d}></path>`;
/** @param {{x: number, y: number}[]} points */
export const through = (points) => `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;
/** @param {number} x @param {number} y @param {string} words @param {string} [anchor] @param {string} [name] */
export const label = (x, y, words, anchor = 'middle', name = 'd-text') =>
  svg`<text class=${name} x=${x} y=${y} text-anchor=${anchor}>${words}</text>`;
