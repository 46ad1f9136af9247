/**
 * The walked green: its map, the walk, its readings, and the other greens.
 * @import {State, WalkPage} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html } from 'lit-html';
import { greenOf } from './greens.js';
import { greens } from './choose.js';
import { map } from './map.js';
import { readings } from './readings.js';
import { walking } from './walking.js';

const PAGES = { map, walk: walking, readings, greens };
/** @type {[WalkPage['page'], string][]} */
const NAMES = [
  ['map', 'Map'],
  ['walk', 'Walk'],
  ['readings', 'Readings'],
  ['greens', 'Greens'],
];

/** @param {State} state @param {WalkActions} act */
export function view(state, act) {
  const { page, told } = state.walkPage;
  const green = greenOf(state);
  const shown = green ? page : 'greens';
  const pick = (/** @type {typeof NAMES[number]} */ [id, name]) =>
    html`<button type="button" class="pick" aria-pressed=${id === shown} ?disabled=${!green && id !== 'greens'}
      @click=${() => act.show(id)}>${name}</button>`;
  return html`<main class="page green walked walked-${shown}" tabindex="-1">
    <h1 class="unseen">${green ? `${green.name}, walked` : 'Greens, walked'}</h1>
    <div class="parts" role="group" aria-label="The walked green"><a class="pick back" href="#green"
      aria-label="Back to Green">‹</a>${NAMES.map(pick)}</div>
    ${state.entries === null ? html`<p>Opening the notes.</p>` : PAGES[shown](state, act)}
    <p class="told" role="status">${told}</p>
  </main>`;
}
