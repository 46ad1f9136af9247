/**
 * The phone's tilt, as its browser tells it: each value holds until the next comes.
 * @import {Tilt} from '../types.js'
 */

const KEPT_S = 3;
const TOLD_MS = 250;
/** A phone with a sensor says something within this time. */
const PATIENCE_MS = 2000;

/** @param {(tilt: Tilt) => void} onTilt */
export function createTilt(onTilt) {
  /** @type {{at: number, beta_deg: number, gamma_deg: number}[]} */
  let shown = [];
  /** @type {number | null} */
  let alpha_deg = null;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let teller;
  let started = 0;

  /** @param {DeviceOrientationEvent} event */
  function hear({ alpha, beta, gamma }) {
    if (beta === null || gamma === null) return;
    alpha_deg = alpha;
    shown.push({ at: performance.now(), beta_deg: beta, gamma_deg: gamma });
  }

  function tell() {
    const now = performance.now();
    const [first] = shown;
    if (!first) {
      if (now - started > PATIENCE_MS) stop('none');
      return;
    }
    const from = Math.max(first.at, now - KEPT_S * 1000);
    // the value that was true when the time kept began belongs to it
    shown = shown.slice(shown.findLastIndex(({ at }) => at <= from));
    const readings = shown
      .map(({ at, beta_deg, gamma_deg }, i) => ({
        beta_deg,
        gamma_deg,
        weight_s: ((shown[i + 1]?.at ?? now) - Math.max(at, from)) / 1000,
      }))
      .filter(({ weight_s }) => weight_s >= 0.001);
    if (readings.length) onTilt({ kind: 'live', seconds: (now - from) / 1000, alpha_deg, readings });
  }

  /** @param {'off' | 'refused' | 'none'} kind */
  function stop(kind = 'off') {
    removeEventListener('deviceorientation', hear);
    clearInterval(teller);
    onTilt({ kind });
  }

  return {
    /** To be called from a touch: some phones ask for leave, and only then. */
    async start() {
      onTilt({ kind: 'asking' });
      const event = /** @type {{requestPermission?: () => Promise<string>} | undefined} */ (
        /** @type {unknown} */ (globalThis.DeviceOrientationEvent)
      );
      if (!event) return stop('none');
      try {
        if (event.requestPermission && (await event.requestPermission()) !== 'granted') return stop('refused');
      } catch {
        return stop('refused');
      }
      shown = [];
      started = performance.now();
      addEventListener('deviceorientation', hear);
      teller = setInterval(tell, TOLD_MS);
    },
    /** Forgets what was shown, as when the phone has been turned. */
    again() {
      shown = shown.slice(-1).map((last) => ({ ...last, at: performance.now() }));
    },
    stop: () => stop(),
  };
}
