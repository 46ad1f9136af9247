/**
 * What a touch on the green's screen can do. Whatever is kept can be undone with one touch.
 * @import {App} from '../../app.js'
 * @import {GreenPage, Calibration, NoteEntry, Slope, State} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { createTilt } from '../../device/tilt.js';
import { clocked, DAYS_SD_FT, TOLD_SD_FT, withSpeed } from '../../doubt.js';
import { dayOf, distanceUnit, today, withUnit } from '../../format.js';
import { takenSlope, withSlope } from '../../parts/slope-taken.js';
import { typed } from '../../parts/typed.js';
import { undoable } from '../../parts/undo.js';
import { FIELDS } from './fields.js';
import { withPlace } from './places.js';
import { rollsHere } from './rolls.js';
import { held, isTurned, tellsTurns } from './turning.js';

/** A phone that has lain this long, s, has settled. */
export const SETTLED_S = 2;
const FROM_THE_FIRST = { readings: [], alphas: [], there: false, problem: '' };
/** What was typed of a speed that is kept now. */
const OF_A_SPEED = /^(out|back)\d$|^stimp_ft$/;

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<GreenPage>} patch */
  const set = (action, patch) => store.change(action, { greenPage: { ...store.state.greenPage, ...patch }, problem: null });
  const { keep, undo } = undoable({ store, record });
  /** A speed is on its way into the record. */
  let keeping = false;
  const tilt = createTilt((tilt) => store.change('tilt', { greenPage: { ...store.state.greenPage, tilt } }));

  /** @param {string} words @param {Partial<Calibration>} patch @param {Partial<GreenPage>} [also] */
  const keepCalibration = (words, patch, also = {}) =>
    keep(
      words,
      { calibration: { ...store.state.calibration, ...patch } },
      { greenPage: { ...store.state.greenPage, ...also } },
    );

  /**
   * Into the read, and to it where it sent here.
   * @param {string} words @param {Partial<State>} patch @param {string} [entry] that came
   */
  function into(words, patch, entry) {
    const { greenPage } = store.state;
    keep(words, patch, { greenPage: { ...greenPage, sent: false } }, entry, greenPage.sent ? 'read' : 'green');
    if (greenPage.sent) location.hash = 'read';
  }

  /** @param {GreenPage['zero'] & object} zero */
  async function endZero(zero) {
    try {
      const { bias_deg, check } = await engine.ask('level', { readings: zero.readings });
      const differ = check.apart_percent === null ? '' : `, positions ${check.apart_percent.toFixed(1)} % apart at most`;
      const back = { alpha_deg: tellsTurns(zero) ? (zero.alphas[0] ?? null) : null };
      const phone = { bias_deg, date: new Date().toISOString() };
      tilt.again();
      keepCalibration(`Phone zeroed${differ}.`, { phone }, { zero: null, back });
    } catch (error) {
      set('refuse zero', { zero: { ...FROM_THE_FIRST, turns: zero.turns, problem: /** @type {Error} */ (error).message } });
    }
  }

  /**
   * The putt in hand on a green of a kept speed, which of another day tells less.
   * @param {NoteEntry & {stimp_ft: number}} speed
   */
  function atSpeed({ stimp_ft, stimp_sd_ft, stimp_source, at }) {
    const { putt } = store.state;
    const told = Number(stimp_ft.toFixed(1));
    if (dayOf(at) === today())
      return stimp_source && stimp_sd_ft !== undefined
        ? { ...putt, ...clocked(told, stimp_source, stimp_sd_ft) }
        : withSpeed(putt, told);
    return { ...putt, ...clocked(told, 'kept', Math.hypot(stimp_sd_ft ?? TOLD_SD_FT, DAYS_SD_FT)) };
  }

  const act = {
    undo,
    /** @param {GreenPage['part']} part */
    show: (part) => store.change('show part', { greenPage: { ...store.state.greenPage, part }, undo: null, problem: null }),
    /** @param {Partial<GreenPage>} patch */
    choose: (patch) => set('choose', patch),
    /** @param {string} name @param {string} text */
    enter(name, text) {
      const { greenPage, settings } = store.state;
      const field = pick(FIELDS, name);
      const { [name]: _, ...draft } = greenPage.draft;
      if (!text.trim() && name !== 'home_stimp_ft' && name !== 'eye_m') return set(`empty ${name}`, { draft });
      const value = typed(store, name, text, field, field.unit(settings));
      if (value === undefined) return;
      if (name === 'home_stimp_ft') keepCalibration('Speed at home changed.', { home_stimp_ft: value });
      else set(`enter ${name}`, { draft: { ...draft, [name]: value } });
    },

    startLevel: () => tilt.start(),
    stopLevel: () => tilt.stop(),
    /** As the putt's one slope. @param {Slope} slope @param {number} sd */
    take(slope, sd) {
      const taken = takenSlope(store, slope, 'level', sd);
      if (taken) into('The slope is in the read.', { putt: withSlope(store.state.putt, taken), felt: null });
    },
    /** At a place along the line. @param {Slope} slope @param {number} sd @param {number} at_m */
    takeAt(slope, sd, at_m) {
      const { putt, settings, greenPage } = store.state;
      const unit = distanceUnit(settings);
      const taken = takenSlope(store, slope, 'level', sd);
      if (!taken) return;
      if (at_m > putt.distance_m) {
        const message = `The hole is ${withUnit(putt.distance_m, unit)} away; ${withUnit(at_m, unit)} is past it.`;
        return store.change('refuse place', { problem: { field: 'take', text: '', message } });
      }
      const { at_m: _, ...draft } = greenPage.draft;
      set('placed', { draft });
      const next = withPlace(putt, taken, at_m);
      into(`The slope at ${withUnit(at_m, unit)} is in the read.`, { putt: next, felt: null, station: 0 });
    },

    /** @param {number[]} turns */
    startZero(turns) {
      tilt.again();
      set('start zero', { zero: { ...FROM_THE_FIRST, turns }, back: null });
      if (store.state.greenPage.tilt.kind === 'off') void tilt.start();
    },
    stopZero: () => set('stop zero', { zero: null }),
    holdZero() {
      const { zero, tilt: shown } = store.state.greenPage;
      if (!zero || shown.kind !== 'live') return;
      const turned_deg = pick(zero.turns, held(zero));
      const next = {
        ...zero,
        problem: '',
        there: false,
        alphas: [...zero.alphas, shown.alpha_deg],
        readings: [...zero.readings, ...shown.readings.map((reading) => ({ ...reading, turned_deg }))],
      };
      tilt.again();
      if (held(next) < zero.turns.length) set('hold position', { zero: next });
      else void endZero(next);
    },
    /** What the phone tells of its turning, followed while it is zeroed. */
    followTurning() {
      const { greenPage, refusals } = store.state;
      const { zero, back, tilt: shown } = greenPage;
      if (shown.kind !== 'live') return;
      if (back && isTurned(back.alpha_deg, shown.alpha_deg, 0)) return act.turnedBack();
      const first = zero?.alphas[0] ?? null;
      if (!zero || first === null || held(zero) === zero.turns.length) return;
      const there = isTurned(first, shown.alpha_deg, pick(zero.turns, held(zero))) === true;
      if (there && !zero.there) tilt.again();
      if (there !== zero.there) return set('turned', { zero: { ...zero, there } });
      if (there && shown.seconds >= SETTLED_S && !refusals.level) act.holdZero();
    },
    turnedBack() {
      tilt.again();
      set('turned back', { back: null });
    },
    forgetZero: () => keepCalibration('Zero forgotten.', { phone: null }),

    /** The thumb on the big button: the ball leaves, the ball stops. */
    tap() {
      const { rolling, draft } = store.state.greenPage;
      const now = performance.now();
      if (rolling === null) set('ball leaves', { rolling: now });
      else set('ball stops', { rolling: null, draft: { ...draft, time_s: Number(((now - rolling) / 1000).toFixed(2)) } });
    },
    addRoll() {
      const {
        greenPage: {
          draft: { time_s, distance_m, ...draft },
          way,
        },
        place,
      } = store.state;
      const roll = { distance_m, time_s, way, place, date: new Date().toISOString() };
      keepCalibration(
        'Roll kept.',
        { rolls: [...rollsHere(store.state), roll] },
        { draft, way: way === 'out' ? 'back' : 'out' },
      );
    },
    /** @param {number} index */
    removeRoll: (index) => keepCalibration('Roll removed.', { rolls: rollsHere(store.state).filter((_, i) => i !== index) }),
    clearRolls: () => keepCalibration('Rolls cleared.', { rolls: [] }),
    /** @param {Calibration['ball']} ball */
    setBall: (ball) => keepCalibration(ball === 'putted' ? 'The balls are putted.' : 'The balls are rolled by hand.', { ball }),
    /** @param {string} place */
    setPlace(place) {
      const { calibration, place: before } = store.state;
      // rolled before the place was named, they are of this one
      const rolls = before ? calibration.rolls : rollsHere(store.state).map((roll) => ({ ...roll, place: place.trim() }));
      keep('Place named.', { place: place.trim(), calibration: { ...calibration, rolls } });
    },
    /**
     * @param {number} stimp_ft
     * @param {{stimp_sd_ft: number, stimp_source: 'rolls' | 'stimpmeter'} | null} told null: by somebody
     */
    async keepSpeed(stimp_ft, told) {
      if (keeping) return;
      keeping = true;
      const { place, calibration: before, greenPage } = store.state;
      const at = new Date().toISOString();
      // what is kept has been made of them; the next speed has rolls of its own
      const calibration = told?.stimp_source === 'rolls' ? { ...before, rolls: [] } : before;
      /** @type {NoteEntry & {stimp_ft: number}} */
      const speed = {
        kind: 'note',
        id: crypto.randomUUID(),
        at,
        changed: at,
        place,
        text: '',
        stimp_ft: Number(stimp_ft.toFixed(2)),
        ...told,
      };
      const written = await record.write([speed]);
      keeping = false;
      if (!written) return;
      const draft = Object.fromEntries(Object.entries(greenPage.draft).filter(([name]) => !OF_A_SPEED.test(name)));
      set('measured', { draft });
      into('The speed is kept, and in the read.', { putt: atSpeed(speed), calibration }, speed.id);
    },
    /** @param {NoteEntry & {stimp_ft: number}} speed */
    useSpeed: (speed) => into('The speed is in the read.', { putt: atSpeed(speed) }),
    /** @param {number} stimp_ft */
    makeHome: (stimp_ft) => keepCalibration('Home it is.', { home_stimp_ft: stimp_ft }),
    /** @param {string} id */
    async removeSpeed(id) {
      if (await record.change(id, { gone: true })) keep('Speed removed.', {}, {}, id);
    },
  };
  return act;
}

/** @typedef {ReturnType<typeof actions>} GreenActions */
