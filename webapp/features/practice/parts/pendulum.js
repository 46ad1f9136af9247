/**
 * The putter's head between back and through, where the engine's curve has it at the moment that is heard.
 * @import {Store} from '../../../store.js'
 * @import {Sound} from '../../../device/sound.js'
 * @import {Tempo} from '../../../types.js'
 */
import { stretch } from '../../../parts/stretch.js';
import { svg } from 'lit-html';

const CENTRE = { x: 170, y: -170 };
const LENGTH = 300;
const SWING = 0.44; // rad to either side, for the picture
const BUZZ_MS = 25;
const STILL = matchMedia('(prefers-reduced-motion: reduce)');

/** @param {number} position -1 at the top, 0 at the ball, 1 at the finish */
const headAt = (position) => ({
  x: CENTRE.x + LENGTH * Math.sin(position * SWING),
  y: CENTRE.y + LENGTH * Math.cos(position * SWING),
});

/** @param {Tempo} tempo @param {number} t seconds into the cycle */
export function positionAt({ curve }, t) {
  const { from, to, share } = stretch(curve, t);
  return from[1] + Math.max(0, Math.min(1, share)) * (to[1] - from[1]);
}

/** Which word belongs to a moment of the cycle. @param {Tempo} tempo @param {number} t */
function wordAt({ back_s, forward_s }, t) {
  if (t < back_s) return 'back';
  return t < back_s + 2 * forward_s ? 'through' : 'rest';
}

/** Draws what is heard, frame by frame, as long as there is sound. @param {Store} store @param {Sound} sound */
export function followHeard(store, sound) {
  let buzzed = -1;

  function frame() {
    const { answers, practice } = store.state;
    const { tempo } = answers;
    const at = sound.heard(practice.tempo.delay_s);
    if (at === null || !tempo) return draw(0, '');
    requestAnimationFrame(frame);
    const since = at - tempo.lead_s;
    if (since < 0) return draw(0, 'count');
    const cycle = Math.floor(since / tempo.cycle_s);
    const t = since - cycle * tempo.cycle_s;
    draw(STILL.matches ? 0 : positionAt(tempo, t), wordAt(tempo, t));
    if (cycle !== buzzed && t >= tempo.back_s + tempo.forward_s) {
      buzzed = cycle;
      if (practice.tempo.vibrate) navigator.vibrate?.(BUZZ_MS);
    }
  }

  return () => {
    buzzed = -1;
    requestAnimationFrame(frame);
  };
}

/** Straight to the drawing: sixty times a second is no matter for the store. @param {number} position @param {string} word */
function draw(position, word) {
  const picture = document.querySelector('.pendulum');
  if (!picture) return;
  const { x, y } = headAt(position);
  picture
    .querySelector('.pendulum-head')
    ?.setAttribute(
      'transform',
      `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${((-position * SWING * 180) / Math.PI).toFixed(1)})`,
    );
  picture.setAttribute('data-word', word);
}

const [top, finish] = [headAt(-1), headAt(1)];

export const pendulum = () => svg`<svg class="pendulum" viewBox="0 0 340 170" role="img"
    aria-label="The putter’s head swings back and through in time with the sound" data-word="">
  <path class="pendulum-way" d="M${top.x} ${top.y}A${LENGTH} ${LENGTH} 0 0 0 ${finish.x} ${finish.y}"></path>
  <line class="pendulum-way" x1="170" y1="138" x2="170" y2="152"></line>
  <text class="pendulum-word" data-is="back" x=${top.x + 6} y="152">back</text><text class="pendulum-word" data-is="through"
    x=${finish.x - 6} y="152">through</text>
  <g class="pendulum-head" transform="translate(170 130)"><path d="M-5 -100V-13"></path><rect x="-24" y="-13" width="48"
    height="20" rx="2"></rect></g>
</svg>`;
