/**
 * How the phone turns while it is swung: rates where there are any, else its orientation.
 * @import {Motion} from '../types.js'
 */

const PATIENCE_MS = 1500;
const MOST = 6000;
const ASKED = /** @type {{requestPermission?: () => Promise<string>}[]} */ ([
  globalThis.DeviceMotionEvent,
  globalThis.DeviceOrientationEvent,
]);

/** From a touch: some phones ask the player first. @returns {Promise<boolean>} */
export async function allowed() {
  try {
    for (const kind of ASKED) if (kind?.requestPermission && (await kind.requestPermission()) !== 'granted') return false;
    return true;
  } catch {
    return false;
  }
}

export function createMotion() {
  /** @type {number[][]} */
  let rates = [];
  /** @type {number[][]} */
  let angles = [];

  /** @param {number[][]} list @param {(number | null | undefined)[]} values @param {number} ms */
  function keep(list, values, ms) {
    const at = ms / 1000;
    if (list.length < MOST && values.every((value) => Number.isFinite(value)) && at > (list.at(-1)?.[0] ?? -1))
      list.push([at, .../** @type {number[]} */ (values)]);
  }
  // Browsers differ in which axis is which; the engine looks for the one that turns most
  const hearRate = (/** @type {DeviceMotionEvent} */ { rotationRate: r, timeStamp }) =>
    r && keep(rates, [r.beta, r.gamma, r.alpha], timeStamp);
  const hearAngle = (/** @type {DeviceOrientationEvent} */ { alpha, beta, gamma, timeStamp }) =>
    keep(angles, [alpha, beta, gamma], timeStamp);

  return {
    /** @param {(problem: string) => void} onProblem */
    async start(onProblem) {
      [rates, angles] = [[], []];
      if (!(await allowed())) return onProblem('The phone does not let the app feel its motion. Tap the strokes instead.');
      addEventListener('devicemotion', hearRate);
      addEventListener('deviceorientation', hearAngle);
      setTimeout(
        () => !rates.length && !angles.length && onProblem('No motion comes from this device. Tap the strokes instead.'),
        PATIENCE_MS,
      );
    },
    /** @returns {Motion} */
    stop() {
      removeEventListener('devicemotion', hearRate);
      removeEventListener('deviceorientation', hearAngle);
      return rates.length >= angles.length ? { rates } : { angles };
    },
  };
}
