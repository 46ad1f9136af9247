/**
 * One entry, to mend; what it was before stays.
 * @import {DrillEntry, Entry, NoteEntry, PuttEntry, State} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { clock, dayWords, HOLE_M, inUnit, timeWords, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';
import { entryUnit, FINISH } from './actions.js';
import { extras, STARTS } from './log.js';
import { beforeWords, inputTime } from './words.js';

const TITLES = { putt: 'Putt', note: 'Note', drill: 'Drill', green: 'Green' };
/** @type {['distance_m' | 'slope_percent' | 'fall_deg' | 'stimp_ft' | 'past_m' | 'aim_deg', string][]} */
const NUMBERS = [
  ['distance_m', 'Distance'],
  ['slope_percent', 'Slope'],
  ['fall_deg', 'Falls'],
  ['stimp_ft', 'Stimp'],
  ['past_m', 'Past the hole'],
  ['aim_deg', 'Start line meant, left'],
];
/** @type {['good' | 'bad', string][]} */
const COUNTS = [
  ['good', 'Good'],
  ['bad', 'Not'],
];

/** @param {State} state @param {RecordActions} act */
export function edit(state, act) {
  const { entries, recordPage, trouble } = state;
  const entry = entries?.find(({ id }) => id === recordPage.editing);
  if (!entry) return '';
  const body = html`${entry.sample ? html`<p class="quiet">Invented</p>` : ''}
    ${entry.kind === 'putt' ? putt(entry, state, act) : entry.kind === 'note' ? note(entry, state, act) : entry.kind === 'drill' ? drill(entry, state, act) : ''}
    ${entry.kind === 'note' ? '' : text(entry, 'text', 'Remark', act)} ${text(entry, 'place', 'Place', act)}
    <label class="text-field">When<input type="datetime-local" required .value=${inputTime(entry.at)} @change=${(
      /** @type {Event} */ event,
    ) => {
      const { value } = /** @type {HTMLInputElement} */ (event.target);
      if (value) void act.add(entry.id, 'at', new Date(value).toISOString());
    }}></label>
    <button type="button" class="word" @click=${() => act.add(entry.id, 'gone', entry.gone ? undefined : true)}>${entry.gone ? 'Bring it back' : 'Delete'}</button>
    ${
      recordPage.before.length
        ? html`<h3>Before</h3><ul class="before">${recordPage.before.map(
            (
              old,
              i,
            ) => html`<li><span>${beforeWords(old, recordPage.before[i - 1] ?? entry, state.settings)}</span> <span class="quiet">as of ${timeWords(old.changed)}, ${dayWords(old.changed)}</span>
        <button type="button" class="word" @click=${() => act.putBack(old)}>Put back</button></li>`,
          )}</ul>`
        : ''
    }
    ${trouble ? html`<p class="problem" role="alert">${trouble}</p>` : ''}`;
  return sheet({ title: TITLES[entry.kind], body, onClose: act.close });
}

/** @param {Entry} entry @param {'place' | 'text' | 'weather'} name @param {string} label @param {RecordActions} act */
const text = (entry, name, label, act) => html`<label class="text-field">${label}
  <textarea rows=${name === 'text' ? 2 : 1} maxlength="4000" .value=${/** @type {NoteEntry} */ (entry)[name] ?? ''} @change=${(/** @type {Event} */ event) => act.add(entry.id, name, /** @type {HTMLTextAreaElement} */ (event.target).value)}></textarea></label>`;

/** @param {Entry} entry @param {State} state @param {RecordActions} act @returns {(field: string, label: string, value: number | undefined, hint?: string) => unknown} */
const numbers =
  (entry, { settings, problem }, act) =>
  (field, label, value, hint) => {
    const unit = entryUnit(field, settings);
    const mine = problem?.field === field ? problem : null;
    const shown = mine?.text ?? (value === undefined ? '' : inUnit(value, unit));
    return numberField({
      name: `entry-${field}`,
      label,
      hint,
      unit: unit.unit,
      value: shown,
      message: mine?.message,
      onText: (typed) => act.enter(entry.id, field, label, typed),
    });
  };

/** @param {NoteEntry} entry @param {State} state @param {RecordActions} act */
function note(entry, state, act) {
  const { stimp_ft, stimp_sd_ft } = entry;
  const spread =
    stimp_sd_ft === undefined
      ? undefined
      : `Measured, give or take ${withUnit(Math.max(0.1, stimp_sd_ft), entryUnit('stimp_ft', state.settings))}.`;
  return html`${text(entry, 'text', 'Note', act)} ${text(entry, 'weather', 'Weather', act)}
    <div class="fields">${numbers(entry, state, act)('stimp_ft', 'Green speed', stimp_ft, spread)}</div>`;
}

/** @param {DrillEntry} entry @param {State} state @param {RecordActions} act */
function drill(entry, state, act) {
  const field = numbers(entry, state, act);
  return html`<p>${entry.name}, ${clock(entry.spent_s)}</p><div class="fields pairs">${COUNTS.map(([name, label]) => field(name, label, entry[name]))}</div>`;
}

/** @param {PuttEntry} entry @param {State} state @param {RecordActions} act */
function putt(entry, state, act) {
  const finish = entry.result === 'holed' ? null : entry.result;
  const field = numbers(entry, state, act);
  return html`${choice({
    label: 'Result',
    name: 'result',
    value: finish ? 'missed' : 'holed',
    options: [
      ['holed', 'holed'],
      ['missed', 'missed'],
    ],
    onValue: (value) =>
      act.add(entry.id, 'result', value === 'holed' ? value : { x_m: Math.max(entry.past_m, HOLE_M), y_m: 0 }),
  })}
    <div class="fields pairs">
      ${finish ? FINISH.map(([name, label]) => field(name, label, finish[name])) : ''}
      ${NUMBERS.map(([name, label]) => (entry[name] === undefined ? '' : field(name, label, entry[name])))}
    </div>
    ${choice({ label: 'Started, or gate post touched', name: 'entry-gate', value: entry.gate ?? '', options: STARTS, onValue: (gate) => act.add(entry.id, 'gate', gate || undefined) })}
    <div class="fields pairs">${extras(entry, state.settings, state.problem, act)}</div>`;
}
