/**
 * The lens of the moving picture, measured once for each camera and size of picture.
 * @import {State} from '../../types.js'
 * @import {WatchActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayWords, number } from '../../format.js';
import { refusalWords } from '../../refusal.js';
import { field } from './field.js';
import { filmLens } from './questions.js';

/** What is known of this camera's lens, and the way to know more. @param {State} state @param {WatchActions} act */
export function lens(state, act) {
  const known = filmLens(state);
  return html`<p class="quiet">${
    known
      ? html`Lens ${number(known.mm, 1)} mm, measured ${dayWords(known.date)}.`
      : html`Lens taken for ${number(state.sighted.film_mm, 0)} mm, not measured: how hard a ball was struck hangs on it.`
  } <button type="button" class="word" @click=${() => act.measure(true)}>Measure the lens</button></p>`;
}

/** @param {State} state @param {WatchActions} act */
export function measuring(state, act) {
  const {
    watchPage: { end, other },
    answers: { filmLens: found },
    refusals,
    settings,
  } = state;
  return html`<p>Lay a club or a tape across, square to the way the phone looks. Measure how long it is, and how far its middle
      is from the lens.</p>
    <div class="fields two">${field(state, 'thing_m', act)}${field(state, 'away_m', act)}</div>
    ${
      end && other && refusals.filmLens
        ? html`<p class="problem" role="alert">${refusalWords(refusals.filmLens, settings)}</p>`
        : ''
    }
    ${
      end && other && found && !refusals.filmLens
        ? html`<p class="say">${number(found.lens_mm, 1)} mm: ${number(found.fov_deg, 1)}° from top to bottom</p>
        <button type="button" class="watch-go" @click=${act.keepLens}>Keep this lens</button>`
        : ''
    }
    <div class="does"><button type="button" class="word" @click=${() => act.measure(false)}>Leave the lens as it
      is</button></div>`;
}
