/** The line's screen before the first touch. @import {Sighting} from '../../types.js' */

/** @type {Sighting} */
export const UNSEEN = {
  part: 'view',
  stand: 'ball',
  size: { width: 390, height: 400 },
  sound: true,
  photo: null,
  photoProblem: '',
  sent: null,
  told: '',
  answers: {},
  refusals: {},
};
