/**
 * The watch's screen: before, while it is marked, and hands-free.
 * @import {State, WatchPage, WatchedPutt} from '../../types.js'
 * @import {WatchActions} from './actions.js'
 */
import { html } from 'lit-html';
// an object is set anew with every drawing, and the video would start over: black for some frames
import { live as unlessSet } from 'lit-html/directives/live.js';
import { distanceUnit, inUnit, number, smallUnit, withUnit } from '../../format.js';
import { blockRow } from '../../parts/watched-block.js';
import { whoseAim } from '../../parts/whose-aim.js';
import { BUDGET, taken } from '../../records/pictures.js';
import { field } from './field.js';
import { lens, measuring } from './lens.js';
import { GLASS_PX } from './overlay.js';

/** @type {Record<WatchPage['phase'], string>} */
const SAYS = {
  off: '',
  opening: 'The camera is starting',
  marking: '',
  settling: 'Waiting for a still picture',
  empty: 'No ball lies at the mark. Lay one there',
  ready: 'Ready. Putt when you like',
  rolling: 'It rolls',
  asking: '',
  moved: 'The phone was moved. Touch the ball, to mark again',
  dark: 'Too dark to see a ball. Make light, or wait for it',
};

/** @param {WatchPage} page */
function words({ phase, width, attitude, ball, hole, share, measuring, end, other }) {
  if (share) return `Working it out, ${Math.round(100 * share)} %`;
  if (phase !== 'marking') return SAYS[phase];
  if (!width) return 'The camera is starting';
  if (measuring) return !end ? 'Touch one end of it' : other ? 'Set both marks under the magnifier' : 'Touch its other end';
  if (!attitude) return 'This phone does not tell how it is held, so what it sees cannot be measured';
  if (!ball) return 'Touch the ball';
  return hole ? 'Watching' : 'Touch the middle of the hole';
}

/** @param {State} state @param {WatchActions} act */
export function view(state, act) {
  const { watchPage, putt, settings, practice } = state;
  const { stream, problem, slow, told } = watchPage;
  return html`<main class="page watch-page" tabindex="-1">
    <h1>Watch <span class="quiet">${withUnit(putt.distance_m, distanceUnit(settings))}</span></h1>
    ${problem ? html`<p class="problem" role="alert">${problem}</p>` : ''}
    ${
      slow
        ? html`<p class="problem" role="status">Fewer than 15 pictures a second come: what is seen is less sure. Close other
          apps.</p>`
        : ''
    }
    ${watchPage.last ? html`<p class="watch-words" role="status">${watchPage.last.value.words}</p>` : ''}
    ${practice.run ? html`${inSession(practice.run)}${blockRow(state)}` : ''}
    ${stream ? watching(state, act) : before(state, act)}
    ${watchPage.last ? seen(state, watchPage.last, act) : ''}
    <p class="told" role="status">${told}</p>
  </main>`;
}

/** @param {NonNullable<State['practice']['run']>} run */
const inSession = ({ good, bad, paused }) =>
  html`<p class="quiet">${paused ? 'The session stands still' : `In the session: ${good} good, ${bad} not`}. <a class="word"
    href="#practice">Back to it</a></p>`;

/** @param {State} state @param {WatchActions} act */
function before(state, act) {
  return html`<p>Stand the phone behind the ball, so that it cannot move and has ball, hole and the way between them in its
    picture. The higher and the nearer it stands, the more it sees.</p>
    <div class="fields two">${field(state, 'film_m', act)}${field(state, 'film_mm', act)}</div>
    <button type="button" class="watch-go" @click=${act.open}>Open the camera</button>
    <p class="quiet">Frames stay in memory and are gone with the next one. Film nobody without their leave. For practice: in a
      round Rule 4.3a does not allow it.</p>`;
}

/** @param {State} state @param {WatchActions} act */
function watching(state, act) {
  const { watchPage } = state;
  const { stream, width, height, ball, chosen } = watchPage;
  const sized = (/** @type {Event} */ event) => act.sized(/** @type {HTMLVideoElement} */ (event.target));
  const touch = (/** @type {MouseEvent} */ event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    act.touch(((event.clientX - box.left) / box.width) * width, ((event.clientY - box.top) / box.height) * height);
  };
  return html`<p class="say watch-says" role="status">${words(watchPage)}</p>
    <div class="film" @click=${touch}><video autoplay playsinline .muted=${true} .srcObject=${unlessSet(stream)}
      @loadedmetadata=${sized} @resize=${sized} aria-label="The camera’s moving picture"></video>
      <canvas class="over-film" width=${width || 720} height=${height || 1280} aria-hidden="true"></canvas></div>
    ${chosen && watchPage[chosen] ? magnifier(watchPage, act) : ''}
    <div class="does">
      ${MARKS.map(([mark, words]) =>
        watchPage[mark]
          ? html`<button type="button" class="pick" aria-pressed=${chosen === mark}
            @click=${() => act.choose(mark)}>${words}</button>`
          : '',
      )}
      ${
        MARKS.some(([mark]) => watchPage[mark])
          ? html`<button type="button" class="word" @click=${act.again}>Mark again</button>`
          : ''
      }
    </div>
    ${watchPage.measuring ? measuring(state, act) : ''}
    ${width && !ball && !watchPage.measuring ? lens(state, act) : ''}
    ${watchPage.measuring ? '' : chosenWays(state, act)}
    <div class="does"><button type="button" class="word" @click=${act.close}>Close the camera</button></div>`;
}

