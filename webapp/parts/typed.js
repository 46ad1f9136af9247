/** @import {Unit} from '../format.js' @import {Store} from '../store.js' */
import { doesNotFit, fromText } from '../format.js';
import { between } from '../records/forms.js';

/**
 * A number that was typed into a field, in SI. Where it does not fit, that is said at the field, and there is none.
 * @param {Store} store @param {string} field @param {string} text
 * @param {{label: string, low: number, high: number, whole?: boolean}} taken @param {Unit} unit
 * @returns {number | undefined}
 */
export function typed(store, field, text, { label, low, high, whole = false }, unit) {
  const value = fromText(text, unit);
  if (between(low, high)(value) && (!whole || Number.isInteger(value))) return value;
  store.change(`refuse ${field}`, { problem: { field, text, message: doesNotFit(label, text, low, high, unit) } });
  return undefined;
}
