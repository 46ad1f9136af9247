/**
 * @import {Entry, NoteEntry, State, WorthEntry} from '../../types.js'
 * @import {BookActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, aimField, aimWords, dayWords, distanceUnit, fallWords, number, percents, withUnit } from '../../format.js';
import { numberField } from '../../parts/number-field.js';

const MOST_SHOWN = 20;

/** @param {State} state @param {BookActions} act */
export function view(state, act) {
  const { entries, bookPage } = state;
  const all = (entries ?? []).filter(({ gone }) => !gone);
  const places = [...new Set([state.place, ...all.map(({ place }) => place)].filter(Boolean))];
  const place = bookPage.place ?? places[0] ?? '';
  const here = all.filter((entry) => entry.place === place);
  return html`<main class="page book">
    <a class="word" href="#record">Record</a>
    <h1>${place || 'A place’s book'}</h1>
    <p class="quiet">For the evening and for practice: during a round Rule 4.3a lets you use none of it for the line.</p>
    ${bookPage.said ? html`<p class="said" role="status">${bookPage.said}</p>` : ''}
    ${
      entries === null
        ? html`<p class="quiet" role="status">Opening the record</p>`
        : place
          ? pages(state, place, places, here, act)
          : html`<p>Name a place where you log putts or keep notes, and it gets its book.</p>`
    }
  </main>`;
}

/** @param {State} state @param {string} place @param {string[]} places @param {Entry[]} here @param {BookActions} act */
function pages(state, place, places, here, act) {
  const worth = here.flatMap((entry) => (entry.kind === 'worth' ? [entry] : []));
  const open = worth.find(({ id }) => id === state.bookPage.open);
  if (open) return study(open, state, act);
  const notes = here.flatMap((entry) => (entry.kind === 'note' ? [entry] : []));
  return html`${
    places.length > 1
      ? html`<label class="text-field">Place<select
        @change=${(/** @type {Event} */ event) => act.turn(/** @type {HTMLSelectElement} */ (event.target).value)}>${places.map(
          (each) => html`<option .selected=${each === place}>${each}</option>`,
        )}</select></label>`
      : ''
  }
    <section><h2>Putts worth keeping</h2>${keeping(state, place, act)}
      <ul class="entries">${worth.map(
        (entry) =>
          html`<li><button type="button" class="entry" @click=${() => act.open(entry.id)}><span
            class="entry-what">${entry.name || 'Without a name'}</span><span
            class="quiet">${puttWords(entry, state)}</span></button></li>`,
      )}</ul></section>
    <section><h2>Speeds</h2>${speeds(notes)}</section>
    <section><h2>Notes</h2>${notes
      .filter(({ text }) => text)
      .slice(0, MOST_SHOWN)
      .map(({ at, text }) => html`<p>${text} <span class="quiet">${dayWords(at)}</span></p>`)}</section>`;
}

/** @param {WorthEntry} entry @param {State} state */
const puttWords = ({ distance_m, slope_percent, fall_deg, tilt_sd_percent, tilt_source }, { settings }) =>
  [
    withUnit(distance_m, distanceUnit(settings)),
    slope_percent !== undefined &&
      `${percents(slope_percent)}${tilt_sd_percent ? ` give or take ${percents(tilt_sd_percent)} (${tilt_source})` : ''}`,
    fall_deg !== undefined && fallWords(fall_deg),
  ]
    .filter(Boolean)
    .join(', ');

/** @param {State} state @param {string} place @param {BookActions} act */
function keeping({ putt, settings }, place, act) {
  const submit = (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const form = /** @type {HTMLFormElement} */ (event.target);
    const name = /** @type {HTMLInputElement} */ (form.elements.namedItem('worth-name'));
    void act.keep(name.value, place).then((kept) => kept && form.reset());
  };
  return html`<form class="worth" @submit=${submit}>
    <label class="text-field">Name of the putt in hand, ${withUnit(putt.distance_m, distanceUnit(settings))}<input
      name="worth-name" maxlength="200" required autocomplete="off" placeholder="9, back left"></label>
    <button type="submit" class="word">Keep it</button></form>`;
}

/** @param {NoteEntry[]} notes */
function speeds(notes) {
  const told = notes.filter(({ stimp_ft }) => stimp_ft !== undefined);
  if (!told.length) return html`<p class="quiet">None yet: Green measures them.</p>`;
  return told
    .slice(0, MOST_SHOWN)
    .map(
      ({ at, stimp_ft = 0, stimp_sd_ft }) =>
        html`<p>${number(stimp_ft, 1)} ft${
          stimp_sd_ft ? `, give or take ${number(Math.max(0.1, stimp_sd_ft), 1)}` : ''
        } <span class="quiet">${dayWords(at)}</span></p>`,
    );
}

/** The break is hidden until it is guessed. @param {WorthEntry} entry @param {State} state @param {BookActions} act */
function study(entry, state, act) {
  const { settings, bookPage } = state;
  const { seen, guess } = bookPage;
  const { unit, deg } = aimField(settings, entry.distance_m);
  const guessed = deg(guess);
  const shown = seen && aim(seen, settings);
  const side = seen && aimWords(seen);
  return html`<section><h2>${entry.name}</h2><p>${puttWords(entry, state)}, at ${number(entry.stimp_ft, 1)} ft</p>
    ${entry.text ? html`<p>${entry.text}</p>` : ''}
    ${entry.picture ? html`<img class="entry-picture" src=${entry.picture} alt="Photograph of ${entry.name}">` : ''}
    <div class="fields">${numberField({
      name: 'book-guess',
      label: 'Your aim',
      hint: 'Left of the cup’s centre; − to the right.',
      unit,
      value: guess,
      message: guess && Number.isNaN(guessed) ? `“${guess}” is no aim.` : undefined,
      onText: act.guess,
    })}</div>
    ${
      seen && shown
        ? html`<p class="say" role="status">${side === 'dead centre' ? side : `${shown.number} ${shown.unit} ${side}`}${
            Number.isNaN(guessed)
              ? ''
              : `; yours was ${number(Math.abs(guessed - seen.aim_deg), 1)}° ${
                  guessed > seen.aim_deg ? 'farther left' : 'farther right'
                }`
          }</p>`
        : html`<button type="button" class="holed" @click=${() => act.see(entry.id)}>See it</button>`
    }
    <div class="gives"><button type="button" class="word" @click=${() => act.tryIt(entry.id)}>Try it at today’s
      ${number(settings.stimp_ft, 1)} ft</button>
      ${
        entry.picture
          ? html`<button type="button" class="word" @click=${() => act.hide(entry.id)}>Delete the photograph</button>`
          : html`<label class="word chooses">Add a photograph<input type="file" accept="image/*" class="hidden-input"
            @change=${(/** @type {Event} */ event) => {
              const [file] = /** @type {HTMLInputElement} */ (event.target).files ?? [];
              if (file) void act.show(entry.id, file);
            }}></label>`
      }
      <button type="button" class="word" @click=${() => act.remove(entry.id)}>Delete</button> <button type="button"
        class="word" @click=${() => act.open('')}>Back</button></div></section>`;
}
