/**
 * What a touch on the green's screen can do. Whatever is kept can be undone with one touch.
 * @import {App} from '../../app.js'
 * @import {GreenPage, Calibration, NoteEntry, Slope, State} from '../../types.js'
 */
import { createTilt } from '../../device/tilt.js';
import { clocked, DAYS_SD_FT, TOLD_SD_FT, withSpeed } from '../../doubt.js';
import { dayOf, doesNotFit, fromText, today } from '../../format.js';
import { intoRead } from '../../parts/slope-taken.js';
import { undoable } from '../../parts/undo.js';
import { FIELDS } from './fields.js';

/** A phone that has lain this long, s, has settled. */
export const SETTLED_S = 2;

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<GreenPage>} patch */
  const set = (action, patch) => store.change(action, { greenPage: { ...store.state.greenPage, ...patch }, problem: null });
  const { keep, undo } = undoable({ store, record });
  const tilt = createTilt((tilt) => store.change('tilt', { greenPage: { ...store.state.greenPage, tilt } }));

  /** @param {string} words @param {Partial<Calibration>} patch @param {Partial<GreenPage>} [also] */
  const keepCalibration = (words, patch, also = {}) =>
    keep(
      words,
      { calibration: { ...store.state.calibration, ...patch } },
      { greenPage: { ...store.state.greenPage, ...also } },
    );

  /** Into the read, and to it where it sent here. @param {string} words @param {Partial<State>} patch @param {string} [entry] that came */
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
      keepCalibration(`Phone zeroed${differ}.`, { phone: { bias_deg, date: today() } }, { zero: null });
    } catch (error) {
      set('refuse zero', { zero: { turns: zero.turns, readings: [], problem: /** @type {Error} */ (error).message } });
    }
  }

  /** The putt in hand on a green of a kept speed, which of another day tells less. @param {NoteEntry & {stimp_ft: number}} speed */
  function atSpeed({ stimp_ft, stimp_sd_ft, stimp_source, at }) {
    const { putt } = store.state;
    const told = Number(stimp_ft.toFixed(1));
    if (dayOf(at) === today())
      return stimp_source && stimp_sd_ft !== undefined
        ? { ...putt, ...clocked(told, stimp_source, stimp_sd_ft) }
        : withSpeed(putt, told);
    return { ...putt, ...clocked(told, 'kept', Math.hypot(stimp_sd_ft ?? TOLD_SD_FT, DAYS_SD_FT)) };
  }

  return {
    undo,
    /** @param {GreenPage['part']} part */
    show: (part) => store.change('show part', { greenPage: { ...store.state.greenPage, part }, undo: null, problem: null }),
    /** @param {Partial<GreenPage>} patch */
    choose: (patch) => set('choose', patch),
    /** @param {string} name @param {string} text */
    enter(name, text) {
      const { greenPage, settings } = store.state;
      const { label, low, high, unit } = FIELDS[name];
      const value = fromText(text, unit(settings));
      if (!text.trim()) {
        const { [name]: _, ...draft } = greenPage.draft;
        if (name !== 'home_stimp_ft' && name !== 'eye_m') return set(`empty ${name}`, { draft });
      }
      if (!(value >= low - 1e-9 && value <= high + 1e-9)) {
        store.change(`refuse ${name}`, {
          problem: { field: name, text, message: doesNotFit(label, text, low, high, unit(settings)) },
        });
      } else if (name === 'home_stimp_ft') {
        keepCalibration('Speed at home changed.', { home_stimp_ft: value });
      } else {
        set(`enter ${name}`, { draft: { ...greenPage.draft, [name]: value } });
      }
    },

    startLevel: () => tilt.start(),
    stopLevel: () => tilt.stop(),
    /** @param {Slope} slope @param {number} sd @param {number} [station] */
    take(slope, sd, station) {
      const taken = intoRead(store, slope, 'level', sd, station);
      if (taken)
        into(station === undefined ? 'The slope is in the read.' : `Place ${station + 1} is in the read.`, {
          ...taken,
          felt: null,
        });
    },

    /** @param {number[]} turns */
    startZero(turns) {
      tilt.again();
      set('start zero', { zero: { turns, readings: [], problem: '' } });
    },
    stopZero: () => set('stop zero', { zero: null }),
    holdZero() {
      const { zero, tilt: shown } = store.state.greenPage;
      if (!zero || shown.kind !== 'live') return;
      const done = new Set(zero.readings.map(({ turned_deg }) => turned_deg)).size;
      const next = {
        ...zero,
        problem: '',
        readings: [...zero.readings, ...shown.readings.map((reading) => ({ ...reading, turned_deg: zero.turns[done] }))],
      };
      tilt.again();
      if (done + 1 < zero.turns.length) set('hold position', { zero: next });
      else void endZero(next);
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
        calibration,
      } = store.state;
      const roll = { distance_m, time_s, way };
      keepCalibration('Roll kept.', { rolls: [...calibration.rolls, roll] }, { draft, way: way === 'out' ? 'back' : 'out' });
    },
    /** @param {number} index */
    removeRoll: (index) =>
      keepCalibration('Roll removed.', { rolls: store.state.calibration.rolls.filter((_, i) => i !== index) }),
    clearRolls: () => keepCalibration('Rolls cleared.', { rolls: [] }),
    /** @param {Calibration['ball']} ball */
    setBall: (ball) => keepCalibration(ball === 'putted' ? 'The balls are putted.' : 'The balls are rolled by hand.', { ball }),
    /** @param {string} place */
    setPlace: (place) => keep('Place named.', { place: place.trim() }),
    /** @param {number} stimp_ft @param {{stimp_sd_ft: number, stimp_source: 'rolls' | 'stimpmeter'} | null} told null: by somebody */
    async keepSpeed(stimp_ft, told) {
      const { place, calibration: before } = store.state;
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
      if (await record.write([speed]))
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
}

/** @typedef {ReturnType<typeof actions>} GreenActions */
