/** Where to start the ball and how hard. @import {State} from '../../types.js' */
import { html } from 'lit-html';
import { aim, distanceUnit, inUnit } from '../../format.js';
import { aimName, aimWords, shapeWords } from './words.js';

/** @param {State} state */
export function answer({ read, refusal, settings }) {
  if (refusal) return html`<section class="answer" aria-live="polite"><h1 class="refused">No such putt</h1><p class="shape">${refusal.value}</p></section>`;
  if (!read) return html`<section class="answer"><h1 class="refused">Reading</h1></section>`;
  const { number, unit } = aim(read.value, settings);
  const words = aimWords(read.value);
  const pace = distanceUnit(settings);
  return html`<section class="answer" aria-live="polite">
    <h1><span class="over">${aimName(settings)}</span> <span class="big">${words === 'dead centre' ? '0' : number}<small> ${unit}</small></span> <span class="say">${words}</span></h1>
    <p class="pace"><span class="over">Plays like</span> <span class="big">${inUnit(read.value.plays_like_m, pace)}<small> ${pace.unit}</small></span> <span class="say">on the level</span></p>
    <p class="shape">${shapeWords(read.value, settings)}</p>
  </section>`;
}
