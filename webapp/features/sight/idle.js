/** The line's screen before the first touch. @import {Sighting} from '../../types.js' */

/** @type {Sighting} */
export const UNSEEN = {
  part: 'view',
  stand: 'ball',
  size: { width: 0, height: 0 }, // until the stage has one
  sound: true,
  photo: null,
  live: null,
  measuring: false,
  photoProblem: '',
  sent: null,
  told: '',
  answers: {},
  refusals: {},
};

/** A picture on which nothing was touched yet. */
export const UNMARKED = { ball: null, hole: null, end: null, other: null };
