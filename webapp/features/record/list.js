/**
 * Everything that was kept, newest first.
 * @import {Entry, State} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { dayWords } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { numberField } from '../../parts/number-field.js';
import { entryUnit } from './finish.js';
import { placeField } from './place.js';
import { entryWords } from './words.js';

const ROW_PX = 64; // as in record.css
const BLOCK = 20; // rows, drawn together
const DRAWN = 4; // blocks

/** @type {[string, string][]} */
const WHAT = [
  ['', 'all'],
  ['holed', 'holed'],
  ['missed', 'missed'],
  ['note', 'notes'],
  ['drill', 'drills'],
  ['round', 'rounds'],
  ['worth', 'kept'],
  ['gone', 'deleted'],
];

/** @param {Entry} entry @param {State['recordPage']['only']} only */
function fits(entry, { place, day, what }) {
  if ((place && entry.place !== place) || (day && dayWords(entry.at) !== day)) return false;
  if (what === 'gone' || entry.gone) return what === 'gone' && entry.gone === true;
  if (!what) return true;
  if (entry.kind !== 'putt') return what === entry.kind;
  return what === (entry.result === 'holed' ? 'holed' : 'missed');
}

/**
 * A place or a day of which the last entry is gone is asked for no more.
 * @param {Entry[]} entries @param {State['recordPage']['only']} only @param {string[]} places @param {string[]} days
 */
function chosen(entries, { what, place, day }, places, days) {
  const only = { what, place: places.includes(place) ? place : '', day: days.includes(day) ? day : '' };
  return entries.filter((entry) => fits(entry, only));
}

/**
 * Where and when there are entries, and which are asked for. Kept until one of both changes: with each row that is scrolled
 * thousands need not be gone through.
 * @type {{entries: Entry[], only: State['recordPage']['only'], places: string[], days: string[], living: number, found:
 *   Entry[]} | undefined}
 */
let last;

/** @param {Entry[]} entries @param {State['recordPage']['only']} only */
function sought(entries, only) {
  if (last?.entries !== entries) {
    const places = [...new Set(entries.map(({ place }) => place).filter(Boolean))].sort();
    const days = [...new Set(entries.map(({ at }) => dayWords(at)))];
    last = {
      entries,
      only,
      places,
      days,
      living: entries.filter(({ gone }) => !gone).length,
      found: chosen(entries, only, places, days),
    };
  } else if (last.only !== only) last = { ...last, only, found: chosen(entries, only, last.places, last.days) };
  return last;
}

/**
 * Only the blocks in sight and some around them: twenty thousand rows scroll as forty do. A block that is left behind goes to
 * the other end with new words in its rows, so nothing is made or thrown away, and a row in sight keeps the focus.
 * @param {Entry[]} found @param {{from: number, settings: State['settings']}} state @param {RecordActions} act
 */
function rows(found, { from, settings }, act) {
  const count = Math.ceil(found.length / BLOCK);
  const first = Math.max(0, Math.min(from / BLOCK, count - DRAWN));
  const places = Array.from({ length: Math.min(count, DRAWN) }, (_, i) => first + i);
  const [above, below] = [first * BLOCK, Math.max(0, found.length - (first + DRAWN) * BLOCK)].map(
    (left) => `${left * ROW_PX}px`,
  );
  const block = (/** @type {number} */ place) =>
    found.slice(place * BLOCK, (place + 1) * BLOCK).map(
      (
        entry,
        i,
      ) => html`<li aria-setsize=${found.length} aria-posinset=${place * BLOCK + i + 1}><button type="button" class="entry"
        @click=${() => act.edit(entry.id)}>
      <span class="entry-what" .textContent=${entryWords(entry, settings)}></span>
      <span class="quiet"
        .textContent=${[entry.sample ? 'Invented' : '', dayWords(entry.at), entry.place].filter(Boolean).join(' · ')}></span>
    </button></li>`,
    );
  return html`<ul class="entries"
    .style=${`padding-block: ${above} ${below}`}>${repeat(places, (place) => place % DRAWN, block)}</ul>`;
}

/** The first row to draw for where the page is scrolled to. @param {HTMLElement} page */
export function rowAt(page) {
  const list = page.querySelector('.entries');
  if (!list) return 0;
  const above = page.getBoundingClientRect().top - list.getBoundingClientRect().top;
  return Math.max(0, Math.floor(above / ROW_PX / BLOCK) - 1) * BLOCK;
}

/** @param {State} state @param {RecordActions} act */
function writing(state, act) {
  const { settings, problem, draft } = state;
  const mine = problem?.field === 'note-speed' ? problem : null;
  const keep = (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    void act.note();
  };
  const typed = (/** @type {'text' | 'weather' | 'speed'} */ name) => (/** @type {Event} */ event) =>
    act.draft({ [name]: /** @type {HTMLInputElement} */ (event.target).value });
  return html`<form class="note" @submit=${keep}>
    <h1><label for="note-text">Note</label></h1>
    <textarea id="note-text" rows="2" maxlength="4000" .value=${draft.text} @input=${typed('text')}></textarea>
    <div class="fields pairs"><label class="text-field">Weather<input autocomplete="off" maxlength="200"
      .value=${draft.weather} @input=${typed('weather')}></label>
      <div @input=${typed('speed')}>${numberField({
        name: 'note-speed',
        label: 'Green speed',
        unit: entryUnit('stimp_ft', settings).unit,
        value: draft.speed,
        message: mine?.message,
        onText: () => {},
      })}</div></div>
    ${placeField(state, act)}
    <button type="submit" class="word">Keep it</button>
  </form>`;
}

/**
 * @param {'place' | 'day'} name @param {string} label @param {string} all @param {string[]} options @param
 *   {State['recordPage']['only']} only @param {RecordActions} act
 */
const select = (
  name,
  label,
  all,
  options,
  only,
  act,
) => html`<div class="pick-one"><label for="only-${name}">${label}</label><select id="only-${name}"
  @change=${(/** @type {Event} */ event) => act.filter({ [name]: /** @type {HTMLSelectElement} */ (event.target).value })}>
  <option value="">${all}</option>${options.map(
    (option) => html`<option .selected=${option === only[name]}>${option}</option>`,
  )}</select></div>`;

/** @param {State} state @param {RecordActions} act */
export function list(state, act) {
  const {
    entries,
    recordPage: { only, from },
    settings,
  } = state;
  const { places, days, living, found } = sought(entries ?? [], only);
  return html`${writing(state, act)}
    ${choice({
      label: 'Show',
      name: 'what',
      value: only.what,
      options: WHAT,
      onValue: (what) => act.filter({ what: /** @type {State['recordPage']['only']['what']} */ (what) }),
    })}
    <div class="fields pairs">${select('place', 'Where', 'everywhere', places, only, act)}
      ${select('day', 'When', 'every day', days, only, act)}</div>
    <p class="quiet" role="status">${found.length} of ${only.what === 'gone' ? (entries?.length ?? 0) - living : living}</p>
    ${rows(found, { from, settings }, act)}`;
}
