/**
 * What the green's screen asks of the engine.
 * @import {Question} from '../../questions.js'
 * @import {GreenPage, State} from '../../types.js'
 */
import { plain } from '../../doubt.js';
import { distancesOf, SLOPES } from './card.js';
import { balls } from './fields.js';
import { rollsHere } from './rolls.js';

const DAY_MS = 86_400_000;
/** Since then, to a quarter of an hour. @param {string} date */
const ageDays = (date) => Math.max(0, Math.round(((Date.now() - Date.parse(date)) / DAY_MS) * 100) / 100);

/** A floor that is steeper is no floor for mirror and laser. */
const STEEPEST_FLOOR_PERCENT = 20;

/** @param {GreenPage['part']} part */
const on =
  (part) =>
  (/** @type {State} */ { screen, greenPage }) =>
    screen === 'green' && greenPage.part === part;

/** @type {Question[]} */
export const questions = [
  {
    into: 'level',
    ask: 'level',
    when: on('level'),
    follows: true,
    fields: ({ greenPage: { tilt }, calibration: { phone } }) =>
      tilt.kind === 'live'
        ? {
            readings: tilt.readings.map((each) => ({ ...each, turned_deg: 0 })),
            ...(phone && { bias_deg: phone.bias_deg, bias_age_days: ageDays(phone.date) }),
          }
        : null,
  },
  {
    into: 'floor',
    ask: 'floor',
    when: on('level'),
    follows: true,
    fields: ({ answers: { level }, greenPage: { draft } }) =>
      level && level.slope_percent < STEEPEST_FLOOR_PERCENT
        ? { slope_percent: level.slope_percent, slope_sd_percent: level.slope_sd_percent, eye_m: draft.eye_m }
        : null,
  },
  {
    into: 'rolled',
    ask: 'roll_test',
    when: on('speed'),
    fields(state) {
      const rolls = rollsHere(state).map(({ distance_m, time_s, way }) => ({ distance_m, time_s, way }));
      const measure = state.settings.distance === 'paces' ? 'paces' : 'tape';
      return rolls.length > 1 ? { rolls, skid: state.calibration.ball, measure } : null;
    },
  },
  {
    into: 'stimpmeter',
    ask: 'stimpmeter',
    when: on('speed'),
    fields: ({ greenPage: { draft } }) => {
      const [out_ft, back_ft] = [balls(draft, 'out'), balls(draft, 'back')];
      return out_ft.length && back_ft.length ? { out_ft, back_ft } : null;
    },
  },
  {
    into: 'translated',
    ask: 'translate',
    when: on('compare'),
    fields: ({ putt, calibration }) => ({ ...plain(putt), home_stimp_ft: calibration.home_stimp_ft }),
  },
  {
    into: 'table',
    ask: 'table',
    when: on('compare'),
    fields: ({ putt, settings }) => ({
      stimp_ft: putt.stimp_ft,
      past_m: putt.past_m,
      distances_m: distancesOf(settings),
      slopes_percent: SLOPES,
    }),
  },
];
