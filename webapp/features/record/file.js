/**
 * The record out of the phone and into it.
 * @import {Preview, State} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayWords, several } from '../../format.js';

const OLD_DAYS = 14;
const MOST_SHOWN = 20;

/** @param {State} state */
export function exportIsOld({ entries, exported }) {
  if (!entries?.some(({ sample, gone }) => !sample && !gone)) return '';
  if (!exported) return 'This record has never been exported.';
  const days = Math.floor((Date.now() - Date.parse(exported)) / 86_400_000);
  return days >= OLD_DAYS ? `The last export is ${days} days old.` : '';
}

/** @param {State} state @param {RecordActions} act */
export function file({ entries, recordPage, exported, aside, damaged }, act) {
  const invented = entries?.some(({ sample }) => sample);
  return html`<h1>The record as a file</h1><p>${several(entries?.length ?? 0, 'entry', 'entries')} on this phone${exported ? `, exported ${dayWords(exported)}` : ''}. Nothing leaves it unless you send it.</p>
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
    ${recordPage.preview ? shown(recordPage.preview, act) : ''}
    ${
      recordPage.sure
        ? html`<div class="sure" role="alert"><p>Delete ${entries?.length === 1 ? 'the one entry' : `all ${entries?.length ?? 0} entries`}, what they were before, calibration and settings? Nothing brings them back but an export.</p>
        <button type="button" class="word" @click=${act.erase}>Yes, delete everything</button> <button type="button" class="word" @click=${() => act.askErase(false)}>Keep it</button></div>`
        : html`<button type="button" class="word" @click=${() => act.askErase(true)}>Delete everything</button>`
    }`;
}

/** @param {State['aside']} aside @param {string[]} damaged @param {RecordActions} act */
function misfits(aside, damaged, act) {
  const all = [...damaged, ...aside.map(({ what, value }) => `${what}: ${(JSON.stringify(value) ?? '').slice(0, 80)}`)];
  if (!all.length) return '';
  return html`<section class="preview"><h2>Set aside</h2>
    <p>${several(all.length, 'thing', 'things')} on this phone did not fit; the rest works without. An export holds ${all.length === 1 ? 'it' : 'them'} too.</p>
    <ul>${all.slice(0, MOST_SHOWN).map((why) => html`<li>${why}</li>`)}</ul>
    ${all.length > MOST_SHOWN ? html`<p>and ${all.length - MOST_SHOWN} more.</p>` : ''}
    ${aside.length ? html`<button type="button" class="word" @click=${act.letGo}>Forget what is no entry</button>` : ''}</section>`;
}

/** @param {Preview} preview @param {RecordActions} act */
function shown({ fresh, newer, kept, bad, phone }, act) {
  const takes = fresh.length + newer.length;
  return html`<section class="preview" aria-live="polite"><h2>In this file</h2>
    <p>${fresh.length} new. ${newer.length} newer than here. ${kept} here already.${phone ? ' Other settings and calibration than here.' : ''}</p>
    ${
      bad.length
        ? html`<p class="problem">${bad.length === 1 ? '1 does' : `${bad.length} do`} not fit and would be left out:</p><ul>${bad.slice(0, MOST_SHOWN).map((why) => html`<li>${why}</li>`)}</ul>
      ${bad.length > MOST_SHOWN ? html`<p>and ${bad.length - MOST_SHOWN} more.</p>` : ''}`
        : ''
    }
    ${takes ? html`<button type="button" class="word" @click=${() => act.take(false)}>${bad.length ? `Take in the other ${takes}` : `Take in ${takes}`}</button>` : ''}
    ${phone ? html`<button type="button" class="word" @click=${() => act.take(true)}>${takes ? `Take in ${takes}, and replace settings and calibration` : 'Replace settings and calibration'}</button>` : ''}
    <button type="button" class="word" @click=${act.leave}>${takes || phone ? 'Leave it' : 'Done'}</button></section>`;
}
