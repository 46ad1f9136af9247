/**
 * Pace by ear: levels from the microphone to the engine, and what it heard back into the session.
 * @import {App} from '../../app.js'
 * @import {PracticePage, State} from '../../types.js'
 */
import { say } from '../../device/speech.js';
import { openMicrophone, RATE_HZ, TWICE_MS } from '../../device/microphone.js';
import { refusalWords } from '../../refusal.js';
import { paceWords } from './words.js';

const EVERY_MS = 1000;
/** The longest that is asked about at once: a few putts. */
const KEPT_S = 20;
/** After its last sound a putt is over. */
const OVER_S = 0.5;
/** Two reports of one strike agree so closely. */
const SAME_S = 0.1;
/** What counts as good, as a fraction of the length meant. */
export const WITHIN = 0.1;

/** What the engine is asked with the levels. @param {State} state */
export function heardFields({ practice: { ear } }) {
  const marks_m = ear.paper_m ? [ear.paper_m, ear.wall_m] : [ear.wall_m];
  const floor = ear.floor_ft === null ? { stimp_ft: null } : { stimp_ft: ear.floor_ft, stimp_sd_ft: ear.floor_sd_ft };
  return { rate_hz: RATE_HZ, marks_m, skid: /** @type {const} */ ('putted'), ...floor };
}

/** @param {App} app @param {Pick<ReturnType<typeof import('./run.js').runActions>, 'good' | 'bad' | 'heard'>} run */
export function listenActions({ store, engine }, run) {
  /** @type {import('../../device/microphone.js').Microphone | null} */
  let open = null;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let asking;
  let waits = false;
  let stopped_ms = -Infinity;
  /** When strikes were heard, s from the first level. @type {number[]} */
  let struck = [];

  /** @param {string} action @param {Partial<PracticePage>} patch */
  const turn = (action, patch) => store.change(action, { practicePage: { ...store.state.practicePage, ...patch } });

  const asks = () => store.state.practicePage.hearing === 'asking';

  async function ask() {
    const listens = open;
    if (waits || !listens) return;
    const { bands, from_s, count } = listens.levels();
    if (count < RATE_HZ) return;
    waits = true;
    try {
      const { strokes, stimp_ft } = await engine.ask('heard', { bands, ...heardFields(store.state) });
      // what was heard before belongs to another block
      if (open !== listens) return;
      for (const { impact_s, arrivals_s, roll_m, roll_sd_m } of strokes) {
        const at = from_s + impact_s;
        const over = Math.max(...arrivals_s) < count / RATE_HZ - OVER_S;
        if (over && struck.every((other) => Math.abs(other - at) > SAME_S)) hear(at, roll_m, roll_sd_m, stimp_ft);
      }
    } catch (error) {
      if (open === listens) stop(refusalWords(/** @type {any} */ (error), store.state.settings));
    } finally {
      waits = false;
    }
  }

  /** @param {number} at @param {number} roll_m @param {number} roll_sd_m @param {number | null} stimp_ft */
  function hear(at, roll_m, roll_sd_m, stimp_ft) {
    struck = [...struck, at];
    const { practice } = store.state;
    if (practice.run?.paused) return;
    const error = roll_m / practice.ear.meant_m - 1;
    if (stimp_ft) turn('heard the floor', { floorHeard_ft: stimp_ft });
    run.heard(roll_m, roll_sd_m);
    (Math.abs(error) <= WITHIN ? run.good : run.bad)();
    if (practice.spoken) say(paceWords(error));
  }

  /** @param {string} [note] */
  function stop(note = '') {
    clearInterval(asking);
    open?.stop();
    open = null;
    if (store.state.practicePage.hearing !== 'off') turn('stop listening', { hearing: 'off', note });
  }

  return {
    async listen() {
      if (store.state.practicePage.hearing !== 'off') {
        stopped_ms = performance.now();
        return stop();
      }
      if (performance.now() - stopped_ms < TWICE_MS) return;
      turn('ask for the microphone', { hearing: 'asking', note: '' });
      try {
        struck = [];
        const listens = await openMicrophone({ kept_s: KEPT_S, onEnd: stop });
        // nobody listens who has gone elsewhere while the phone asked
        if (!asks()) return listens.stop();
        open = listens;
        turn('listen', { hearing: 'on', note: listens.warning });
        asking = setInterval(ask, EVERY_MS);
      } catch (error) {
        turn('cannot listen', { hearing: 'off', note: /** @type {Error} */ (error).message });
      }
    },
    stopListening: () => stop(),
  };
}
