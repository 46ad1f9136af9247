/**
 * Balls in real time, one after the other: the soft high line, the chosen one, the firm low one, and the chosen one where it
 * misses the hole. They differ in pace as much as in place. Only the drawn ball moves; the next drawing puts it back.
 * @import {PathPoint, Seen} from '../../types.js'
 */
import { createBallSound } from '../../device/ball-sound.js';
import { ballAt } from '../../parts/picture/frame.js';

const DROP_S = 0.16;
const REST_S = 0.9;

const heard = createBallSound();
let putBack = () => {};

/** @param {Element} root @param {Seen['view']} seen @param {boolean} aloud */
export async function rollBalls(root, seen, aloud) {
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
  const end_s = seen.chosen.at(-1)?.[0] ?? 0;
  /** Until when each rolls, and whether it drops then. @type {[string, PathPoint[] | null, number, boolean][]} */
  const balls = [
    ['High and soft', seen.high, seen.high?.at(-1)?.[0] ?? 0, true],
    ['Chosen', seen.chosen, seen.time_s, true],
    ['Low and firm', seen.low, seen.low?.at(-1)?.[0] ?? 0, true],
    ['Chosen, missed', end_s - seen.time_s > DROP_S ? seen.chosen : null, end_s, false],
  ];
  for (const [words, path, until_s, drops] of balls) {
    if (over || !path) continue;
    name.textContent = `${words}: ${until_s.toFixed(1)} s`;
    const radii = /** @type {PathPoint[]} */ (path.map(([t, , , radius]) => [t, radius, 0, 0]));
    const sound = () => aloud && !over && (drops ? heard.drop() : heard.past(end_s - seen.time_s));
    await once((t) => {
      const at = Math.min(t, until_s);
      put(ballAt(path, at), ballAt(radii, at)[0] * (drops ? 1 - Math.max(0, Math.min(1, (t - until_s) / DROP_S)) : 1));
      return !over;
    }, until_s, drops ? until_s : seen.time_s, sound);
  }
  if (!over) back();
}

/** @param {(t_s: number) => boolean} put false where it is over @param {number} until_s @param {number} sounds_s @param {() => void} sound @returns {Promise<void>} */
const once = (put, until_s, sounds_s, sound) =>
  new Promise((resolve) => {
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) {
      put(until_s);
      sound();
      setTimeout(resolve, REST_S * 1000);
      return;
    }
    let start = NaN;
    let heardIt = false;
    const step = (/** @type {number} */ now) => {
      if (Number.isNaN(start)) start = now;
      const t = (now - start) / 1000;
      if (t >= sounds_s && !heardIt) {
        heardIt = true;
        sound();
      }
      if (put(t) && t < until_s + DROP_S + REST_S) requestAnimationFrame(step);
      else resolve();
    };
    requestAnimationFrame(step);
  });
