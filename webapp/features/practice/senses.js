/**
 * What a touch can do where feet and eye are practised: trials of what was felt or guessed, against what it is.
 * @import {App} from '../../app.js'
 * @import {Calibration, Fall, PracticePage} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { today } from '../../format.js';
import { takenSlope, withSlope } from '../../parts/slope-taken.js';
import { typed } from '../../parts/typed.js';
import { undoable } from '../../parts/undo.js';
import { SENSES } from './fields.js';
import { asFelt } from './questions.js';

/** @param {App} app */
export function senseActions({ store, record }) {
  const { keep, undo } = undoable({ store, record });
  /** @param {string} action @param {Partial<PracticePage>} patch */
  const set = (action, patch) =>
    store.change(action, { practicePage: { ...store.state.practicePage, ...patch }, problem: null });
  /** @param {string} words @param {Partial<Calibration>} patch @param {Partial<PracticePage>} [also] */
  const keepTrials = (words, patch, also = {}) =>
    keep(
      words,
      { calibration: { ...store.state.calibration, ...patch } },
      { practicePage: { ...store.state.practicePage, ...also } },
    );

  return {
    undo,
    /** @param {Fall} fall */
    falls: (fall) => set('falls', { fall }),
    /** @param {string} name @param {string} text */
    enterSensed(name, text) {
      const { practicePage, settings } = store.state;
      const field = pick(SENSES, name);
      const { [name]: _, ...draft } = practicePage.draft;
      if (!text.trim()) return set(`empty ${name}`, { draft });
      const value = typed(store, name, text, field, field.unit(settings));
      if (value !== undefined) set(`enter ${name}`, { draft: { ...draft, [name]: value } });
    },
    takeFelt() {
      const { answers, practicePage } = store.state;
      const { felt } = answers;
      const putt = asFelt(store.state);
      if (!felt || !putt) return;
      const { asked, ...value } = felt;
      const slope = { slope_percent: felt.slope_percent, fall_deg: putt.fall_deg ?? 0 };
      const taken = takenSlope(store, slope, 'felt', felt.slope_sd_percent);
      if (taken)
        keep('As felt and corrected, in the read.', {
          putt: withSlope(store.state.putt, taken),
          felt: { ...value, felt_percent: asked.felt_percent, fall: practicePage.fall },
        });
    },
    addTrial() {
      const { practicePage, calibration } = store.state;
      const { felt_percent, measured_percent, ...draft } = practicePage.draft;
      if (felt_percent === undefined || measured_percent === undefined) return;
      const trial = { felt_percent, measured_percent, fall: practicePage.fall, date: today() };
      keepTrials('Trial kept.', { feet: [...calibration.feet, trial] }, { draft });
    },
    guess() {
      const {
        answers: { look },
        practicePage: { draft: typed, fall },
        calibration,
      } = store.state;
      const { guess_percent, ...draft } = typed;
      if (!look || guess_percent === undefined) return;
      const trial = { felt_percent: guess_percent, measured_percent: look.slope_percent, fall: look.fall, date: today() };
      // a fall seen the wrong way is a slope of the other sign, which the eye's bias does not hold
      const guessed = { ...trial, fall };
      if (fall === look.fall) keepTrials('Guess kept.', { eye: [...calibration.eye, trial] }, { guessed, draft });
      else set('guess the wrong way', { guessed, draft });
    },
    nextLook: () => set('next look', { case: store.state.practicePage.case + 1, guessed: null }),
    /** @param {'feet' | 'eye'} which */
    clearTrials: (which) => keepTrials('Trials cleared.', { [which]: [] }),
  };
}
