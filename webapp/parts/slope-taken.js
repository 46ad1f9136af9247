/**
 * A slope that was measured or felt, on its way into the putt in hand with its spread.
 * @import {Store} from '../store.js'
 * @import {Putt, Slope, Source} from '../types.js'
 */
import { measured } from '../doubt.js';
import { rangeOf } from '../fields.js';
import { unitOf, withUnit } from '../format.js';

const STEEPEST_PERCENT = rangeOf('PuttFields', 'slope_percent').high;

/** @param {Store} store @param {Slope} slope @param {Source} source @param {number} sd per cent of slope @param {number} [station] that it was measured at @returns {{putt: Putt} | null} */
export function intoRead(store, { slope_percent, fall_deg }, source, sd, station) {
  const { putt, settings } = store.state;
  if (slope_percent > STEEPEST_PERCENT) {
    const is = withUnit(slope_percent, unitOf('slope_percent', settings));
    const message = `A read takes up to ${STEEPEST_PERCENT} %; this is ${is}.`;
    store.change('refuse steep', { problem: { field: 'take', text: '', message } });
    return null;
  }
  const slope = measured({ slope_percent: Number(slope_percent.toFixed(1)), fall_deg: Math.round(fall_deg) }, source, sd);
  const { stations, ...rest } = putt;
  return {
    putt:
      stations && station !== undefined
        ? { ...rest, stations: stations.map((s, i) => (i === station ? { ...s, ...slope } : s)) }
        : { ...rest, ...slope },
  };
}
