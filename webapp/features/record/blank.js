/** The record's screen before the first touch. @import {RecordPage} from '../../types.js' */

/** @type {RecordPage} */
export const BLANK = {
  page: 'log',
  reach_m: 1.2,
  logged: [],
  day: '',
  editing: '',
  before: [],
  only: { place: '', day: '', what: '' },
  from: 0,
  said: '',
  preview: null,
  sure: false,
};
