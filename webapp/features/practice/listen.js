/**
 * Pace by ear: levels from the microphone to the engine, and what it heard back into the session.
 * @import {App} from '../../app.js'
 * @import {PracticePage, State} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { say } from '../../device/speech.js';
import { openMicrophone } from '../../device/microphone.js';
import { refusalWords } from '../../refusal.js';
import { paceWords } from './words.js';

const RATE_HZ = 1000;
const EVERY_MS = 1000;
/** The longest that is asked about at once: a few putts. */
const KEPT_MS = 20_000;
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
  /** @type {{stop: () => void, warning: string} | null} */
  let open = null;
  /** @type {number[][]} */
  let bands = [];
  /** How many levels have gone by before those that are kept. */
  let before = 0;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let asking;
  let waits = false;
  /** When strikes were heard, s from the first level. @type {number[]} */
  let struck = [];

  /** @param {string} action @param {Partial<PracticePage>} patch */
  const turn = (action, patch) => store.change(action, { practicePage: { ...store.state.practicePage, ...patch } });

  const heard_ms = () => bands[0]?.length ?? 0;

  /** @param {number[][]} fresh */
  function onLevels(fresh) {
    bands = bands.map((band, i) => [...band, ...pick(fresh, i)]);
    const over = heard_ms() - KEPT_MS;
    if (over <= 0) return;
    bands = bands.map((band) => band.slice(over));
    before += over;
  }

  async function ask() {
    if (waits || !open || heard_ms() < RATE_HZ) return;
    waits = true;
    const [from, count] = [before, heard_ms()];
    try {
      const { strokes, stimp_ft } = await engine.ask('heard', { bands, ...heardFields(store.state) });
      for (const { impact_s, arrivals_s, roll_m, roll_sd_m } of strokes) {
        const at = from / RATE_HZ + impact_s;
        const over = Math.max(...arrivals_s) < count / RATE_HZ - OVER_S;
        if (over && struck.every((other) => Math.abs(other - at) > SAME_S)) hear(at, roll_m, roll_sd_m, stimp_ft);
      }
    } catch (error) {
      if (open) stop(refusalWords(/** @type {any} */ (error), store.state.settings));
    }
    waits = false;
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
      if (store.state.practicePage.hearing !== 'off') return stop();
      turn('ask for the microphone', { hearing: 'asking', note: '' });
      try {
        [bands, before, struck] = [[[], [], []], 0, []];
        open = await openMicrophone({ onLevels, onEnd: stop });
        turn('listen', { hearing: 'on', note: open.warning });
        asking = setInterval(ask, EVERY_MS);
      } catch (error) {
        turn('cannot listen', { hearing: 'off', note: /** @type {Error} */ (error).message });
      }
    },
    stopListening: () => stop(),
  };
}
