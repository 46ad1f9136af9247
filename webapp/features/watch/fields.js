/** The numbers that the watch keeps. @import {Field, FieldName} from '../../parts/eye-height.js' */
import { rangeOf } from '../../fields.js';
import { small, THING } from '../../parts/eye-height.js';
import { ownRange } from '../../records/forms.js';

/** @satisfies {Partial<Record<FieldName, Field>>} */
export const FIELDS = {
  ...THING,
  film_m: { label: 'Lens over the green', unit: small, ...rangeOf('WatchedFields', 'eye_height_m') },
  film_mm: {
    label: 'Lens, moving picture',
    unit: () => ({ name: 'millimetres', unit: 'mm', si: 1, digits: 0 }),
    ...ownRange('lens_mm'),
    hint: 'As for 35 mm film; most phones: 26 to 30 when they film.',
  },
};
