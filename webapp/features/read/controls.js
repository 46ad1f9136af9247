/**
 * Five numbers; the one in hand has its tape or dial under the thumb, and takes a typed number.
 * @import {State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 * @import {Input} from './inputs.js'
 */
import { html, svg } from 'lit-html';
import { fallWords, inUnit, number, unitOf } from '../../format.js';
import { isExample } from './kept.js';
import { dial } from '../../parts/dial.js';
import { ruler } from '../../parts/ruler.js';
import { undoLine } from '../../parts/undo.js';
import { BY } from './doubt.js';
import { INPUTS, inputOf, inWords, inputValue } from './inputs.js';

const HINTS = {
  distance_m: 'Ball to hole',
  slope_percent: 'How steep',
  fall_deg: 'The way it runs down',
  stimp_ft: 'Green speed',
  past_m: 'Pace past the hole',
};

/** What measures it. @type {Partial<Record<import('../../types.js').InputField, {part: 'level' | 'speed', words: string}>>} */
const MEASURED = {
  slope_percent: { part: 'level', words: 'Lay the phone down' },
  fall_deg: { part: 'level', words: 'Lay the phone down' },
  stimp_ft: { part: 'speed', words: 'Roll a ball' },
};

/** What the number in hand was come to by. @param {Pick<State, 'active' | 'putt'>} state */
const sourceOf = ({ active, putt }) => (active === 'stimp_ft' ? putt.stimp_source : putt.tilt_source);

/** @param {State} state @param {boolean} measurable */
function hint({ active, putt, settings }, measurable) {
  if (isExample(putt, settings)) return measurable ? 'An example.' : 'An example: set your own putt.';
  const told = measurable ? sourceOf({ active, putt }) : undefined;
  return told
    ? `${HINTS[active]}, ${BY[told]}`
    : `${HINTS[active]}. ${measurable ? 'Type it, or' : 'Touch the number to type.'}`;
}

/** @param {number} deg */
const arrow = (deg) =>
  svg`<svg class="cell-arrow" width="22" height="22" viewBox="0 0 22 22" aria-hidden="true"><path
    transform="rotate(${deg} 11 11)" d="M11 21V8M11 1L6 9H16Z"></path></svg>`;

/** @param {State} state @param {ReadActions} act @param {Input} input */
function cell({ putt, station, settings, active, problem }, act, { field, name }) {
  const value = inputValue(putt, station, field);
  const unit = unitOf(field, settings);
  const shown = inUnit(value, unit);
  // Paces have no short sign: they stand for the name instead
  const [over, sign] = unit.unit === 'paces' ? ['Paces', ''] : [name, unit.unit];
  if (field !== active)
    return html`<button type="button" class="cell" aria-label="${name} ${inWords(field, value, settings)}"
      @click=${() => act.choose(field)}>
      <span class="cell-name">${over}</span> <span class="cell-value">${
        field === 'fall_deg'
          ? arrow(value)
          : html`${shown}
        <small>${sign}</small>`
      }</span>
    </button>`;
  const typed = problem?.field === field ? problem.text : shown;
  return html`<label class="cell active"><span class="cell-name">${over}</span><span class="cell-value">
    <input id="entry" size=${typed.length} inputmode="decimal" autocomplete="off" aria-label="${name}, ${unit.name}"
      aria-describedby="entry-note" aria-invalid=${problem?.field === field && problem.message ? 'true' : 'false'}
      .value=${typed}
      @change=${(/** @type {Event} */ event) => act.enterField(field, /** @type {HTMLInputElement} */ (event.target).value)}
      @keydown=${(/** @type {KeyboardEvent} */ event) =>
        event.key === 'Enter' && /** @type {HTMLInputElement} */ (event.target).blur()}><small>${sign}</small></span></label>`;
}

/** @param {number} value @param {number} of */
const isMultiple = (value, of) => Math.abs(value / of - Math.round(value / of)) < 1e-6;

/** @param {State} state @param {ReadActions} act */
function instrument({ putt, station, settings, active }, act) {
  const { field, name, stops, marked } = inputOf(active);
  const value = inputValue(putt, station, field);
  const unit = unitOf(field, settings);
  const words = inWords(field, value, settings);
  if (field === 'fall_deg')
    return html`${dial({ label: 'Falls', words, value, onValue: (deg) => act.setField(field, deg) })}
      <p class="dial-words">${fallWords(value)}</p>`;
  return ruler({
    label: name,
    words,
    value: value / unit.si,
    stops: stops(settings),
    mark: (stop) => (isMultiple(stop, marked(stop, unit.unit)) ? number(stop, 2) : ''),
    onValue: (stop) => act.setField(field, stop * unit.si),
  });
}

/** @param {State} state @param {ReadActions} act */
export function controls(state, act) {
  const { active, problem, settings } = state;
  const refused = problem?.field === active ? problem.message : '';
  const by = MEASURED[active];
  return html`<section class="controls ${settings.handed}" aria-label="The putt">
    ${undoLine(state, act.undo)}
    <div class="cells">${INPUTS.map((input) => cell(state, act, input))}</div>
    <div class=${by && !refused ? 'told with' : 'told'}><p id="entry-note" class=${refused ? 'problem' : 'hint'}
      role=${refused ? 'alert' : 'note'}>${refused || hint(state, Boolean(by))}</p>
      ${
        by && !refused
          ? html`<button type="button" class="word"
        @click=${() => act.measure(by.part)}>${sourceOf(state) ? 'Again' : by.words}</button>`
          : ''
      }</div>
    <div class="instrument">${instrument(state, act)}</div>
  </section>`;
}
