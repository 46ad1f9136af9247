/**
 * A putt that was seen, as the record has it; and its picture, small enough that a season of them fits.
 * @import {PuttEntry, WatchedPutt} from '../../types.js'
 * @import {Whose} from '../../parts/whose-aim.js'
 */
import { smallJpeg } from '../../device/picture.js';
import { drawn } from './overlay.js';

/** A picture to give away: its longer side, px, and the quality of its JPEG. */
export const GIVEN = { side: 1920, quality: 0.85 };

/**
 * As an entry has it; null where it was not seen.
 * @param {WatchedPutt['value']} value @param {number} distance_m @returns {PuttEntry['result'] | null}
 */
export function resultOf({ result, stop }, distance_m) {
  if (result === 'holed') return 'holed';
  if (result === 'missed') return stop ? { x_m: stop.x_m - distance_m, y_m: stop.y_m } : 'missed';
  return null;
}

/**
 * @param {WatchedPutt} last @param {PuttEntry['result']} result
 * @param {{read: Whose, place: string, picture: string}} more whose aim was played; the picture, if any
 * @returns {PuttEntry}
 */
export function entryOf({ value, putt, aim_deg }, result, { read, place, picture }) {
  const now = new Date().toISOString();
  const { start_deg, start_sd_deg, launch_mps, launch_sd_mps, stop } = value;
  const whole = start_deg !== null && start_sd_deg !== null && launch_mps !== null && launch_sd_mps !== null;
  return {
    kind: 'putt',
    id: crypto.randomUUID(),
    at: now,
    changed: now,
    place,
    text: '',
    ...putt,
    result,
    ...(read && { read }),
    ...(read === 'app' && { aim_deg }),
    ...(whole ? { start_deg, start_sd_deg, launch_mps, launch_sd_mps } : {}),
    ...(stop && typeof result === 'object' ? { finish_sd_m: stop.sd_m } : {}),
    ...(picture ? { picture } : {}),
  };
}

/**
 * The putt on its still picture, the way seen over the line meant; empty where there is none.
 * @param {WatchedPutt} last @param {typeof GIVEN} size
 */
export function pictureOf(last, size) {
  const whole = drawn(last);
  return whole ? smallJpeg(whole, size) : '';
}
