/**
 * One entry, to mend; what it was before stays.
 * @import {Entry, PuttEntry, State} from '../../types.js'
 * @import {NoteActions} from './actions.js'
 */
import { html } from 'lit-html';
import { inUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';
import { entryUnit } from './actions.js';
import { extras, GATES } from './log.js';
import { dayWords, entryWords, greenWords, timeWords } from './words.js';

/** @type {['distance_m' | 'slope_percent' | 'fall_deg' | 'stimp_ft' | 'past_m' | 'aim_deg', string][]} */
const NUMBERS = [['distance_m', 'Distance'], ['slope_percent', 'Slope'], ['fall_deg', 'Falls'], ['stimp_ft', 'Stimp'], ['past_m', 'Past the hole'], ['aim_deg', 'Start line meant, left']];

/** @param {State} state @param {NoteActions} act */
export function edit(state, act) {
  const { entries, noting } = state;
  const entry = entries?.find(({ id }) => id === noting.editing);
  if (!entry) return '';
  const body = html`<p class="quiet">${dayWords(entry.at)} ${timeWords(entry.at)}${entry.sample ? ', invented' : ''}</p>
    ${entry.kind === 'putt' ? putt(entry, state, act) : ''}
    ${text(entry, 'place', 'Place', act)} ${text(entry, 'text', entry.kind === 'note' ? 'Note' : 'Remark', act)}
    <button type="button" class="word" @click=${() => act.add(entry.id, 'gone', entry.gone ? undefined : true)}>${entry.gone ? 'Bring it back' : 'Delete'}</button>
    ${noting.before.length ? html`<h3>Before</h3><ul class="before">${noting.before.map(
      (old) => html`<li><span>${entryWords(old, state.settings)}</span> <span class="quiet">${old.kind === 'putt' ? greenWords(old) : ''} until ${timeWords(old.changed)}, ${dayWords(old.changed)}</span></li>`,
    )}</ul>` : ''}
    ${noting.said ? html`<p class="problem" role="alert">${noting.said}</p>` : ''}`;
  return sheet({ title: entry.kind === 'putt' ? 'Putt' : 'Note', body, onClose: act.close });
}

/** @param {Entry} entry @param {'place' | 'text'} name @param {string} label @param {NoteActions} act */
const text = (entry, name, label, act) => html`<label class="text-field">${label}
  <textarea rows=${name === 'place' ? 1 : 2} maxlength="4000" .value=${entry[name]} @change=${(/** @type {Event} */ event) => act.add(entry.id, name, /** @type {HTMLTextAreaElement} */ (event.target).value)}></textarea></label>`;

/** @param {PuttEntry} entry @param {State} state @param {NoteActions} act */
function putt(entry, { settings, problem }, act) {
  const finish = entry.result === 'holed' ? null : entry.result;
  /** @param {string} field @param {string} label @param {number} value */
  const field = (field, label, value) => {
    const unit = entryUnit(field, settings);
    const mine = problem?.field === field ? problem : null;
    return numberField({ name: `entry-${field}`, label, unit: unit.unit, value: mine?.text ?? inUnit(value, unit), message: mine?.message, onText: (typed) => act.enter(entry.id, field, label, typed) });
  };
  return html`${choice({ label: 'Result', name: 'result', value: finish ? 'missed' : 'holed', options: [['holed', 'holed'], ['missed', 'missed']], onValue: (value) => act.add(entry.id, 'result', value === 'holed' ? value : { x_m: entry.past_m, y_m: 0 }) })}
    <div class="fields pairs">
      ${finish ? html`${field('x_m', 'Past (− short)', finish.x_m)} ${field('y_m', 'Left (− right)', finish.y_m)}` : ''}
      ${NUMBERS.map(([name, label]) => (entry[name] === undefined ? '' : field(name, label, entry[name])))}
    </div>
    ${choice({ label: 'Start gate', name: 'entry-gate', value: entry.gate ?? '', options: GATES, onValue: (gate) => act.add(entry.id, 'gate', gate || undefined) })}
    <div class="fields pairs">${extras(entry, settings, problem, act)}</div>`;
}
