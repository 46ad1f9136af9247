/**
 * What a touch on the calibrate screen can do. Whatever is kept can be undone with one touch.
 * @import {App} from '../../app.js'
 * @import {Calibrating, Calibration, NoteEntry, Player, Putt, Slope, State} from '../../types.js'
 */
import { createTilt } from '../../device/tilt.js';
import { doesNotFit, fromText, withUnit } from '../../format.js';
import { asFelt } from './asks.js';
import { FIELDS } from './fields.js';

/** A phone that has lain this long, s, has settled. */
export const SETTLED_S = 2;
const STEEPEST_PERCENT = 8;

const today = () => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
};

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<Calibrating>} patch */
  const set = (action, patch) => store.change(action, { calibrating: { ...store.state.calibrating, ...patch }, problem: null });
  const tilt = createTilt((tilt) => store.change('tilt', { calibrating: { ...store.state.calibrating, tilt } }));

  /** Changes what lasts, and remembers how it was. @param {string} words @param {Partial<State>} patch @param {Partial<Calibrating>} [also] @param {string} [entry] that came or went */
  function keep(words, patch, also = {}, entry) {
    const before = Object.fromEntries(Object.keys(patch).map((name) => [name, store.state[/** @type {keyof State} */ (name)]]));
    store.change(words, {
      ...patch,
      calibrating: { ...store.state.calibrating, ...also, undo: { words, before, entry } },
      problem: null,
    });
  }
  /** @param {string} words @param {Partial<Calibration>} patch @param {Partial<Calibrating>} [also] */
  const keepCalibration = (words, patch, also) => keep(words, { calibration: { ...store.state.calibration, ...patch } }, also);

  /** @param {Slope} slope @param {number} sd @param {number | undefined} station @returns {{putt: Putt, player: Player} | null} */
  function intoRead({ slope_percent, fall_deg }, sd, station) {
    if (slope_percent > STEEPEST_PERCENT) {
      store.change('refuse steep', {
        problem: {
          field: 'take',
          text: '',
          message: `A read takes up to ${STEEPEST_PERCENT} %; this is ${withUnit(slope_percent, FIELDS.slope_percent.unit(store.state.settings))}.`,
        },
      });
      return null;
    }
    const { putt, player } = store.state;
    const slope = { slope_percent: Number(slope_percent.toFixed(1)), fall_deg: Math.round(fall_deg) };
    const { stations, ...rest } = putt;
    return {
      putt:
        stations && station !== undefined
          ? { ...rest, stations: stations.map((s, i) => (i === station ? { ...s, ...slope } : s)) }
          : { ...rest, ...slope },
      player: { ...player, slope_sd_percent: Number(Math.min(sd, 4).toFixed(2)) },
    };
  }

  /** @param {Calibrating['zero'] & object} zero */
  async function endZero(zero) {
    try {
      const { bias_deg, check } = await engine.ask('level', { readings: zero.held });
      const apart = check.apart_percent === null ? '' : `, positions ${check.apart_percent.toFixed(1)} % apart at most`;
      keepCalibration(`Phone zeroed${apart}.`, { phone: { bias_deg, date: today() } }, { zero: null });
    } catch (error) {
      set('refuse zero', { zero: { turns: zero.turns, held: [], problem: /** @type {Error} */ (error).message } });
    }
  }

  return {
    /** @param {Calibrating['part']} part */
    show: (part) => set('show part', { part, undo: null }),
    /** @param {Partial<Calibrating>} patch */
    choose: (patch) => set('choose', patch),
    undo() {
      const { undo } = store.state.calibrating;
      if (!undo) return;
      store.change('undo', { ...undo.before, calibrating: { ...store.state.calibrating, undo: null } });
      const entry = store.state.entries?.find(({ id }) => id === undo.entry);
      if (entry) void record.change(entry.id, { gone: entry.gone ? undefined : true });
    },
    /** @param {string} name @param {string} text */
    enter(name, text) {
      const { calibrating, settings } = store.state;
      const { label, low, high, unit } = FIELDS[name];
      const value = fromText(text, unit(settings));
      if (!text.trim()) {
        const { [name]: _, ...draft } = calibrating.draft;
        if (name !== 'home_stimp_ft' && name !== 'eye_m') return set(`empty ${name}`, { draft });
      }
      if (!(value >= low - 1e-9 && value <= high + 1e-9)) {
        store.change(`refuse ${name}`, {
          problem: { field: name, text, message: doesNotFit(label, text, low, high, unit(settings)) },
        });
      } else if (name === 'home_stimp_ft') {
        keepCalibration('Speed at home changed.', { home_stimp_ft: value });
      } else {
        set(`enter ${name}`, { draft: { ...calibrating.draft, [name]: value } });
      }
    },

    startLevel: () => tilt.start(),
    stopLevel: () => tilt.stop(),
    /** @param {Slope} slope @param {number} sd @param {number} [station] */
    take(slope, sd, station) {
      const taken = intoRead(slope, sd, station);
      if (taken)
        keep(station === undefined ? 'In the read.' : `In place ${station + 1} of the read.`, { ...taken, felt: null });
    },
    takeFelt() {
      const {
        answers: { felt },
        draft: { felt_percent },
        fall,
      } = store.state.calibrating;
      const putt = asFelt(store.state);
      const taken =
        felt &&
        putt &&
        intoRead({ slope_percent: felt.slope_percent, fall_deg: putt.fall_deg ?? 0 }, felt.slope_sd_percent, undefined);
      if (taken) keep('As felt and corrected, in the read.', { ...taken, felt: { ...felt, felt_percent, fall } });
    },

    /** @param {number[]} turns */
    startZero(turns) {
      tilt.again();
      set('start zero', { zero: { turns, held: [], problem: '' } });
    },
    stopZero: () => set('stop zero', { zero: null }),
    holdZero() {
      const { zero, tilt: shown } = store.state.calibrating;
      if (!zero || shown.kind !== 'live') return;
      const done = new Set(zero.held.map(({ turned_deg }) => turned_deg)).size;
      const next = {
        ...zero,
        problem: '',
        held: [...zero.held, ...shown.readings.map((held) => ({ ...held, turned_deg: zero.turns[done] }))],
      };
      tilt.again();
      if (done + 1 < zero.turns.length) set('hold position', { zero: next });
      else void endZero(next);
    },
    forgetZero: () => keepCalibration('Zero forgotten.', { phone: null }),

    /** The thumb on the big button: the ball leaves, the ball stops. */
    tap() {
      const { rolling, draft } = store.state.calibrating;
      const now = performance.now();
      if (rolling === null) set('ball leaves', { rolling: now });
      else set('ball stops', { rolling: null, draft: { ...draft, time_s: Number(((now - rolling) / 1000).toFixed(2)) } });
    },
    addRoll() {
      const {
        calibrating: {
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
    /** @param {number} stimp_ft @param {number | null} stimp_sd_ft */
    async keepSpeed(stimp_ft, stimp_sd_ft) {
      const { place } = store.state;
      const at = new Date().toISOString();
      const spread = stimp_sd_ft === null ? {} : { stimp_sd_ft };
      /** @type {NoteEntry} */
      const speed = {
        kind: 'note',
        id: crypto.randomUUID(),
        at,
        changed: at,
        place,
        text: '',
        stimp_ft: Number(stimp_ft.toFixed(2)),
        ...spread,
      };
      if (await record.write([speed]))
        keep('Kept, and in the read.', { putt: { ...store.state.putt, stimp_ft: Number(stimp_ft.toFixed(1)) } }, {}, speed.id);
    },
    /** @param {number} stimp_ft */
    useSpeed: (stimp_ft) => keep('In the read.', { putt: { ...store.state.putt, stimp_ft: Number(stimp_ft.toFixed(1)) } }),
    /** @param {number} stimp_ft */
    makeHome: (stimp_ft) => keepCalibration('Home it is.', { home_stimp_ft: stimp_ft }),
    /** @param {string} id */
    async removeSpeed(id) {
      if (await record.change(id, { gone: true })) keep('Speed removed.', {}, {}, id);
    },

    addTrial() {
      const {
        calibrating: {
          draft: { felt_percent, measured_percent, ...draft },
          fall,
        },
        calibration,
      } = store.state;
      keepCalibration(
        'Trial kept.',
        { feet: [...calibration.feet, { felt_percent, measured_percent, fall, date: today() }] },
        { draft },
      );
    },
    guess() {
      const {
        calibrating: {
          answers: { look },
          draft: { guess_percent, ...draft },
          fall,
        },
        calibration,
      } = store.state;
      if (!look || guess_percent === undefined) return;
      const trial = { felt_percent: guess_percent, measured_percent: look.slope_percent, fall: look.fall, date: today() };
      // a fall seen the wrong way is a slope of the other sign, which the eye's bias does not hold
      const right = fall === look.fall;
      const guessed = { ...trial, fall };
      if (right) keepCalibration('Guess kept.', { eye: [...calibration.eye, trial] }, { guessed, draft });
      else set('guess the wrong way', { guessed, draft });
    },
    nextLook: () => set('next look', { case: store.state.calibrating.case + 1, guessed: null }),
    /** @param {'feet' | 'eye'} which */
    clearTrials: (which) => keepCalibration('Trials cleared.', { [which]: [] }),
  };
}

/** @typedef {ReturnType<typeof actions>} CalibrateActions */
