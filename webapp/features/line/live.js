/**
 * The line over the moving picture: it stays on the green while the phone turns, as long as its holder stands still.
 * @import {Live, State} from '../../types.js'
 * @import {LineActions} from './actions.js'
 */
import { refusalWords } from '../../refusal.js';
import { html } from 'lit-html';
// an object is set anew with every drawing, and the video would start over: black for some frames
import { live as unlessSet } from 'lit-html/directives/live.js';
import { against, doubts } from './doubts.js';
import { lineField } from './line-field.js';
import { cameraHeight } from './camera-height.js';
import { noPutt } from './no-putt.js';

/** @param {Live} live @param {boolean} measuring */
function words({ width, attitude, ball, hole }, measuring) {
  if (!width) return 'The camera is starting';
  if (measuring) return 'Have both ends of it in the picture, then take it';
  if (!attitude)
    return 'This phone does not tell how it is turned, so the line cannot follow. Take the picture and mark it there';
  if (!ball) return 'Stand still. Touch the ball, where it meets the grass';
  return hole ? 'Stand still, or mark again' : 'Touch the middle of the hole';
}

/** @param {State} state @param {Live} live @param {LineActions} act */
export function moving(state, live, act) {
  const {
    linePage: { measuring },
    answers: { marked },
    refusals,
  } = state;
  const sized = (/** @type {Event} */ event) => {
    const { videoWidth, videoHeight } = /** @type {HTMLVideoElement} */ (event.target);
    if (videoWidth && (videoWidth !== live.width || videoHeight !== live.height)) act.sizeLive(videoWidth, videoHeight);
  };
  const touch = (/** @type {MouseEvent} */ event) => {
    const box = /** @type {Element} */ (event.currentTarget).getBoundingClientRect();
    if (!measuring) act.markLive([(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height]);
  };
  const take = () => {
    const video = /** @type {HTMLVideoElement | null} */ (document.querySelector('.photo video'));
    if (video) act.takeLive(video);
  };
  const told = live.hole && !refusals.follow ? marked : undefined;
  return html`${measuring ? '' : noPutt(state)}<div class="guide"><p class="say"
    role="status">${words(live, measuring)}</p>${told ? doubts(told, state.settings) : ''}</div>
    <div class="photo moving" @click=${touch}><video autoplay playsinline .muted=${true} .srcObject=${unlessSet(live.stream)}
      @loadedmetadata=${sized} @resize=${sized} aria-label="The camera’s moving picture"></video>
      <canvas class="over-video" width=${live.width || 900} height=${live.height || 1200} aria-hidden="true"></canvas></div>
    ${
      live.hole && refusals.follow
        ? html`<p class="problem" role="alert">It cannot be drawn so:
      ${refusalWords(refusals.follow, state.settings)}</p>`
        : ''
    }
    <button type="button" class="line-go" @click=${take}>Take this picture</button>
    ${told ? against(told) : ''}
    <div class="does">${
      live.ball
        ? html`<button type="button" class="word"
      @click=${act.liveAgain}>Mark again</button>`
        : ''
    }<button type="button" class="word"
        @click=${act.closeLive}>Close the camera</button></div>
    ${
      measuring
        ? ''
        : html`${cameraHeight(state, act)}<div
      class="fields two">${lineField(
        state,
        act,
        state.sighted.eye === 'standing' ? 'standing_m' : 'crouching_m',
      )}${lineField(state, act, 'live_mm')}</div>`
    }`;
}
