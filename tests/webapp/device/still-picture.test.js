import assert from 'node:assert/strict';
import test from 'node:test';
import { hasMoved } from '../../../webapp/device/still-picture.js';

const [WIDTH, HEIGHT] = [400, 720];
const grass = Float32Array.from(
  { length: (WIDTH + 80) * (HEIGHT + 80) },
  (_, i) => 90 + 14 * Math.sin(i * 12.9898) * Math.sin(i * 0.73),
);

/** Grass, shifted, with noise, and dark bars before it from one column to another. */
function drawn({ shift = 0, lit = 1, noise = 0, legs = [] } = {}) {
  const light = new Uint8Array(WIDTH * HEIGHT);
  for (let y = 0, i = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++, i++) {
      const grown = grass[(y + 40) * (WIDTH + 80) + x + 40 + shift];
      const leg = legs.some(([from, to]) => x >= from && x < to);
      light[i] = (leg ? 40 : grown) * lit + noise * Math.sin(i * 7.13 + shift);
    }
  return { x: 0, y: 0, width: WIDTH, height: HEIGHT, light };
}

test('a camera that was nudged has moved, by little or by much', () => {
  for (const shift of [3, 5, -8, 20, 40]) assert.equal(hasMoved(drawn(), drawn({ shift })), true, `${shift}`);
});

test('a place that looks alike after the nudge hides it not', () => {
  const [before, now] = [drawn(), drawn({ shift: 12 })];
  for (let y = 400; y < 464; y++) now.light.set(before.light.subarray(y * WIDTH + 48, y * WIDTH + 112), y * WIDTH + 48);
  assert.equal(hasMoved(before, now), true);
});

test('one that stood still has not, in other light, with noise', () => {
  for (const now of [{}, { lit: 0.7 }, { noise: 4 }, { shift: 1 }]) assert.equal(hasMoved(drawn(), drawn(now)), false);
});

test('legs that have come, gone or moved are no nudge', () => {
  const legs = [
    [20, 110],
    [290, 380],
  ];
  assert.equal(hasMoved(drawn(), drawn({ legs })), false);
  assert.equal(hasMoved(drawn({ legs }), drawn()), false);
  assert.equal(hasMoved(drawn({ legs }), drawn({ legs: legs.map(([a, b]) => [a + 6, b + 6]) })), false);
});

test('where nothing shows there is nothing to tell', () => {
  const bare = { ...drawn(), light: new Uint8Array(WIDTH * HEIGHT).fill(90) };
  assert.equal(hasMoved(bare, bare), false);
});
