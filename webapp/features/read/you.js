/**
 * The player as the record has it, from what was found last.
 * @import {Player, State, You} from '../../types.js'
 * @import {SkillAnswer} from '../../engine/protocol.js'
 */
import { rangeOf } from '../../fields.js';
import { today } from '../../format.js';

/** @typedef {'value' | 'low' | 'high'} End */
/** @type {Record<End, ['sd' | 'sd_low' | 'sd_high', 'bias' | 'bias_low' | 'bias_high']>} */
const ENDS = { value: ['sd', 'bias'], low: ['sd_low', 'bias_low'], high: ['sd_high', 'bias_high'] };

/** @param {keyof Player} name @param {number} value */
function within(name, value) {
  const { low, high } = rangeOf('PlayerFields', name);
  return Math.min(high, Math.max(low, value));
}

/** How far all reads are off the same way: it makes putts miss as a spread does. @param {SkillAnswer} skill @param {End} end */
function lean({ bias, bias_low, bias_high }, end) {
  const sizes = [bias_low ?? 0, bias_high ?? 0].map(Math.abs);
  if (end === 'value') return Math.abs(bias ?? 0);
  if (end === 'high') return Math.max(...sizes);
  return (bias_low ?? 0) * (bias_high ?? 0) <= 0 ? 0 : Math.min(...sizes);
}

/** None as long as the putts say too little of a skill. @param {State['findings']} findings @returns {You | null} */
export function youOf(findings) {
  if (!findings) return null;
  const { alignment, start_line, pace, reading } = findings.value.skills;
  if ([start_line, pace, reading].some(({ sd_low, sd_high }) => sd_low === null || sd_high === null)) return null;
  // a spread of the break is one of the tilt where putts slope as the fixed set does
  const tilt = reading.unit === 'of the break' ? findings.value.cost_set.slope_percent : 1;
  /** @param {End} end @returns {Player} */
  function at(end) {
    const [sd, bias] = ENDS[end];
    const of = (/** @type {SkillAnswer} */ skill, /** @type {keyof SkillAnswer & (typeof sd | typeof bias)} */ name) =>
      skill[name] ?? 0;
    return {
      start_line_sd_deg: within('start_line_sd_deg', Math.hypot(of(alignment, sd), of(start_line, sd))),
      pace_sd_fraction: within('pace_sd_fraction', of(pace, sd)),
      slope_sd_percent: within('slope_sd_percent', tilt * Math.hypot(of(reading, sd), lean(reading, end))),
      start_line_bias_deg: within('start_line_bias_deg', of(alignment, bias) + of(start_line, bias)),
      pace_bias_fraction: within('pace_bias_fraction', of(pace, bias)),
    };
  }
  const { entries, value } = findings;
  const sample = entries.some(({ sample, gone }) => sample && !gone);
  return { value: at('value'), low: at('low'), high: at('high'), putts: value.used, date: today(), sample };
}

/** @param {Pick<State, 'player' | 'you'>} state @returns {boolean} */
export const isYou = ({ player, you }) => JSON.stringify(player) === JSON.stringify(you?.value);
