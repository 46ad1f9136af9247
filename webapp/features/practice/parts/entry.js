/**
 * A typed number of this screen.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { inUnit } from '../../../format.js';
import { numberField } from '../../../parts/number-field.js';
import { FIELDS } from '../fields.js';

/** @param {State} state @param {PracticeActions} act @param {string} name @param {string} [hint] */
export function entry({ practice, practising, problem }, act, name, hint) {
  const { label, unit, get } = FIELDS[name];
  const mine = problem?.field === name ? problem : null;
  return numberField({
    name,
    label,
    hint,
    unit: unit.unit,
    value: mine?.text ?? inUnit(get(practice, practising), unit),
    message: mine?.message,
    onText: (text) => act.enter(name, text),
  });
}
