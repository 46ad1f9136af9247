/**
 * Strikes against the beat that the headphones play: the levels of the microphone and the notes' moments to the engine.
 * @import {App} from '../../app.js'
 * @import {Sound} from '../../device/sound.js'
 * @import {PracticePage} from '../../types.js'
 */
import { openMicrophone, RATE_HZ, TWICE_MS } from '../../device/microphone.js';
import { pick } from '../../pick.js';
import { refusalWords } from '../../refusal.js';

const EVERY_MS = 2000;
/** Three cycles of the slowest usual tempo: so many notes tell the delay. */
const KEPT_S = 30;
/** What of a beat has to have been heard around it. */
const AROUND_S = 0.5;
/** A hand takes so long to bring the earpiece back to the ear: until then the microphone hears notes. */
const BACK_ON_S = 2.5;
const NOTES = ['start', 'top', 'impact'];

/** @param {App} app @param {Sound} sound */
export function beatActions({ store, engine }, sound) {
  /** @type {import('../../device/microphone.js').Microphone | null} */
  let open = null;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let asking;
  let waits = false;
  let stopped_ms = -Infinity;
  /** What was heard before are notes, s from the first level. */
  let notes_s = 0;

  /** @param {string} action @param {Partial<PracticePage>} patch */
  const turn = (action, patch) => store.change(action, { practicePage: { ...store.state.practicePage, ...patch } });

  const asks = () => store.state.practicePage.onBeat === 'asking';

  /** @param {string} [note] */
  function stop(note = '') {
    clearInterval(asking);
    open?.stop();
    open = null;
    turn('stop listening to the beat', { onBeat: 'off', note });
  }

  async function ask() {
    const { tempo } = store.state.answers;
    const { loop, offs_s } = store.state.practicePage;
    const left_s = sound.began_s();
    const listens = open;
    if (waits || !listens || !tempo || left_s === null) return;
    const { bands, from_s, count } = listens.levels();
    const began_s = left_s - listens.began_s() - from_s;
    const late_s = (loop?.delay_s ?? 0) + AROUND_S;
    const since_s = Math.max(0, loop ? notes_s - from_s : 0) + AROUND_S;
    // a strike that was told is told: by the clock of its own time
    const told = new Set(offs_s.map(([stroke]) => stroke));
    const near = tempo.events.flatMap(({ at_s, kind, stroke }) => {
      const note = { at_s: began_s + at_s, stroke };
      const wanted = loop ? kind === 'impact' && !told.has(stroke) : NOTES.includes(kind);
      return wanted && note.at_s > since_s && note.at_s + late_s < count / RATE_HZ ? [note] : [];
    });
    if (!near.length) return;
    waits = true;
    try {
      const answer = await engine.ask('on_beat', {
        bands,
        rate_hz: RATE_HZ,
        beats_s: near.map(({ at_s }) => at_s),
        ...(loop ?? { delay_s: null }),
        earlier_s: offs_s.map(([, off_s]) => off_s),
      });
      // what was asked before another delay was measured, or after it was given up, counts no more
      if (open === listens && store.state.practicePage.loop === loop) hear(answer, near, from_s + count / RATE_HZ);
    } catch (error) {
      if (open === listens) stop(refusalWords(/** @type {any} */ (error), store.state.settings));
    }
    waits = false;
  }

  /**
   * @param {import('../../engine/protocol.js').OnBeatAnswer} answer @param {{stroke: number}[]} near
   * @param {number} heard_s so far, from the first level
   */
  function hear({ delay_s, delay_sd_s, strikes, lean, spread }, near, heard_s) {
    const { loop, offs_s } = store.state.practicePage;
    if (!loop) {
      if (delay_s === null || delay_sd_s === null) return;
      notes_s = heard_s + BACK_ON_S;
      return turn('delay', { loop: { delay_s, delay_sd_s }, onBeat: 'on' });
    }
    const struck = strikes.map(({ beat, off_s }) => /** @type {[number, number]} */ ([pick(near, beat).stroke, off_s]));
    turn('strikes', { offs_s: [...offs_s, ...struck], beatHeard: { lean, spread } });
  }

  return {
    async listenToBeat() {
      if (store.state.practicePage.onBeat !== 'off') {
        stopped_ms = performance.now();
        return stop();
      }
      if (performance.now() - stopped_ms < TWICE_MS) return;
      turn('ask for the microphone', { onBeat: 'asking', note: '', offs_s: [], beatHeard: null });
      try {
        const listens = await openMicrophone({ kept_s: KEPT_S, onEnd: stop });
        if (!asks()) return listens.stop();
        open = listens;
        notes_s = 0;
        turn('listen to the beat', { onBeat: store.state.practicePage.loop ? 'on' : 'delay', note: listens.warning });
        asking = setInterval(ask, EVERY_MS);
      } catch (error) {
        turn('cannot listen', { onBeat: 'off', note: /** @type {Error} */ (error).message });
      }
    },
    stopOnBeat: () => stop(),
    /** Other headphones are late otherwise. */
    forgetDelay: () => turn('delay anew', { loop: null, offs_s: [], beatHeard: null, onBeat: 'delay' }),
  };
}
