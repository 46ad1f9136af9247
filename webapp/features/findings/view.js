/**
 * @import {PuttEntry, State} from '../../types.js'
 * @import {FindingsActions} from './index.js'
 * @import {Table} from './tables.js'
 */
import { pick } from '../../pick.js';
import { html } from 'lit-html';
import { dayWords, distanceUnit, several, signed as plus, smallUnit, withUnit } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { filters } from '../../parts/filters.js';
import { outside, pad } from '../../parts/pad.js';
import { costChart, makeChart, offChart, strikeChart, weekChart } from './charts.js';
import { changeTable, costTable, finishTable, lastWeeks, makeTable, publishedTable, strikeTable, weekTable } from './tables.js';
import { headline, leaveWords, madeWords, NAMES, restsOn, signed, SKILLS, spreadWords } from './words.js';

const gainedBetween = (/** @type {number} */ low, /** @type {number} */ high) => `${plus(low, 0)} to ${plus(high, 0)}`;
const DRAWN_AS = { tour: 'Dashed, tour', 1995: 'Dotted, 1995' };

/** @param {State} state @param {FindingsActions} act */
export function view(state, act) {
  const { share, entries, settings, only } = state;
  const unfound = state.unfound?.entries === entries ? state.unfound : null;
  const { handed, against } = settings;
  const answered = state.findings;
  const fits = answered?.handed === handed && answered.against === against && answered.only === only;
  const findings = fits ? answered : null;
  return html`<main class="page findings">
    <a class="word" href="#record">Record</a>
    ${
      entries?.some(({ kind, gone }) => (kind === 'putt' || kind === 'round') && !gone)
        ? filters({
            only,
            entries,
            settings,
            onOnly: act.filter,
          })
        : ''
    }
    ${
      unfound
        ? html`<div role="alert"><p class="problem">No new findings: ${unfound.why}</p><button type="button" class="word"
          @click=${act.again}>Try again</button></div>`
        : ''
    }
    ${
      share === null
        ? ''
        : html`<div class="working"><p role="status">Going through the putts</p><button type="button" class="word"
          @click=${act.stop}>Stop</button>
      <progress aria-label="Putts gone through" .value=${share}></progress></div>`
    }
    ${
      findings
        ? found(findings, { ...settings, name: state.looking?.name ?? settings.name }, act)
        : html`<h1>Findings</h1>${
            entries === null && !unfound ? html`<p class="quiet" role="status">Opening the record</p>` : ''
          }`
    }
    ${choice({
      label: 'You putt',
      name: 'hand',
      value: settings.handed,
      options: [
        ['right', 'right-handed'],
        ['left', 'left-handed'],
      ],
      onValue: (value) => act.setHand(value === 'left' ? 'left' : 'right'),
    })}
    ${choice({
      label: 'Against',
      name: 'against',
      value: against,
      options: [
        ['tour', 'tour'],
        ['amateur', 'score 90'],
      ],
      onValue: (value) => act.setAgainst(value === 'amateur' ? 'amateur' : 'tour'),
    })}
    ${
      findings
        ? html`<div class="gives"><button type="button" class="word" @click=${act.give}>Share</button> <button type="button"
          class="word" @click=${() => print()}>Print or save this page</button>
      <p class="quiet" role="status">${findings.given}</p></div>`
        : ''
    }
  </main>`;
}

/** @param {Table} table */
const drawn = ({
  title,
  head,
  rows,
}) => html`<table><caption>${title}</caption><thead><tr>${head.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
  <tbody>${rows.map(
    ([first, ...rest]) => html`<tr><th scope="row">${first}</th>${rest.map((value) => html`<td>${value}</td>`)}</tr>`,
  )}</tbody></table>`;

/** @param {string} name @param {Table} table */
const folded = (name, table) => html`<details><summary>${name}</summary>${drawn(table)}</details>`;

