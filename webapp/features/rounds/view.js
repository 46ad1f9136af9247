/**
 * @import {PuttedAnswer, RoundAnswer} from '../../engine/protocol.js'
 * @import {RoundEntry, Settings, State} from '../../types.js'
 * @import {RoundsActions} from './actions.js'
 */
import { html } from 'lit-html';
import { distanceUnit, inUnit, number, several, signed } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { bandWords, filters } from '../../parts/filters.js';
import { roundsOf } from '../../records/chosen.js';
import { refusalWords } from '../../refusal.js';
import { cardView } from './card.js';
import { holeSheet } from './hole.js';
import { roundPicture, seasonPicture } from './picture.js';
import { betweenWords, changed, gainedWords, leaveWords, leftOut, roundName, worst } from './words.js';

const MOST_DRAWN = 60;
const YARDSTICK = { tour: 'a tour player', amateur: 'a player who scores 90' };

/** @param {State} state @param {RoundsActions} act */
export function view(state, act) {
  const { roundsPage, card, entries } = state;
  const onCard = roundsPage.page === 'card' && card;
  return html`<main class="page rounds">
    ${onCard ? '' : html`<a class="word" href="#record">Record</a>`}
    ${roundsPage.said ? html`<p class="said" role="status">${roundsPage.said}</p>` : ''}
    ${
      entries === null
        ? html`<p class="quiet" role="status">Opening the record</p>`
        : onCard
          ? cardView(state, card, act)
          : pages(state, entries, act)
    }
  </main>`;
}

/** Why a round has no figures. @param {State} state */
function waits({ answers, refusals, settings }) {
  if (refusals.rounds) return refusalWords(refusals.rounds, settings);
  return answers.rounds ? 'None of its holes is asked for.' : 'Counting';
}

/** @param {State} state @param {NonNullable<State['entries']>} entries @param {RoundsActions} act */
function pages(state, entries, act) {
  const { only, settings, roundsPage, card } = state;
  const kept = roundsOf(entries, only);
  const answer = state.answers.rounds;
  const found = new Map((answer?.rounds ?? []).map((round) => [round.id, round]));
  const entry = entries.find(({ id, gone }) => id === roundsPage.open && !gone);
  const round = entry && found.get(entry.id);
  if (roundsPage.page === 'round' && entry?.kind === 'round')
    return html`<h1>${roundName(entry)}</h1>${
      round ? one(round, settings, act) : html`<p class="quiet" role="status">${waits(state)}</p>`
    }
      <div class="gives"><button type="button" class="word" @click=${() => act.mend(entry.id)}>Mend it</button> <button
        type="button" class="word" @click=${() => act.remove(entry.id)}>Delete</button> <button type="button" class="word"
        @click=${act.list}>All rounds</button></div>${holeSheet(state, entry, act)}`;
  return html`<h1>Rounds</h1>
    <button type="button" class="holed"
      @click=${card ? act.goOn : act.start}>${card ? 'Go on with the card' : 'Enter a round'}</button>
    ${
      entries.some(({ kind, gone }) => kind === 'round' && !gone)
        ? filters({ only, entries, settings, onOnly: act.filter })
        : html`<p class="quiet">Entered afterwards: from how far, how many putts, how a miss was left.</p>`
    }
    ${answer?.rounds.length ? season(answer, settings, act) : ''}
    <ul class="entries">${kept.toReversed().map((each) => row(each, found.get(each.id), act))}</ul>`;
}

/** @param {RoundEntry} entry @param {RoundAnswer | undefined} round @param {RoundsActions} act */
const row = (entry, round, act) => html`<li><button type="button" class="entry" @click=${() => act.open(entry.id)}>
  <span class="entry-what">${round ? `${several(round.putts, 'putt')}, ${gainedWords(round)}` : 'Round'}</span>
  <span
    class="quiet">${[entry.sample ? 'Invented' : '', roundName(entry), entry.competition ? '' : 'practice']
      .filter(Boolean)
      .join(' · ')}</span></button></li>`;

