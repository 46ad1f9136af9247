/**
 * Everything that was kept, newest first.
 * @import {Entry, State} from '../../types.js'
 * @import {NoteActions} from './actions.js'
 */
import { html } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { choice } from '../../parts/choice.js';
import { dayWords, entryWords } from './words.js';

const ROW_PX = 64; // as in notes.css
const STEP = 20; // rows, after which others are drawn
const DRAWN = 4 * STEP;

/** @type {[string, string][]} */
const WHAT = [['', 'all'], ['holed', 'holed'], ['missed', 'missed'], ['note', 'notes'], ['gone', 'deleted']];

/** @param {Entry} entry @param {State['noting']['only']} only */
function fits(entry, { place, what }) {
  if (place && entry.place !== place) return false;
  if (what === 'gone' || entry.gone) return what === 'gone' && entry.gone === true;
  if (!what) return true;
  if (entry.kind === 'note') return what === 'note';
  return what === (entry.result === 'holed' ? 'holed' : 'missed');
}

/** Only the rows in sight and some around them: twenty thousand scroll as forty do. @param {Entry[]} found @param {{from: number, settings: State['settings']}} state @param {NoteActions} act */
function rows(found, { from, settings }, act) {
  const first = Math.max(0, Math.min(from, found.length - DRAWN));
  const drawn = found.slice(first, first + DRAWN);
  const [above, below] = [first, found.length - first - drawn.length].map((left) => `${left * ROW_PX}px`);
  return html`<ul class="entries" .style=${`padding-block: ${above} ${below}`}>${repeat(drawn, ({ id }) => id,
    (entry, i) => html`<li aria-setsize=${found.length} aria-posinset=${first + i + 1}><button type="button" class="entry" @click=${() => act.edit(entry.id)}>
      <span class="entry-what">${entryWords(entry, settings)}</span>
      <span class="quiet">${entry.sample ? 'Invented · ' : ''}${dayWords(entry.at)}${entry.place ? ` · ${entry.place}` : ''}</span>
    </button></li>`,
  )}</ul>`;
}

/** The first row to draw for where the page is scrolled to. @param {HTMLElement} page */
export function rowAt(page) {
  const list = page.querySelector('.entries');
  if (!list) return 0;
  const above = page.getBoundingClientRect().top - list.getBoundingClientRect().top;
  return Math.max(0, Math.floor(above / ROW_PX / STEP) * STEP - STEP);
}

/** @param {State} state @param {NoteActions} act */
export function list({ entries, noting, settings }, act) {
  const places = [...new Set((entries ?? []).map(({ place }) => place).filter(Boolean))].sort();
  const found = (entries ?? []).filter((entry) => fits(entry, noting.only));
  return html`
    <h1>Notes</h1>
    <form class="note" @submit=${(/** @type {SubmitEvent} */ event) => {
      event.preventDefault();
      const form = /** @type {HTMLFormElement} */ (event.target);
      void act.note(/** @type {HTMLTextAreaElement} */ (form.elements.namedItem('text')).value).then(() => form.reset());
    }}>
      <label for="note-text">Note</label>
      <textarea id="note-text" name="text" rows="3" maxlength="4000" placeholder="Weather, greens, a feel"></textarea>
      <button type="submit" class="word">Keep it</button>
    </form>
    ${choice({ label: 'Show', name: 'what', value: noting.only.what, options: WHAT, onValue: (what) => act.filter({ what: /** @type {State['noting']['only']['what']} */ (what) }) })}
    ${places.length ? html`<label class="pick-place">Place <select @change=${(/** @type {Event} */ event) => act.filter({ place: /** @type {HTMLSelectElement} */ (event.target).value })}>
      <option value="">everywhere</option>${places.map((place) => html`<option .selected=${place === noting.only.place}>${place}</option>`)}</select></label>` : ''}
    <p class="quiet" role="status">${found.length} of ${(entries ?? []).filter(({ gone }) => !gone).length}</p>
    ${rows(found, { from: noting.from, settings }, act)}`;
}
