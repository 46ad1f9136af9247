/**
 * How far back for the putt in hand, from the player's own strokes.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { distanceUnit, smallUnit, withUnit } from '../../../format.js';
import { refusalWords } from '../../../refusal.js';

const UNREAD = 'Read a putt first: its launch speed is what the length is for.';

/** @param {State} state @param {PracticeActions} act */
export function length({ practice, practicePage, settings, read, putt, answers, refusals }, act) {
  const { strokeLength: found } = answers;
  const untold = practice.strokes.length > 2 && !read ? UNREAD : '';
  const note = practicePage.note || untold || (refusals.strokeLength && refusalWords(refusals.strokeLength, settings));
  const small = smallUnit(settings);
  const far = distanceUnit(settings);
  const { strokes } = practice;
  /** @param {SubmitEvent} event */
  const add = (event) => {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    if (act.addStroke(form.backswing.value, form.roll.value)) form.reset();
  };
  const ready = strokes.length >= 3;
  return html`<h1>Stroke length</h1>
    ${
      ready && found && read
        ? html`<p><span class="big">${withUnit(found.backswing_m, { ...small, digits: 1 })}</span> <span
          class="say">back for the putt in hand</span></p>
      <p>${withUnit(read.putt.distance_m, far)} on Stimp ${read.putt.stimp_ft}, as it was read: slope and pace are in it.</p>
      <p class="quiet">Give or take ${withUnit(found.residual_m, { ...small, digits: 1 })}, as your strokes
        do.${found.within ? '' : ' This putt is outside of what you measured: trust it less.'}</p>`
        : html`<p>Measure three or more strokes of different lengths on a level place: how far back, how far it rolled.</p>`
    }
    ${note ? html`<p class="problem" role="alert">${note}</p>` : ''}
    <ul class="stations">${strokes.map(
      (
        stroke,
        i,
      ) => html`<li class="stroke"><span>${withUnit(stroke.backswing_m, small)} back, ${withUnit(stroke.roll_m, far)} roll,
        Stimp ${stroke.stimp_ft}</span>
      <button type="button" class="word" aria-label="Remove stroke ${i + 1}"
        @click=${() => act.removeStroke(i)}>Remove</button></li>`,
    )}</ul>
    <form class="fields pair" @submit=${add}>
      <div class="number-field"><label for="backswing">Back</label><span class="number-entry"><input id="backswing"
        name="backswing" inputmode="decimal" autocomplete="off" required><span class="unit">${small.unit}</span></span></div>
      <div class="number-field"><label for="roll">Roll</label><span class="number-entry"><input id="roll" name="roll"
        inputmode="decimal" autocomplete="off" required><span class="unit">${far.unit}</span></span></div>
      <button class="go plain wide">Add at Stimp ${putt.stimp_ft}</button>
    </form>`;
}
