/**
 * A slope that was measured or felt, on its way into the putt in hand with its spread.
 * @import {Store} from '../store.js'
 * @import {Player, Putt, Slope} from '../types.js'
 */
import { rangeOf } from '../fields.js';
import { unitOf, withUnit } from '../format.js';

const STEEPEST_PERCENT = rangeOf('PuttFields', 'slope_percent').high;
const WIDEST_SD_PERCENT = rangeOf('PlayerFields', 'slope_sd_percent').high;

/** @param {Store} store @param {Slope} slope @param {number} sd per cent of slope @param {number} [station] that it was measured at @returns {{putt: Putt, player: Player} | null} */
export function intoRead(store, { slope_percent, fall_deg }, sd, station) {
  const { putt, player, settings } = store.state;
  if (slope_percent > STEEPEST_PERCENT) {
    const is = withUnit(slope_percent, unitOf('slope_percent', settings));
    const message = `A read takes up to ${STEEPEST_PERCENT} %; this is ${is}.`;
    store.change('refuse steep', { problem: { field: 'take', text: '', message } });
    return null;
  }
  const slope = { slope_percent: Number(slope_percent.toFixed(1)), fall_deg: Math.round(fall_deg) };
  const { stations, ...rest } = putt;
  return {
    putt:
      stations && station !== undefined
        ? { ...rest, stations: stations.map((s, i) => (i === station ? { ...s, ...slope } : s)) }
        : { ...rest, ...slope },
    player: { ...player, slope_sd_percent: Number(Math.min(sd, WIDEST_SD_PERCENT).toFixed(2)) },
  };
}
