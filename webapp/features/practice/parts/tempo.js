/**
 * The beat: heard, seen and felt.
 * @import {State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { number } from '../../../format.js';
import { onBeat } from './on-beat.js';
import { practiceField } from './practice-field.js';
import { pendulum } from './pendulum.js';

const PLAYS = { off: 'Play', playing: 'Stop', interrupted: 'Go on', silent: 'Stop' };

/** @param {State} state @param {PracticeActions} act */
export function tempo(state, act) {
  const { practice, practicePage, answers } = state;
  const { forward_s, ratio, volume, muted, vibrate } = practice.tempo;
  const { sound, late } = practicePage;
  return html`
    <h1 class="tempo-head"><span class="big">${number(forward_s * ratio, 2)}<small> s back</small></span> <span
      class="big">${number(forward_s, 2)}<small> s through</small></span></h1>
    ${pendulum()}
    <button type="button" class="go" ?disabled=${!answers.tempo} @click=${act.play}>${PLAYS[sound]}</button>
    ${
      sound === 'interrupted'
        ? html`<p class="problem" role="alert">The phone has stopped the sound. It goes on where it was.</p>`
        : ''
    }
    ${
      sound === 'silent'
        ? html`<p class="problem" role="alert">No sound comes out of this phone. The picture and the vibration go on.</p>`
        : ''
    }
    ${practicePage.note ? html`<p class="problem" role="alert">${practicePage.note}</p>` : ''}
    <p class="quiet">Low note: start. Middle: top. High:
      ball.${answers.tempo?.interpolated ? ' Other than 2 : 1 the curve between is an interpolation.' : ''}</p>
    <div class="volume"><label for="volume">Volume</label><input id="volume" type="range" min="0" max="1" step="0.05"
      .value=${String(volume)} ?disabled=${muted}
      @input=${(/** @type {Event} */ event) =>
        act.setTempo({ volume: Number(/** @type {HTMLInputElement} */ (event.target).value) })}></div>
    <div class="choice-row">
      <button type="button" class="pick" aria-pressed=${muted} @click=${() => act.setTempo({ muted: !muted })}>mute</button>
      ${
        'vibrate' in navigator
          ? html`<button type="button" class="pick" aria-pressed=${vibrate}
            @click=${() => act.setTempo({ vibrate: !vibrate })}>vibrate at the ball</button>`
          : ''
      }
    </div>
    <div class="fields pair">${['forward_s', 'ratio', 'rest_s', 'strokes'].map((name) => practiceField(state, act, name))}</div>
    <div class="choice-row"><button type="button" class="word" @click=${() => act.go('find')}>Find my tempo</button> <button
      type="button" class="word" @click=${() => act.go('length')}>Stroke length</button></div>
    <details><summary>Strike against the beat</summary>
      <p class="quiet">With headphones on, while it plays: the phone hears the ball and
        says how far off the high note it was.</p>
      ${onBeat(state, act)}
    </details>
    <details><summary>Headphones and lock screen</summary>
      <div class="fields">${practiceField(
        state,
        act,
        'delay_s',
        'Wireless headphones are late. While it plays, tap four times with the high note.',
      )}</div>
      <button type="button" class="go plain" ?disabled=${sound !== 'playing'}
        @click=${act.tapDelay}>Tap with the high note${late.length ? `, ${4 - late.length} more` : ''}</button>
      <p class="quiet">${
        practicePage.awake
          ? 'The screen stays on while it plays.'
          : 'This phone may turn its screen off while it plays: give it a longer time in its settings.'
      } Some systems stop a page’s sound once the screen locks: then it says so here, and goes on when you come back.</p>
    </details>`;
}
