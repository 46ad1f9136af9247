/**
 * Everything that was kept, newest first.
 * @import {Entry, State} from '../../types.js'
 * @import {NoteActions} from './actions.js'
 */
import { html } from 'lit-html';
import { choice } from '../../parts/choice.js';
import { dayWords, entryWords, timeWords } from './words.js';

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
    <ul class="entries">${found.slice(0, noting.shown).map(
      (entry) => html`<li><button type="button" class="entry" @click=${() => act.edit(entry.id)}>
        <span class="entry-what">${entryWords(entry, settings)}</span>
        <span class="quiet">${dayWords(entry.at)} ${timeWords(entry.at)}${entry.place ? ` · ${entry.place}` : ''}${entry.sample ? ', invented' : ''}</span>
      </button></li>`,
    )}</ul>
    ${found.length > noting.shown ? html`<button type="button" class="word" @click=${act.more}>Show more</button>` : ''}`;
}
