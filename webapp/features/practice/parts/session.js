/**
 * How long, where, with what, and the plan that comes of it.
 * @import {Block, Drill, State, Thing} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { choice } from '../../../parts/choice.js';
import { ruler } from '../../../parts/ruler.js';
import { minutesOf, planAddress, unknownOf } from '../plan-link.js';
import { isPlanned } from '../questions.js';
import { rangeOf } from '../../../fields.js';
import { refusalWords } from '../../../refusal.js';
import { SKILLS, THINGS } from '../words.js';
import { dayWords } from '../../../format.js';

const { low, high } = rangeOf('PlanFields', 'minutes');
const MINUTES = Array.from({ length: high - low + 1 }, (_, i) => low + i);

/** The one skill that weighs most; none where two share that. @param {State['practice']['weights']} weights */
function heaviest(weights) {
  const [first, second] = Object.entries(weights).toSorted(([, a], [, b]) => b - a);
  return first && second && first[1] > second[1] ? /** @type {keyof typeof SKILLS} */ (first[0]) : null;
}

/** When a drill was last done; entries come newest first. @param {State['entries']} entries @param {string} drill */
function lastDone(entries, drill) {
  const last = entries?.find((entry) => entry.kind === 'drill' && !entry.gone && entry.drill === drill);
  return last ? `Last done ${dayWords(last.at)}.` : '';
}

/** @param {State} state @param {PracticeActions} act */
export function session({ practice, practicePage, refusals, settings, entries }, act) {
  const { minutes, place, at_hand, blocks, weights } = practice;
  const purpose = heaviest(weights);
  const planned = isPlanned(practice);
  const note = practicePage.note || (refusals.plan && refusalWords(refusals.plan, settings));
  return html`
    ${practicePage.sentPlan === undefined ? '' : came(practicePage.sentPlan, practicePage.drills, act)}
    <div class="minutes"><h1><span class="big">${minutes}<small> min</small></span></h1>
      ${ruler({
        label: 'Minutes',
        words: `${minutes} minutes`,
        value: minutes,
        stops: MINUTES,
        mark: (stop) => (stop % 5 ? '' : String(stop)),
        onValue: act.setMinutes,
      })}</div>
    ${choice({
      label: 'Where',
      name: 'place',
      value: place,
      options: [
        ['room', 'room'],
        ['green', 'practice green'],
      ],
      onValue: act.setPlace,
    })}
    <div class="choice" role="group" aria-label="At hand"><p class="over">At hand</p><div class="choice-row">
      ${Object.entries(THINGS).map(
        ([thing, words]) =>
          html`<button type="button" class="pick" aria-pressed=${at_hand.includes(/** @type {Thing} */ (thing))}
            @click=${() => act.toggle(/** @type {Thing} */ (thing))}>${words}</button>`,
      )}
    </div></div>
    ${note ? html`<p class="problem" role="alert">${note}</p>` : ''}
    <button type="button" class="go" ?disabled=${!planned} @click=${act.start}>Start</button>
    <section class=${planned ? 'plan' : 'plan stale'} aria-label="Plan" aria-busy=${planned ? 'false' : 'true'}>
      <header class="sheet-head"><h2>${planned || !blocks.length ? 'Plan' : 'The plan before'}</h2><button type="button"
        class="word" aria-pressed=${practicePage.changing}
        @click=${act.change}>${practicePage.changing ? 'Done' : 'Change'}</button></header>
      ${purpose ? html`<p>For ${SKILLS[purpose].toLowerCase()}: it needs work the most.</p>` : ''}
      <ol>${blocks.map((block, i) => row(block, i))}</ol>
    </section>
    <div class="choice-row"><button type="button" class="word" @click=${() => act.go('week')}>Tournament week</button>
      <button type="button" class="word" ?disabled=${!planned} @click=${act.givePlan}>Send this plan</button></div>
    ${
      practicePage.given
        ? html`<label class="link"><span class="quiet">Link</span><input readonly .value=${planAddress(practice)}></label>
          <p class="quiet" role="status">${practicePage.given}</p>`
        : ''
    }`;

  /** @param {Block} block @param {number} i */
  function row(block, i) {
    const name = practicePage.drills.find(({ id }) => id === block.drill)?.name ?? '';
    const raises = i > 1 && i < blocks.length - 1;
    return html`<li>
      <span class="plan-minutes">${block.minutes}<small> min</small></span>
      <span><button type="button" class="row" @click=${() => act.openDrill(block.drill)}><strong>${name}</strong><span
        class="quiet">${block.why} ${lastDone(entries, block.drill)}</span></button>
      ${
        practicePage.changing
          ? html`<span class="plan-does">
          ${
            block.instead.some((id) => blocks.every(({ drill }) => drill !== id))
              ? html`<button type="button" class="word" aria-label="Another drill in place of ${name}"
                @click=${() => act.swap(i)}>Swap</button>`
              : ''
          }
          ${
            raises
              ? html`<button type="button" class="word" aria-label="${name} earlier"
                @click=${() => act.raise(i)}>Earlier</button>`
              : ''
          }
        </span>`
          : ''
      }</span>
    </li>`;
  }
}

/**
 * A plan that came by a link.
 * @param {NonNullable<State['practicePage']['sentPlan']> | null} plan @param {Drill[]} drills @param {PracticeActions} act
 */
function came(plan, drills, act) {
  // what a drill is called, and whether it is known, the engine says
  const told = drills.length > 0;
  const unknown = plan && told ? unknownOf(plan, drills) : [];
  const problem = plan
    ? unknown.length && 'It holds drills that this version of the app does not have. Update the app, and open the link again.'
    : 'The link is cut short or damaged: ask for it once more.';
  return html`<section class="result" aria-live="polite"><h2>A plan was sent to you</h2>
    ${
      plan
        ? html`<p class="say">${minutesOf(plan)} min, ${plan.place === 'room' ? 'in the room' : 'on the practice green'}</p>
          <ol>${(told ? plan.blocks : []).map(
            ({ drill, minutes }) => html`<li>${drills.find(({ id }) => id === drill)?.name ?? drill}, ${minutes} min</li>`,
          )}</ol>`
        : ''
    }
    ${problem ? html`<p class="problem" role="alert">${problem}</p>` : ''}
    <div class="does">${
      plan && told && !problem ? html`<button type="button" class="word" @click=${act.takePlan}>Take it</button>` : ''
    }
      <button type="button" class="word" @click=${act.leavePlan}>${plan ? 'Keep mine' : 'Close'}</button></div></section>`;
}
