/**
 * Where on this green the putt is that is wanted.
 * @import {GreenEntry, State, WalkPage} from '../../types.js'
 * @import {WalkActions} from './actions.js'
 */
import { html } from 'lit-html';
import { distanceUnit, percents, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { refusalWords } from '../../refusal.js';
import { placeWords } from './plan.js';

/** @type {[string, string][]} */
const BREAKS = [
  ['right', 'left to right'],
  ['left', 'right to left'],
  ['none', 'straight'],
  ['', 'any'],
];
/** @type {[string, string][]} */
const WAYS = [
  ['up', 'up'],
  ['down', 'down'],
  ['across', 'across'],
  ['', 'any'],
];
const STEPS = { slope_percent: 0.5, distance_m: 0.6096 };

/** @param {State} state @param {GreenEntry} green @param {WalkActions} act */
export function find({ walkPage, settings, answers, refusals }, green, act) {
  const { want } = walkPage;
  const set = (/** @type {Partial<WalkPage['want']>} */ patch) => act.choose({ want: { ...want, ...patch } });
  const unit = distanceUnit(settings);
  const step = settings.distance === 'm' ? 0.5 : settings.distance === 'paces' ? settings.pace_m : STEPS.distance_m;
  const stepped = (
    /** @type {string} */ label,
    /** @type {string} */ words,
    /** @type {(by: number) => void} */ by,
  ) => html`<div class="stepped" role="group" aria-label=${label}><button type="button" class="word" aria-label="Less"
    @click=${() => by(-1)}>−</button>
    <span class="say">${words}</span><button type="button" class="word" aria-label="More"
      @click=${() => by(1)}>+</button></div>`;
  const within = (/** @type {number} */ value, /** @type {number} */ low, /** @type {number} */ high) =>
    Math.min(high, Math.max(low, value));
  return html`<section class="find" aria-label="Find a putt">
    <div class="fields two">${stepped('Length', withUnit(want.distance_m, unit), (by) =>
      set({ distance_m: within(want.distance_m + by * step, step, 24) }),
    )}
    ${stepped('Slope', percents(want.slope_percent), (by) =>
      set({ slope_percent: within(want.slope_percent + by * STEPS.slope_percent, 0, 6) }),
    )}</div>
    ${choice({
      label: 'Breaks',
      name: 'break',
      value: want.break ?? '',
      options: BREAKS,
      onValue: (value) => set({ break: /** @type {WalkPage['want']['break']} */ (value || null) }),
    })}
    ${choice({
      label: 'Runs',
      name: 'way',
      value: want.way ?? '',
      options: WAYS,
      onValue: (value) => set({ way: /** @type {WalkPage['want']['way']} */ (value || null) }),
    })}
    ${choice({
      label: 'To',
      name: 'here',
      value: want.here ? 'here' : '',
      options: [
        ['', 'any place'],
        ['here', 'this hole'],
      ],
      onValue: (value) => set({ here: value === 'here' }),
    })}
    ${refusals.putts ? html`<p class="problem" role="alert">${refusalWords(refusals.putts, settings)}</p>` : found()}
  </section>`;

  function found() {
    const putts = answers.putts?.putts;
    if (!putts) return html`<p class="quiet" role="status">Looking.</p>`;
    if (!putts.length) return html`<p role="status">${green.name} has no such putt where it is known.</p>`;
    return html`<ol class="list found">${putts.map(
      (putt) => html`<li><button type="button" class="green-name"
        @click=${() => act.putBoth(putt)}><b>${withUnit(putt.distance_m, unit)}, ${percents(putt.slope_percent)} ±
          ${percents(Math.max(0.1, putt.sd_percent))}</b>
      <span class="quiet">from ${placeWords(putt.ball, settings)} to ${placeWords(putt.hole, settings)}</span></button></li>`,
    )}</ol>`;
  }
}
