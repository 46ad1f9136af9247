/**
 * What is kept of settings.
 * @import {Settings} from '../../types.js'
 * @import {Check} from '../../records/forms.js'
 */
import { between, isText, oneOf, OWN } from '../../records/forms.js';
import { fields } from '../../records/part.js';
import { PACE } from '../../records/putt.js';

/** @type {Settings} */
export const SETTINGS = {
  distance: 'ft',
  aim: 'in',
  pace_m: 0.9144,
  handed: 'right',
  theme: 'system',
  stimp_ft: 10,
  past_m: 0.3048,
  name: '',
  against: 'tour',
};

/** @type {Record<keyof Settings, Check>} */
const CHECKS = {
  distance: oneOf('ft', 'm', 'paces'),
  aim: oneOf('in', 'cm', 'cups', 'balls', 'degrees'),
  pace_m: between(...OWN.pace_m),
  handed: oneOf('right', 'left'),
  theme: oneOf('light', 'dark', 'system'),
  name: isText,
  against: oneOf('tour', 'amateur'),
  ...PACE,
};

export const keeps = { settings: fields('settings', SETTINGS, CHECKS, { painted: true, atOnce: true, inFiles: true }) };
