/**
 * Findings in the player's words; those of each skill come from the engine.
 * @import {FindingsAnswer, ChangeAnswer, LeavesAnswer} from '../../engine/protocol.js'
 * @import {Entry, Settings} from '../../types.js'
 */
import { dayWords, number, several, smallUnit, withUnit } from '../../format.js';

export const SKILLS = /** @type {const} */ (['start_line', 'alignment', 'pace', 'reading']);
export const NAMES = { alignment: 'How you line up', start_line: 'Start line', pace: 'Pace', reading: 'Reading' };

export const YARDSTICK = { tour: 'a tour player', amateur: 'a player who scores 90' };

/** What stands under a page that is handed on. @param {Date} now @param {string} name the player's */
export const signed = (now, name) =>
  `${name ? `${name}. ` : ''}Borrowline, ${dayWords(now)}, for practice. ` +
  'In a round, Rule 4.3a does not allow a device to give you a line.';

/** @param {number | undefined} share */
export const inHundred = (share) => (share === undefined ? '–' : number(share * 100, 0));

/** What all of it rests on. @param {FindingsAnswer} value @param {Entry[]} entries */
export const restsOn = ({ used, left_out, make }, entries) => {
  const all = make.reduce((sum, { tries }) => sum + tries, 0);
  const from =
    used + left_out.length < all && used
      ? `Costs and skills are from the newest ${used} putts, the rest from all ${all}.`
      : `From ${several(used, 'putt')}.`;
  return `${from} Each range holds the truth 19 times in 20.${
    entries.some(({ sample }) => sample) ? ' The invented player is among them.' : ''
  }`;
};

/** @param {Pick<FindingsAnswer, 'costs' | 'caution'>} value */
export function headline({ costs, caution }) {
  if (caution) return 'Not all putts seem to be logged.';
  if (!costs.length) return 'Log putts, and this says what costs you most.';
  // A bias beyond chance, or a spread that is certainly larger than the yardstick's
  const out = costs.filter(({ lean, low }) => lean || low > 0);
  const [first, second] = out;
  if (!first) return 'Nothing stands out.';
  if (second && second.high > first.low && second.putts_per_100 > first.putts_per_100 - (first.high - first.low) / 2)
    return `${NAMES[first.skill]} or ${NAMES[second.skill].toLowerCase()}: not yet told apart.`;
  return `${NAMES[first.skill]} costs you most: ${number(first.putts_per_100, 0)} putts in 100 holes.`;
}

/** @param {LeavesAnswer} leaves @param {Settings} settings */
export function leaveWords({ misses, short, short_low, short_high, beyond_m, beyond_low_m, beyond_high_m }, settings) {
  if (!misses) return 'No misses yet.';
  const between = `${inHundred(short_low)} to ${inHundred(short_high)} in 100`;
  const counted = `${short} of ${misses} misses stopped short of the hole: ${between}.`;
  if (beyond_m === null || beyond_low_m === null || beyond_high_m === null) return counted;
  const unit = smallUnit(settings);
  const side = (/** @type {number} */ value) => `${withUnit(Math.abs(value), unit)} ${value < 0 ? 'short' : 'past'}`;
  const range = `between ${side(beyond_low_m)} and ${side(beyond_high_m)}`;
  return `${counted} Against the pace wanted they stop ${side(beyond_m)}: ${range}.`;
}

/** @param {NonNullable<FindingsAnswer['made_change']>} change */
export function madeWords({ before, now, low, high }) {
  const side = (/** @type {number} */ share) => `${inHundred(Math.abs(share))} ${share < 0 ? 'fewer' : 'more'}`;
  const verdict = low > 0 || high < 0 ? 'beyond chance' : 'within chance';
  return `In the last four weeks ${inHundred(now)} in 100 made, before ${inHundred(before)}: ${side(low)} to ${side(high)}, ${
    verdict
  }. Distances may differ.`;
}

/** @param {ChangeAnswer} change */
export function changeWords({ skill, what, before, now, beyond_chance }) {
  const [scale, unit] = skill === 'pace' || skill === 'reading' ? [100, '\u00a0%'] : [1, '°'];
  const say = (/** @type {number} */ value) => `${number(value * scale, scale === 1 ? 1 : 0)}${unit}`;
  return [`${NAMES[skill]}, ${what === 'bias' ? 'lean' : 'spread'}`, say(before), say(now), beyond_chance ? 'yes' : 'no'];
}

/** @param {FindingsAnswer['skills'][keyof FindingsAnswer['skills']]} skill */
export function spreadWords({ sd, sd_low, sd_high, unit, n }) {
  if (sd === null || sd_low === null || sd_high === null || !n) return '';
  const [scale, sign, digits] = unit === 'degrees' ? [1, '°', 1] : [100, '\u00a0%', 0];
  const say = (/** @type {number} */ value) => number(value * scale, digits);
  return `Spread ${say(sd)}${sign}: ${say(sd_low)} to ${say(sd_high)}. From ${several(n, 'putt')}.`;
}
