/**
 * Balls in real time, one after the other: the soft high line, the chosen one, the firm low one, and the chosen one where it
 * misses the hole. They differ in pace as much as in place. Only the drawn ball moves, and rolls on where the view is drawn
 * anew.
 * @import {Answers, PathPoint} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { createBallSound } from '../../device/ball-sound.js';
import { ballAt } from '../../parts/picture/frame.js';

const DROP_S = 0.16;
const REST_S = 0.9;

const heard = createBallSound();

/** @param {PathPoint[] | null} path */
const end = (path) => path?.at(-1)?.[0] ?? 0;

/**
 * Its line, until when it rolls, and whether it drops then.
 * @type {[string, (seen: Answers['view']) => PathPoint[] | null, (seen: Answers['view']) => number, boolean][]}
 */
const BALLS = [
  ['High and soft', ({ high }) => high, ({ high }) => end(high), true],
  ['Chosen', ({ chosen }) => chosen, ({ time_s }) => time_s, true],
  ['Low and firm', ({ low }) => low, ({ low }) => end(low), true],
  [
    'Chosen, missed',
    ({ chosen, time_s }) => (end(chosen) - time_s > DROP_S ? chosen : null),
    ({ chosen }) => end(chosen),
    false,
  ],
];

/** What rolls now. @type {{seen: Answers['view'], place: () => void, stop: () => void} | null} */
let rolling = null;

/** The view was drawn anew. @param {Answers['view']} seen */
export function rollOn(seen) {
  if (!rolling || rolling.seen === seen) return;
  rolling.seen = seen;
  rolling.place();
}

/** @param {Element} root @param {Answers['view']} seen @param {boolean} aloud */
export async function rollBalls(root, seen, aloud) {
  rolling?.stop();
  const ball = root.querySelector('[data-rolls]');
  const name = root.querySelector('.rolling-name');
  if (!ball || !name) return;
  if (aloud) heard.wake();
  let over = false;
  const goesOn = () => !over && ball.isConnected;
  /** @param {readonly [number, number]} place @param {number} radius */
  const put = ([u, v], radius) => {
    ball.setAttribute('cx', String(u));
    ball.setAttribute('cy', String(v - radius));
    ball.setAttribute('r', String(radius));
  };
  const mine = (rolling = {
    seen,
    place: () => {},
    stop() {
      over = true;
      rolling = null;
      name.textContent = '';
      const [, u, v, radius] = pick(mine.seen.chosen, 0);
      put([u, v], radius);
    },
  });
  for (const [words, lineOf, untilOf, drops] of BALLS) {
    const until_s = untilOf(mine.seen);
    if (!goesOn() || !lineOf(mine.seen)) continue;
    name.textContent = `${words}: ${until_s.toFixed(1)} s`;
    let now_s = 0;
    mine.place = () => {
      const path = lineOf(mine.seen);
      if (!path) return;
      const at = Math.min(now_s, until_s);
      const radii = /** @type {PathPoint[]} */ (path.map(([t, , , radius]) => [t, radius, 0, 0]));
      put(ballAt(path, at), ballAt(radii, at)[0] * (drops ? 1 - Math.max(0, Math.min(1, (now_s - until_s) / DROP_S)) : 1));
    };
    const { time_s, chosen } = mine.seen;
    const sound = () => aloud && goesOn() && (drops ? heard.drop() : heard.past(end(chosen) - time_s));
    await once(
      (t) => {
        now_s = t;
        if (goesOn()) mine.place();
        return goesOn();
      },
      until_s,
      drops ? until_s : time_s,
      sound,
    );
  }
  if (!over) mine.stop();
}

/**
 * @param {(t_s: number) => boolean} put false where it is over @param {number} until_s @param {number} sounds_s
 * @param {() => void} sound @returns {Promise<void>}
 */
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
