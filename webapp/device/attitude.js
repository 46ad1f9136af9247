/**
 * How the phone is turned, each time that it tells it.
 * @import {Attitude} from '../types.js'
 */
import { allowed } from './motion.js';

/**
 * From a touch: some phones ask their holder.
 * @param {(attitude: Attitude) => void} onAttitude @returns {() => void} stops it
 */
export function watchAttitude(onAttitude) {
  const hear = (/** @type {DeviceOrientationEvent} */ { alpha, beta, gamma }) => {
    if (beta !== null && gamma !== null)
      onAttitude({ alpha_deg: alpha ?? 0, beta_deg: beta, gamma_deg: gamma, screen_deg: screen.orientation?.angle ?? 0 });
  };
  let wanted = true;
  void allowed().then((may) => may && wanted && addEventListener('deviceorientation', hear));
  return () => {
    wanted = false;
    removeEventListener('deviceorientation', hear);
  };
}
