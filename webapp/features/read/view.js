/**
 * The screen of the read: the answer, the putt from above, and what the player sets.
 * @import {State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { html } from 'lit-html';
import { percent } from '../../format.js';
import { answer } from './answer.js';
import { controls } from './controls.js';
import { stage } from './stage.js';
import { costs } from './costs.js';
import { doubt } from './doubt.js';
import { key } from './key.js';
import { pace } from './pace.js';
import { player } from './player.js';
import { slopes } from './slopes.js';
import { rangeWords } from './words.js';

const SHEETS = { slopes, player, costs, doubt, pace, key };

/** @param {State} state @param {ReadActions} act */
export function view(state, act) {
  const odds =
    state.window && !state.refusal && !state.closed
      ? `Make ${percent(state.window.value.make_probability)}${rangeWords(state.window.value)}`
      : 'Make';
  return html`<main class="read">
    ${answer(state, act)} ${stage(state, act)}
    <div class="deeper">
      <button type="button" class="word"
        @click=${() => act.open('slopes')}>${state.putt.stations ? `${state.putt.stations.length} slopes` : 'Slopes'}</button>
      <button type="button" class="word" @click=${() => act.open('player')}>${odds}</button>
      <button type="button" class="word" @click=${() => act.open('pace')}>Pace</button>
      <button type="button" class="word" @click=${() => act.open('costs')}>A miss</button>
    </div>
    ${controls(state, act)} ${state.sheet ? SHEETS[state.sheet](state, act) : ''}
  </main>`;
}
