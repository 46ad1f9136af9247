/**
 * The session as it runs, to be read from where the phone lies on the floor.
 * @import {Drill, State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { worn } from '../../../device/theme.js';
import { current, remaining } from '../run.js';
import { sought } from '../sought.js';
import { clock } from '../../../format.js';
import { watchedBlock } from '../../../parts/watched-block.js';
import { cautions } from './cautions.js';
import { drawing } from './drawing.js';
import { ear, earFields } from './ear.js';
import { figures } from './figures.js';
import { pendulum } from './pendulum.js';

const PLAYS = { off: 'Play', playing: 'Stop', interrupted: 'Sound on', silent: 'Stop' };

/** @param {State} state @param {Drill | undefined} drill @param {PracticeActions} act */
function stage(state, drill, act) {
  if (drill?.picture === 'tempo') return pendulum();
  if (drill?.picture === 'heard') return ear(state, act);
  return watchedBlock(state) || (drill ? drawing(drill, state) : '');
}

/** @param {State} state @param {PracticeActions} act */
export function runner(state, act) {
  const { practice, practicePage, settings } = state;
  const { muted } = practice.tempo;
  const other = worn(settings.theme) === 'dark' ? 'Light' : 'Dark';
  const { blocks } = practice;
  const run = /** @type {NonNullable<typeof practice.run>} */ (practice.run);
  const { drill, cue } = current(practice, practicePage.drills);
  const next = blocks[run.block + 1];
  const left = remaining(practice);
  const inTime = drill?.picture === 'tempo';
  const note =
    { interrupted: 'The phone has stopped the sound.', silent: 'No sound comes out: watch the picture.', off: '', playing: '' }[
      practicePage.sound
    ] || practicePage.note;
  return html`<main class="run">
    <header class="run-head"><h1><span class="over">${run.block + 1} of ${blocks.length}</span> <button type="button"
      class="word run-name" aria-expanded=${run.folded ? 'false' : 'true'}
      @click=${act.fold}><strong>${drill?.name ?? ''}</strong></button></h1>
      <button type="button" class="word" aria-label="${other} screen" @click=${act.theme}>${other}</button>
      <button type="button" class="word" @click=${act.end}>End</button></header>
    <p class="run-time" role="timer" aria-label="${clock(left)} left">${clock(left)}</p>
    ${
      note
        ? html`<p class="problem run-note" role="status">${note}</p>`
        : html`<p class="run-cue" aria-live="polite">${cue}</p>`
    }
    ${
      drill && !run.folded
        ? html`<div class="run-setup" role="region" aria-label="How to set it up" tabindex="0"><button type="button"
          class="word" @click=${act.fold}>It is set up</button>${cautions(drill)}${
            drill.bring ? html`<p class="quiet">Take ${drill.bring}.</p>` : ''
          }<ol
          class="steps">${drill.setup.map((step) => html`<li>${step}</li>`)}</ol>
          <p class="figures">${figures(drill, state)}</p>${drill.picture === 'heard' ? earFields(state, act) : ''}${drawing(
            drill,
            state,
          )}</div>`
        : html`<div
          class="run-stage">${stage(state, drill, act)}</div>`
    }
    ${run.folded ? cautions(drill) : ''}
    <div class="run-next">
      <p>${
        next
          ? html`<span
            class="over">Next</span> ${(next.card ?? practicePage.drills.find(({ id }) => id === next.drill))?.name ?? ''},
            ${next.minutes} min`
          : html`<span class="over">Last one</span>`
      }</p>
      ${sought(state, drill, act)}
      ${drill?.watched ? html`<a class="word" href="#watch">Let the phone watch</a>` : ''}
      ${
        inTime
          ? html`<span class="run-sound"><button type="button" class="pick" aria-pressed=${muted}
            @click=${() => act.setTempo({ muted: !muted })}>Mute</button>
        <button type="button" class="word" @click=${act.play}>${PLAYS[practicePage.sound]}</button></span>`
          : ''
      }
    </div>
    <div class="run-counts">
      <button type="button" class="count good" aria-keyshortcuts="1" @click=${act.good}><span
        class="big">${run.good}</span> <span>${drill?.good ?? 'Good'}</span></button>
      <button type="button" class="count" aria-keyshortcuts="2" @click=${act.bad}><span
        class="big">${run.bad}</span> <span>${drill?.bad ?? 'Bad'}</span></button>
    </div>
    <div class="run-does">
      <button type="button" class="word" aria-keyshortcuts="b" @click=${act.back}>Back</button>
      <button type="button" class="word" aria-keyshortcuts="r" @click=${act.repeat}>Repeat</button>
      <button type="button" class="pick" aria-pressed=${practice.spoken} @click=${act.speak}>Voice</button>
      <button type="button" class="pick" aria-pressed=${practice.chime} @click=${act.chime}>Chime</button>
      <button type="button" class="word" aria-keyshortcuts="n" @click=${act.skip}>Skip</button>
    </div>
    <button type="button" class="go" aria-keyshortcuts="p" @click=${act.pause}>${run.paused ? 'Go on' : 'Pause'}</button>
    <p class="run-keys quiet">Keys: 1 and 2 count, P pauses, B back, R repeat, N skip.</p>
  </main>`;
}
