/**
 * The greens by their places, and a new one.
 * @import {GreenEntry, State} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayWords, several } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { walkField } from './walk-field.js';
import { greenOf, greensOf } from './greens.js';
import { SIDE_M } from './plan.js';

/** @type {[string, string][]} */
const PLACES = [16, 25, 36].map((count) => [String(count), String(count)]);

/** @param {State} state @param {WalkActions} act */
export function greens(state, act) {
  const all = greensOf(state.entries);
  const mine = greenOf(state);
  return html`${all.length ? html`<ul class="list greens">${all.map((green) => row(green, mine, act))}</ul>` : ''}
    ${fresh(state, act)}`;
}

/** @param {GreenEntry} green @param {GreenEntry | undefined} mine @param {WalkActions} act */
function row(green, mine, act) {
  const { id, name, place, points, changed } = green;
  const own = id === mine?.id;
  return html`<li>
    <button type="button" class="green-name" aria-current=${own ? 'true' : 'false'}
      @click=${() => act.open(id, points.length > 2 ? 'map' : 'walk')}><b>${name}</b>
      <span class="quiet">${[place, several(points.length, 'reading'), dayWords(changed)]
        .filter(Boolean)
        .join(' · ')}</span></button>
    <span class="does">
      ${
        own
          ? html`<button type="button" class="word" ?disabled=${!points.length}
        @click=${() => act.send()}>Send</button>`
          : ''
      }
      ${
        mine && !own && mine.place === place
          ? html`<button type="button" class="word" aria-label="Join ${name} to ${mine.name}"
        @click=${() => act.join(id)}>Join</button>`
          : ''
      }
      <button type="button" class="word" aria-label="Delete ${name}"
        @click=${() => act.forget(id)}>Delete</button></span></li>`;
}

/** @param {State} state @param {WalkActions} act */
function fresh(state, act) {
  const { draft, texts } = state.walkPage;
  const text = (/** @type {string} */ name, /** @type {string} */ label, /** @type {string} */ value, example = '') =>
    html`<label class="text-field">${label}<input autocomplete="off" maxlength="80" placeholder=${example} .value=${value}
      @change=${(/** @type {Event} */ event) => act.word(name, /** @type {HTMLInputElement} */ (event.target).value)}></label>`;
  return html`<section><h2>A new green</h2>
    <p>Choose a corner to stand in, the green before you and to your right. Pace it off: how long it is straight on, how broad
      to the right.</p>
    <div class="fields two">${text('name', 'Green', texts.name ?? '', 'Practice green')}
      ${text('place', 'Place', texts.place ?? state.place, 'Larkmoor (invented)')}
    ${walkField(state, act, 'length_m', 'Length, on', draft.length_m ?? SIDE_M)}
      ${walkField(state, act, 'breadth_m', 'Breadth, right', draft.breadth_m ?? SIDE_M)}</div>
    ${choice({
      label: 'Places to read; 25 take about five minutes',
      name: 'places',
      value: String(draft.places ?? 25),
      options: PLACES,
      onValue: (value) => act.choose({ draft: { ...draft, places: Number(value) } }),
    })}
    <button type="button" class="press" @click=${() => act.lay()}>Lay out the walk</button>
    <p class="quiet">A team-mate’s green comes as a file: take it in under Record, File.</p>
  </section>`;
}
