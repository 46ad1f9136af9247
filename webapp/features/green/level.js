/**
 * The phone as a level.
 * @import {State} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { html } from 'lit-html';
import { dayOf, dayWords, fallWords, number, percents, several, smallUnit, today, withUnit } from '../../format.js';
import { SETTLED_S } from './actions.js';
import { lying, onTheLine } from './drawings.js';
import { greenField } from './green-field.js';
import { places } from './places.js';
import { turnBack, zeroing } from './zero.js';

const SILENT = {
  refused:
    'The tilt is refused to this page. Allow motion and orientation in the browser’s settings for this site, then start ' +
    'again. Or type.',
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
    greenPage: { tilt, zero, back },
    answers,
    refusals,
  } = state;
  if (zero) return zeroing(state, act);
  if (back && tilt.kind === 'live') return turnBack(state, act);
  if (tilt.kind === 'refused' || tilt.kind === 'none')
    return html`<p class="problem" role="alert">${SILENT[tilt.kind]}</p>${start(act, 'Start again')} ${typed(state, act)}`;
  if (tilt.kind === 'off')
    return html`<section class="measured"><p>Lay the phone on its back on the line, top to the hole: once about two thirds of
      the way, or at several places.</p>${onTheLine}</section>${start(act, 'Start the level')} ${zeroed(state, act)}
        ${typed(state, act)}`;
  if (!answers.level) {
    const refused = refusals.level?.message;
    return html`<p class=${refused ? 'problem' : ''}
      role="alert">${refused ? `No level: ${refused}.` : 'Waiting for the phone’s tilt.'}</p>${stop(act)} ${typed(state, act)}`;
  }
  return html`${live(state, answers.level)} ${zeroIsGood(state) ? '' : zeroed(state, act)}
    ${places(state, act, answers.level, zeroIsGood(state))}
    ${stop(act)} ${zeroIsGood(state) ? zeroed(state, act) : ''} ${floor(state, act)} ${typed(state, act)}`;
}

/** @param {GreenActions} act @param {string} words */
const start = (act, words) => html`<button type="button" class="press" @click=${() => act.startLevel()}>${words}</button>`;
/** @param {GreenActions} act */
const stop = (act) => html`<button type="button" class="word" @click=${() => act.stopLevel()}>Stop the level</button>`;

/** @param {State} state @param {import('../../types.js').Answers['level']} found */
function live({ greenPage: { tilt } }, found) {
  const settled = tilt.kind === 'live' && tilt.seconds >= SETTLED_S;
  const { slope_percent, fall_deg, slope_sd_percent } = found;
  const words = fallWords(fall_deg);
  return html`<section class="measured" aria-label="Slope">
    <div><p class="big">${number(slope_percent, 1)}<small> %</small></p>
      <p class="say">give or take ${percents(Math.max(0.1, slope_sd_percent))}</p>
      <p class="say fall-words">${words}, ${Math.round(fall_deg) % 360}°</p>
      <p class="settle">${settled ? '✓ Settled' : '… Settling'}</p></div>
    ${lying(drawn(fall_deg), `The phone on the line, its top to the hole: ${words}`)}
  </section>`;
}

/** A zero of another day may have drifted. @param {State} state */
const zeroIsGood = ({ calibration: { phone } }) => phone !== null && dayOf(phone.date) === today();

/** @param {State} state @param {GreenActions} act */
const zeroed = ({ calibration: { phone } }, act) => html`<section>
  <h2>Zero</h2>
  <p>${
    phone
      ? `This phone is ${number(Math.hypot(...phone.bias_deg), 1)}° off, found ${dayWords(phone.date)}. It is taken off.${
          dayOf(phone.date) === today() ? '' : ' A zero drifts with warmth and case: zero it anew today.'
        }`
      : 'Not zeroed: a phone can be half a degree off, 0.9 % of slope.'
  }</p>
  <div class="choice-row">
    <button type="button" class=${phone && dayOf(phone.date) === today() ? 'word' : 'press'}
      @click=${() => act.startZero([0, 180])}>Zero it: half a turn</button>
    <button type="button" class="word" @click=${() => act.startZero([0, 90, 180, 270])}>By quarter turns</button>
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
  const { stations } = state.putt;
  const typed = slope_percent !== undefined && fall_deg !== undefined && { slope_percent, fall_deg };
  return html`<section><h2>Or type it</h2>
    <div class="fields two">${greenField(state, act, 'slope_percent')} ${greenField(state, act, 'fall_deg')}</div>
    <button type="button" class="word" ?disabled=${!typed}
      @click=${() => typed && act.take(typed, TYPED_SD_PERCENT)}>Take what is typed into the
        read${stations ? `; ${several(stations.length, 'place')} go` : ''}</button>
  </section>`;
}
