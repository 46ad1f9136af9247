/**
 * The picture, drawn anew only when what it shows has changed.
 * @import {State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, distanceUnit } from '../../format.js';
import { picture } from '../../parts/picture/picture.js';
import { rollBall, stopRoll } from '../../parts/picture/roll.js';
import { apexWords, pictureWords } from './words.js';

/** The putt in hand is not in the picture while an older one's answer stands. @param {State} state */
const hangsOn = ({ read, putt, window, refusal, settings, size, station }) => [
  read ?? putt,
  window,
  refusal,
  settings,
  size,
  station,
];
/** A smaller aim than this is not worth a measure on the picture. */
const SHOWN_M = 0.005;
/** @type {{of: unknown[], drawn: unknown} | undefined} */
let last;

/** @param {State} state @returns {import('../../parts/picture/picture.js').Picture} */
function pictureOf({ read, putt, window, settings, size, station }) {
  // The picture shows the putt that was answered, so that curve and hole always belong together.
  const shown = read?.putt ?? putt;
  const { number, unit } = read ? aim(read.value, settings) : { number: '', unit: '' };
  return {
    size,
    putt: shown,
    read: read?.value,
    off_m: read?.off?.aim_offset_sd_m ?? 0,
    window: window?.value,
    // By what they hold: a drag that comes back to the same putt makes another object of it
    stale: JSON.stringify(window?.putt) !== JSON.stringify(shown),
    station,
    words: {
      aim: read && Math.abs(read.value.aim_offset_m) > SHOWN_M ? `${number}${unit === '°' ? '' : ' '}${unit}` : '',
      apex: read ? apexWords(read.value, settings) : '',
      high: 'high and soft',
      low: 'low and firm',
    },
    unit: settings.distance === 'm' ? distanceUnit(settings) : distanceUnit({ ...settings, distance: 'ft' }),
    alternative: pictureWords(read?.value, shown, window?.value.make_probability, settings),
  };
}

/** @param {State} state @param {ReadActions} act */
export function stage(state, act) {
  const of = hangsOn(state);
  if (!last || of.some((each, i) => each !== last?.of[i])) last = { of, drawn: drawing(state, act) };
  return last.drawn;
}

/** @param {State} state @param {ReadActions} act */
function drawing(state, act) {
  stopRoll();
  const shown = pictureOf(state);
  const { read } = shown;
  const roll = (/** @type {Event} */ event) => {
    const root = /** @type {Element} */ (event.currentTarget).closest('.stage');
    if (root && read) void rollBall(root, { ...shown, read });
  };
  const toKey = (/** @type {Event} */ event) => {
    event.stopPropagation();
    act.open('key');
  };
  return html`<div class="stage ${read && read.aim_offset_m < 0 ? 'breaks-left' : ''}" @click=${roll}>
    ${picture(shown)}
    ${
      read
        ? html`<button type="button" class="roll ${read.aim_offset_m < 0 ? 'roll-left' : ''}"><svg width="12" height="14"
          viewBox="0 0 12 14" aria-hidden="true"><path d="M1 1L11 7L1 13Z"></path></svg>Roll it</button>
    <a href="#watch" class="roll to-watch ${read.aim_offset_m < 0 ? 'roll-left' : ''}"
      @click=${(/** @type {Event} */ event) => event.stopPropagation()}>Watch it</a>`
        : ''
    }
    <button type="button" class="word to-key" @click=${toKey}>Key</button>
  </div>`;
}
