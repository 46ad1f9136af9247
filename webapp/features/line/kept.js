/**
 * What is kept of the line: eyes, lenses and the ramp.
 * @import {Sighted} from '../../types.js'
 * @import {Check} from '../../records/forms.js'
 * @import {Each} from '../../records/part.js'
 */
import { between, field, isDate, isLens, isText, oneOf, OWN, orNull, record } from '../../records/forms.js';
import { fields } from '../../records/part.js';

/** @type {Sighted} */
const SIGHTED = {
  eye: 'standing',
  standing_m: 1.6,
  crouching_m: 0.7,
  back_m: 2,
  lens_mm: 26,
  live_mm: 26,
  film_m: 0.4,
  film_mm: 28,
  films: [],
  lens_date: '',
  live_date: '',
  thing_m: 0.9144,
  away_m: 1.524,
  roll_deg: 0,
  height_m: null,
  rolled_m: null,
  rolled_stimp_ft: null,
};

const height = field('ViewFields', 'eye_height_m');
/** @type {Record<keyof Sighted, Check | Each>} */
const CHECKS = {
  eye: oneOf('standing', 'crouching'),
  standing_m: height,
  crouching_m: height,
  back_m: field('ViewFields', 'back_m'),
  lens_mm: isLens,
  live_mm: isLens,
  film_m: field('WatchedFields', 'eye_height_m'),
  film_mm: isLens,
  films: { each: record({ camera: isText, mm: isLens, date: isDate }) },
  lens_date: isDate,
  live_date: isDate,
  thing_m: field('LensFields', 'length_m'),
  away_m: field('LensFields', 'distance_m'),
  roll_deg: between(...OWN.roll_deg),
  height_m: orNull(between(...OWN.ramp_m)),
  rolled_m: orNull(field('PuttFields', 'distance_m')),
  rolled_stimp_ft: orNull(field('PuttFields', 'stimp_ft')),
};

export const keeps = { sighted: fields('sighted', SIGHTED, CHECKS, { inFiles: true }) };
