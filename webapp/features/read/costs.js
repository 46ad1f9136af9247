/**
 * What each error costs on this putt.
 * @import {State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { html } from 'lit-html';
import { sheet } from '../../parts/sheet.js';
import { CHANGES, finishWords } from './words.js';

/** @param {State} state @param {ReadActions} act */
export function costs({ costs, refusal, settings }, act) {
  const body = refusal
    ? html`<p>${refusal.value}</p>`
    : html`<p>The same aim and pace, with one thing off. The figures say where the ball stops, from the hole.</p>
      <table class="costs"><thead><tr><th scope="col">Off by</th><th scope="col">The ball stops</th></tr></thead><tbody>
        ${(costs?.value ?? []).map(
          (cost) => html`<tr><th scope="row">${CHANGES[cost.change]}</th><td
          class=${cost.holed ? 'drops' : ''}>${finishWords(cost, settings)}</td></tr>`,
        )}
      </tbody></table>`;
  return sheet({ title: 'Cost of a miss', body, onClose: act.close });
}
