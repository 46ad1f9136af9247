/**
 * Numbers that are typed on the practice screen: what each takes and where it goes.
 * @import {Unit} from '../../format.js'
 * @import {Practice, Settings, State} from '../../types.js'
 */
import { rangeOf } from '../../fields.js';
import { distanceUnit, fineUnit, unitOf } from '../../format.js';
import { ownRange } from '../../records/forms.js';

const SECONDS = { name: 'seconds', unit: 's', si: 1, digits: 2 };
const MILLISECONDS = { name: 'milliseconds', unit: 'ms', si: 0.001, digits: 0 };

/** @param {keyof Practice['tempo']} name @returns {(practice: Practice, value: number) => Practice} */
const tempo = (name) => (practice, value) => ({ ...practice, tempo: { ...practice.tempo, [name]: value } });

/**
 * @type {Record<string, {label: string, unit: (settings: Settings) => Unit, low: number, high: number, whole?: boolean, get:
 *   (practice: Practice, answers: State['answers']) => number, put: (practice: Practice, value: number) => Practice}>}
 */
export const FIELDS = {
  forward_s: {
    label: 'Through',
    unit: () => SECONDS,
    ...rangeOf('TempoFields', 'forward_s'),
    get: ({ tempo }) => tempo.forward_s,
    put: tempo('forward_s'),
  },
  ratio: {
    label: 'Ratio',
    unit: () => ({ name: 'to one', unit: ': 1', si: 1, digits: 1 }),
    ...rangeOf('TempoFields', 'ratio'),
    get: ({ tempo }) => tempo.ratio,
    put: tempo('ratio'),
  },
  rest_s: {
    label: 'Rest',
    unit: () => ({ ...SECONDS, digits: 1 }),
    ...rangeOf('TempoFields', 'rest_s'),
    get: ({ tempo }) => tempo.rest_s,
    put: tempo('rest_s'),
  },
  strokes: {
    label: 'Strokes',
    unit: () => ({ name: 'strokes', unit: 'in a row', si: 1, digits: 0 }),
    ...rangeOf('TempoFields', 'strokes'),
    whole: true,
    get: ({ tempo }) => tempo.strokes,
    put: tempo('strokes'),
  },
  delay_s: {
    label: 'Headphone delay',
    unit: () => MILLISECONDS,
    ...ownRange('delay_s'),
    get: ({ tempo }) => tempo.delay_s,
    put: tempo('delay_s'),
  },
  lie_deg: {
    label: 'Lie',
    unit: () => ({ name: 'degrees', unit: '°', si: 1, digits: 1 }),
    ...rangeOf('ArcFields', 'lie_deg'),
    get: ({ lie_deg }) => lie_deg,
    put: (practice, lie_deg) => ({ ...practice, lie_deg }),
  },
  length_m: {
    label: 'Putter length',
    unit: fineUnit,
    ...rangeOf('ArcFields', 'length_m'),
    get: ({ length_m }) => length_m,
    put: (practice, length_m) => ({ ...practice, length_m }),
  },
  above_grip_m: {
    label: 'Stroke turns above the grip',
    unit: fineUnit,
    ...rangeOf('ArcFields', 'above_grip_m'),
    get: ({ above_grip_m }) => above_grip_m,
    put: (practice, above_grip_m) => ({ ...practice, above_grip_m }),
  },
  gap_m: {
    label: 'Gap',
    unit: fineUnit,
    ...ownRange('gap_m'),
    get: ({ gap_m }, { matchingGate }) => gap_m ?? matchingGate?.matching_gap_m ?? 0,
    put: (practice, gap_m) => ({ ...practice, gap_m }),
  },
  wall_m: {
    label: 'Ball to wall',
    unit: distanceUnit,
    ...ownRange('wall_m'),
    get: ({ ear }) => ear.wall_m,
    put: (practice, wall_m) => ({ ...practice, ear: { ...practice.ear, wall_m } }),
  },
  meant_m: {
    label: 'Should run',
    unit: distanceUnit,
    ...rangeOf('PacesFields', 'meant_m'),
    get: ({ ear }) => ear.meant_m,
    put: (practice, meant_m) => ({ ...practice, ear: { ...practice.ear, meant_m } }),
  },
  paper_m: {
    label: 'Ball to paper',
    unit: distanceUnit,
    ...ownRange('paper_m'),
    get: ({ ear }) => ear.paper_m,
    put: (practice, paper_m) => ({ ...practice, ear: { ...practice.ear, paper_m } }),
  },
  floor_ft: {
    label: 'Floor speed',
    unit: (settings) => unitOf('stimp_ft', settings),
    low: 0, // not known
    high: rangeOf('HeardFields', 'stimp_ft').high,
    get: ({ ear }) => ear.floor_ft ?? 0,
    // a typed speed is good to a twentieth
    put: (practice, feet) => ({ ...practice, ear: { ...practice.ear, floor_ft: feet || null, floor_sd_ft: feet / 20 } }),
  },
  eyes_m: {
    label: 'Eyes inside the line',
    unit: fineUnit,
    ...rangeOf('EyesFields', 'left_m'),
    get: ({ eyes_m }) => eyes_m,
    put: (practice, eyes_m) => ({ ...practice, eyes_m }),
  },
};

const slope = (/** @type {Settings} */ settings) => unitOf('slope_percent', settings);
/** @type {Record<string, {label: string, unit: (settings: Settings) => Unit, low: number, high: number}>} */
export const SENSES = {
  felt_percent: { label: 'Felt', unit: slope, ...rangeOf('FeltFields', 'felt_percent') },
  measured_percent: { label: 'Measured', unit: slope, ...rangeOf('FeltTrialFields', 'measured_percent') },
  guess_percent: { label: 'Your guess', unit: slope, ...rangeOf('FeltFields', 'felt_percent') },
};
