/**
 * The read of the putt on the map, in a few numbers, with its doubt.
 * @import {GreenEntry, Refusal, Settings, State} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimWords, distanceUnit, number, percent, smallUnit, withUnit } from '../../format.js';
import { refusalWords } from '../../refusal.js';
import { speedToday } from './greens.js';

/** @param {Refusal} refusal @param {Settings} settings */
function refusedWords(refusal, settings) {
  const { field, low, high, code } = refusal;
  if (field !== 'survey.hole' || code === 'off_survey' || low === null || high === null) return refusalWords(refusal, settings);
  const unit = distanceUnit(settings);
  return `Ball and hole lie from ${withUnit(low, unit)} to ${withUnit(high, unit)} apart.`;
}

/** @param {State} state @param {GreenEntry} green @param {WalkActions} act */
export function answer(state, green, act) {
  const { read, window, refusal, refusals, settings, putt } = state;
  if (refusals.placed) return html`<p class="problem" role="alert">${refusedWords(refusals.placed, settings)}</p>`;
  if (refusal?.putt.survey && refusal.putt === putt) return html`<p class="problem" role="alert">${refusal.value}</p>`;
  if (!read?.putt.survey || !putt.survey) return html`<p class="say">Touch where the ball lies; drag ball and hole.</p>`;
  const { value } = read;
  const told = aim(value, settings);
  const off = value.aim_offset_sd_m === null ? '' : ` ± ${withUnit(value.aim_offset_sd_m, smallUnit(settings))}`;
  const odds = read.putt === window?.putt ? html`<p>Make ${percent(window.value.make_probability)}</p>` : '';
  const today = speedToday(state, green.place);
  return html`<section class="map-read" aria-label="Read" aria-live="polite">
    <p class="big">${told.number}<small>${told.unit === '°' ? '' : ' '}${told.unit}</small></p>
    <div><p class="say">${aimWords(value)}${off}</p>
    <p>${withUnit(read.putt.distance_m, distanceUnit(settings))}, plays like
      ${withUnit(value.plays_like_m, distanceUnit(settings))}</p>
    ${odds}
    <p class="quiet">Stimp ${number(putt.stimp_ft, 1)} ft${today === null ? ', not measured here today' : ', today'}</p></div>
    <p class="choice-row"><a class="word" href="#read">Read</a> <a class="word" href="#line">From behind the ball</a> <button
      type="button" class="word" @click=${() => act.keepHole()}>Hole is here today</button></p>
  </section>`;
}
