/**
 * One drill: the picture, how to set it up, what to heed.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { sought } from '../sought.js';
import { THINGS } from '../words.js';
import { cautions } from './cautions.js';
import { drawing } from './drawing.js';
import { earFields } from './ear.js';
import { practiceField } from './practice-field.js';
import { figures } from './figures.js';

/** @param {State['practicePage']['drills'][number]} drill */
const needed = ({ needs, bring }) => ['putter', ...needs.map((thing) => THINGS[thing]), bring].filter(Boolean).join(', ');

/** @param {State} state @param {PracticeActions} act */
export function drill(state, act) {
  const { practicePage } = state;
  const shown = practicePage.drills.find(({ id }) => id === practicePage.drill);
  if (!shown) return '';
  // above all that comes late: what moves under a thumb is missed
  return html`<button type="button" class="word" @click=${() => act.go('drills')}>All drills</button>
    <h1>${shown.name}</h1>
    <p class="lead">${shown.why}</p>
    ${drawing(shown, state)}
    <p class="figures" aria-live="polite">${figures(shown, state)}</p>
    ${practicePage.note ? html`<p class="problem" role="alert">${practicePage.note}</p>` : ''}
    ${
      shown.picture === 'arc'
        ? html`<div class="fields pair">${practiceField(state, act, 'lie_deg')}${practiceField(state, act, 'length_m')}</div>
      <div class="fields">${practiceField(
        state,
        act,
        'above_grip_m',
        'About the base of the neck: 450 mm is assumed until you measure it.',
      )}</div>
      <button type="button" class="go plain" @click=${() => act.go('strip')}>Arc to print</button>`
        : ''
    }
    ${
      shown.picture === 'gate' && (state.practice.gap_m || state.answers.gate)
        ? html`<div class="fields">${practiceField(state, act, 'gap_m')}</div>`
        : ''
    }
    ${
      shown.picture === 'eyes'
        ? html`<div class="fields">${practiceField(
            state,
            act,
            'eyes_m',
            'Measure where they are. Beyond the line it is negative.',
          )}</div>`
        : ''
    }
    ${shown.picture === 'heard' ? earFields(state, act) : ''}
    ${
      shown.picture === 'tempo'
        ? html`<button type="button" class="go" @click=${() => act.go('tempo')}>Open Tempo</button>`
        : ''
    }
    ${sought(state, shown, act)}
    <button type="button" class="go ${shown.picture === 'tempo' ? 'plain' : ''}"
      @click=${() => act.startDrill(shown)}>Start this drill</button>
    <ol class="steps">${shown.setup.map((step) => html`<li>${step}</li>`)}</ol>
    ${cautions(shown)}
    <p class="quiet">Needs: ${needed(shown)}. ${shown.least} to
      ${shown.most} min. Counted: ${shown.good.toLowerCase()}, ${shown.bad.toLowerCase()}.</p>`;
}
