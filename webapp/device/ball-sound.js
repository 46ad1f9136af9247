/**
 * A ball that drops into a cup, two short knocks on something hollow, or runs past it over the grass; made sample by sample.
 */

const KNOCKS = [
  { at_s: 0, loud: 0.9 },
  { at_s: 0.11, loud: 0.45 },
];
const TONES = [
  { hz: 310, fade_s: 0.05, loud: 0.6 },
  { hz: 1240, fade_s: 0.012, loud: 0.4 },
];
const DROP_S = 0.4;
/** Grass under a ball: noise without its high part, as loud as the ball is quick. */
const GRASS = { hz: 700, loud: 0.35 };

/** @param {Float32Array} samples @param {number} rate samples a second */
function dropInto(samples, rate) {
  for (const { at_s, loud } of KNOCKS)
    for (let i = Math.round(at_s * rate); i < samples.length; i++) {
      const t = i / rate - at_s;
      const rings = TONES.map((tone) => tone.loud * Math.sin(2 * Math.PI * tone.hz * t) * Math.exp(-t / tone.fade_s));
      samples[i] = rings.reduce((sum, ring) => sum + loud * ring, samples[i] ?? 0);
    }
}

/** @param {Float32Array} samples */
function pastInto(samples) {
  for (let i = 0; i < samples.length; i++) samples[i] = GRASS.loud * (2 * Math.random() - 1) * (1 - i / samples.length);
}

export function createBallSound() {
  /** @type {AudioContext | undefined} */
  let context;

  /**
   * @param {number} seconds @param {(samples: Float32Array, rate: number) => void} into
   * @param {(context: AudioContext) => AudioNode[]} [through]
   */
  function play(seconds, into, through = () => []) {
    if (context?.state !== 'running') return;
    const buffer = context.createBuffer(1, Math.ceil(seconds * context.sampleRate), context.sampleRate);
    into(buffer.getChannelData(0), context.sampleRate);
    /** @type {AudioNode} */
    let last = new AudioBufferSourceNode(context, { buffer });
    const source = /** @type {AudioBufferSourceNode} */ (last);
    for (const node of [...through(context), context.destination]) last = last.connect(node);
    source.start();
  }

  return {
    /** From a touch only: browsers allow no sound before. */
    wake() {
      context ??= new AudioContext();
      void context.resume();
    },
    drop: () => play(DROP_S, dropInto),
    /** @param {number} seconds until it rests */
    past: (seconds) =>
      play(seconds, pastInto, (playing) => [new BiquadFilterNode(playing, { type: 'lowpass', frequency: GRASS.hz })]),
  };
}
