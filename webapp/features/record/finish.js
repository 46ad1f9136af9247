/**
 * Where a ball stopped, as a player measures it: from the hole's edge. What is kept counts from the hole's centre.
 * @import {Point, Settings} from '../../types.js'
 */
import { HOLE_M, unitOf } from '../../format.js';
import { WHOLE } from '../../records/checks.js';

const COUNT = { unit: '', name: '', si: 1, digits: 0 };
/** @type {Record<string, string>} */
const UNITS_AS = {
  line_error_deg: 'start_line_sd_deg',
  felt_percent: 'slope_percent',
  x_m: 'past_m',
  y_m: 'past_m',
};

/** @param {string} field @param {Settings} settings */
export const entryUnit = (field, settings) => (WHOLE.includes(field) ? COUNT : unitOf(UNITS_AS[field] ?? field, settings));

export const FINISH = /** @type {const} */ ([
  ['x_m', 'Past (− short)'],
  ['y_m', 'Left (− right)'],
]);

/** @param {Point} finish from the centre */
export const isIn = ({ x_m, y_m }) => Math.hypot(x_m, y_m) < HOLE_M / 2;

/** @param {Point} point @param {number} by_m @returns {Point} farther from the hole on the same line */
function moved({ x_m, y_m }, by_m) {
  const far_m = Math.hypot(x_m, y_m);
  const times = far_m ? Math.max(0, far_m + by_m) / far_m : 0;
  return { x_m: x_m * times, y_m: y_m * times };
}

/** From the centre. @param {Point} finish from the edge; not on it */
export const fromCentre = (finish) => moved(finish, HOLE_M / 2);
/** @param {Point} finish from the centre */
export const fromEdge = (finish) => moved(finish, -HOLE_M / 2);
