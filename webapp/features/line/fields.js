/**
 * The numbers that the line's screen keeps.
 * @import {Field, FieldName} from '../../parts/eye-height.js'
 */
import { rangeOf } from '../../fields.js';
import { EYE, measured, small, THING } from '../../parts/eye-height.js';
import { ownRange } from '../../records/forms.js';

const lens = () => ({ name: 'millimetres', unit: 'mm', si: 1, digits: 0 });
const degrees = () => ({ name: 'degrees', unit: '°', si: 1, digits: 1 });

/** @type {Record<Exclude<FieldName, 'film_m' | 'film_mm'>, Field>} */
export const FIELDS = {
  ...EYE,
  ...THING,
  lens_mm: { label: 'Lens', unit: lens, ...ownRange('lens_mm'), hint: 'As for 35 mm film. Most phones: 24 to 28.' },
  live_mm: { label: 'Lens, moving picture', unit: lens, ...ownRange('lens_mm'), hint: 'As for 35 mm film. Measure it once.' },
  roll_deg: { label: 'Camera leans right', unit: degrees, ...ownRange('roll_deg') },
  height_m: { label: 'Let go at', unit: small, ...rangeOf('RampTrialFields', 'height_m') },
  rolled_m: { label: 'Rolled, on the level', unit: measured, ...rangeOf('RampTrialFields', 'rolled_m') },
};