/** What may be as one likes it. @param {State} state @param {WatchActions} act */
function chosenWays({ watchPage: { silent, pictures }, entries, logging }, act) {
  return html`${whoseAim({ label: 'Whose aim do you play', name: 'read', value: logging.read, onWhose: act.play })}
    <div class="does">
      <button type="button" class="pick" aria-pressed=${!silent} @click=${() => act.hush(!silent)}>Voice</button>
      <button type="button" class="pick" aria-pressed=${pictures} @click=${() => act.picture(!pictures)}>Keep pictures</button>
    </div>
    ${
      pictures
        ? html`<p class="quiet">A small picture is kept with each putt: ${number(taken(entries ?? []) / 1e6, 2)} of
          ${number(BUDGET / 1e6, 0)} MB taken. When that is full the oldest pictures go; their putts stay.</p>`
        : ''
    }`;
}

/** @type {['ball' | 'hole' | 'end' | 'other', string][]} */
const MARKS = [
  ['ball', 'Ball’s mark'],
  ['hole', 'Hole’s mark'],
  ['end', 'One end'],
  ['other', 'Other end'],
];
const NAMES = { ball: 'ball', hole: 'hole', end: 'first end', other: 'other end' };

/** @type {[string, string, number, number][]} */
const NUDGES = [
  ['←', 'left', -0.5, 0],
  ['→', 'right', 0.5, 0],
  ['↑', 'up', 0, -0.5],
  ['↓', 'down', 0, 0.5],
];

/** @param {WatchPage} page @param {WatchActions} act */
function magnifier({ chosen }, act) {
  const of = chosen ? NAMES[chosen] : '';
  return html`<div class="magnifier"><canvas class="glass" width=${GLASS_PX} height=${GLASS_PX} role="img"
    aria-label="The mark of the ${of}, magnified"></canvas>
    <div class="nudges" role="group" aria-label="Set the mark of the ${of}">${NUDGES.map(
      ([arrow, way, du, dv]) =>
        html`<button type="button" class="nudge" aria-label="Half a pixel ${way}"
          @click=${() => act.nudge(du, dv)}>${arrow}</button>`,
    )}</div></div>`;
}

/** @param {number | null} value @param {number | null} sd @param {number} digits @param {string} unit */
const measured = (value, sd, digits, unit) =>
  value === null || sd === null
    ? 'not seen'
    : html`${number(value, digits)} <small>± ${number(2 * sd, digits)} ${unit}</small>`;

/** @param {State} state @param {WatchedPutt} last @param {WatchActions} act */
function seen({ settings, watchPage }, { value, aim_deg, kept }, act) {
  const start = value.start_deg === null ? null : value.start_deg - aim_deg;
  const small = smallUnit(settings);
  const { stop } = value;
  return html`<section class="seen-putt" aria-label="The last putt">
    <dl>
      <div><dt>Start, left of the line meant</dt><dd>${measured(start, value.start_sd_deg, 1, '°')}</dd></div>
      <div><dt>Launch</dt><dd>${measured(value.launch_mps, value.launch_sd_mps, 2, 'm/s')}</dd></div>
      <div><dt>Stop, where it is off by</dt><dd>${
        stop
          ? html`± ${inUnit(2 * stop.sd_m, small)}
        <small>${small.unit}</small>`
          : '–'
      }</dd></div>
      <div><dt>Green here</dt><dd>${
        value.stimp_ft === null ? 'not seen' : measured(value.stimp_ft, value.stimp_sd_ft, 1, 'ft')
      }</dd></div>
    </dl>
    ${
      kept
        ? html`<p class="quiet">Kept in the notes. ${watchPage.count} seen here.</p>`
        : html`<p>The end was not seen. Say it, and the putt is kept.</p>
      <div class="does"><button type="button" class="watch-go" @click=${() => act.came('holed')}>Holed</button><button
        type="button" class="watch-go" @click=${() => act.came('missed')}>Missed</button></div>`
    }
    ${
      value.deceleration_mps2 === null
        ? ''
        : html`<div class="does"><span class="quiet">Green’s speed:</span>
      <button type="button" class="word" @click=${() => act.asRoll('out')}>a roll out</button><button type="button" class="word"
        @click=${() => act.asRoll('back')}>a roll back</button></div>`
    }
    ${
      value.path_px.length
        ? html`<button type="button" class="word" @click=${act.give}>Save or share the
      picture</button>`
        : ''
    }
  </section>`;
}
