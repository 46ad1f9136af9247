/** @import {State} from '../../types.js' @import {NoteActions} from './actions.js' */
import { html } from 'lit-html';
import { edit } from './edit.js';
import { exportIsOld, file } from './file.js';
import { list, rowAt } from './list.js';
import { log } from './log.js';

const PAGES = { log, list, file };
const NAMES = /** @type {const} */ ([
  ['log', 'Log a putt'],
  ['list', 'Notes'],
  ['file', 'File'],
]);

/** @param {State} state @param {NoteActions} act */
export function view(state, act) {
  const { noting, entries } = state;
  const old = exportIsOld(state);
  return html`<main class="page notes" @scroll=${(/** @type {Event} */ event) => noting.page === 'list' && act.scroll(rowAt(/** @type {HTMLElement} */ (event.currentTarget)))}>
    <nav class="choice-row" aria-label="Notes">
      ${NAMES.map(([page, name]) => html`<button type="button" class="pick" aria-pressed=${page === noting.page} @click=${() => act.turn(page)}>${name}</button>`)}
      <a class="pick" href="#findings">Findings</a>
    </nav>
    ${noting.said ? html`<p class="said" role="status">${noting.said}</p>` : ''}
    ${entries === null ? html`<p class="quiet">Opening the record</p>` : PAGES[noting.page](state, act)}
    ${old && noting.page !== 'file' ? html`<p class="quiet">${old} <button type="button" class="word" @click=${() => act.turn('file')}>Export</button></p>` : ''}
    ${noting.editing ? edit(state, act) : ''}
  </main>`;
}
