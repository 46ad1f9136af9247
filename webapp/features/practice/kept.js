/**
 * What is kept of practice: the plan, the session that runs, the tempo and what the drills are set to.
 * @import {Practice} from '../../types.js'
 * @import {Check} from '../../records/forms.js'
 * @import {Each, Part} from '../../records/part.js'
 */
import {
  asked,
  between,
  field,
  isBoolean,
  isDate,
  isHeard,
  isText,
  list,
  OWN,
  orNull,
  record,
  whole,
} from '../../records/forms.js';
import { fields } from '../../records/part.js';

/** @type {Practice} */
const PRACTICE = {
  minutes: 20,
  place: 'room',
  at_hand: ['level_floor'],
  weights: {},
  blocks: [],
  planned: null,
  run: null,
  spoken: false,
  chime: false,
  strokes: [],
  lie_deg: 70,
  length_m: 0.864,
  above_grip_m: 0.45,
  gap_m: null,
  eyes_m: 0.02,
  week: { first_tee: '', days_before: 4, done: [] },
  ear: { wall_m: 2.5, paper_m: 0, meant_m: 4, floor_ft: 9, floor_sd_ft: 0.45 },
  tempo: { forward_s: 0.3, ratio: 2, rest_s: 2.4, strokes: 20, volume: 0.8, muted: false, vibrate: true, delay_s: 0 },
};

const isCount = whole(...OWN.count);
const isSpent = between(...OWN.spent_s);
const PLAN = {
  minutes: field('PlanFields', 'minutes'),
  place: field('PlanFields', 'place'),
  at_hand: field('PlanFields', 'at_hand'),
};
const isLines = list(isText);
const isCard = record({
  name: isText,
  picture: isText,
  setup: isLines,
  cues: list(isText, 1),
  good: isText,
  bad: isText,
  cautions: isLines,
  needs: isLines,
});
const isWeights = (/** @type {unknown} */ value) => asked('WeightFields')(value);
const tempo = (/** @type {'forward_s' | 'ratio' | 'rest_s' | 'strokes'} */ name) => field('TempoFields', name);
/** @type {Record<keyof Practice, Check | Each>} */
const CHECKS = {
  ...PLAN,
  spoken: isBoolean,
  chime: isBoolean,
  lie_deg: field('ArcFields', 'lie_deg'),
  length_m: field('ArcFields', 'length_m'),
  above_grip_m: field('ArcFields', 'above_grip_m'),
  gap_m: orNull(between(...OWN.gap_m)),
  eyes_m: field('EyesFields', 'left_m'),
  week: record({ first_tee: isDate, days_before: field('TournamentFields', 'days_before'), done: list(isText) }),
  ear: record({
    wall_m: between(...OWN.wall_m),
    paper_m: between(...OWN.paper_m),
    meant_m: field('PacesFields', 'meant_m'),
    floor_ft: field('HeardFields', 'stimp_ft'),
    floor_sd_ft: field('HeardFields', 'stimp_sd_ft'),
  }),
  weights: isWeights,
  blocks: list(
    record({
      drill: isText,
      minutes: between(...OWN.block_minutes),
      why: isText,
      instead: list(isText),
      card: (value) => value === undefined || isCard(value),
    }),
  ),
  planned: orNull(record({ ...PLAN, weights: isWeights })),
  run: orNull(
    record({
      block: isCount,
      paused: isBoolean,
      session: isText,
      spent_s: isSpent,
      good: isCount,
      bad: isCount,
      heard: (value) => value === undefined || isHeard(value),
      strikes: (value) => value === undefined || field('BlockFields', 'strikes')(value),
      said: (value) => value === undefined || isText(value),
    }),
  ),
  tempo: record({
    forward_s: tempo('forward_s'),
    ratio: tempo('ratio'),
    rest_s: tempo('rest_s'),
    strokes: tempo('strokes'),
    volume: between(0, 1),
    muted: isBoolean,
    vibrate: isBoolean,
    delay_s: between(...OWN.delay_s),
  }),
  strokes: { each: asked('OwnStroke') },
};

/** A session whose block is not there has no place to go on from. @param {Practice} practice @returns {Practice} */
function practised(practice) {
  const { minutes, place, at_hand, weights, blocks, run } = practice;
  // versions that did not say what a plan was for kept the newest one
  const whole = blocks.reduce((sum, block) => sum + block.minutes, 0) === minutes;
  const planned = practice.planned ?? (whole ? { minutes, place, at_hand, weights } : null);
  return { ...practice, planned, run: run && blocks[run.block] ? run : null };
}

const part = fields('practice', PRACTICE, CHECKS, { apart: 'run', going: ({ run }) => run !== null });

export const keeps = {
  practice: /** @type {Part<Practice>} */ ({
    ...part,
    read: (value, aside, others) => practised(part.read(value, aside, others)),
  }),
};
