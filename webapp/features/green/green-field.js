/**
 * A number of calibration to type.
 * @import {State} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { pick } from '../../pick.js';
import { inUnit } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { FIELDS } from './fields.js';

/** @param {State} state @param {GreenActions} act @param {string} name @param {number | undefined} [value] */
export function greenField({ greenPage, settings, problem }, act, name, value = greenPage.draft[name]) {
  const { label, unit, hint } = pick(FIELDS, name);
  const mine = problem?.field === name ? problem : null;
  const said = unit(settings);
  return numberField({
    name,
    label,
    hint,
    unit: said.unit,
    value: mine?.text ?? (value === undefined ? '' : inUnit(value, said)),
    message: mine?.message,
    onText: (text) => act.enter(name, text),
  });
}
