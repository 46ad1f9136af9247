/**
 * Runs on the sound thread and tells the page of each millisecond the largest amplitude below 800 Hz, to 3 kHz and above: from
 * that no word can be made out, and nothing else of the sound leaves it.
 */
const { AudioWorkletProcessor, registerProcessor, sampleRate } = /** @type {any} */ (globalThis);

const LOW_HZ = 800;
const HIGH_HZ = 3000;
const TOLD_MS = 50;

/**
 * A second-order Butterworth filter: Robert Bristow-Johnson's Audio EQ Cookbook, Q of 1/sqrt 2.
 * @param {'low' | 'high'} kind @param {number} hz
 */
function filter(kind, hz) {
  const w = (2 * Math.PI * Math.min(hz, 0.45 * sampleRate)) / sampleRate;
  const [cos, alpha] = [Math.cos(w), Math.sin(w) / Math.SQRT2];
  const a0 = 1 + alpha;
  const b1 = kind === 'low' ? 1 - cos : -(1 + cos);
  const [b0, a1, a2] = [Math.abs(b1) / 2 / a0, (-2 * cos) / a0, (1 - alpha) / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return (/** @type {number} */ x) => {
    const y = b0 * (x + x2) + (b1 / a0) * x1 - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  };
}

class Levels extends AudioWorkletProcessor {
  constructor() {
    super();
    const [above, below] = [filter('high', LOW_HZ), filter('low', HIGH_HZ)];
    const middle = (/** @type {number} */ x) => below(above(x));
    this.bands = [filter('low', LOW_HZ), middle, filter('high', HIGH_HZ)].map((part) => ({
      part,
      peak: 0,
      told: /** @type {number[]} */ ([]),
    }));
    this.frame = 0;
    this.now = 0;
  }

  /** @param {Float32Array[][]} inputs */
  process([channels]) {
    for (const x of channels?.[0] ?? []) {
      const ms = Math.floor((this.frame * 1000) / sampleRate);
      if (ms > this.now) this.next(ms);
      for (const band of this.bands) band.peak = Math.max(band.peak, Math.abs(band.part(x)));
      this.frame++;
    }
    return true;
  }

  /** @param {number} ms */
  next(ms) {
    for (const band of this.bands) {
      band.told.push(Math.min(1, Math.round(band.peak * 1e5) / 1e5));
      band.peak = 0;
    }
    this.now = ms;
    if (this.bands.some(({ told }) => told.length < TOLD_MS)) return;
    this.port.postMessage(this.bands.map(({ told }) => told.splice(0)));
  }
}

registerProcessor('levels', Levels);
