import assert from 'node:assert/strict';
import test from 'node:test';
import { holeNear, partOf } from '../../../../webapp/device/ball-finder.js';
import { moreOfHole } from '../../../../webapp/features/watch/marking.js';

const [WIDTH, HEIGHT] = [360, 640];
const HOLE = { u: 190, v: 220, width: 24, high: 7 };

/** Grass with a hole, and a ball before it or not. */
function film(hidden) {
  const light = new Uint8Array(WIDTH * HEIGHT).fill(90);
  for (let y = 0, i = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++, i++) {
      if (Math.hypot((x - HOLE.u) / (HOLE.width / 2), (y - HOLE.v) / (HOLE.high / 2)) < 1) light[i] = 20;
      if (hidden && Math.hypot(x - 197, y - 222) < 8) light[i] = 235;
    }
  const whole = { x: 0, y: 0, width: WIDTH, height: HEIGHT, light };
  return { width: WIDTH, height: HEIGHT, part: (x, y, width, height) => partOf(whole, x, y, width, height) };
}

test('a hole that a ball hid when it was marked is seen whole once the ball is gone', () => {
  const touch = { u: 185, v: 223 };
  const marked = holeNear(film(true).part(145, 180, 80, 80), touch);
  assert.ok(Math.abs(marked.u - HOLE.u) > 4, 'half of it shows');
  assert.equal(moreOfHole(film(true), marked), null);
  const whole = moreOfHole(film(false), marked);
  assert.ok(Math.abs(whole.u - HOLE.u) < 1, JSON.stringify(whole));
  assert.equal(moreOfHole(film(false), whole), null);
});

test('a mark that was set by hand stays', () => {
  assert.equal(moreOfHole(film(false), { u: 186, v: 221, width: 12, height: 7, set: true }), null);
});

test('a touch that found no hole finds it later', () => {
  assert.ok(moreOfHole(film(false), { u: 186, v: 221, width: 0, height: 0 }));
});
