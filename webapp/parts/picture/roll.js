/**
 * The ball rolling in real time. It moves the drawn balls alone, which the next drawing puts back.
 * @import {Read} from '../../types.js'
 * @import {Picture} from './picture.js'
 */
import { BALL_M } from '../../format.js';
import { ballAt } from './frame.js';
import { layout } from './picture.js';

const DROP_S = 0.16;
const REST_S = 1.1;
/** The ball falls from sight: seen from above it shrinks a little and is gone. */
const SUNK = 0.55;

let putBack = () => {};
/** Ends the roll and puts the ball back, before a new read is drawn. */
export const stopRoll = () => putBack();

/**
 * @param {ParentNode} root @param {Picture & {read: Read}} picture
 * @returns {Promise<void>} when the ball lies at its start again
 */
export function rollBall(root, picture) {
  const main = root.querySelector('[data-rolling]');
  const close = root.querySelector('[data-ball]');
  if (!main) return Promise.resolve();
  putBack();
  const { read } = picture;
  const { view, magnified } = layout(picture);
  const ball = main.querySelector('.ball');
  const radius = (/** @type {number} */ scale, /** @type {number} */ dropped) =>
    String(((scale * BALL_M) / 2) * (1 - SUNK * dropped));

  /** @param {number} t_s @param {number} dropped 0 on the green, 1 at the bottom */
  const put = (t_s, dropped) => {
    const [x, y] = ballAt(read.path, Math.min(t_s, read.time_s));
    main.setAttribute('transform', `translate(${view.px(x, y).join(' ')})`);
    ball?.setAttribute('r', radius(view.scale, dropped));
    if (!magnified || !close) return;
    const [cx, cy] = magnified.frame.px(x, y);
    close.setAttribute('cx', String(cx));
    close.setAttribute('cy', String(cy));
    close.setAttribute('r', radius(magnified.frame.scale, dropped));
  };
  return new Promise((resolve) => {
    let over = false;
    putBack = () => {
      if (over) return;
      over = true;
      put(0, 0);
      resolve();
    };
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      put(read.time_s, 1);
      setTimeout(putBack, REST_S * 1000);
      return;
    }
    let start = NaN;
    const back = putBack;
    const step = (/** @type {number} */ now) => {
      if (over) return;
      if (Number.isNaN(start)) start = now;
      const t = (now - start) / 1000;
      if (t > read.time_s + DROP_S + REST_S) return back();
      put(t, Math.max(0, Math.min(1, (t - read.time_s) / DROP_S)));
      requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  });
}
