/** @import {State, Point} from '../../types.js' @import {FindingsActions} from './index.js' */
import { html } from 'lit-html';
import { distanceUnit, inUnit, number, smallUnit, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { pad } from '../../parts/pad.js';
import { costChart, makeChart, strikeChart } from './charts.js';
import { changeWords, headline, inHundred, leaveWords, NAMES, spreadWords } from './words.js';

const SKILLS = /** @type {const} */ (['start_line', 'alignment', 'pace', 'reading']);
const PICTURE_M = 1.5;
const WEEKS = 12;

/** @param {State} state @param {FindingsActions} act */
export function view(state, act) {
  const { findings, unfound, share, entries, settings } = state;
  return html`<main class="page findings">
    <a class="word" href="#notes">Notes</a>
    ${unfound ? html`<div role="alert"><p class="problem">No new findings: ${unfound}</p><button type="button" class="word" @click=${act.again}>Try again</button></div>` : ''}
    ${share === null ? '' : html`<div class="working"><p role="status">Going through the putts</p><button type="button" class="word" @click=${act.stop}>Stop</button>
      <progress aria-label="Putts gone through" .value=${share}></progress></div>`}
    ${findings ? found(state, findings.value) : unfound ? html`<h1>Findings</h1>` : html`<h1>Findings</h1>${entries === null ? html`<p class="quiet" role="status">Opening the record</p>` : ''}`}
    ${choice({ label: 'You putt', name: 'hand', value: settings.handed, options: [['right', 'right-handed'], ['left', 'left-handed']], onValue: (value) => act.setHand(value === 'left' ? 'left' : 'right') })}
    <button type="button" class="word" @click=${() => print()}>Print or save this page</button>
  </main>`;
}

/** @param {string} title @param {string[]} head @param {unknown[][]} rows */
const table = (title, head, rows) => html`<table><caption>${title}</caption><thead><tr>${head.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
  <tbody>${rows.map(([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((value) => html`<td>${value}</td>`)}</tr>`)}</tbody></table>`;

/** @param {State} state @param {import('../../engine/protocol.js').FindingsAnswer} value */
function found({ settings, putt, entries }, value) {
  const unit = distanceUnit(settings);
  const misses = (entries ?? []).flatMap((entry) => (entry.kind === 'putt' && !entry.gone && entry.result !== 'holed' ? [entry.result] : []));
  return html`<h1>${headline(value.costs)}</h1>
    <p class="quiet">From the newest ${value.used} putts. Each range holds the truth 19 times in 20.${entries?.some(({ sample }) => sample) ? ' The invented player is among them.' : ''}</p>
    ${value.costs.length ? html`<section><h2>What it costs</h2>${costChart(value.costs)}
      ${table('More putts holed in 100 of a fixed set, 1 to 6 m over 2 %, if the fault were gone', ['Fault', 'Putts', 'Range'], value.costs.map(({ skill, putts_per_100, low, high }) => [NAMES[skill], number(putts_per_100, 1), `${number(low, 1)} to ${number(high, 1)}`]))}</section>` : ''}
    ${SKILLS.map((name) => html`<section><h2>${NAMES[name]}</h2><p>${value.skills[name].words}</p><p class="quiet">${spreadWords(value.skills[name])}</p></section>`)}
    ${value.make.length ? html`<section><h2>Putts made</h2>${makeChart(value.make, value.published, settings)}
      ${table('Putts made by distance', [unit.unit, 'Made', 'Of', 'In 100'], value.make.map(({ from_m, to_m, made, tries, low, high }) => [`${inUnit(from_m, unit)} to ${inUnit(to_m, unit)}`, made, tries, `${inHundred(low)} to ${inHundred(high)}`]))}
      <p class="quiet">${value.published.map(({ name, source }) => html`${name}: ${source}. `)}</p></section>` : ''}
    ${misses.length ? html`<section><h2>Where misses stop</h2>${pad({ reach_m: PICTURE_M, putt, finishes: misses, words: `Where ${misses.length} misses stopped round the hole. ${leaveWords(value.leaves, settings)}`, ringWords: (r) => withUnit(r, smallUnit(settings)) })}
      <p>${leaveWords(value.leaves, settings)}</p></section>
      <section><h2>How misses were struck</h2>${strikeChart(value.strikes, value.opening)}
      <p class="quiet">Start line across, roll upwards. The shape is what a level putt of 3 m takes.</p></section>` : ''}
    ${value.changes.length ? html`<section><h2>Last four weeks</h2>${table('Before and in the last four weeks', ['', 'Before', 'Now', ''], value.changes.map(changeWords).map(({ what, from, to, verdict }) => [what, from, to, verdict]))}</section>` : ''}
    ${value.weeks.length > 1 ? html`<section><h2>Week by week</h2>${table('Putts made, by week', ['Week of', 'Made', 'Of', 'In 100'], value.weeks.slice(-WEEKS).map(({ monday, made, tries, low, high }) => [monday, made, tries, `${inHundred(low)} to ${inHundred(high)}`]))}</section>` : ''}
    ${value.left_out.length ? html`<p class="quiet">${value.left_out.length} putts say nothing here: ${value.left_out[0].why}.</p>` : ''}`;
}
