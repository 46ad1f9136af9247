/** The practice screen before anything was touched. @import {Practising} from '../../types.js' */

/** @type {Practising} */
export const STILL = {
  page: 'session',
  drill: '',
  drills: [],
  changing: false,
  note: '',
  tempo: null,
  sound: 'off',
  late: [],
  finding: '',
  taps: [],
  found: null,
  gate: null,
  line: null,
  eyes: null,
  arc: null,
  length: null,
};
