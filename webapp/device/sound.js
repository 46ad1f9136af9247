/**
 * A tempo that is heard: one cycle, rendered sample by sample, that the sound card itself repeats.
 * No timer of the page takes part, so a page that stalls cannot move a note.
 * @import {Tempo, SoundState} from '../types.js'
 */

/** A whole number of samples for each hundredth of a second, in which the engine's cycles are counted. */
const RATE_HZ = 48_000;
const NOTE_S = 0.07;
const FADE_S = 0.018;
/** The time it takes from a touch until the first beat. */
const AHEAD_S = 0.15;
/** After which a sound that has not begun is said to be none. */
const PATIENCE_MS = 1000;
/**
 * Pitch tells them apart: low away from the ball, middle at the top, high at the ball.
 * @type {Record<string, {hz: number, loud: number}>}
 */
export const VOICES = {
  count: { hz: 440, loud: 0.35 },
  start: { hz: 440, loud: 0.8 },
  top: { hz: 660, loud: 0.8 },
  impact: { hz: 1320, loud: 1 },
  over: { hz: 990, loud: 0.8 },
};
/** Three notes in a quick row: no stroke sounds so. */
const CHIME = { lead_s: 0, cycle_s: 0.6, events: [0, 0.16, 0.32].map((at_s) => ({ at_s, kind: 'over', stroke: 0 })) };

/**
 * The count-in and one cycle.
 * @param {{lead_s: number, cycle_s: number, events: {at_s: number, kind: string, stroke: number}[]}} tempo
 * @param {number} rate samples a second
 */
export function render({ lead_s, cycle_s, events }, rate) {
  const samples = new Float32Array(Math.round((lead_s + cycle_s) * rate));
  for (const { at_s, kind } of events) {
    const voice = VOICES[kind];
    if (!voice) continue;
    const from = Math.round(at_s * rate);
    // of later strokes nothing: the cycle is heard again
    const length = Math.min(Math.round(NOTE_S * rate), samples.length - from);
    // A cosine sounds from its first sample on
    for (let i = 0; i < length; i++) {
      const note = voice.loud * Math.cos((2 * Math.PI * voice.hz * i) / rate) * Math.exp(-i / rate / FADE_S);
      samples[from + i] = (samples[from + i] ?? 0) + note;
    }
  }
  return samples;
}

/** @param {BaseAudioContext} context @param {Float32Array<ArrayBuffer>} samples */
function bufferOf(context, samples) {
  const buffer = context.createBuffer(1, samples.length, context.sampleRate);
  buffer.copyToChannel(samples, 0);
  return buffer;
}

/**
 * Lets a context play a row of strokes from `when` on.
 * @param {BaseAudioContext} context @param {Tempo} tempo @param {AudioNode} into @param {number} when
 */
export function schedule(context, tempo, into, when) {
  const source = new AudioBufferSourceNode(context, {
    buffer: bufferOf(context, render(tempo, context.sampleRate)),
    loop: true,
    loopStart: tempo.lead_s,
    loopEnd: tempo.lead_s + tempo.cycle_s,
  });
  source.connect(into);
  source.start(when);
  source.stop(when + tempo.total_s);
  return source;
}

/** @param {(state: SoundState) => void} onState */
export function createSound(onState) {
  /** @type {AudioContext | null} */
  let context = null;
  /** @type {GainNode} */
  let gain;
  /** @type {AudioBufferSourceNode | null} */
  let source = null;
  let began = 0;
  /** Keeps time where no sound comes out. @type {{began: number, over: ReturnType<typeof setTimeout>} | null} */
  let quiet = null;

  function open() {
    context = new AudioContext({ sampleRate: RATE_HZ, latencyHint: 'interactive' });
    gain = context.createGain();
    gain.connect(context.destination);
    // A call, or the lock screen, may interrupt it; its clock stands meanwhile, so the beat goes on where it was
    context.addEventListener('statechange', () => source && onState(context?.state === 'running' ? 'playing' : 'interrupted'));
    document.addEventListener('visibilitychange', () => !document.hidden && source && resume());
    return context;
  }

  /** Without a way out for sound a resume never settles. @returns {Promise<boolean>} */
  const silence = () => new Promise((resolve) => setTimeout(() => resolve(false), PATIENCE_MS));

  /** The row without its sound, for the picture and the hand. @param {Tempo} tempo */
  function keepTime(tempo) {
    const over = setTimeout(stop, 1000 * (AHEAD_S + tempo.total_s));
    quiet = { began: performance.now() / 1000 + AHEAD_S, over };
    onState('silent');
  }

  /** During a call a phone may refuse; what the page says of it stays. */
  const resume = async () => void (await context?.resume().catch(() => {}));

  function stop() {
    if (quiet) {
      clearTimeout(quiet.over);
      quiet = null;
      onState('off');
    }
    if (!source) return;
    source.onended = null;
    source.stop();
    source = null;
    onState('off');
  }

  return {
    /** From a touch only: browsers allow no sound before. @param {Tempo} tempo @param {number} volume 0 to 1 */
    async play(tempo, volume) {
      stop();
      const playing = context ?? open();
      gain.gain.value = volume;
      // Goes on behind a lock screen where the system allows it; a chime alone heeds the phone's silent switch
      if ('audioSession' in navigator) /** @type {any} */ (navigator).audioSession.type = 'playback';
      if (!(await Promise.race([playing.resume().then(() => true), silence()]))) return keepTime(tempo);
      began = playing.currentTime + AHEAD_S;
      source = schedule(playing, tempo, gain, began);
      source.onended = () => {
        source = null;
        onState('off');
      };
      onState('playing');
    },
    stop,
    resume,
    /** When the row began, on the page's clock, as it left the app; null where nothing is heard. */
    began_s() {
      if (!source || !context) return null;
      const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp?.() ?? {};
      return performanceTime
        ? performanceTime / 1000 + began - contextTime
        : performance.now() / 1000 + began - context.currentTime;
    },
    /** From a touch, so that a chime may sound later. */
    ready: async () => void (await (context ?? open()).resume().catch(() => {})),
    /** A block is over. @param {number} volume 0 to 1 */
    chime(volume) {
      if (context?.state !== 'running') return;
      const notes = new AudioBufferSourceNode(context, { buffer: bufferOf(context, render(CHIME, context.sampleRate)) });
      notes.connect(new GainNode(context, { gain: volume })).connect(context.destination);
      notes.start();
    },
    /** @param {number} volume 0 to 1 */
    setVolume: (volume) => context && gain.gain.setTargetAtTime(volume, context.currentTime, 0.01),
    /**
     * Seconds since the first beat, as the ear has it: what left the page is heard later.
     * @param {number} delay_s of headphones
     */
    heard: (delay_s) =>
      quiet
        ? performance.now() / 1000 - quiet.began
        : source && context
          ? context.currentTime - (context.outputLatency || context.baseLatency || 0) - delay_s - began
          : null,
  };
}

/** @typedef {ReturnType<typeof createSound>} Sound */
