/**
 * A typed number of this screen.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { pick } from '../../../pick.js';
import { inUnit } from '../../../format.js';
import { numberField } from '../../../parts/number-field.js';
import { FIELDS, SENSES } from '../fields.js';

/** @param {State} state @param {PracticeActions} act @param {string} name @param {string} [hint] */
export function practiceField({ practice, answers, settings, problem }, act, name, hint) {
  const { label, unit, get } = pick(FIELDS, name);
  const said = unit(settings);
  const mine = problem?.field === name ? problem : null;
  return numberField({
    name,
    label,
    hint,
    unit: said.unit,
    value: mine?.text ?? inUnit(get(practice, answers), said),
    message: mine?.message,
    onText: (text) => act.enter(name, text),
  });
}

/** What was felt or guessed. @param {State} state @param {PracticeActions} act @param {keyof typeof SENSES} name */
export function sensedField({ practicePage: { draft }, settings, problem }, act, name) {
  const { label, unit } = pick(SENSES, name);
  const mine = problem?.field === name ? problem : null;
  const value = draft[name];
  return numberField({
    name,
    label,
    unit: unit(settings).unit,
    value: mine?.text ?? (value === undefined ? '' : inUnit(value, unit(settings))),
    message: mine?.message,
    onText: (text) => act.enterSensed(name, text),
  });
}
