/**
 * Zero by turning: the same spot, the same side down, the phone turned, and back.
 * @import {State} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { pick } from '../../pick.js';
import { html } from 'lit-html';
import { SETTLED_S } from './actions.js';
import { sideways, turned } from './drawings.js';
import { held, tellsTurns } from './turning.js';

/** @type {Record<number, string>} */
const HOW = {
  0: 'Lay it down flat, top to the hole. Mark the spot.',
  90: 'Turn it a quarter clockwise, on the same spot.',
  180: 'Turn it half round, on the same spot.',
};
const BACK = 'Turn it back, top to the hole';

/** @param {State} state @param {GreenActions} act */
export function zeroing({ greenPage: { zero, tilt }, refusals }, act) {
  if (!zero) return '';
  const { turns, problem } = zero;
  const done = held(zero);
  const deg = pick(turns, done);
  const settled = tilt.kind === 'live' && tilt.seconds >= SETTLED_S && !refusals.level;
  const by = done ? deg - pick(turns, done - 1) : 0;
  const how = pick(HOW, by);
  // from the first turn on, one that knows its turning takes each position by itself
  const itself = done > 1 && tellsTurns(zero);
  return html`<section class="zeroing" aria-label="Zero by turning">
    <h2>Position ${done + 1} of ${turns.length}</h2>
    ${problem ? html`<p class="problem" role="alert">Not zeroed: ${problem}. Start with the first position.</p>` : ''}
    <p class="say">${how}</p>
    ${turned(deg, by, how)}
    ${sideways}
    <p class="quiet">Always the same side down. A case or the camera’s bump does no harm if it lies the same each time.
      ${itself ? 'It takes the position by itself.' : 'Let go before you touch.'}</p>
    ${
      tilt.kind === 'live'
        ? html`<p class="settle">${
            refusals.level ? `No level: ${refusals.level.message}.` : settled ? '✓ Settled' : '… Settling'
          }</p>
        <button type="button" class="press" ?disabled=${!settled} @click=${() => act.holdZero()}>Take this position</button>`
        : html`<button type="button" class="press" @click=${() => act.startLevel()}>Start the level</button>
        ${
          tilt.kind === 'refused' || tilt.kind === 'none'
            ? html`<p class="problem"
          role="alert">The phone gives no tilt to this page.</p>`
            : ''
        }`
    }
    <button type="button" class="word" @click=${() => act.stopZero()}>Leave it</button>
  </section>`;
}

/** Nothing is measured before it points to the hole again. @param {State} state @param {GreenActions} act */
export const turnBack = ({ greenPage: { back } }, act) => html`<section class="zeroing" aria-label="Turn it back">
  <h2>Zeroed</h2>
  <p class="say">${BACK}.</p>
  ${turned(0, 180, BACK)}
  <p class="quiet">${
    back?.alpha_deg === null
      ? 'Turned the other way it would read the slope the wrong way round.'
      : 'It goes on by itself when it points there.'
  }</p>
  <button type="button" class="press" @click=${() => act.turnedBack()}>Its top points to the hole</button>
</section>`;
