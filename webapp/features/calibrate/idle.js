/** The calibrate screen before the first touch. @import {Calibrating} from '../../types.js' */

/** @type {Calibrating} */
export const IDLE = {
  part: 'level',
  draft: { eye_m: 1.5 },
  tilt: { kind: 'off' },
  zero: null,
  by: 'rolls',
  way: 'out',
  rolling: null,
  fall: 'right',
  // another picture at each start
  case: Date.now() % 1_000_000_000,
  guessed: null,
  answers: {},
  refusals: {},
  undo: null,
};
