/**
 * The putt as a link, and one that came by a link.
 * @import {State, Putt, Settings} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimWords, distanceUnit, number, withUnit } from '../../format.js';
import { addressOf } from './link.js';

/** @param {Putt} putt @param {Settings} settings */
const puttWords = (putt, settings) =>
  `${withUnit(putt.distance_m, distanceUnit(settings))}, ${
    putt.stations ? `${putt.stations.length} slopes` : `${number(putt.slope_percent ?? 0, 1)}\u00a0%`
  }, Stimp ${number(putt.stimp_ft, 1)}\u00a0ft`;

/** @param {State} state @param {LineActions} act */
export function send({ linePage: { sent }, putt, settings }, act) {
  return html`${sent ? came(sent, settings, act) : ''}
    <section><h2>Send this putt</h2>
      <p>${puttWords(putt, settings)}. The link holds all of it; whoever has the app can open it with no signal.</p>
      <label class="link"><span class="quiet">Link</span><input readonly .value=${addressOf(putt)}></label>
      <button type="button" class="word" @click=${act.giveLink}>Send the link</button></section>
    <section><h2>A card for the pocket</h2>
      <p>Aim and pace by distance and slope, for today’s green speed: Green, Compare.</p><a class="word"
        href="#green">To the card</a></section>`;
}

/** @param {State['linePage']['sent'] & object} sent @param {Settings} settings @param {LineActions} act */
function came({ read, putt, problem }, settings, act) {
  const said = read && aim(read, settings);
  const side = read && aimWords(read);
  return html`<section class="result" aria-live="polite"><h2>A putt was sent to you</h2>
    ${putt ? html`<p class="say">${puttWords(putt, settings)}</p>` : ''}
    ${said ? html`<p>Aim ${side === 'dead centre' ? side : `${said.number}\u00a0${said.unit} ${side}`}.</p>` : ''}
    ${problem ? html`<p class="problem" role="alert">${problem}</p>` : ''}
    <div class="does">${putt ? html`<button type="button" class="word" @click=${act.take}>Read it</button>` : ''}
      <button type="button" class="word" @click=${act.leave}>${putt ? 'Keep mine' : 'Close'}</button></div></section>`;
}
