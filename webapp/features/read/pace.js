/**
 * The pace that costs least, and what the pace in hand costs against it.
 * @import {Answers, Settings, State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { stretch } from '../../parts/stretch.js';
import { html, svg } from 'lit-html';
import { inUnit, number, percent, smallUnit, withUnit } from '../../format.js';
import { sheet } from '../../parts/sheet.js';

const [WIDE, HIGH, EDGE, FOOT] = [340, 150, 10, 28];
/** What differs by less costs nothing that one would notice. */
const NOTHING = 0.005;

/**
 * Putts that a pace takes, between those that were tried.
 * @param {Answers['bestPace']['curve']} curve @param {number} past_m
 */
function putts(curve, past_m) {
  const { from, to, share } = stretch(curve, past_m);
  return from[1] + Math.max(0, Math.min(1, share)) * (to[1] - from[1]);
}

const farthest = (/** @type {Answers['bestPace']} */ { curve }) => curve.at(-1)?.[0] ?? 0;

/** @param {Answers['bestPace']} best @param {number} past_m @param {Settings} settings */
export function costWords(best, past_m, settings) {
  const more = putts(best.curve, past_m) - best.expected_putts;
  const pace = withUnit(past_m, smallUnit(settings));
  if (past_m > farthest(best)) return `${pace} past is farther than was tried.`;
  if (more < NOTHING) return `${pace} past costs no more than the best.`;
  const count = number(more * 100, more < 0.02 ? 1 : 0);
  return `${pace} past costs ${count} ${count === '1' ? 'putt' : 'putts'} more in 100.`;
}

/** @param {Answers['bestPace']} best @param {number} past_m @param {Settings} settings */
function drawn(best, past_m, settings) {
  const { curve } = best;
  const most = farthest(best);
  const all = curve.map(([, each]) => each);
  const [low, high] = [Math.min(...all, best.expected_putts), Math.max(...all)];
  const x = (/** @type {number} */ past) => EDGE + (Math.min(past, most) / most) * (WIDE - 2 * EDGE);
  const y = (/** @type {number} */ each) =>
    HIGH - FOOT - ((each - low) / Math.max(0.02, high - low)) * (HIGH - FOOT - 2 * EDGE) - EDGE;
  const path = curve.map(([past, each], i) => `${i ? 'L' : 'M'}${x(past).toFixed(1)} ${y(each).toFixed(1)}`).join('');
  const unit = smallUnit(settings);
  const step = unit.unit === 'cm' ? 20 : 6;
  const marks = Array.from({ length: Math.floor(most / unit.si / step) + 1 }, (_, i) => i * step);
  const words = `Putts by pace: fewest at ${withUnit(best.past_m, unit)} past. ${costWords(best, past_m, settings)}`;
  return html`<svg class="paces" viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label=${words}>
    <path class="axis" d="M${EDGE} ${HIGH - FOOT}H${WIDE - EDGE}"></path>
    ${marks.map(
      (mark) => svg`<path class="axis" d="M${x(mark * unit.si)} ${HIGH - FOOT}v6"></path><text class="mark"
      x=${x(mark * unit.si)} y=${HIGH - 6}>${mark}</text>`,
    )}
    <path class="curve" d=${path}></path>
    <path class="hand" d="M${x(past_m)} ${EDGE}V${HIGH - FOOT}"></path><circle class="hand-at" cx=${x(past_m)}
      cy=${y(putts(curve, past_m))} r="5"></circle>
    <path class="best" d="M${x(best.past_m)} ${y(best.expected_putts) - 5}l-6 -11h12Z"></path>
  </svg>
  <p class="quiet">Up: more putts. Along: ${unit.name} past the hole. ▾ the best, ● yours.</p>`;
}

/** @param {State} state @param {ReadActions} act */
export function pace({ answers: { bestPace: best }, refusals, refusal, putt, settings }, act) {
  const why = refusal?.value ?? refusals.bestPace?.message;
  const unit = smallUnit(settings);
  const body = why
    ? html`<p>${why}.</p>`
    : !best
      ? html`<p class="quiet">Working it out.</p>`
      : html`<p class="odds"><span class="big">${inUnit(best.past_m, unit)}<small> ${unit.unit}</small></span> <span
        class="say">past costs least</span></p>
      <p class="say">${costWords(best, putt.past_m, settings)}</p>
      ${drawn(best, putt.past_m, settings)}
      <p>At the best pace: ${number(best.expected_putts, 2)} putts in the mean, ${percent(best.make_probability)} drop,
        ${percent(best.three_putt_probability)} take three or more. For the player chosen under Make.</p>
      <button type="button" class="press" @click=${() => act.takePace(best.past_m)}>Take ${withUnit(best.past_m, unit)}
        past</button>`;
  return sheet({ title: 'Pace', body, onClose: act.close });
}
