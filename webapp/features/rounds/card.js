/**
 * The card: hole by hole, afterwards. From how far, how many putts, and how the first miss was left; no aim and no line.
 * @import {Card, CardHole, State} from '../../types.js'
 * @import {RoundsActions} from './actions.js'
 */
import { pick } from '../../pick.js';
import { html } from 'lit-html';
import { dayWords, distanceUnit, number, several, today, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { leave, leaveWords } from '../../parts/leave.js';
import { scale } from '../../parts/scale.js';
import { isDone } from '../../records/card.js';

/** From where first putts are struck, in the player's unit. @type {Record<State['settings']['distance'], number[]>} */
const STOPS = {
  ft: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 35, 40, 45, 50, 60, 70, 80, 100],
  m: [0.3, 0.6, 1, 1.3, 1.6, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30],
  paces: [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30],
};
const MARKED = { ft: [1, 3, 6, 10, 20, 30, 50, 100], m: [1, 2, 3, 5, 10, 20, 30], paces: [1, 2, 3, 5, 10, 20, 30] };
const COUNTS = [1, 2, 3, 4];
const SELDOM = 5;

/** @param {CardHole} hole @param {State['settings']} settings */
export function holeWords({ distance_m, taken, gaveUp, putts }, settings) {
  if (taken === 0) return 'holed from off the green';
  const from = distance_m === null ? '' : withUnit(distance_m, distanceUnit(settings));
  const left = putts[0] && taken !== 1 ? leaveWords(putts[0]) : '';
  return [from, gaveUp ? 'given up' : taken === null ? '' : several(taken, 'putt'), left && `first ${left}`]
    .filter(Boolean)
    .join(', ');
}

/** @param {State} state @param {Card} card @param {RoundsActions} act */
export function cardView(state, card, act) {
  const { settings } = state;
  const hole = pick(card.holes, card.at_hole);
  const done = card.holes.filter(isDone).length;
  const before = card.holes[card.at_hole - 1];
  const asks = (hole.taken ?? 0) > 1;
  const unit = distanceUnit(settings);
  return html`<header class="card-head">
      <button type="button" class="word" aria-label="The hole before" ?disabled=${!card.at_hole}
        @click=${() => act.goTo(card.at_hole - 1)}>‹</button>
      <h1 id="card-hole">Hole ${hole.hole}</h1>
      <button type="button" class="word" aria-label="The next hole" ?disabled=${card.at_hole === card.holes.length - 1}
        @click=${() => act.goTo(card.at_hole + 1)}>›</button>
    </header>
    <div class="card-from">
      <p class="big">${hole.distance_m === null ? '–' : number(hole.distance_m / unit.si, unit.digits)}
      <small>${unit.unit}</small></p>
      <p class="quiet" role="status">${
        before && isDone(before) ? `Hole ${before.hole}: ${holeWords(before, settings)}` : 'First putt from'
      }</p></div>
    ${scale({
      label: 'First putt from',
      words: hole.distance_m === null ? 'not said' : withUnit(hole.distance_m, unit),
      value: hole.distance_m,
      stops: STOPS[settings.distance].map((stop) => stop * unit.si),
      mark: (stop) => {
        const shown = Number((stop / unit.si).toFixed(1));
        return MARKED[settings.distance].includes(shown) ? String(shown) : '';
      },
      onValue: act.setDistance,
    })}
    <div class="counts" role="group" aria-label="Putts">
      <button type="button" aria-label="0, holed from off" aria-pressed=${hole.taken === 0}
        @click=${() => act.setTaken(0)}>0</button>
      ${COUNTS.map(
        (count) =>
          html`<button type="button" aria-pressed=${hole.taken === count} ?disabled=${hole.distance_m === null}
            @click=${() => act.setTaken(count)}>${count}</button>`,
      )}
    </div>
    <div class="card-other"><span class="quiet">0: from off the green</span>
      <button type="button" class="word" aria-pressed=${hole.taken === SELDOM} ?disabled=${hole.distance_m === null}
        @click=${() => act.setTaken(SELDOM)}>${SELDOM}</button>
      <button type="button" class="word" aria-pressed=${hole.gaveUp} ?disabled=${hole.distance_m === null}
        @click=${act.giveUp}>Given up</button></div>
    <div class="card-leave">${
      asks
        ? html`<p class="quiet">First putt missed</p>${leave({
            label: 'First putt missed',
            value: hole.told ? (hole.putts[0] ?? {}) : null,
            middle: 'not known',
            onLeave: act.setLeave,
          })}`
        : ''
    }</div>
    <div class="card-keep"><button type="button" class="holed" ?disabled=${!done} @click=${act.keep}>Keep the round</button>
      <p class="quiet">${done} of ${card.holes.length} holes. No aim is shown here: Rule 4.3a.</p></div>
    ${about(card, act)}`;
}

/** @param {Card} card @param {RoundsActions} act */
function about(card, act) {
  const value = (/** @type {Event} */ event) => /** @type {HTMLInputElement} */ (event.target).value;
  return html`<details class="card-about">
    <summary>${[card.competition ? 'Competition' : 'Practice', card.name, card.place, dayWords(card.at)]
      .filter(Boolean)
      .join(' · ')}</summary>
    ${choice({
      label: 'Played as',
      name: 'competition',
      value: card.competition ? 'competition' : 'practice',
      options: [
        ['competition', 'competition'],
        ['practice', 'practice'],
      ],
      onValue: (how) => act.describe({ competition: how === 'competition' }),
    })}
    <label class="text-field">Name<input maxlength="200" autocomplete="off" .value=${card.name}
      @change=${(/** @type {Event} */ event) => act.describe({ name: value(event).trim() })}></label>
    <label class="text-field">Place<input maxlength="80" autocomplete="off" .value=${card.place}
      @change=${(/** @type {Event} */ event) => act.describe({ place: value(event).trim() })}></label>
    <label class="text-field">Day<input type="date" max=${today()} .value=${card.at.slice(0, 10)}
      @change=${(/** @type {Event} */ event) => value(event) && act.describe({ at: value(event) })}></label>
    ${choice({
      label: 'Holes',
      name: 'holes',
      value: String(card.holes.length),
      options: [
        ['9', '9'],
        ['18', '18'],
      ],
      onValue: (count) => act.setHoles(Number(count)),
    })}
    <div class="gives"><button type="button" class="word" @click=${act.list}>All rounds</button> <button type="button"
      class="word" @click=${act.forget}>Throw this card away</button></div>
  </details>`;
}
