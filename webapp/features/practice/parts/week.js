/**
 * The days before a first round, each session opened with one touch and kept as done or not.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { dayWords } from '../../../format.js';
import { rangeOf } from '../../../fields.js';
import { refusalWords } from '../../../refusal.js';

const { low, high } = rangeOf('TournamentFields', 'days_before');
const DAYS = Array.from({ length: high - low + 1 }, (_, i) => low + i);
const PLACES = { room: 'Room', green: 'Practice green' };

/** @param {State} state @param {PracticeActions} act */
export function week({ practice, answers, refusals, settings }, act) {
  const { first_tee, days_before, done } = practice.week;
  const value = (/** @type {Event} */ event) => /** @type {HTMLInputElement} */ (event.target).value;
  return html`<h1>Tournament week</h1>
    <div class="fields">
      <label class="week-field">First tee<input type="datetime-local" .value=${first_tee}
        @change=${(/** @type {Event} */ event) => act.setWeek({ first_tee: value(event) })}></label>
      <label class="week-field">Days before<select .value=${String(days_before)}
        @change=${(/** @type {Event} */ event) => act.setWeek({ days_before: Number(value(event)) })}>${DAYS.map(
          (n) => html`<option value=${n} ?selected=${n === days_before}>${n}</option>`,
        )}</select></label>
    </div>
    ${refusals.week ? html`<p class="problem" role="alert">${refusalWords(refusals.week, settings)}</p>` : ''}
    ${first_tee ? '' : html`<p class="quiet">Set the first tee time: the days before it are laid out here.</p>`}
    ${
      first_tee && answers.week
        ? answers.week.days.map(
            (day) => html`<section class="skill"><h2>${dayWords(day.day)}${day.left ? '' : ', first round'}</h2>
      ${day.sessions.map(
        ({ id, name, minutes, place, weights, why }) => html`<div class="week-session">
          <button type="button" class="row" @click=${() => act.openSession({ minutes, place, weights })}><strong>${name},
            ${minutes} min</strong><span class="quiet">${PLACES[place]}. ${why}</span></button>
          <button type="button" class="pick" aria-pressed=${done.includes(id)} aria-label="${name}, ${dayWords(day.day)}: done"
            @click=${() => act.sessionDone(id)}>${done.includes(id) ? 'done' : 'not yet'}</button>
        </div>`,
      )}</section>`,
          )
        : ''
    }
    <button type="button" class="word" @click=${() => act.go('session')}>Back to the session</button>`;
}
