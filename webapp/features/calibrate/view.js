/**
 * Level, speed, feet and eye: the numbers that a read stands on.
 * @import {State, Calibrating} from '../../types.js'
 * @import {CalibrateActions} from './actions.js'
 */
import { html } from 'lit-html';
import { compare } from './compare.js';
import { eye } from './eye.js';
import { feet } from './feet.js';
import { level } from './level.js';
import { speed } from './speed.js';

const PARTS = { level, speed, compare, feet, eye };
/** @type {[Calibrating['part'], string][]} */
const NAMES = [
  ['level', 'Level'],
  ['speed', 'Speed'],
  ['compare', 'Compare'],
  ['feet', 'Feet'],
  ['eye', 'Eye'],
];

/** @param {State} state @param {CalibrateActions} act */
export function view(state, act) {
  const { part, undo } = state.calibrating;
  return html`<main class="page calibrate" tabindex="-1">
    <div class="parts" role="group" aria-label="Calibrate">${NAMES.map(([id, name]) => html`<button type="button" class="pick" aria-pressed=${id === part} @click=${() => act.show(id)}>${name}</button>`)}</div>
    <p class="kept" role="status">${undo ? html`${undo.words} <button type="button" class="word" @click=${() => act.undo()}>Undo</button>` : ''}</p>
    ${PARTS[part](state, act)}
  </main>`;
}
