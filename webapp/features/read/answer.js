/**
 * Where to start the ball and how hard.
 * @import {Read, Settings, State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimSpread, aimWords, distanceUnit, inUnit } from '../../format.js';
import { shapeWords } from './words.js';

const NOT_YET = { number: '–', unit: '', side: 'reading', length: '–', shape: 'The first read is on its way' };

/** @param {Read} read @param {Settings} settings */
function said(read, settings) {
  const { number, unit } = aim(read, settings);
  const side = aimWords(read);
  const length = inUnit(read.plays_like_m, distanceUnit(settings));
  return { number: side === 'dead centre' ? '0' : number, unit, side, length, shape: shapeWords(read, settings) };
}

/** @param {State} state @param {ReadActions} act */
export function answer({ read, refusal, settings }, act) {
  if (refusal)
    return html`<section class="answer" aria-live="polite"><h1 class="refused">No such putt</h1><p
      class="shape">${refusal.value}</p></section>`;
  const pace = distanceUnit(settings);
  const { number, unit, side, length, shape } = read ? said(read.value, settings) : NOT_YET;
  const off = read?.off ? aimSpread(read.off, settings) || '?' : '';
  // so many large digits, two letters beside them for one: they take the room that there is
  const wide = [...number, ...length].length + [...unit, ...pace.unit].length / 2;
  return html`<section class="answer" .style=${`--wide:${wide}`} aria-live="polite">
    <h1><span class="over">Aim</span> <span class="big">${number}<small> ${unit}</small></span> <span
      class="say">${side}</span></h1>
    ${
      off
        ? html`<button type="button" class="off" aria-label="Give or take ${off} ${unit}: what it comes from"
      @click=${() => act.open('doubt')}>±${off}</button>`
        : html`<span class="off"></span>`
    }
    <p class="pace"><span class="over">Plays like</span> <span class="big">${length}<small> ${pace.unit}</small></span> <span
      class="say">on the level</span></p>
    <p class="shape">${shape}</p>
  </section>`;
}
