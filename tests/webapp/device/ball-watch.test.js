import assert from 'node:assert/strict';
import test from 'node:test';
import { ballNear, findBall, holeNear, partOf } from '../../../webapp/device/ball-finder.js';
import { createBallWatch } from '../../../webapp/device/ball-watch.js';

const [WIDTH, HEIGHT] = [360, 640];

/** Noise that is alike at every run. */
function chance(seed) {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

const grass = (() => {
  const next = chance(7);
  return Float32Array.from({ length: (WIDTH + 40) * (HEIGHT + 40) }, () => 90 + 30 * (next() - 0.5));
})();

/** A frame: grass, with things on it, each { u, v, width, light }, edges soft; @param {object[]} things */
function drawn(things = [], { shift = 0, lit = 1, seed = 1 } = {}) {
  const next = chance(seed);
  const light = new Uint8Array(WIDTH * HEIGHT);
  const noise = Float32Array.from({ length: 1009 }, () => 6 * (next() - 0.5));
  for (let y = 0, i = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++, i++) light[i] = lit * grass[(y + 20) * (WIDTH + 40) + x + 20 + shift] + noise[i % 1009];
  for (const { u, v, width, high = width, light: bright } of things)
    for (let y = Math.max(0, Math.floor(v - high)); y < Math.min(HEIGHT, v + high); y++)
      for (let x = Math.max(0, Math.floor(u - width)); x < Math.min(WIDTH, u + width); x++) {
        const rim = (1 - Math.hypot((x - u) / (width / 2), (y - v) / (high / 2))) * (Math.min(width, high) / 2);
        const share = Math.max(0, Math.min(1, rim + 0.5));
        light[y * WIDTH + x] = (1 - share) * light[y * WIDTH + x] + share * lit * bright;
      }
  return { x: 0, y: 0, width: WIDTH, height: HEIGHT, light };
}

const BALL = { u: 180.4, v: 500.7, width: 30, light: 235 };
const HOLE = { u: 190, v: 120, width: 24, high: 7, light: 20 };

function film() {
  const shown = { frame: drawn() };
  return {
    shown,
    width: WIDTH,
    height: HEIGHT,
    part: (x, y, width, height) => partOf(shown.frame, x, y, width, height),
    small() {
      const [width, height] = [WIDTH / 10, HEIGHT / 10];
      const light = new Uint8Array(width * height);
      for (let y = 0; y < height; y++)
        for (let x = 0; x < width; x++) {
          let sum = 0;
          for (let i = 0; i < 100; i++) sum += shown.frame.light[(y * 10 + Math.floor(i / 10)) * WIDTH + x * 10 + (i % 10)];
          light[y * width + x] = sum / 100;
        }
      return { x: 0, y: 0, width, height, light };
    },
  };
}

/** Plays frames to a watch; `things(t)` says what is drawn. */
function played({ seconds, things, options = () => ({}), rate = 30 }) {
  const source = film();
  const phases = [];
  const rolls = [];
  const watch = createBallWatch({
    film: source,
    ball: BALL,
    onPhase: (phase) => phases.push(phase),
    onRoll: (sights) => rolls.push(sights),
  });
  for (let i = 0; i < seconds * rate; i++) {
    const t = i / rate;
    source.shown.frame = drawn(things(t), { seed: i + 1, ...options(t) });
    watch.frame(t);
  }
  return { phases, rolls, watch };
}

/** Where a ball is that was struck at `from` s: it slows and gets smaller. */
function rolling(t, from, { width = 30 } = {}) {
  const gone = Math.max(0, Math.min(2, t - from));
  const share = gone - (gone * gone) / 4;
  return { ...BALL, u: 180.4 + 12 * share, v: 500.7 - 340 * share, width: width - 19 * share };
}

test('a ball near a touch is found to a part of a pixel', () => {
  const frame = drawn([BALL]);
  const found = ballNear(partOf(frame, 120, 440, 120, 120), { u: 190, v: 490 });
  assert.ok(Math.hypot(found.u - BALL.u, found.v - BALL.v) < 0.4, JSON.stringify(found));
  assert.ok(Math.abs(found.width / BALL.width - 1) < 0.1, JSON.stringify(found));
});

test('a hole near a touch is found by its rim', () => {
  const found = holeNear(partOf(drawn([HOLE]), 140, 80, 100, 80), { u: 200, v: 128 });
  assert.ok(Math.hypot(found.u - HOLE.u, found.v - HOLE.v) < 1, JSON.stringify(found));
  assert.ok(Math.abs(found.width - HOLE.width) < 3, JSON.stringify(found));
});

test('bare grass has neither', () => {
  assert.equal(ballNear(partOf(drawn(), 120, 440, 120, 120), { u: 180, v: 500 }), null);
  assert.equal(holeNear(partOf(drawn(), 140, 80, 100, 80), { u: 190, v: 120 }), null);
});

test('what is larger, or long and thin, is no ball', () => {
  const still = drawn();
  const expected = { u: 180, v: 300, width: 20, contrast: 140, reach: 80 };
  for (const thing of [
    { u: 180, v: 300, width: 70, light: 235 },
    { u: 180, v: 300, width: 90, high: 12, light: 235 },
    { u: 180, v: 300, width: 20, light: 20 },
  ])
    assert.equal(findBall(drawn([thing]), still, expected), null);
  assert.ok(findBall(drawn([{ u: 180, v: 300, width: 20, light: 235 }]), still, expected));
});

test('a putt is waited for, followed to its rest and told, and the next one too', () => {
  const things = (t) => (t < 5 ? [HOLE, rolling(t, 1.5)] : [HOLE, rolling(t, 6.5), { ...rolling(9, 0) }]);
  const { rolls, phases } = played({ seconds: 11, things });
  assert.equal(rolls.length, 2, phases.join());
  for (const [n, from] of [
    [0, 1.5],
    [1, 6.5],
  ]) {
    const moving = rolls[n].filter(([t]) => t > from + 0.1 && t < from + 1.6);
    assert.ok(moving.length > 40);
    for (const [t, u, v] of moving) {
      const at = rolling(t, from);
      assert.ok(Math.hypot(u - at.u, v - at.v) < 1, `${t}: ${u} ${v} ${at.u} ${at.v}`);
    }
    assert.ok(rolls[n].filter(([t]) => t < from).length >= 5, 'with the ball at rest before it');
  }
});

test('legs, a putter, another ball and a light that changes are not followed', () => {
  const other = { u: 230, v: 300, width: 20, light: 235 };
  const legs = (t) => ({ u: 90 + 30 * Math.sin(3 * t), v: 430, width: 60, high: 300, light: 40 });
  const putter = (t) => ({ u: 180 + 60 * Math.sin(4 * t), v: 545, width: 80, high: 18, light: 200 });
  const { rolls } = played({
    seconds: 5,
    things: (t) => [HOLE, other, ...(t > 1.2 ? [legs(t), putter(t)] : []), rolling(t, 1.8)],
    options: (t) => ({ lit: t > 2.2 ? 0.8 : 1 }),
  });
  assert.equal(rolls.length, 1);
  const moving = rolls[0].filter(([t]) => t > 2 && t < 3.3);
  const off = moving.filter(([t, u, v]) => Math.hypot(u - rolling(t, 1.8).u, v - rolling(t, 1.8).v) > 1.5);
  assert.ok(off.length <= 0.05 * moving.length, `${off.length} of ${moving.length}`);
});

test('a player who sways beside the ball does not keep it from being ready', () => {
  const legs = (t) => ({ u: 90 + 30 * Math.sin(3 * t), v: 430, width: 60, high: 300, light: 20 });
  const { phases, rolls } = played({ seconds: 5, things: (t) => [HOLE, legs(t), rolling(t, 1.8)] });
  assert.deepEqual([phases[0], rolls.length], ['ready', 1], phases.join());
});

test('a ball that is hidden for some frames is found again', () => {
  const { rolls } = played({ seconds: 5, things: (t) => [HOLE, ...(t > 2.2 && t < 2.5 ? [] : [rolling(t, 1.5)])] });
  assert.equal(rolls.length, 1);
  assert.ok(Math.max(...rolls[0].map(([t]) => t)) > 3.4);
});

test('without a ball it says so, and waits for one', () => {
  const { phases } = played({ seconds: 3, things: (t) => (t < 1.5 ? [HOLE] : [HOLE, BALL]) });
  assert.deepEqual(phases, ['empty', 'ready']);
});

test('a light patch of grass where the ball lay is not taken for the next one, which is waited for', () => {
  const patch = { u: 186, v: 494, width: 8, light: 150 };
  const { phases } = played({ seconds: 6, things: (t) => (t < 1.5 || t > 4.5 ? [HOLE, patch, BALL] : [HOLE, patch]) });
  assert.deepEqual(phases, ['ready', 'settling', 'empty', 'ready']);
});

test('a ball that leaves the picture at once is told, few as its sights are', () => {
  const struck = (t) => ({ ...BALL, u: BALL.u + Math.max(0, 2000 * (t - 1.5)) });
  const { rolls } = played({ seconds: 3, things: (t) => [HOLE, struck(t)] });
  assert.equal(rolls.length, 1);
  assert.ok(rolls[0].filter(([t]) => t > 1.5).length < 6);
});

test('when it gets dark over a ball that lies ready it says so, and goes on in the light', () => {
  const { phases } = played({ seconds: 7, things: () => [HOLE, BALL], options: (t) => ({ lit: t > 1.5 && t < 5 ? 0.1 : 1 }) });
  assert.deepEqual(phases, ['ready', 'settling', 'dark', 'ready']);
});

test('a ball that was pushed aside is waited for where it lies now', () => {
  const { phases, rolls, watch } = played({
    seconds: 6,
    things: (t) => [HOLE, { ...BALL, u: t < 1.5 ? BALL.u : BALL.u + 14 }],
  });
  assert.deepEqual([phases.at(-2), phases.at(-1), rolls.length], ['settling', 'ready', 0]);
  assert.ok(Math.abs(watch.ball.u - BALL.u - 14) < 1);
});

test('in the dark it says so', () => {
  assert.deepEqual(played({ seconds: 1.5, things: () => [BALL], options: () => ({ lit: 0.1 }) }).phases, ['dark']);
});

test('a phone that was nudged while the ball rolled is noticed, and nothing is told of the putt', () => {
  const { phases, rolls } = played({
    seconds: 6,
    things: (t) => [HOLE, { ...rolling(t, 1.5) }],
    options: (t) => ({ shift: t > 3 ? 5 : 0 }),
  });
  assert.equal(phases.at(-1), 'moved', phases.join());
  assert.equal(rolls.length, 0);
});

test('a ball that is taken away is no putt', () => {
  const { phases, rolls } = played({ seconds: 5, things: (t) => (t < 1.5 ? [HOLE, BALL] : [HOLE]) });
  assert.equal(rolls.length, 0);
  assert.equal(phases.at(-1), 'empty', phases.join());
});
