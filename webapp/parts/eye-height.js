/**
 * Where the eye is: numbers that the line's screen draws by and the settings keep, each with its words and its range in SI;
 * and how such a number is typed.
 * @import {Settings, Sighted, State} from '../types.js'
 * @import {Store} from '../store.js'
 * @import {Unit} from '../format.js'
 * @typedef {{label: string, unit: (settings: Settings) => Unit, low: number, high: number, hint?: string}} Field
 * @typedef {Exclude<keyof Sighted, 'eye' | 'films' | 'lens_date' | 'live_date' | 'rolled_stimp_ft'>} FieldName
 */
import { rangeOf } from '../fields.js';
import { distanceUnit, inUnit, smallUnit } from '../format.js';
import { numberField } from './number-field.js';
import { typed } from './typed.js';

/** @param {Settings} settings */
export const small = (settings) => ({ ...smallUnit(settings), digits: 1 });
/** A pace is too coarse for these. @param {Settings} settings */
export const measured = (settings) => distanceUnit(settings.distance === 'paces' ? { ...settings, distance: 'ft' } : settings);

/** @satisfies {Partial<Record<FieldName, Field>>} */
export const EYE = {
  standing_m: { label: 'Eye, standing', unit: small, ...rangeOf('ViewFields', 'eye_height_m') },
  crouching_m: { label: 'Eye, crouching', unit: small, ...rangeOf('ViewFields', 'eye_height_m') },
  back_m: { label: 'Eye behind ball or hole', unit: measured, ...rangeOf('ViewFields', 'back_m') },
};
/** What a lens is measured by. @satisfies {Partial<Record<FieldName, Field>>} */
export const THING = {
  thing_m: { label: 'How long it is', unit: small, ...rangeOf('LensFields', 'length_m') },
  away_m: { label: 'Lens to its middle', unit: small, ...rangeOf('LensFields', 'distance_m') },
};

/**
 * @param {Pick<State, 'sighted' | 'settings' | 'problem'>} state @param {FieldName} name @param {Field} field
 * @param {(text: string) => void} onText
 */
export function sightedField({ sighted, settings, problem }, name, { label, unit, hint }, onText) {
  const mine = problem?.field === name ? problem : null;
  const said = unit(settings);
  const value = sighted[name];
  return numberField({
    name,
    label,
    hint,
    unit: said.unit,
    value: mine?.text ?? (value === null ? '' : inUnit(value, said)),
    message: mine?.message,
    onText,
  });
}

/** Kept, or refused in words. @param {Store} store @param {FieldName} name @param {Field} field @param {string} text */
export function enterSighted(store, name, field, text) {
  const { settings, sighted } = store.state;
  const value = typed(store, name, text, field, field.unit(settings));
  if (value !== undefined) store.change(`enter ${name}`, { sighted: { ...sighted, [name]: value }, problem: null });
}
