/** A ball that drops into a cup: two short knocks on something hollow, made sample by sample. */

const KNOCKS = [{ at_s: 0, loud: 0.9 }, { at_s: 0.11, loud: 0.45 }];
const TONES = [{ hz: 310, fade_s: 0.05, loud: 0.6 }, { hz: 1240, fade_s: 0.012, loud: 0.4 }];
const LENGTH_S = 0.4;

/** @param {number} rate samples a second */
function render(rate) {
  const samples = new Float32Array(Math.round(LENGTH_S * rate));
  for (const { at_s, loud } of KNOCKS)
    for (let i = Math.round(at_s * rate); i < samples.length; i++) {
      const t = i / rate - at_s;
      for (const tone of TONES) samples[i] += loud * tone.loud * Math.sin(2 * Math.PI * tone.hz * t) * Math.exp(-t / tone.fade_s);
    }
  return samples;
}

export function createDrop() {
  /** @type {AudioContext | undefined} */
  let context;
  /** @type {AudioBuffer} */
  let buffer;
  return {
    /** From a touch only: browsers allow no sound before. */
    wake() {
      if (!context) {
        context = new AudioContext();
        const samples = render(context.sampleRate);
        buffer = context.createBuffer(1, samples.length, context.sampleRate);
        buffer.copyToChannel(samples, 0);
      }
      void context.resume();
    },
    drop() {
      if (context?.state !== 'running') return;
      const source = new AudioBufferSourceNode(context, { buffer });
      source.connect(context.destination);
      source.start();
    },
  };
}
