/**
 * The numbers that calibration takes, each with its words and its range in SI.
 * @import {Settings} from '../../types.js'
 * @import {Unit} from '../../format.js'
 * @typedef {{label: string, unit: (settings: Settings) => Unit, low: number, high: number, hint?: string}} Field
 */
import { rangeOf } from '../../fields.js';
import { distanceUnit, unitOf } from '../../format.js';

/** @param {string} field @returns {(settings: Settings) => Unit} */
const as = (field) => (settings) => unitOf(field, settings);
const seconds = () => ({ name: 'seconds', unit: 's', si: 1, digits: 2 });
/** Length off the Stimpmeter is read in feet on every green. */
const feet = as('stimp_ft');
/** @param {string} label @returns {Field} */
const ball = (label) => ({ label, unit: feet, ...rangeOf('StimpmeterFields', 'out_ft') });

/** @type {Record<string, Field>} */
export const FIELDS = {
  slope_percent: { label: 'Slope', unit: as('slope_percent'), ...rangeOf('PuttFields', 'slope_percent') },
  fall_deg: {
    label: 'Falls',
    unit: as('fall_deg'),
    ...rangeOf('PuttFields', 'fall_deg'),
    hint: 'Clockwise from the line to the hole: 0° downhill, 90° to the right.',
  },
  at_m: { label: 'From the ball', unit: distanceUnit, ...rangeOf('StationFields', 'at_m') },
  eye_m: { label: 'Eye over the floor', unit: as('pace_m'), ...rangeOf('FloorFields', 'eye_m') },
  distance_m: { label: 'Length of the roll', unit: distanceUnit, ...rangeOf('BallFields', 'distance_m') },
  time_s: { label: 'Time', unit: seconds, ...rangeOf('BallFields', 'time_s') },
  stimp_ft: { label: 'Speed', unit: feet, ...rangeOf('PuttFields', 'stimp_ft'), hint: 'As the club tells it.' },
  home_stimp_ft: { label: 'Speed at home', unit: feet, ...rangeOf('TranslateFields', 'home_stimp_ft') },
  ...Object.fromEntries(['out', 'back'].flatMap((way) => [1, 2, 3].map((n) => [`${way}${n}`, ball(`Ball ${n}`)]))),
};

/** The three balls of one way that have been given. @param {Record<string, number>} draft @param {'out' | 'back'} way */
export const balls = (draft, way) => [1, 2, 3].map((n) => draft[`${way}${n}`]).filter((length) => length !== undefined);
