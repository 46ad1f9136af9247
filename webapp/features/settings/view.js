/**
 * @import {State, Settings} from '../../types.js'
 * @import {SettingsActions} from './index.js'
 */
import { html } from 'lit-html';
import { inUnit, number, unitOf } from '../../format.js';
import { choice } from '../../parts/choice.js';
import { EYE, sightedField } from '../../parts/eye-height.js';
import { offlineWords } from '../../offline-words.js';
import { numberField } from '../../parts/number-field.js';

/** @type {[keyof Settings & string, string, [string, string][]][]} */
const CHOICES = [
  [
    'distance',
    'Distance in',
    [
      ['ft', 'feet'],
      ['m', 'metres'],
      ['paces', 'paces'],
    ],
  ],
  [
    'aim',
    'Aim in',
    [
      ['in', 'inches'],
      ['cm', 'centimetres'],
      ['cups', 'cups'],
      ['balls', 'balls'],
      ['degrees', 'degrees'],
    ],
  ],
  [
    'handed',
    'Right- or left-handed',
    [
      ['right', 'right'],
      ['left', 'left'],
    ],
  ],
  [
    'theme',
    'Screen',
    [
      ['system', 'as the phone'],
      ['light', 'light'],
      ['dark', 'dark'],
    ],
  ],
];

/** @type {['pace_m' | 'stimp_ft' | 'past_m', string, string][]} */
const NUMBERS = [
  ['pace_m', 'Your pace', 'Walk ten paces, measure, divide by ten.'],
  ['stimp_ft', 'Usual green speed', 'On the Stimpmeter. Also sets the putt in hand.'],
  ['past_m', 'Usual pace past the hole', 'How far a miss should run on. Also sets the putt in hand.'],
];

/** @type {[keyof typeof EYE, string][]} */
const EYES = [
  ['standing_m', 'Over the green, as you hold the phone to look through it.'],
  ['crouching_m', ''],
  ['back_m', 'From where you look along the line.'],
];

/** @param {State} state @param {SettingsActions} act */
export function view(state, act) {
  const { settings, problem } = state;
  return html`<main class="page">
    <h1>Settings</h1>
    ${CHOICES.map(([name, label, options]) =>
      choice({
        label,
        name,
        value: String(settings[name]),
        options,
        onValue: (value) => act.choose(name, value),
      }),
    )}
    <p class="quiet">The aim is measured from the cup’s centre.</p>
    <div class="fields">${NUMBERS.map(([name, label, hint]) => {
      const unit = unitOf(name, settings);
      const mine = problem?.field === name ? problem : null;
      return numberField({
        name,
        label,
        hint,
        unit: unit.unit,
        value: mine?.text ?? inUnit(settings[name], unit),
        message: mine?.message,
        onText: (text) => act.enter(name, label, text),
      });
    })}${EYES.map(([name, hint]) =>
      sightedField(state, name, { ...EYE[name], hint }, (text) => act.enterEye(name, text)),
    )}</div>
    ${here(state, act)}
    <a class="word" href="#about">About Borrowline</a>
  </main>`;
}

const STAYS = 'The browser keeps it until you delete it.';
const MAY_GO = 'The browser may clear it when the phone runs short of room. Export the record now and then.';

/** What is on this phone, and whether it stays. @param {State} state @param {SettingsActions} act */
function here({ offline, stays }, act) {
  const room =
    offline.kind === 'whole' && offline.bytes ? ` It takes ${number(offline.bytes / 1e6, 0)} MB with what you keep.` : '';
  return html`<section aria-label="On this phone"><h2>On this phone</h2>
    <p role="status">${offlineWords(offline)}${room}</p>
    ${stays === null ? '' : html`<p>${stays ? STAYS : MAY_GO}</p>`}
    ${
      stays === false
        ? html`<button type="button" class="word" @click=${act.askToStay}>Ask the browser to keep it</button>`
        : ''
    }
  </section>`;
}
