/**
 * Keeps the screen's answers in step: each question is asked anew when what it says has changed.
 * @import {App} from '../../app.js'
 * @import {Asks} from '../../engine/protocol.js'
 * @import {Calibrated, Putt, State, Trial} from '../../types.js'
 */
import { distancesOf, SLOPES } from './card.js';
import { balls } from './fields.js';

/** @param {Trial[]} trials */
const plain = (trials) => trials.map(({ felt_percent, measured_percent, fall }) => ({ felt_percent, measured_percent, fall }));

/** Where the green runs down to, for one who faces the hole. */
export const FALL_DEG = { toes: 0, right: 90, heels: 180, left: 270 };

/** The putt in hand as the feet have it. @param {State} state @returns {Putt | null} */
export function asFelt({ putt, calibrating }) {
  const { felt } = calibrating.answers;
  const { stations: _, ...rest } = putt;
  return felt ? { ...rest, slope_percent: felt.slope_percent, fall_deg: FALL_DEG[calibrating.fall] } : null;
}

/** @param {State} state @param {number | undefined} sd */
function windowOf(state, sd) {
  const putt = asFelt(state);
  return putt && sd !== undefined ? { ...putt, player: { ...state.player, slope_sd_percent: sd } } : null;
}

/**
 * @template {keyof Calibrated} Into
 * @typedef {{into: Into, part: State['calibrating']['part'], name: keyof Asks & string, fields: (state: State) => object | null, flows?: boolean}} Question
 *   flows: what is asked changes all the time, and an answer of a moment ago is better than none
 */

/** @type {Question<keyof Calibrated>[]} */
const QUESTIONS = [
  {
    into: 'level',
    part: 'level',
    name: 'level',
    flows: true,
    fields: ({ calibrating: { tilt }, calibration: { phone } }) =>
      tilt.kind === 'live'
        ? { readings: tilt.readings.map((held) => ({ ...held, turned_deg: 0 })), ...(phone && { bias_deg: phone.bias_deg }) }
        : null,
  },
  {
    into: 'floor',
    part: 'level',
    name: 'floor',
    fields: ({
      calibrating: {
        answers: { level },
        draft,
      },
    }) =>
      level && level.slope_percent < 20
        ? { slope_percent: level.slope_percent, slope_sd_percent: level.slope_sd_percent, eye_m: draft.eye_m }
        : null,
  },
  {
    into: 'rolled',
    part: 'speed',
    name: 'roll_test',
    fields: ({ calibration: { rolls, ball }, settings }) =>
      rolls.length > 1 ? { rolls, skid: ball, measure: settings.distance === 'paces' ? 'paces' : 'tape' } : null,
  },
  {
    into: 'stimpmeter',
    part: 'speed',
    name: 'stimpmeter',
    fields: ({ calibrating: { draft } }) => {
      const [out_ft, back_ft] = [balls(draft, 'out'), balls(draft, 'back')];
      return out_ft.length && back_ft.length ? { out_ft, back_ft } : null;
    },
  },
  {
    into: 'translated',
    part: 'compare',
    name: 'translate',
    fields: ({ putt, calibration }) => ({ ...putt, home_stimp_ft: calibration.home_stimp_ft }),
  },
  {
    into: 'table',
    part: 'compare',
    name: 'table',
    fields: ({ putt, settings }) => ({
      stimp_ft: putt.stimp_ft,
      past_m: putt.past_m,
      distances_m: distancesOf(settings),
      slopes_percent: SLOPES,
    }),
  },
  { into: 'feet', part: 'feet', name: 'feel', fields: ({ calibration }) => ({ trials: plain(calibration.feet) }) },
  { into: 'eye', part: 'eye', name: 'feel', fields: ({ calibration }) => ({ trials: plain(calibration.eye) }) },
  {
    into: 'felt',
    part: 'feet',
    name: 'felt',
    fields: ({ calibration, calibrating: { draft, fall } }) =>
      draft.felt_percent === undefined ? null : { trials: plain(calibration.feet), felt_percent: draft.felt_percent, fall },
  },
  {
    into: 'asFelt',
    part: 'feet',
    name: 'window',
    fields: (state) => windowOf(state, state.calibrating.answers.felt?.slope_sd_percent),
  },
  { into: 'ifSure', part: 'feet', name: 'window', fields: (state) => windowOf(state, 0) },
  { into: 'look', part: 'eye', name: 'look', fields: ({ calibrating }) => ({ case: calibrating.case }) },
];

/** @param {App} app */
export function keepCalibrated({ store, engine }) {
  /** @type {Partial<Record<keyof Calibrated, string>>} */
  let asked = {};

  /** @param {keyof Calibrated} into @param {Partial<Calibrated>} answers @param {State['calibrating']['refusals']} refusals */
  const land = (into, answers, refusals) => {
    const { calibrating } = store.state;
    store.change(`answer ${into}`, {
      calibrating: {
        ...calibrating,
        answers: { ...calibrating.answers, [into]: undefined, ...answers },
        refusals: { ...calibrating.refusals, [into]: undefined, ...refusals },
      },
    });
  };

  /** @type {Set<keyof Calibrated>} */
  const waiting = new Set();

  /** One answer of a kind is waited for at a time; the next question is what the screen then says. @param {Question<keyof Calibrated>} question @param {State} state */
  async function ask(question, state) {
    const { into, name, fields, flows } = question;
    const request = fields(state);
    const said = JSON.stringify(request);
    if (waiting.has(into) || said === (asked[into] ?? 'null')) return;
    asked[into] = said;
    if (!request) return land(into, {}, {});
    waiting.add(into);
    const [answers, refusals] = await engine.ask(name, /** @type {any} */ (request)).then(
      (value) => [{ [into]: value }, {}],
      ({ code, message }) => [{}, { [into]: { code, message } }],
    );
    waiting.delete(into);
    if (flows || JSON.stringify(fields(store.state)) === said) land(into, answers, refusals);
    else void ask(question, store.state);
  }

  store.subscribe((state, before) => {
    if (state.screen !== 'calibrate') return;
    if (state.engine.kind === 'ready' && before.engine.kind !== 'ready' && state.restarted) asked = {};
    for (const question of QUESTIONS) if (question.part === state.calibrating.part) void ask(question, state);
  });
}
