/**
 * Level, speed and compare: what a read stands on here and today.
 * @import {State, GreenPage} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { html } from 'lit-html';
import { undoLine } from '../../parts/undo.js';
import { compare } from './compare.js';
import { level } from './level.js';
import { speed } from './speed.js';

const PARTS = { level, speed, compare };
/** @type {[GreenPage['part'], string][]} */
const NAMES = [
  ['level', 'Level'],
  ['speed', 'Speed'],
  ['compare', 'Compare'],
];

/** @param {State} state @param {GreenActions} act */
export function view(state, act) {
  const { part } = state.greenPage;
  const pick = (/** @type {typeof NAMES[number]} */ [id, name]) =>
    html`<button type="button" class="pick" aria-pressed=${id === part} @click=${() => act.show(id)}>${name}</button>`;
  return html`<main class="page green" tabindex="-1">
    <h1 class="unseen">Green</h1>
    <div class="parts" role="group" aria-label="The green">${NAMES.map(pick)}<a class="pick" href="#walk">Map</a></div>
    ${undoLine(state, act.undo)}
    ${PARTS[part](state, act)}
  </main>`;
}
