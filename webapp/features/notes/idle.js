/** Notes before the first touch. @import {Noting} from '../../types.js' */

/** @type {Noting} */
export const BLANK = {
  page: 'log',
  reach_m: 1.2,
  last: '',
  editing: '',
  before: [],
  only: { place: '', day: '', what: '' },
  from: 0,
  said: '',
  preview: null,
  sure: false,
};
