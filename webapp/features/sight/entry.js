/**
 * A number of the line's screen to type.
 * @import {State} from '../../types.js'
 * @import {SightActions} from './actions.js'
 */
import { inUnit } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { FIELDS } from './fields.js';

/** @param {State} state @param {SightActions} act @param {keyof typeof FIELDS} name */
export function entry({ sighted, settings, problem }, act, name) {
  const { label, unit, hint } = FIELDS[name];
  const mine = problem?.field === name ? problem : null;
  const said = unit(settings);
  const value = sighted[name];
  return numberField({
    name, label, hint, unit: said.unit,
    value: mine?.text ?? (value === null ? '' : inUnit(/** @type {number} */ (value), said)),
    message: mine?.message,
    onText: (text) => act.enter(name, text),
  });
}
