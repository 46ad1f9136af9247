/**
 * Zero by turning: the same spot, the same side down, the phone turned.
 * @import {State} from '../../types.js'
 * @import {CalibrateActions} from './actions.js'
 */
import { html } from 'lit-html';
import { SETTLED_S } from './actions.js';
import { turned } from './drawings.js';

const HOW = ['Lay it down flat. Mark the spot.', 'Turn it a quarter clockwise, on the same spot.', 'Turn it half round, on the same spot.', 'Turn it a quarter anticlockwise from the first, on the same spot.'];

/** @param {State} state @param {CalibrateActions} act */
export function zeroing({ calibrating: { zero, tilt, refusals } }, act) {
  if (!zero) return '';
  const { turns, held, problem } = zero;
  const done = new Set(held.map(({ turned_deg }) => turned_deg)).size;
  const at = turns[Math.min(done, turns.length - 1)];
  const settled = tilt.kind === 'live' && tilt.seconds >= SETTLED_S && !refusals.level;
  const how = HOW[at / 90];
  return html`<section class="zeroing" aria-label="Zero by turning">
    <h2>Position ${Math.min(done + 1, turns.length)} of ${turns.length}</h2>
    ${problem ? html`<p class="problem" role="alert">Not zeroed: ${problem}. Start with the first position.</p>` : ''}
    <p class="say">${how}</p>
    ${turned(at, how)}
    <p class="quiet">Always the same side down. A case or the camera’s bump does no harm if it lies the same each time. Let go before you touch.</p>
    ${tilt.kind === 'live'
      ? html`<p class="settle">${refusals.level ? `No level: ${refusals.level.message}.` : settled ? '✓ Settled' : '… Settling'}</p>
        <button type="button" class="tap" ?disabled=${!settled} @click=${() => act.holdZero()}>Take this position</button>`
      : html`<button type="button" class="tap" @click=${() => act.startLevel()}>Start the level</button>
        ${tilt.kind === 'refused' || tilt.kind === 'none' ? html`<p class="problem" role="alert">The phone gives no tilt to this page.</p>` : ''}`}
    <button type="button" class="word" @click=${() => act.stopZero()}>Leave it</button>
  </section>`;
}