/** @param {NonNullable<State['findings']>} findings @param {State['settings']} settings @param {FindingsActions} act */
function found({ value, entries }, settings, act) {
  const misses = entries.flatMap(({ result, past_m }) =>
    typeof result === 'object' && past_m !== undefined ? [{ ...result, past_m }] : [],
  );
  return html`<h1>${headline(value)}</h1>
    ${value.caution ? html`<p>${value.caution}</p>` : ''}
    <p class="quiet">${restsOn(value, entries)}</p>
    ${
      value.costs.length
        ? html`<section><h2>What it costs</h2>${costChart(value.costs)}${drawn(costTable(value, settings))}</section>
      <a class="word" href="#practice">The session planned from this</a>`
        : ''
    }
    ${(value.caution ? [] : SKILLS).map(
      (name) =>
        html`<section><h2>${NAMES[name]}</h2><p>${value.skills[name].words}</p>
          <p class="quiet">${spreadWords(value.skills[name])}</p></section>`,
    )}
    ${
      value.make.length
        ? html`<section>
          <h2>Putts made</h2>${makeChart(value.make, value.published, settings)}${drawn(makeTable(value.make, settings))}
      <p class="quiet">Dots are yours, each with its range; the dash beside is usual from there. ${value.published.map(
        ({ name, source }) => `${DRAWN_AS[name]}: ${source}. `,
      )}</p>
      ${folded('Tour and 1995 in numbers', publishedTable(value.published, settings))}</section>`
        : ''
    }
    ${
      misses.length
        ? html`<section><h2>Where misses stop</h2>${finishes(misses, value, settings)}</section>
      <section><h2>How misses were struck</h2>${strikeChart(value.strikes, value.opening)}
      <p class="quiet">Start line across, roll upwards. The shape is what a level putt of
        ${withUnit(value.opening_m, distanceUnit(settings))} takes.${beyond(offChart(value.strikes))}</p>
      ${folded('The strikes in numbers', strikeTable(value.strikes))}</section>`
        : ''
    }
    ${value.changes.length ? html`<section><h2>Last four weeks</h2>${drawn(changeTable(value.changes))}</section>` : ''}
    ${
      value.weeks.length > 1
        ? html`<section><h2>Week by week</h2>${weekChart(lastWeeks(value.weeks))}${drawn(weekTable(value.weeks))}${
            value.made_change ? html`<p>${madeWords(value.made_change)}</p>` : ''
          }</section>`
        : ''
    }
    ${value.seasons.length > 1 ? seasons(value.seasons, act) : ''}
    ${value.left_out.length ? leftOut(value.left_out, entries, settings, act) : ''}
    <p class="quiet printed">${signed(new Date(), settings.name)}</p>`;
}

/**
 * Quarter by quarter; a touch on one asks for its skills.
 * @param {import('../../engine/protocol.js').SeasonAnswer[]} all @param {FindingsActions} act
 */
const seasons = (all, act) => html`<section class="seasons"><h2>Seasons</h2>
  <table><caption>Every putt counts; touch a quarter for its skills</caption><thead><tr>${[
    'From',
    'Made',
    'Of',
    'More in 100 than usual',
  ].map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
  <tbody>${all.map(
    ({ from_day, to_day, made, tries, gained_low, gained_high }) =>
      html`<tr><th scope="row"><button type="button" class="word"
        @click=${() => act.filter({ since: '', from: from_day, to: to_day })}>${dayWords(from_day)}</button></th>
        <td>${made}</td><td>${tries}</td><td>${gainedBetween(gained_low, gained_high)}</td></tr>`,
  )}</tbody></table></section>`;

const MOST_NAMED = 10;

/**
 * Putts that tell nothing, each to be opened and mended.
 * @param {import('../../engine/protocol.js').LeftOutAnswer[]} left @param {PuttEntry[]} entries @param {State['settings']}
 *   settings @param {FindingsActions} act
 */
const leftOut = (left, entries, settings, act) => html`<section><h2>Left out</h2>
  <p class="quiet">${several(left.length, 'putt')} can tell nothing of the skills. Touch one to mend it.</p>
  <ul class="left-out">${left.slice(0, MOST_NAMED).map(({ id, why }) => {
    const { at, distance_m } = pick(entries, Number(id));
    return html`<li><button type="button" class="word"
      @click=${() => act.open(id)}>${withUnit(distance_m, distanceUnit(settings))}, ${dayWords(at)}</button> ${why}.</li>`;
  })}</ul></section>`;

const MOST_DRAWN = 500;

/** @param {number} count */
const beyond = (count) => (count ? ` ${count} more lie outside the picture.` : '');

/**
 * @param {{x_m: number, y_m: number, past_m: number}[]} misses @param {import('../../engine/protocol.js').FindingsAnswer} value
 *   @param {State['settings']} settings
 */
function finishes(misses, value, settings) {
  const shown = misses.slice(0, MOST_DRAWN);
  const newest = shown.length < misses.length ? ` The newest ${shown.length} are drawn.` : '';
  const unit = smallUnit(settings);
  const step_m = unit.unit === 'in' ? 20 * unit.si : 50 * unit.si;
  const rings_m = [1, 2, 3].map((i) => i * step_m);
  const reach_m = 3 * step_m;
  const words = leaveWords(value.leaves, settings);
  const past_m = pick(
    shown.map((miss) => miss.past_m).toSorted((a, b) => a - b),
    Math.floor(shown.length / 2),
  );
  return html`${pad({
    reach_m,
    putt: { past_m },
    finishes: shown,
    words: `Where ${shown.length} misses stopped round the hole. ${words}`,
    ringWords: (r) => withUnit(r, unit),
  })}
    <p>${words}</p><p class="quiet">To scale; the cross is the pace wanted.${newest}${beyond(outside(shown, reach_m))}</p>
    ${folded('The finishes in numbers', finishTable(shown, rings_m, settings))}`;
}
