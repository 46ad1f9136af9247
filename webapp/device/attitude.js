/**
 * How the phone is held, each time that it tells it.
 * @import {Held} from '../types.js'
 */
import { allowed } from './motion.js';

/** From a touch: some phones ask their holder. @param {(held: Held) => void} onHeld @returns {() => void} stops it */
export function watchHeld(onHeld) {
  const hear = (/** @type {DeviceOrientationEvent} */ { alpha, beta, gamma }) => {
    if (beta !== null && gamma !== null)
      onHeld({ alpha_deg: alpha ?? 0, beta_deg: beta, gamma_deg: gamma, screen_deg: screen.orientation?.angle ?? 0 });
  };
  let wanted = true;
  void allowed().then((may) => may && wanted && addEventListener('deviceorientation', hear));
  return () => {
    wanted = false;
    removeEventListener('deviceorientation', hear);
  };
}
