/** @import {Drill, Fall, Settings, Thing} from '../../types.js' */

/** @type {Record<Thing, string>} */
export const THINGS = {
  level_floor: 'level floor',
  mirror: 'mirror',
  laser: 'laser',
  ball: 'ball',
  balls: 'two more balls',
  hole: 'hole or glass',
  string: 'string',
  chalk: 'chalk',
};

/** @type {Record<Drill['skill'], string>} */
export const SKILLS = { alignment: 'Alignment', start_line: 'Start line', pace: 'Pace', reading: 'Reading', tempo: 'Tempo' };

/** How a putt's pace is told: of its length, as a fraction. @param {number} error */
export function paceWords(error) {
  const percent = Math.round(100 * Math.abs(error));
  return percent ? `${percent} % ${error > 0 ? 'long' : 'short'}` : 'As meant';
}

/** Why a stroke was not used. @type {Record<string, string>} */
export const REASONS = {
  gap: 'samples are missing',
  cut_off: 'cut off',
  unlike: 'not like a stroke',
  wrong_count: 'not three taps',
};

/**
 * What is to the left and to the right of one who looks down with the feet at the far side.
 * @param {Settings} settings @returns {[string, string]}
 */
export const sides = ({ handed }) => (handed === 'right' ? ['Back', 'Through'] : ['Through', 'Back']);

/** Kinds of trials of feet and eye. @type {Record<Fall | 'small' | 'large', string>} */
export const KINDS = {
  left: 'Falls left',
  right: 'Falls right',
  toes: 'Toes lower',
  heels: 'Heels lower',
  small: 'Under 2 %',
  large: '2 % and more',
};
/** @type {Record<Fall, string>} */
export const SEEN = { left: 'falls left', right: 'falls right', toes: 'downhill', heels: 'uphill' };