/** @param {NonNullable<State['answers']['rounds']>} answer @param {Settings} settings @param {RoundsActions} act */
function season({ rounds, all, changes, source }, settings, act) {
  const shown = rounds.slice(-MOST_DRAWN);
  return html`<section><h2>${gainedWords({ gained: all.gained / rounds.length })} a round</h2>
    <p class="quiet">${several(rounds.length, 'round')}, ${several(all.finished - all.from_off_the_green, 'hole')}, against
      ${YARDSTICK[settings.against]}; in all ${betweenWords(all)}.</p>
    ${
      shown.length > 1
        ? seasonPicture(
            shown,
            `Gained by round, oldest first, each with its range: ${shown.map((each) => signed(each.gained, 1)).join(', ')}.`,
          )
        : ''
    }
    ${changes.length ? html`<p>${changed(changes, settings)}</p>` : ''}
    ${putted(all, settings, act)}
    ${choice({
      label: 'Against',
      name: 'against',
      value: settings.against,
      options: [
        ['tour', 'tour'],
        ['amateur', 'score 90'],
      ],
      onValue: (against) => act.setAgainst(/** @type {Settings['against']} */ (against)),
    })}
    <details><summary>Where the figures are from</summary><p class="quiet">${source} Ranges hold the truth 19 times in 20.</p>
      </details></section>`;
}

/** @param {RoundAnswer} round @param {Settings} settings @param {RoundsActions} act */
const one = (
  round,
  settings,
  act,
) => html`<p class="big-line"><strong>${several(round.putts, 'putt')}, ${gainedWords(round)}</strong></p>
  <p class="quiet">${number(round.expected_putts, 1)} are expected of ${YARDSTICK[settings.against]} from the same places. Luck
    alone: ${betweenWords(round)}.</p>
  ${round.holes.length ? roundPicture(round.holes) : ''}
  ${putted(round, settings, act)}
  <details><summary>Hole by hole in numbers</summary><p class="quiet">Touch a hole to add slope and read.</p><table><thead><tr>
    <th scope="col">Hole</th><th scope="col">From, ${distanceUnit(settings).unit}</th><th scope="col">Putts</th>
    <th scope="col">Expected</th><th scope="col">Gained</th></tr></thead>
    <tbody>${round.holes.map(
      ({ hole, distance_m, putts, expected_putts, gained }) =>
        html`<tr><th scope="row"><button type="button" class="word" aria-label="Hole ${hole}"
          @click=${() => act.openHole(hole)}>${hole}</button></th><td>${inUnit(distance_m, distanceUnit(settings))}</td>
          <td>${putts}</td><td>${number(expected_putts, 2)}</td><td>${signed(gained, 2)}</td></tr>`,
    )}</tbody></table></details>`;

/** @param {PuttedAnswer} all @param {Settings} settings @param {RoundsActions} act */
function putted(all, settings, act) {
  const bad = worst(all.bands);
  /** @param {number} part @param {number} of @param {number} usual @param {[number, number]} range both shares */
  const share = (part, of, usual, [low, high]) => html`${part} of ${of}; ${number(of * usual, 1)}<br><span
    class="quiet">${number(of * low, 1)} to ${number(of * high, 1)}</span>`;
  return html`${
    bad
      ? html`<div class="follow">
        <p><strong>${bandWords([bad.from_m, bad.to_m], settings)} lost most: ${number(-bad.gained, 1)}
        ${bad.gained_high < 0 ? '' : '(within chance)'}</strong></p>
      <button type="button" class="word" @click=${() => act.follow([bad.from_m, bad.to_m], 'findings')}>What the record knows
        of these</button>
      <button type="button" class="word" @click=${() => act.follow([bad.from_m, bad.to_m], 'practice')}>A session planned from
        it</button></div>`
      : ''
  }
    <table><caption>By length of the first putt, each with its range; after a count what is usual</caption>
      <thead><tr><th scope="col">From</th><th scope="col">Gained</th><th scope="col">One putt</th>
        <th scope="col">Three</th></tr></thead>
    <tbody>${all.bands.map(
      (band) =>
        html`<tr><th scope="row">${bandWords([band.from_m, band.to_m], settings)}</th>
          <td>${signed(band.gained, 1)}<br><span class="quiet">${signed(band.gained_low, 1)} to
          ${signed(band.gained_high, 1)}</span></td>
          <td>${share(band.one_putts, band.holes, band.one_published, [band.one_low, band.one_high])}</td>
          <td>${share(band.three_putts, band.holes, band.three_published, [band.three_low, band.three_high])}</td></tr>`,
    )}</tbody></table>
    <p>${leaveWords(all.leaves)}</p>
    ${leftOut(all) ? html`<p class="quiet">${leftOut(all)}.</p>` : ''}`;
}
