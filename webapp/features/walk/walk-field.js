/**
 * A number of a green or of a reading to type.
 * @import {State} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { inUnit } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { unitFor } from './plan.js';

/**
 * @param {State} state @param {WalkActions} act @param {Parameters<WalkActions['enter']>[0]} name @param {string} label
 * @param {number | undefined} value
 * @param {(text: string) => void} [onText]
 */
export function walkField({ settings, problem }, act, name, label, value, onText = (text) => act.enter(name, text)) {
  const unit = unitFor(name, settings);
  const mine = problem?.field === name ? problem : null;
  return numberField({
    name,
    label,
    unit: unit.unit,
    value: mine?.text ?? (value === undefined ? '' : inUnit(value, unit)),
    message: mine?.message,
    onText,
  });
}
