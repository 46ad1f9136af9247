/**
 * The phone as a level.
 * @import {State} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayWords, fallWords, number, percents, smallUnit, withUnit } from '../../format.js';
import { SETTLED_S } from './actions.js';
import { lying } from './drawings.js';
import { greenField } from './green-field.js';
import { zeroing } from './zero.js';

const SILENT = {
  refused:
    'The tilt is refused to this page. Allow motion and orientation in the browser’s settings for this site, then start again. Or type.',
  none: 'This phone or browser gives no tilt. Type what another level shows.',
};
const FLOOR = {
  level: 'Level enough for mirror and laser.',
  tilted: 'Not level enough for mirror and laser.',
  unsure: 'Too close to tell: zero the phone, or turn it and look again.',
};

/** The phone's top points up the screen as a person sees it: a turned screen turns the drawing. @param {number} fall_deg */
const drawn = (fall_deg) => fall_deg - (screen.orientation?.angle ?? 0);

/** @param {State} state @param {GreenActions} act */
export function level(state, act) {
  const {
    greenPage: { tilt, zero },
    answers,
    refusals,
  } = state;
  if (zero) return zeroing(state, act);
  if (tilt.kind === 'refused' || tilt.kind === 'none')
    return html`<p class="problem" role="alert">${SILENT[tilt.kind]}</p>${start(act, 'Start again')} ${typed(state, act)}`;
  if (tilt.kind === 'off')
    return html`<p>Lay the phone on its back on the green, its long edge along the line to the hole, its top towards the hole.</p>${start(act, 'Start the level')} ${zeroed(state, act)} ${typed(state, act)}`;
  if (!answers.level) {
    const refused = refusals.level?.message;
    return html`<p class=${refused ? 'problem' : ''} role="alert">${refused ? `No level: ${refused}.` : 'Waiting for the phone’s tilt.'}</p>${stop(act)} ${typed(state, act)}`;
  }
  return html`${live(state, act, answers.level)} ${stop(act)} ${zeroed(state, act)} ${floor(state, act)} ${typed(state, act)}`;
}

/** @param {GreenActions} act @param {string} words */
const start = (act, words) => html`<button type="button" class="press" @click=${() => act.startLevel()}>${words}</button>`;
/** @param {GreenActions} act */
const stop = (act) => html`<button type="button" class="word" @click=${() => act.stopLevel()}>Stop the level</button>`;

/** @param {State} state @param {GreenActions} act @param {import('../../types.js').Answers['level']} found */
function live({ greenPage: { tilt }, problem, putt }, act, found) {
  const settled = tilt.kind === 'live' && tilt.seconds >= SETTLED_S;
  const { slope_percent, fall_deg, slope_sd_percent } = found;
  const words = fallWords(fall_deg);
  const take = (/** @type {number} */ station) =>
    html`<button type="button" class="word" @click=${() => act.take(found, slope_sd_percent, station)}>Take into place ${station + 1}</button>`;
  return html`<section class="measured" aria-label="Slope">
    <div><p class="big">${number(slope_percent, 1)}<small> %</small></p>
      <p class="say">give or take ${percents(Math.max(0.1, slope_sd_percent))}</p>
      <p class="say fall-words">${words}, ${Math.round(fall_deg) % 360}°</p>
      <p class="settle">${settled ? '✓ Settled' : '… Settling'}</p></div>
    ${lying(drawn(fall_deg), `The phone on the line to the hole: ${words}`)}
  </section>
  <button type="button" class="press" @click=${() => act.take(found, slope_sd_percent)}>Take into the read</button>
  ${putt.stations ? html`<div class="choice-row">${putt.stations.map((_, i) => take(i))}</div>` : ''}
  ${problem?.field === 'take' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}`;
}

/** @param {State} state @param {GreenActions} act */
const zeroed = ({ calibration: { phone } }, act) => html`<section>
  <h2>Zero</h2>
  <p>${phone ? `This phone is ${number(Math.hypot(...phone.bias_deg), 1)}° off, found ${dayWords(phone.date)}. It is taken off.` : 'Not zeroed: a phone can be half a degree off, 0.9 % of slope.'}</p>
  <div class="choice-row">
    <button type="button" class="word" @click=${() => act.startZero([0, 180])}>Turn twice</button>
    <button type="button" class="word" @click=${() => act.startZero([0, 90, 180, 270])}>Turn four times</button>
    ${phone ? html`<button type="button" class="word" @click=${() => act.forgetZero()}>Forget</button>` : ''}
  </div>
</section>`;

/** @param {State} state @param {GreenActions} act */
function floor(state, act) {
  const found = state.answers.floor;
  const small = (/** @type {number} */ metres) => withUnit(metres, { ...smallUnit(state.settings), digits: 1 });
  return html`<section><h2>Is this floor level enough?</h2>
    <div class="fields">${greenField(state, act, 'eye_m')}</div>
    ${
      found
        ? html`<p class="say">${FLOOR[found.verdict]}</p>
      <p class="quiet">The tilt moves the eye line ${small(found.shift_m)}, give or take ${small(found.shift_sd_m)}.</p>`
        : ''
    }
  </section>`;
}

/** A slope read off another level is as good as its last digit. */
const TYPED_SD_PERCENT = 0.1;

/** @param {State} state @param {GreenActions} act */
function typed(state, act) {
  const {
    draft: { slope_percent, fall_deg },
  } = state.greenPage;
  const ready = slope_percent !== undefined && fall_deg !== undefined;
  return html`<section><h2>Or type it</h2>
    <div class="fields two">${greenField(state, act, 'slope_percent')} ${greenField(state, act, 'fall_deg')}</div>
    <button type="button" class="word" ?disabled=${!ready} @click=${() => act.take({ slope_percent, fall_deg }, TYPED_SD_PERCENT)}>Take what is typed into the read</button>
  </section>`;
}
