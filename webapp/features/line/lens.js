/**
 * The lens, measured once by something of known length.
 * @import {Photo, State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { refusalWords } from '../../refusal.js';
import { html } from 'lit-html';
import { number } from '../../format.js';
import { lineField } from './line-field.js';

/** @param {number} mm @param {string} date */
const known = (mm, date) => (date ? `${number(mm, 1)} mm, measured ${date}` : `taken for ${number(mm, 0)} mm, not measured`);

/** What is known of the lenses, and the way to know more. @param {State} state @param {LineActions} act */
export const lenses = ({ sighted: { lens_mm, lens_date, live_mm, live_date } }, act) => html`<section><h2>Lens</h2>
  <p class="quiet">Moving picture: ${known(live_mm, live_date)}. Photographs tell theirs; where one does not:
    ${known(lens_mm, lens_date)}.</p>
  <button type="button" class="word" @click=${() => act.measure(true)}>Measure the lens</button></section>`;

/** @param {LineActions} act */
export const howToMeasure = (act) => html`<h2>Measure the lens</h2>
  <p>Lay a club or a tape across, square to the way you look. Measure how long it is, and how far its middle is from the phone.
    Have both ends in the picture.</p>
  <button type="button" class="word" @click=${() => act.measure(false)}>Leave the lens as it is</button>`;

/** @param {State} state @param {Photo} photo @param {LineActions} act */
export function measured(state, photo, act) {
  const {
    answers: { lens },
    refusals,
  } = state;
  const done = photo.end && photo.other;
  return html`<div class="fields two">${lineField(state, act, 'thing_m')}${lineField(state, act, 'away_m')}</div>
    ${done && refusals.lens ? html`<p class="problem" role="alert">${refusalWords(refusals.lens, state.settings)}</p>` : ''}
    ${
      done && lens && !refusals.lens
        ? html`<p class="say">${number(lens.lens_mm, 1)} mm: ${number(lens.fov_deg, 1)}° from top to bottom</p>
        <p class="quiet">A touch 1 mm off makes it ${number(lens.error_deg, 1)}° wrong.
          ${
            photo.live ? 'This is the lens of the moving picture.' : 'This is the lens of photographs that do not tell theirs.'
          }</p>
        <button type="button" class="line-go" @click=${act.keepLens}>Keep this lens</button>`
        : ''
    }
    <div class="does">${
      photo.end
        ? html`<button type="button" class="word"
      @click=${act.again}>Mark again</button>`
        : ''
    }<button type="button" class="word"
        @click=${() => act.measure(false)}>Leave the lens as it is</button></div>`;
}
