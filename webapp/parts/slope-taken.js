/**
 * A slope that was measured or felt, on its way into the putt in hand with its spread.
 * @import {Store} from '../store.js'
 * @import {Putt, Slope, Source} from '../types.js'
 */
import { measured } from '../doubt.js';
import { rangeOf } from '../fields.js';
import { unitOf, withUnit } from '../format.js';

const STEEPEST_PERCENT = rangeOf('PuttFields', 'slope_percent').high;

/**
 * As a read takes it; null where it is too steep, which is said.
 * @param {Store} store @param {Slope} slope @param {Source} source @param {number} sd per cent of slope
 */
export function takenSlope(store, { slope_percent, fall_deg }, source, sd) {
  if (slope_percent > STEEPEST_PERCENT) {
    const is = withUnit(slope_percent, unitOf('slope_percent', store.state.settings));
    const message = `A read takes up to ${STEEPEST_PERCENT} %; this is ${is}.`;
    store.change('refuse steep', { problem: { field: 'take', text: '', message } });
    return null;
  }
  return measured({ slope_percent: Number(slope_percent.toFixed(1)), fall_deg: Math.round(fall_deg) % 360 }, source, sd);
}

/** The putt with one slope in place of all that it had. @param {Putt} putt @param {Slope} slope @returns {Putt} */
export function withSlope({ stations: _, survey: __, ...rest }, slope) {
  return { ...rest, ...slope };
}
