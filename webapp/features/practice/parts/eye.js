/**
 * A green in perspective: guess its slope, then learn it.
 * @import {State, Fall, Answers} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html, svg } from 'lit-html';
import { choice } from '../../../parts/choice.js';
import { sensedField } from './practice-field.js';
import { learned } from './learned.js';
import { percents, smallUnit, withUnit } from '../../../format.js';
import { SEEN } from '../words.js';

/** @type {[Fall, string][]} */
const FALLS = [
  ['left', 'left'],
  ['right', 'right'],
  ['toes', 'downhill'],
  ['heels', 'uphill'],
];

/** @param {State} state @param {PracticeActions} act */
export function eye(state, act) {
  const { calibration, practicePage, answers, settings } = state;
  const { guessed, fall, draft } = practicePage;
  return html`<h1 class="unseen">Eye</h1>
    <p>The green from behind the ball. How much does it fall, and which way?</p>
    ${answers.look ? green(answers.look, practicePage.case, settings) : ''}
    ${
      guessed
        ? html`<section class="result" aria-live="polite"><p class="say">It is ${percents(guessed.measured_percent)},
          ${SEEN[answers.look?.fall ?? guessed.fall]}.</p>
          <p>You said ${percents(guessed.felt_percent)},
            ${SEEN[guessed.fall]}.${
              answers.look && answers.look.fall !== guessed.fall ? ' The wrong way: not counted.' : ''
            }</p>
          <button type="button" class="press" @click=${() => act.nextLook()}>Next green</button></section>`
        : html`${choice({
            label: 'It falls',
            name: 'fall',
            value: fall,
            options: FALLS,
            onValue: (value) => act.falls(/** @type {Fall} */ (value)),
          })}
          <div class="fields">${sensedField(state, act, 'guess_percent')}</div>
          <button type="button" class="press" ?disabled=${draft.guess_percent === undefined || !answers.look}
            @click=${() => act.guess()}>Guess</button>`
    }
    ${answers.eye ? learned(answers.eye, calibration.eye.length, answers.look && guessed ? answers.look.fall : fall) : ''}
    ${
      calibration.eye.length
        ? html`<button type="button" class="word" @click=${() => act.clearTrials('eye')}>Clear the
      guesses</button>`
        : ''
    }`;
}

const SQUARE_M = 0.5;
const SCALE = 300;
const HORIZON = 56;
/** @param {[number, number][]} curve */
const drawn = (curve) =>
  curve.map(([x, y], i) => `${i ? 'L' : 'M'}${(170 + x * SCALE).toFixed(1)} ${(HORIZON + y * SCALE).toFixed(1)}`).join('');

/** @param {Answers['look']} look @param {number} number @param {State['settings']} settings */
const green = (look, number, settings) => html`<figure><svg class="look" viewBox="0 0 340 290" role="img" data-case=${number}
  aria-label="A green in perspective with ball, hole and flagstick. Its slope is for the eye to guess.">
  <path class="horizon" d="M0 ${HORIZON}H340"></path>
  ${look.grid.map((line) => svg`<path class="grid" d=${drawn(line)}></path>`)}
  <path class="look-hole" d=${drawn(look.hole)}></path><path class="flag" d=${drawn(look.flag)}></path><path class="look-ball"
    d=${drawn(look.ball)}></path>
</svg><figcaption>Squares of ${withUnit(SQUARE_M, smallUnit(settings))}. The flagstick stands upright, the horizon is
  level.</figcaption></figure>`;
