/**
 * The readings of a green, one by one: to mend, to take away, and those that do not fit.
 * @import {GreenEntry, State} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html, nothing } from 'lit-html';
import { dayWords, distanceUnit, percents, several, withUnit } from '../../format.js';
import { walkField } from './walk-field.js';
import { fallOnMap } from './words.js';
import { greenOf, puttsOf } from './greens.js';
import { placeWords } from './plan.js';

/** @param {State} state @param {WalkActions} act */
export function readings(state, act) {
  const { answers, walkPage, settings } = state;
  const green = /** @type {GreenEntry} */ (greenOf(state));
  const suspects = answers.survey?.asked.points === green.points ? answers.survey.suspects : [];
  const row = (/** @type {GreenEntry['points'][number]} */ point, /** @type {number} */ i) => {
    const open = walkPage.mending === i;
    const odd = suspects.includes(i);
    return html`<li class=${odd ? 'suspect' : nothing}>
      <span><b>${placeWords([point.x_m, point.y_m], settings)}</b><br>${percents(point.slope_percent)},
        ${fallOnMap(point.fall_deg)}${odd ? html` <b>does not fit its neighbours</b>` : ''}</span>
      <span class="does"><button type="button" class="word" aria-label="Mend reading ${i + 1}" aria-expanded=${open}
        @click=${() => act.choose({ mending: open ? null : i })}>${open ? 'Done' : 'Mend'}</button>
      <button type="button" class="word" aria-label="Remove reading ${i + 1}"
        @click=${() => act.remove(i)}>Remove</button></span>
      ${
        open
          ? html`<div class="fields two mending">${field('y_m', 'On', point, i)} ${field('x_m', 'From the left', point, i)}
        ${field('slope_percent', 'Slope', point, i)}
          ${field('fall_deg', 'Falls, from straight on', point, i)}</div>`
          : ''
      }</li>`;
  };
  const field = (
    /** @type {'x_m' | 'y_m' | 'slope_percent' | 'fall_deg'} */ name,
    /** @type {string} */ label,
    /** @type {GreenEntry['points'][number]} */ point,
    /** @type {number} */ i,
  ) => walkField(state, act, name, label, point[name], (text) => void act.mend(i, name, text));
  return html`<p>${several(green.points.length, 'reading')} of
    ${green.name}.${
      suspects.length
        ? ` ${suspects.length} not like ${suspects.length > 1 ? 'their' : 'its'} neighbours and left out: ` +
          'read there again, or remove.'
        : ''
    }</p>
    <ol class="list">${green.points.map(row)}</ol>
    ${lent(state, green, act)}`;
}

const MOST_PUTTS = 5;

/**
 * Putts measured one by one before the green was walked.
 * @param {State} state @param {GreenEntry} green @param {WalkActions} act
 */
function lent(state, green, act) {
  const putts = green.points.length > 2 ? puttsOf(state, green).slice(0, MOST_PUTTS) : [];
  return putts.length
    ? html`<section><h2>Slopes of kept putts</h2><p class="quiet">Choose one, then place its ball and hole on the map.</p><ul
      class="list">${putts.map(
        (putt) => html`<li><span>${withUnit(putt.distance_m, distanceUnit(state.settings))},
          ${putt.stations ? several(putt.stations.length, 'slope') : percents(putt.slope_percent ?? 0)},
            ${dayWords(putt.at)}</span>
      <button type="button" class="word" @click=${() => act.choose({ lent: putt.id, page: 'map' })}>Place it</button></li>`,
      )}</ul></section>`
    : '';
}
