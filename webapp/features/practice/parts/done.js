/**
 * What was done in the last session.
 * @import {DrillEntry, State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { clock } from '../../../format.js';

/** @param {State} state @param {PracticeActions} act */
export function done({ entries, unkept }, act) {
  const drills = /** @type {DrillEntry[]} */ (
    [...(entries ?? []).toReversed(), ...unkept].filter(({ kind, gone }) => kind === 'drill' && !gone)
  );
  const session = drills.at(-1)?.session;
  const blocks = drills.filter((block) => block.session === session);
  return html`<h1>Session over</h1>
    <table class="costs"><thead><tr><th scope="col">Drill</th><th scope="col">Time</th><th
      scope="col">Count</th></tr></thead><tbody>
      ${blocks.map(
        (block) => html`<tr><th scope="row">${block.name}</th><td>${clock(block.spent_s)}</td>
        <td>${block.good || block.bad ? `${block.good} of ${block.good + block.bad}` : '–'}</td></tr>`,
      )}
    </tbody></table>
    <p class="quiet">Kept on this phone.</p>
    <button type="button" class="go" @click=${() => act.go('session')}>Plan another</button>`;
}
