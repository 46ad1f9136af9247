/**
 * How high on a ramp a ball is let go, so that it leaves as this putt does.
 * @import {State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { html } from 'lit-html';
import { inUnit, number, smallUnit } from '../../format.js';
import { lineField } from './line-field.js';
import { noPutt } from './no-putt.js';

/** @param {State} state @param {LineActions} act */
export function ramp(state, act) {
  const {
    answers: { ramp: found },
    refusals,
    sighted,
    settings,
    read,
    putt,
  } = state;
  const none = noPutt(state);
  if (none) return none;
  const tried = sighted.height_m !== null && sighted.rolled_m !== null;
  const stimp = number(sighted.rolled_stimp_ft ?? putt.stimp_ft, 1);
  const unit = { ...smallUnit(settings), digits: 1 };
  const words = !tried
    ? 'For a ramp that loses nothing. Yours loses some: try it once, below.'
    : found && !refusals.ramp
      ? `Your ramp keeps ${number(found.kept_fraction * 100, 0)} % of the height, tried at Stimp ${stimp}.`
      : '';
  return html`<section class="result" aria-live="polite">
      <p><span class="over">Let go at</span> <span
        class="big">${found && read?.putt === putt && !refusals.ramp ? inUnit(found.height_m, unit) : '–'}<small>
          ${unit.unit}</small></span></p>
      <p>From the ball’s place on the ramp straight down to its place at the foot. ${words}</p>
    </section>
    ${
      refusals.ramp
        ? html`<p class="problem" role="alert">From so low a ball does not roll so far on a level green of ${stimp}
      ft. Check both, or the green’s speed.</p>`
        : ''
    }
    <h2>Try the ramp</h2>
    <p class="quiet">Let a ball go from a height you measure, on to a level part of this green. Measure from the foot to where
      it rests.</p>
    <div class="fields two">${lineField(state, act, 'height_m')}${lineField(state, act, 'rolled_m')}</div>
    ${tried ? html`<button type="button" class="word" @click=${act.forgetTrial}>Forget the trial</button>` : ''}
    <p class="quiet">Practice only: Rule 13.1e does not let you test a green by rolling a ball in a round.</p>`;
}
