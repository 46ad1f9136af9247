/**
 * One putt in one touch: whose aim it was, and where it finished, as far as that is known.
 * @import {State, PuttEntry} from '../../types.js'
 * @import {RecordActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimField, aimWords, dayWords, distanceUnit, inUnit, smallUnit, today, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { leave } from '../../parts/leave.js';
import { numberField } from '../../parts/number-field.js';
import { entryUnit, FINISH } from './finish.js';
import { pad } from '../../parts/pad.js';
import { whoseAim } from '../../parts/whose-aim.js';
import { placeField } from './place.js';
import { resultWords } from './words.js';

/** @type {[string, string][]} */
const REACHES = [
  ['0.6', 'near'],
  ['1.2', 'middle'],
  ['3', 'far'],
];
/** @type {[string, string][]} */
const BY = [
  ['picture', 'where it finished'],
  ['words', 'in words'],
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
  const { putt, settings, recordPage, entries, problem, logging } = state;
  const kept = recordPage.logged.flatMap((id) => entries?.find((each) => each.id === id && !each.gone) ?? []);
  const last = kept[kept.length - 1];
  const asPutt = last?.kind === 'putt' ? last : null;
  return html`<h1 class="intent">${withUnit(putt.distance_m, distanceUnit(settings))}${meant(state)}</h1>
    ${whoseAim({ label: 'Whose aim do you play', name: 'read', value: logging.read, onWhose: (read) => act.logs({ read }) })}
    <button type="button" class="holed" @click=${() => act.log('holed')}>Holed</button>
    <div class="logged-line" role="status">${
      asPutt
        ? html`<span><strong>${resultWords(asPutt, settings)}</strong> <span
          class="quiet">${count(kept)}${recordPage.day ? `, for ${dayWords(recordPage.day)}` : ''}</span></span> <button
          type="button" class="word" @click=${act.undo}>Take back</button>`
        : html`<span class="quiet">Or how it missed</span>`
    }</div>
    ${choice({
      label: 'A miss by',
      name: 'by',
      value: logging.by,
      options: BY,
      onValue: (by) => act.logs({ by: /** @type {State['logging']['by']} */ (by) }),
    })}
    ${
      logging.by === 'words'
        ? leave({
            label: 'How it was left',
            value: null,
            middle: 'missed',
            onLeave: (left) => act.log('missed', left),
          })
        : picture(state, asPutt, act)
    }
    ${asPutt ? added(asPutt, state, act) : ''}
    ${placeField(state, act)}
    <label class="text-field">Day${recordPage.day ? html`<strong>Not today</strong>` : ''}<input type="date" id="log-day"
      max=${today()} .value=${recordPage.day || today()}
      @change=${(/** @type {Event} */ event) => act.setDay(/** @type {HTMLInputElement} */ (event.target).value)}></label>
    ${problem?.field === 'day' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}`;
}

/** What the app's read says, where it is played. @param {State} state */
function meant({ read, putt, settings, logging }) {
  const past = `, ${withUnit(putt.past_m, smallUnit(settings))} past`;
  if (logging.read === 'own' || !read || read.putt !== putt) return past;
  const [shown, side] = [aim(read.value, settings), aimWords(read.value)];
  return `, aim ${side === 'dead centre' ? side : `${shown.number} ${shown.unit} ${side.split(' ')[0]}`}${past}`;
}

/** @param {unknown[]} kept */
const count = (kept) => `logged, ${kept.length === 1 ? 'the first' : `${kept.length} now`}`;

/** @param {State} state @param {PuttEntry | null} last @param {RecordActions} act */
function picture({ putt, settings, recordPage, problem }, last, act) {
  const unit = smallUnit(settings);
  return html`${pad({
    reach_m: recordPage.reach_m,
    putt,
    finishes: last && typeof last.result === 'object' ? [last.result] : [],
    words: 'The hole from above, to scale. Touch where the ball finished, or type it below. The cross is the pace wanted.',
    ringWords: (r) => withUnit(r, unit),
    onPoint: (point) => act.log(point),
  })}
    ${choice({
      label: 'Picture',
      name: 'reach',
      value: String(recordPage.reach_m),
      options: REACHES,
      onValue: (value) => act.reach(Number(value)),
    })}
    <form class="typed" @submit=${typed(act)}>
      <p class="quiet">Or typed, from the hole’s edge, ${unit.unit}:</p>
      ${FINISH.map(
        ([field, label], i) =>
          html`<label>${label}<input name=${field} inputmode="text" autocomplete="off" ?required=${!i}></label>`,
      )}
      <button type="submit" class="word">Log</button>
      ${problem?.field === 'finish' ? html`<p class="problem" role="alert">${problem.message}</p>` : ''}
    </form>`;
}

/** @param {RecordActions} act @returns {(event: SubmitEvent) => void} */
const typed = (act) => (event) => {
  event.preventDefault();
  const form = /** @type {HTMLFormElement} */ (event.target);
  const text = (/** @type {'x_m' | 'y_m'} */ field) => /** @type {HTMLInputElement} */ (form.elements.namedItem(field)).value;
  void act.logTyped({ x_m: text('x_m'), y_m: text('y_m') }).then((taken) => taken && form.reset());
};

/** @param {PuttEntry} last @param {State} state @param {RecordActions} act */
function added(last, { settings, problem }, act) {
  return html`<section class="logged" aria-label="Of the putt logged last">
    ${last.read === 'own' ? ownAim(last, 'aim_deg', settings, problem, act) : ''}
    ${choice({
      label: 'Started, or gate post touched',
      name: 'gate',
      value: last.gate ?? '',
      options: STARTS,
      onValue: (gate) => act.add(last.id, 'gate', gate || undefined),
    })}
    <div class="fields">${extras(last, settings, problem, act)}</div>
  </section>`;
}

/**
 * @param {PuttEntry} putt @param {string} name @param {State['settings']} settings @param {State['problem']} problem @param
 *   {RecordActions} act
 */
export function ownAim({ id, aim_deg, distance_m }, name, settings, problem, act) {
  const mine = problem?.field === 'aim_deg' ? problem : null;
  const { unit, text } = aimField(settings, distance_m);
  return numberField({
    name,
    label: 'Aim played',
    hint: 'Left of the cup’s centre; − to the right. Leave empty if you did not measure it.',
    unit,
    value: mine?.text ?? (aim_deg === undefined ? '' : text(aim_deg)),
    message: mine?.message,
    onText: (typed) => act.enterAim(id, typed),
  });
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
