/**
 * What the feet say of a slope, and what it then is.
 * @import {State, Fall} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { percent, percents, signed } from '../../../format.js';
import { choice } from '../../../parts/choice.js';
import { sensedField } from './practice-field.js';
import { learned } from './learned.js';

/** @type {[Fall, string][]} */
const FALLS = [
  ['left', 'left'],
  ['right', 'right'],
  ['toes', 'toes'],
  ['heels', 'heels'],
];

/** @param {State} state @param {PracticeActions} act */
export function feet(state, act) {
  const {
    calibration,
    answers,
    practicePage: { draft, fall },
  } = state;
  const ready = draft.felt_percent !== undefined && draft.measured_percent !== undefined;
  return html`<h1 class="unseen">Feet</h1>
    <p>Stand facing the hole. Say what you feel first, then measure.</p>
    ${choice({
      label: 'It falls to my',
      name: 'fall',
      value: fall,
      options: FALLS,
      onValue: (value) => act.falls(/** @type {Fall} */ (value)),
    })}
    <div class="fields two">${sensedField(state, act, 'felt_percent')}
      ${draft.felt_percent === undefined ? '' : sensedField(state, act, 'measured_percent')}</div>
    ${
      draft.felt_percent === undefined
        ? ''
        : html`<button type="button" class="word" ?disabled=${!ready}
      @click=${() => act.addTrial()}>Keep this trial</button>`
    }
    ${draft.felt_percent === undefined || !answers.felt ? '' : likely(state, act)}
    ${answers.feet ? learned(answers.feet, calibration.feet.length, fall) : ''}
    ${
      calibration.feet.length
        ? html`<button type="button" class="word"
      @click=${() => act.clearTrials('feet')}>Clear the trials</button>`
        : ''
    }`;
}

/** The felt slope on its way into the read. @param {State} state @param {PracticeActions} act */
function likely({ answers: { felt, asFelt, ifSure }, problem }, act) {
  if (!felt) return '';
  const gain =
    asFelt && ifSure
      ? html`<p>This putt drops ${percent(asFelt.make_probability)} of the time as felt, ${percent(ifSure.make_probability)} if
        the slope were known.</p>`
      : '';
  return html`<section class="result" aria-live="polite">
    <p class="say">Likely ${percents(felt.slope_percent)}, give or take ${percents(felt.slope_sd_percent)}</p>
    <p class="quiet">${
      felt.trials
        ? `Your feet are corrected by ${signed(felt.correction_percent, 1)} % after ${felt.trials} ${
            felt.trials === 1 ? 'trial' : 'trials'
          } of this kind.`
        : 'No trial of this kind yet: taken as felt, with the spread of untried feet.'
    }</p>
    ${gain}
    <button type="button" class="press" @click=${() => act.takeFelt()}>Take as felt into the read</button>
    ${problem?.field === 'take' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}
  </section>`;
}
