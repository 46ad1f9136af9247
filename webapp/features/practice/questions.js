/**
 * What the practice screen asks of the engine.
 * @import {Question} from '../../questions.js'
 * @import {Drill, Practice, Putt, State, Trial} from '../../types.js'
 */
import { plain } from '../../doubt.js';

/** The gate a foot ahead of the ball. */
export const GATE_AT_M = 0.3048;
/** Any gap: the one that matches the player does not hang on it. */
const SOME_GAP_M = 0.06;

const shown = (/** @type {State} */ { screen }) => screen === 'practice';
/** @param {string} page */
const on = (page) => (/** @type {State} */ state) => shown(state) && state.practicePage.page === page;

/** The drill on the screen, while its figures are shown. @param {Drill['picture']} picture */
const pictured = (picture) => (/** @type {State} */ state) => {
  const { practice, practicePage } = state;
  const { page, drills } = practicePage;
  const id = page === 'run' && practice.run ? practice.blocks[practice.run.block]?.drill : practicePage.drill;
  const open = page === 'drill' || page === 'run' || (page === 'strip' && picture === 'arc');
  return shown(state) && open && drills.find((drill) => drill.id === id)?.picture === picture;
};

/** What a plan is made of. @param {Practice} practice */
export const planFields = ({ minutes, place, at_hand, weights }) => ({ minutes, place, at_hand, weights });

/** Whether the blocks are the plan of what the screen says. @param {Practice} practice */
export const isPlanned = (practice) =>
  practice.blocks.length > 0 && JSON.stringify(practice.planned) === JSON.stringify(planFields(practice));

/** @param {State} state */
const gateFields = ({ putt: { stimp_ft }, player }) => ({
  at_m: GATE_AT_M,
  stimp_ft,
  player,
  posts: /** @type {const} */ ('balls'),
});

/** @param {Trial[]} trials */
const tried = (trials) => trials.map(({ felt_percent, measured_percent, fall }) => ({ felt_percent, measured_percent, fall }));

/** Where the green runs down to, for one who faces the hole. */
const FALL_DEG = { toes: 0, right: 90, heels: 180, left: 270 };

/** The putt in hand as the feet have it. @param {State} state @returns {Putt | null} */
export function asFelt({ putt, practicePage, answers: { felt } }) {
  const { stations: _, survey: __, ...rest } = putt;
  return felt ? { ...rest, slope_percent: felt.slope_percent, fall_deg: FALL_DEG[practicePage.fall] } : null;
}

/** @param {State} state @param {number | undefined} sd */
function windowOf(state, sd) {
  const putt = asFelt(state);
  return putt && sd !== undefined ? { ...plain(putt), player: { ...state.player, slope_sd_percent: sd } } : null;
}

/** @type {Question[]} */
export const questions = [
  {
    into: 'drills',
    ask: 'drills',
    when: shown,
    fields: () => ({}),
    lands: ({ drills }, _, { practicePage }) => ({ practicePage: { ...practicePage, drills } }),
  },
  {
    into: 'plan',
    ask: 'plan',
    // a session that has begun keeps the plan it began with
    when: (state) => shown(state) && !state.practice.run,
    fields: ({ practice }) => (isPlanned(practice) ? null : planFields(practice)),
    // one that was on its way when a drill was begun by itself comes too late
    lands: ({ blocks }, planned, { practice, refusals }) =>
      practice.run ? {} : { practice: { ...practice, blocks, planned }, refusals: { ...refusals, plan: undefined } },
  },
  {
    into: 'tempo',
    ask: 'tempo',
    when: shown,
    fields: ({ practice: { tempo } }) => {
      const { forward_s, ratio, rest_s, strokes } = tempo;
      return { forward_s, ratio, rest_s, strokes };
    },
  },
  {
    into: 'matchingGate',
    ask: 'gate',
    when: pictured('gate'),
    fields: (state) => ({ ...gateFields(state), gap_m: SOME_GAP_M }),
  },
  {
    into: 'gate',
    ask: 'gate',
    when: pictured('gate'),
    fields: (state) => {
      const gap_m = state.practice.gap_m ?? state.answers.matchingGate?.matching_gap_m;
      return gap_m === undefined ? null : { ...gateFields(state), gap_m };
    },
  },
  {
    into: 'ballLine',
    ask: 'ball_line',
    when: pictured('ball_line'),
    fields: ({ putt, player }) => ({ ...plain(putt), player }),
  },
  {
    into: 'eyes',
    ask: 'eyes',
    when: pictured('eyes'),
    fields: ({ practice, putt: { distance_m } }) => ({ left_m: practice.eyes_m, distance_m }),
  },
  {
    into: 'paces',
    ask: 'paces',
    when: pictured('heard'),
    follows: true,
    fields: ({ practice: { run } }) => run?.heard ?? null,
  },
  {
    into: 'block',
    ask: 'block',
    // the watch shows the session that it counts for
    when: ({ screen, practice }) => (screen === 'practice' || screen === 'watch') && practice.run !== null,
    follows: true,
    fields: ({ practice: { run } }) => (run?.strikes?.length ? { strikes: run.strikes } : null),
  },
  {
    into: 'week',
    ask: 'week',
    when: on('week'),
    fields: ({ practice: { week } }) => (week.first_tee ? { first_tee: week.first_tee, days_before: week.days_before } : null),
  },
  { into: 'shim', ask: 'shim', when: pictured('shim'), fields: () => ({ apart_m: 0.3 }) },
  {
    into: 'arc',
    ask: 'arc',
    when: pictured('arc'),
    fields: ({ practice: { lie_deg, length_m, above_grip_m } }) => ({ lie_deg, length_m, above_grip_m }),
  },
  {
    into: 'strokeLength',
    ask: 'stroke_length',
    when: on('length'),
    fields: ({ practice: { strokes }, read }) =>
      strokes.length > 2 && read ? { strokes, launch_mps: read.value.launch_mps } : null,
  },
  { into: 'feet', ask: 'feel', when: on('feet'), fields: ({ calibration }) => ({ trials: tried(calibration.feet) }) },
  { into: 'eye', ask: 'feel', when: on('eye'), fields: ({ calibration }) => ({ trials: tried(calibration.eye) }) },
  {
    into: 'felt',
    ask: 'felt',
    when: on('feet'),
    fields: ({ calibration, practicePage: { draft, fall } }) =>
      draft.felt_percent === undefined ? null : { trials: tried(calibration.feet), felt_percent: draft.felt_percent, fall },
  },
  {
    into: 'asFelt',
    ask: 'window',
    when: on('feet'),
    fields: (state) => windowOf(state, state.answers.felt?.slope_sd_percent),
  },
  { into: 'ifSure', ask: 'window', when: on('feet'), fields: (state) => windowOf(state, 0) },
  { into: 'look', ask: 'look', when: on('eye'), fields: ({ practicePage }) => ({ case: practicePage.case }) },
];
