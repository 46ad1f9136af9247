/**
 * What the engine takes of a field: its range is written nowhere else in the page.
 * @import {Fields} from './engine/protocol.js'
 */
import { FIELDS } from './engine/fields.js';

/**
 * From `low` to `high`, in the unit of the wire; of a list, what each of its entries may be.
 * @template {keyof Fields} Type
 * @param {Type} type @param {keyof Fields[Type] & string} name @returns {{low: number, high: number}}
 */
export function rangeOf(type, name) {
  const field = /** @type {any} */ (FIELDS[type])[name];
  const { low, high } = field.kind === 'list' ? field.entry : field;
  return { low, high };
}

/**
 * How many a list takes at most.
 * @template {keyof Fields} Type
 * @param {Type} type @param {keyof Fields[Type] & string} name @returns {number}
 */
export const mostOf = (type, name) => /** @type {any} */ (FIELDS[type])[name].high;
