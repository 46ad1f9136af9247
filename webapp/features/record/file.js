/**
 * The record out of the phone and into it.
 * @import {Preview, State} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayWords, several } from '../../format.js';
import { asideWords, entryWords } from './words.js';

const OLD_DAYS = 14;
const MOST_SHOWN = 20;
/** Until the player gives one. */
const PLACEHOLDER = 'Ash Larkmoor, invented';

/** @param {State} state */
export function exportIsOld({ entries, exported }) {
  if (!entries?.some(({ sample, gone }) => !sample && !gone)) return '';
  if (!exported) return 'This record has never been exported.';
  const days = Math.floor((Date.now() - Date.parse(exported)) / 86_400_000);
  return days >= OLD_DAYS ? `The last export is ${days} days old.` : '';
}

/** @param {State} state @param {RecordActions} act */
export function file({ entries, recordPage, exported, aside, damaged, settings }, act) {
  const invented = entries?.some(({ sample }) => sample);
  return html`<h1>The record as a file</h1>
    <p>${several(entries?.length ?? 0, 'entry', 'entries')} on this phone${exported ? `, exported ${dayWords(exported)}` : ''}.
    Nothing leaves it unless you send it.</p>
    <label class="text-field">Whose record<input id="player-name" maxlength="80" autocomplete="name" placeholder=${PLACEHOLDER}
      .value=${settings.name}
      @change=${(/** @type {Event} */ event) => act.setName(/** @type {HTMLInputElement} */ (event.target).value)}></label>
    <div class="does">
      <button type="button" class="word" @click=${act.exportJson}>Export everything</button>
      <button type="button" class="word" @click=${act.exportCsv}>Export putts as a table</button>
      <label class="word take">Import a file<input type="file" accept=".json,.txt,.csv" @change=${(
        /** @type {Event} */ event,
      ) => {
        const input = /** @type {HTMLInputElement} */ (event.target);
        void act.look(input.files?.[0]).then(() => (input.value = ''));
      }}></label>
      ${
        invented
          ? html`<button type="button" class="word" @click=${act.noSample}>Remove the invented player</button>`
          : html`<button type="button" class="word" @click=${act.sample}>Load an invented player</button>`
      }
    </div>
    ${misfits(aside, damaged, act)}
    ${recordPage.preview ? shown(recordPage.preview, settings, act) : ''}
    ${
      recordPage.sure
        ? html`<div class="sure" role="alert"><p>Delete ${
            entries?.length === 1 ? 'the one entry' : `all ${entries?.length ?? 0} entries`
          }, what they were before, calibration and settings? Nothing brings them back but an export.</p>
        <button type="button" class="word" @click=${act.erase}>Yes, delete everything</button> <button type="button"
          class="word" @click=${() => act.askErase(false)}>Keep it</button></div>`
        : html`<button type="button" class="word" @click=${() => act.askErase(true)}>Delete everything</button>`
    }`;
}

/** @param {State['aside']} aside @param {string[]} damaged @param {RecordActions} act */
function misfits(aside, damaged, act) {
  const all = [...damaged, ...aside.map(asideWords)];
  if (!all.length) return '';
  return html`<section class="preview"><h2>Set aside</h2>
    <p>${several(all.length, 'thing', 'things')} on this phone did not fit; the rest works without. An export holds
      ${all.length === 1 ? 'it' : 'them'} too.</p>
    <ul>${all.slice(0, MOST_SHOWN).map((why) => html`<li>${why}</li>`)}</ul>
    ${all.length > MOST_SHOWN ? html`<p>and ${all.length - MOST_SHOWN} more.</p>` : ''}
    ${
      aside.length ? html`<button type="button" class="word" @click=${act.letGo}>Forget what is no entry</button>` : ''
    }</section>`;
}

/** @param {Preview} preview @param {State['settings']} settings @param {RecordActions} act */
function shown({ fresh, newer, edited, kept, bad, phone, name, stranger, all }, settings, act) {
  const takes = fresh.length + newer.length + edited.length;
  return html`<section class="preview" aria-live="polite"><h2>${name ? `The record of ${name}` : 'In this file'}</h2>
    ${
      stranger
        ? html`<p class="problem">It is another player’s than ${settings.name || 'yours'}: look at it beside, or it mixes with
          your own.</p>`
        : ''
    }
    ${
      all.length ? html`<button type="button" class="word" @click=${act.beside}>Look at it beside mine, read only</button>` : ''
    }
    <p>${fresh.length} new. ${newer.length} newer than here. ${kept} here already.${
      edited.length ? ` ${several(edited.length, 'row')} edited in the table, which would count as changed now.` : ''
    }${phone ? ' Other settings and calibration than here.' : ''}</p>
    ${
      edited.length
        ? html`<ul>${edited
            .slice(0, MOST_SHOWN)
            .map((entry) => html`<li>${entryWords(entry, settings)}, ${dayWords(entry.at)}</li>`)}</ul>`
        : ''
    }
    ${
      bad.length
        ? html`<p class="problem">${bad.length === 1 ? '1 does' : `${bad.length} do`} not fit and would be left out:</p>
          <ul>${bad.slice(0, MOST_SHOWN).map((why) => html`<li>${why}</li>`)}</ul>
      ${bad.length > MOST_SHOWN ? html`<p>and ${bad.length - MOST_SHOWN} more.</p>` : ''}`
        : ''
    }
    ${
      takes
        ? html`<button type="button" class="word" @click=${() => act.take(false)}>${
            bad.length ? `Take in the other ${takes}` : `${stranger ? 'Mix in' : 'Take in'} ${takes}`
          }</button>`
        : ''
    }
    ${
      phone
        ? html`<button type="button" class="word" @click=${() => act.take(true)}>${
            takes ? `Take in ${takes}, and replace settings and calibration` : 'Replace settings and calibration'
          }</button>`
        : ''
    }
    <button type="button" class="word" @click=${act.leave}>${takes || phone ? 'Leave it' : 'Done'}</button></section>`;
}
