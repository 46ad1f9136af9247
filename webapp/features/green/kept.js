/**
 * What is kept of calibration: the phone's zero, rolls, and trials of feet and eye.
 * @import {Calibration} from '../../types.js'
 * @import {Check} from '../../records/forms.js'
 * @import {Each} from '../../records/part.js'
 */
import { asked, between, field, isDate, list, OWN, orNull, record } from '../../records/forms.js';
import { fields } from '../../records/part.js';

/** @type {Calibration} */
const CALIBRATION = { phone: null, rolls: [], ball: 'rolled', home_stimp_ft: 10, feet: [], eye: [] };

/** @type {Each} */
const TRIALS = {
  each: record({
    felt_percent: field('FeltFields', 'felt_percent'),
    measured_percent: field('FeltTrialFields', 'measured_percent'),
    fall: field('FeltFields', 'fall'),
    date: isDate,
  }),
};
/** @type {Record<keyof Calibration, Check | Each>} */
const CHECKS = {
  phone: orNull(record({ bias_deg: list(between(...OWN.bias_deg), 2, 2), date: isDate })),
  rolls: { each: asked('BallFields') },
  ball: field('RollTestFields', 'skid'),
  home_stimp_ft: field('PuttFields', 'stimp_ft'),
  feet: TRIALS,
  eye: TRIALS,
};

export const keeps = { calibration: fields('calibration', CALIBRATION, CHECKS, { atOnce: true, inFiles: true }) };
