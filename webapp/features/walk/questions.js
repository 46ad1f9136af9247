/**
 * What the walked green asks of the engine.
 * @import {Question} from '../../questions.js'
 * @import {Answers, State, WalkPage} from '../../types.js'
 */
import { measured } from '../../doubt.js';
import { rangeOf } from '../../fields.js';
import { smallUnit } from '../../format.js';
import { greenOf, isPlaced, placedOf, speedToday, surveyOf } from './greens.js';

/** A putt is found that is as long and as steep as wanted within these. */
const ABOUT = { distance_m: 0.1, slope_percent: 0.3 };

/** @param {...WalkPage['page']} pages */
const on =
  (...pages) =>
  (/** @type {State} */ { screen, walkPage }) =>
    screen === 'walk' && pages.includes(walkPage.page);

/** What is asked of ball and hole on the map. @param {State} state */
function placedFields(state) {
  const survey = surveyOf(greenOf(state));
  const placed = survey && placedOf(state);
  return placed ? { survey: { ...survey, ...placed } } : null;
}

/**
 * The putt on the map is the putt in hand, at today's speed.
 * @param {Answers['placed']} value @param {{survey: NonNullable<State['putt']['survey']>}} asked @param {State} state
 * @returns {Partial<State>}
 */
function inHand({ distance_m, stations, sd_percent }, { survey }, state) {
  const { stimp_ft, stimp_source, stimp_sd_ft, past_m } = state.putt;
  const green = greenOf(state);
  const speed = (green && speedToday(state, green.place)) ?? { stimp_ft, ...(stimp_source && { stimp_source, stimp_sd_ft }) };
  const sure = stations.map(({ at_m, ...slope }) => ({ at_m, ...measured(slope, 'surveyed', sd_percent) }));
  return {
    putt: { distance_m, ...speed, past_m, stations: sure, survey },
    felt: null,
    station: 0,
    refusals: { ...state.refusals, placed: undefined },
  };
}

/** @param {number} value @param {number} about @param {{low: number, high: number}} range @returns {[number, number]} */
const between = (value, about, { low, high }) => [Math.max(low, value - about), Math.min(high, value + about)];

/** @type {Question[]} */
export const questions = [
  {
    into: 'laid',
    ask: 'level',
    when: on('walk'),
    follows: true,
    fields: ({ walkPage: { tilt }, calibration: { phone } }) =>
      tilt.kind === 'live'
        ? { readings: tilt.readings.map((each) => ({ ...each, turned_deg: 0 })), ...(phone && { bias_deg: phone.bias_deg }) }
        : null,
  },
  {
    into: 'survey',
    ask: 'survey',
    when: (state) => on('map', 'readings')(state) || (on('walk')(state) && state.walkPage.tilt.kind !== 'live'),
    on: (state) => [greenOf(state), state.settings],
    fields(state) {
      const survey = surveyOf(greenOf(state));
      return survey && { ...survey, height_unit_m: smallUnit(state.settings).si };
    },
  },
  {
    into: 'placed',
    ask: 'survey_stations',
    when: on('map'),
    on: (state) => [greenOf(state), state.walkPage, state.answers.survey],
    // the map first: the same readings are then not worked out twice
    fields: (state) => (state.answers.survey && isPlaced(state) ? placedFields(state) : null),
    follows: true,
    lands: inHand,
  },
  {
    into: 'putts',
    ask: 'find_putts',
    when: (state) => on('map')(state) && state.walkPage.finding,
    on: (state) => [greenOf(state), state.walkPage],
    fields: (state) => {
      const survey = surveyOf(greenOf(state));
      const { want } = state.walkPage;
      return (
        survey && {
          survey,
          want: {
            distance_m: between(want.distance_m, ABOUT.distance_m * want.distance_m, rangeOf('PuttFields', 'distance_m')),
            slope_percent: between(want.slope_percent, ABOUT.slope_percent, rangeOf('PuttFields', 'slope_percent')),
            break: want.break,
            way: want.way,
          },
          hole: want.here ? (placedOf(state)?.hole ?? null) : null,
        }
      );
    },
  },
];
