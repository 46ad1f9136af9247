/**
 * The line where the eye has it: in perspective, on a photograph, on the ground, and to send.
 * @import {State, LinePage} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { html } from 'lit-html';
import { chalk } from './chalk.js';

import { perspective } from './perspective.js';
import { photoView } from './photo.js';
import { ramp } from './ramp.js';
import { send } from './send.js';

const PARTS = { view: perspective, photo: photoView, chalk, ramp, send };
/** @type {[LinePage['part'], string][]} */
const NAMES = [
  ['view', 'See'],
  ['photo', 'Photo'],
  ['chalk', 'Chalk'],
  ['ramp', 'Ramp'],
  ['send', 'Send'],
];

/** @param {State} state @param {LineActions} act */
export function view(state, act) {
  const { part, told } = state.linePage;
  return html`<main class="page line-page line-${part}" tabindex="-1">
    <h1 class="unseen">Line</h1>
    <div class="parts" role="group" aria-label="The line">${NAMES.map(
      ([id, name]) => html`<button type="button" class="pick"
      aria-pressed=${id === part} @click=${() => act.show(id)}>${name}</button>`,
    )}</div>
    ${PARTS[part](state, act)}
    <p class="told" role="status">${told}</p>
  </main>`;
}
