/**
 * One entry, to mend; what it was before stays.
 * @import {DrillEntry, Entry, NoteEntry, PuttEntry, State} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { clock, dayWords, inUnit, several, timeWords, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';
import { leave } from '../../parts/leave.js';
import { whoseAim } from '../../parts/whose-aim.js';
import { entryUnit, FINISH, fromEdge } from './finish.js';
import { extras, ownAim, STARTS } from './log.js';
import { beforeWords, inputTime } from './words.js';

const TITLES = { putt: 'Putt', note: 'Note', drill: 'Drill', green: 'Green', round: 'Round', worth: 'Putt worth keeping' };
/** @type {['distance_m' | 'slope_percent' | 'fall_deg' | 'stimp_ft' | 'past_m', string][]} */
const NUMBERS = [
  ['distance_m', 'Distance'],
  ['slope_percent', 'Slope'],
  ['fall_deg', 'Falls'],
  ['stimp_ft', 'Stimp'],
  ['past_m', 'Past the hole'],
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
    ${own(entry, state, act)}
    ${entry.kind === 'note' ? '' : text(entry, 'text', 'Remark', act)} ${text(entry, 'place', 'Place', act)}
    <label class="text-field">When<input type="datetime-local" required .value=${inputTime(entry.at)} @change=${(
      /** @type {Event} */ event,
    ) => {
      const { value } = /** @type {HTMLInputElement} */ (event.target);
      if (value) void act.add(entry.id, 'at', new Date(value).toISOString());
    }}></label>
    <button type="button" class="word"
      @click=${() => act.add(entry.id, 'gone', entry.gone ? undefined : true)}>${
        entry.gone ? 'Bring it back' : 'Delete'
      }</button>
    ${
      recordPage.before.length
        ? html`<h3>Before</h3><ul class="before">${recordPage.before.map(
            (old, i) => html`<li><span>${beforeWords(old, recordPage.before[i - 1] ?? entry, state.settings)}</span> <span
              class="quiet">as of ${timeWords(old.changed)}, ${dayWords(old.changed)}</span>
        <button type="button" class="word" @click=${() => act.putBack(old)}>Put back</button></li>`,
          )}</ul>`
        : ''
    }
    ${trouble ? html`<p class="problem" role="alert">${trouble}</p>` : ''}`;
  return sheet({ title: TITLES[entry.kind], body, onClose: act.close });
}

/** What is its kind's own. @param {Entry} entry @param {State} state @param {RecordActions} act */
function own(entry, state, act) {
  if (entry.kind === 'putt') return putt(entry, state, act);
  if (entry.kind === 'note') return note(entry, state, act);
  if (entry.kind === 'drill') return drill(entry, state, act);
  if (entry.kind === 'green') return '';
  if (entry.kind === 'worth') return html`<p>${entry.name}</p><a class="word" href="#book">In the book</a>`;
  return html`<p>${[entry.name, several(entry.holes.length, 'hole')].filter(Boolean).join(', ')}</p>
    <a class="word" href="#rounds">Its picture</a>`;
}

/** @param {Entry} entry @param {'place' | 'text' | 'weather'} name @param {string} label @param {RecordActions} act */
const text = (entry, name, label, act) => html`<label class="text-field">${label}
  <textarea rows=${name === 'text' ? 2 : 1} maxlength="4000" .value=${/** @type {NoteEntry} */ (entry)[name] ?? ''}
    @change=${(/** @type {Event} */ event) =>
      act.add(entry.id, name, /** @type {HTMLTextAreaElement} */ (event.target).value)}></textarea></label>`;

/**
 * @param {Entry} entry @param {State} state @param {RecordActions} act
 * @returns {(field: string, label: string, value: number | undefined, hint?: string) => unknown}
 */
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
  return html`<p>${entry.name}, ${clock(entry.spent_s)}</p><div
    class="fields pairs">${COUNTS.map(([name, label]) => field(name, label, entry[name]))}</div>`;
}

/** @param {string} address @param {string} id @param {RecordActions} act */
const picture = (address, id, act) => html`<img class="entry-picture" src=${address}
    alt="The putt as the phone saw it: the ball’s way over the line that was meant">
  <div class="does"><button type="button" class="word" @click=${() => act.givePicture(address)}>Save or share the
    picture</button><button type="button" class="word" @click=${() => act.add(id, 'picture', undefined)}>Delete the
    picture</button></div>`;

/** @param {PuttEntry} entry @param {State} state @param {RecordActions} act */
function putt(entry, state, act) {
  const { id, result } = entry;
  const finish = typeof result === 'object' ? fromEdge(result) : null;
  const field = numbers(entry, state, act);
  const { settings, problem } = state;
  return html`${entry.picture ? picture(entry.picture, id, act) : ''}
  ${choice({
    label: 'Result',
    name: 'result',
    value: result === 'holed' ? 'holed' : 'missed',
    options: [
      ['holed', 'holed'],
      ['missed', 'missed'],
    ],
    onValue: (value) => act.setResult(id, value === 'holed' ? 'holed' : 'missed'),
  })}
    ${
      result === 'holed'
        ? ''
        : html`${
            finish
              ? ''
              : html`<p class="quiet">Where? As far as you know
                it.</p>${leave({
                  label: 'How it was left',
                  value: entry,
                  middle: 'not known',
                  onLeave: (left) => act.setResult(id, 'missed', left),
                })}`
          }
      <p class="quiet">Measured from the hole’s edge:</p><div
        class="fields pairs">${FINISH.map(([name, label]) => field(name, label, finish?.[name]))}</div>`
    }
    <div class="fields pairs">${NUMBERS.map(([name, label]) =>
      entry[name] === undefined ? '' : field(name, label, entry[name]),
    )}</div>
    ${whoseAim({
      label: 'Whose aim was played',
      name: 'entry-read',
      value: entry.read ?? '',
      onWhose: (read) => act.add(id, 'read', read || undefined),
    })}
    <div class="fields">${ownAim(entry, 'entry-aim_deg', settings, problem, act)}</div>
    ${choice({
      label: 'Started, or gate post touched',
      name: 'entry-gate',
      value: entry.gate ?? '',
      options: STARTS,
      onValue: (gate) => act.add(id, 'gate', gate || undefined),
    })}
    <div class="fields pairs">${extras(entry, settings, problem, act)}</div>`;
}
