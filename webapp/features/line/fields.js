/**
 * The numbers that the line's screen keeps.
 * @import {Field, FieldName} from '../../parts/eye-height.js'
 */
import { rangeOf } from '../../fields.js';
import { EYE, measured, small } from '../../parts/eye-height.js';
import { ownRange } from '../../records/forms.js';

const lens = () => ({ name: 'millimetres', unit: 'mm', si: 1, digits: 0 });
const degrees = () => ({ name: 'degrees', unit: '°', si: 1, digits: 1 });

/** @type {Record<Exclude<FieldName, 'film_m' | 'film_mm'>, Field>} */
export const FIELDS = {
  ...EYE,
  lens_mm: { label: 'Lens', unit: lens, ...ownRange('lens_mm'), hint: 'As for 35 mm film. Most phones: 24 to 28.' },
  live_mm: { label: 'Lens, moving picture', unit: lens, ...ownRange('lens_mm'), hint: 'As for 35 mm film. Measure it once.' },
  thing_m: { label: 'How long it is', unit: small, ...rangeOf('LensFields', 'length_m') },
  away_m: { label: 'Lens to its middle', unit: small, ...rangeOf('LensFields', 'distance_m') },
  roll_deg: { label: 'Camera leans right', unit: degrees, ...ownRange('roll_deg') },
  height_m: { label: 'Let go at', unit: small, ...rangeOf('RampTrialFields', 'height_m') },
  rolled_m: { label: 'Rolled, on the level', unit: measured, ...rangeOf('RampTrialFields', 'rolled_m') },
};
