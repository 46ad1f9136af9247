/**
 * What a putt that was seen counts in the drill in hand.
 * @import {State, WatchedPutt} from '../../types.js'
 */
import { FIELDS } from '../../engine/fields.js';
import { FOOT_M } from '../../format.js';
import { pick } from '../../pick.js';

const YARD_M = 0.9144;
const MOST_STRIKES = FIELDS.BlockFields.strikes.high;

/**
 * Whether it did what the drill asks; null where that was not seen, or the drill is of another kind.
 * @param {string} drill @param {WatchedPutt} seen @param {number | undefined} passes_deg starts to either side that a gate lets
 *   through
 * @returns {boolean | null}
 */
export function did(drill, { value, aim_deg, putt }, passes_deg) {
  const { start_deg, result, stop } = value;
  if (drill === 'start_gate' || drill === 'ball_line')
    return start_deg === null || passes_deg === undefined ? null : Math.abs(start_deg - aim_deg) < passes_deg;
  if (result === 'unseen') return null;
  const past = stop && stop.x_m - putt.distance_m;
  if (drill === 'shallow_breaks') {
    if (result === 'holed') return true;
    // straight putts have no high side
    const falls = Math.sin((Math.PI / 180) * (putt.fall_deg ?? 0));
    return stop && falls ? stop.y_m * falls > 0 : null;
  }
  if (drill === 'foot_past') return result === 'holed' || (past === null ? null : past > 0 && past < FOOT_M);
  if (drill === 'long_pace')
    return result === 'holed' || (stop ? Math.hypot(stop.x_m - putt.distance_m, stop.y_m) < YARD_M : null);
  return null;
}

/**
 * The session with this putt counted; null where it counts nothing.
 * @param {State} state @param {WatchedPutt} seen @returns {State['practice'] | null}
 */
export function counted({ practice, answers }, seen) {
  const { run, blocks } = practice;
  if (!run || run.paused) return null;
  const done = did(pick(blocks, run.block).drill, seen, (answers.gate ?? answers.matchingGate)?.passes_deg);
  if (done === null) return null;
  const { start_deg, start_sd_deg, launch_mps, launch_sd_mps, words: said } = seen.value;
  const { aim_deg, meant_mps } = seen;
  const strike = { start_deg, start_sd_deg, launch_mps, launch_sd_mps, aim_deg, meant_mps };
  const strikes = [...(run.strikes ?? []), strike].slice(-MOST_STRIKES);
  return { ...practice, run: { ...run, ...(done ? { good: run.good + 1 } : { bad: run.bad + 1 }), strikes, said } };
}
