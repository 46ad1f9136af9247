/**
 * Three balls in real time, one after the other: the soft high line, the chosen one, the firm low one. They differ in pace
 * as much as in place. Only the drawn ball moves; the next drawing puts it back.
 * @import {PathPoint, Seen} from '../../types.js'
 */
import { createDrop } from '../../device/drop.js';
import { ballAt } from '../../parts/picture/frame.js';

const DROP_S = 0.16;
const REST_S = 0.9;

const heard = createDrop();
let putBack = () => {};

/** @param {Element} root @param {Seen['view']} seen @param {boolean} aloud */
export async function rollThree(root, seen, aloud) {
  putBack();
  const ball = root.querySelector('[data-rolls]');
  const name = root.querySelector('.rolling-name');
  if (!ball || !name) return;
  if (aloud) heard.wake();
  const start = seen.chosen[0];
  let over = false;
  /** @param {number[]} place @param {number} radius */
  const put = ([u, v], radius) => {
    ball.setAttribute('cx', String(u));
    ball.setAttribute('cy', String(v - radius));
    ball.setAttribute('r', String(radius));
  };
  putBack = () => {
    over = true;
    name.textContent = '';
    put([start[1], start[2]], start[3]);
  };
  const back = putBack;
  /** @type {[string, PathPoint[] | null, number][]} */
  const balls = [
    ['High and soft', seen.high, seen.high?.at(-1)?.[0] ?? 0],
    ['Chosen', seen.chosen, seen.time_s],
    ['Low and firm', seen.low, seen.low?.at(-1)?.[0] ?? 0],
  ];
  for (const [words, path, holed_s] of balls) {
    if (over || !path) continue;
    name.textContent = `${words}: ${holed_s.toFixed(1)} s`;
    const radii = /** @type {PathPoint[]} */ (path.map(([t, , , radius]) => [t, radius, 0, 0]));
    await once((t) => {
      const at = Math.min(t, holed_s);
      put(ballAt(path, at), ballAt(radii, at)[0] * (1 - Math.max(0, Math.min(1, (t - holed_s) / DROP_S))));
      return !over;
    }, holed_s, () => aloud && !over && heard.drop());
  }
  if (!over) back();
}

/** @param {(t_s: number) => boolean} put false where it is over @param {number} holed_s @param {() => void} drops @returns {Promise<void>} */
const once = (put, holed_s, drops) =>
  new Promise((resolve) => {
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      put(holed_s);
      drops();
      setTimeout(resolve, REST_S * 1000);
      return;
    }
    let start = NaN;
    let dropped = false;
    const step = (/** @type {number} */ now) => {
      if (Number.isNaN(start)) start = now;
      const t = (now - start) / 1000;
      if (t >= holed_s && !dropped) {
        dropped = true;
        drops();
      }
      if (put(t) && t < holed_s + DROP_S + REST_S) requestAnimationFrame(step);
      else resolve();
    };
    requestAnimationFrame(step);
  });
