/** @import {State} from '../../types.js' @import {RecordActions} from './actions.js' */
import { html } from 'lit-html';
import { place } from '../../device/stay.js';
import { edit } from './edit.js';
import { exportIsOld, file } from './file.js';
import { list, rowAt } from './list.js';
import { log } from './log.js';

const PAGES = { log, list, file };
const NAMES = /** @type {const} */ ([
  ['log', 'Putt'],
  ['list', 'Notes'],
  ['file', 'File'],
]);

/** @param {State} state @param {RecordActions} act */
export function view(state, act) {
  const { recordPage, entries } = state;
  const old = exportIsOld(state);
  return html`<main class="page record"
    @scroll=${(/** @type {Event} */ event) =>
      recordPage.page === 'list' && act.scroll(rowAt(/** @type {HTMLElement} */ (event.currentTarget)))}>
    <nav class="choice-row" aria-label="Record">
      ${NAMES.map(
        ([page, name]) =>
          html`<button type="button" class="pick" aria-pressed=${page === recordPage.page}
            @click=${() => act.turn(page)}>${name}</button>`,
      )}
      <a class="pick" href="#rounds">Rounds</a>
      <a class="pick" href="#findings">Findings</a>
      <a class="pick" href="#book">Book</a>
    </nav>
    ${recordPage.said ? html`<p class="said" role="status">${recordPage.said}</p>` : ''}
    ${
      entries === null
        ? html`<p class="quiet">${
            state.keptByNewer || state.unopened ? 'How much is kept is not known yet.' : 'Opening the record'
          }</p>`
        : PAGES[recordPage.page](state, act)
    }
    ${
      old && recordPage.page !== 'file'
        ? html`<p class="quiet">${old} <button type="button" class="word" @click=${() => act.turn('file')}>Export</button></p>`
        : ''
    }
    ${recordPage.page === 'list' ? '' : moves(entries)}
    ${recordPage.editing ? edit(state, act) : ''}
  </main>`;
}

/** An iPhone's browser and its home screen have a record each. @param {State['entries']} entries */
function moves(entries) {
  const at = place();
  if (at === 'tab')
    return html`<p class="quiet" role="note">This browser deletes what a site keeps when it is not opened for seven days. Put
      Borrowline on the home screen (Share, then Add to Home Screen), open it there once where there is a signal, and log
      there: it has a record of its own, which stays. What is logged here does not move by itself: export it here, import the
      file there.</p>`;
  if (at === 'home' && entries && !entries.some(({ sample }) => !sample))
    return html`<p class="quiet" role="note">Logged in the browser before? That is another record: export it there, import the
      file here.</p>`;
  return '';
}
