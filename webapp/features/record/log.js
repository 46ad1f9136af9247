/**
 * One putt in one touch: the read on screen is the intention.
 * @import {State, PuttEntry} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimWords, distanceUnit, inUnit, smallUnit, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { numberField } from '../../parts/number-field.js';
import { entryUnit, FINISH } from './actions.js';
import { pad } from '../../parts/pad.js';
import { placeField } from './place.js';
import { resultWords } from './words.js';

/** @type {[string, string][]} */
const REACHES = [
  ['0.6', 'near'],
  ['1.2', 'middle'],
  ['3', 'far'],
];
/** @type {[string, string][]} */
export const STARTS = [
  ['', 'not seen'],
  ['left', 'left'],
  ['clean', 'clean'],
  ['right', 'right'],
];

/** @param {State} state @param {RecordActions} act */
export function log(state, act) {
  const { read, putt, settings, recordPage, entries, problem } = state;
  const last = entries?.find(({ id, gone }) => id === recordPage.last && !gone);
  const meant = read?.putt === putt ? aim(read.value, settings) : null;
  const side = read ? aimWords(read.value) : '';
  return html`<h1 class="intent">${withUnit(putt.distance_m, distanceUnit(settings))}${meant && read ? `, aim ${side === 'dead centre' ? side : `${meant.number} ${meant.unit} ${side.split(' ')[0]}`}` : ''}, ${withUnit(putt.past_m, smallUnit(settings))} past</h1>
    <button type="button" class="holed" @click=${() => act.log('holed')}>Holed</button>
    ${
      last?.kind === 'putt'
        ? html`<p class="logged-line" role="status"><strong>${resultWords(last.result, settings)}</strong> <button type="button" class="word" @click=${act.undo}>Undo</button></p>`
        : html`<p class="quiet">Or touch where it finished. The cross is the pace wanted.</p>`
    }
    ${pad({
      reach_m: recordPage.reach_m,
      putt,
      finishes: last?.kind === 'putt' && last.result !== 'holed' ? [last.result] : [],
      words: 'The hole from above, to scale. Touch where the ball finished, or type it below.',
      ringWords: (r) => withUnit(r, smallUnit(settings)),
      onPoint: (point) => act.log(point),
    })}
    ${choice({ label: 'Picture', name: 'reach', value: String(recordPage.reach_m), options: REACHES, onValue: (value) => act.reach(Number(value)) })}
    <form class="typed" @submit=${typed(act)}>
      ${FINISH.map(([field, label]) => html`<label>${label}, ${smallUnit(settings).unit}<input name=${field} inputmode="text" autocomplete="off" required></label>`)}
      <button type="submit" class="word">Log</button>
      ${problem?.field === 'finish' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}
    </form>
    ${last?.kind === 'putt' ? added(last, state, act) : ''}
    ${placeField(state, act)}`;
}

/** @param {RecordActions} act @returns {(event: SubmitEvent) => void} */
const typed = (act) => (event) => {
  event.preventDefault();
  const form = /** @type {HTMLFormElement} */ (event.target);
  const texts = FINISH.map(([field]) => /** @type {HTMLInputElement} */ (form.elements.namedItem(field)).value);
  void act.logTyped(texts).then((taken) => taken && form.reset());
};

/** @param {PuttEntry} last @param {State} state @param {RecordActions} act */
function added(last, { settings, problem }, act) {
  return html`<section class="logged" aria-label="Of the putt logged last">
    ${choice({ label: 'Started, or gate post touched', name: 'gate', value: last.gate ?? '', options: STARTS, onValue: (gate) => act.add(last.id, 'gate', gate || undefined) })}
    <div class="fields">${extras(last, settings, problem, act)}</div>
  </section>`;
}

/** @param {PuttEntry} putt @param {State['settings']} settings @param {State['problem']} problem @param {RecordActions} act */
export const extras = (putt, settings, problem, act) =>
  /** @type {['line_error_deg' | 'felt_percent', string, string][]} */ ([
    ['line_error_deg', 'Ball’s line off', 'To the left; − to the right. Leave empty if you did not check.'],
    ['felt_percent', 'Slope you felt', 'Before you saw the number.'],
  ]).map(([field, label, hint]) => {
    const mine = problem?.field === field ? problem : null;
    const unit = entryUnit(field, settings);
    const value = putt[field];
    return numberField({
      name: field,
      label,
      hint,
      unit: unit.unit,
      value: mine?.text ?? (value === undefined ? '' : inUnit(value, unit)),
      message: mine?.message,
      onText: (text) => act.enter(putt.id, field, label, text),
    });
  });
