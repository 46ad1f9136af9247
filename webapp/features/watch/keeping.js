/**
 * A putt that was seen, as the record has it; and its picture, small enough that a season of them fits.
 * @import {PuttEntry, WatchedPutt} from '../../types.js'
 */
import { drawn } from './overlay.js';

/** A picture's longer side, px, and the quality of its JPEG: to keep, sharp enough on a phone's screen; and to give away. */
export const KEPT = { side: 640, quality: 0.7 };
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
 * @param {WatchedPutt} last @param {PuttEntry['result']} result @param {string} place @param {string} picture empty: none
 * @returns {PuttEntry}
 */
export function entryOf({ value, putt, aim_deg }, result, place, picture) {
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
    aim_deg,
    result,
    ...(whole ? { start_deg, start_sd_deg, launch_mps, launch_sd_mps } : {}),
    ...(stop && typeof result === 'object' ? { finish_sd_m: stop.sd_m } : {}),
    ...(picture ? { picture } : {}),
  };
}

/**
 * The putt on its still picture, the way seen over the line meant; empty where there is none.
 * @param {WatchedPutt} last @param {typeof KEPT} size
 */
export function pictureOf(last, { side, quality }) {
  const whole = drawn(last);
  if (!whole) return '';
  const scale = Math.min(1, side / Math.max(whole.width, whole.height));
  const [width, height] = [Math.round(whole.width * scale), Math.round(whole.height * scale)];
  const small = Object.assign(document.createElement('canvas'), { width, height });
  const pen = /** @type {CanvasRenderingContext2D} */ (small.getContext('2d'));
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(whole, 0, 0, width, height);
  return small.toDataURL('image/jpeg', quality);
}
