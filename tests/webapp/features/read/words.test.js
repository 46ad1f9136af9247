import assert from 'node:assert/strict';
import test from 'node:test';
import { apexWords, finishWords, shapeWords, slopeWords } from '../../../../webapp/features/read/words.js';

const FEET = { distance: 'ft', aim: 'in', pace_m: 0.9144 };
const IN = '\u00a0in';
/** A path through these places to the left, m, at 0, 1, 2 ... s. */
const path = (...ys) => ys.map((y, t) => [t, t, y, 1]);
const read = (ys, more = {}) => ({
  path: path(...ys),
  apex: { x_m: 1, y_m: 0.254 },
  time_s: ys.length - 1,
  aim_offset_m: 0.3,
  ...more,
});

test('a ball that swings out to the left breaks from left to right', () => {
  assert.equal(shapeWords(read([0, 0.254, 0]), FEET), `Left to right, 10${IN} out at the apex`);
  assert.equal(
    shapeWords(read([0, -0.254, 0], { apex: { x_m: 1, y_m: -0.254 }, aim_offset_m: -0.3 }), FEET),
    `Right to left, 10${IN} out at the apex`,
  );
});

test('one that swings out to both sides breaks twice, one that does to none is straight', () => {
  assert.equal(shapeWords(read([0, 0.2, -0.2, 0]), FEET), 'Double break');
  assert.equal(shapeWords(read([0, 0.254, 0], { aim_offset_m: -0.3 }), FEET), 'Double break');
  assert.equal(shapeWords(read([0, 0.005, 0]), FEET), 'Straight');
  // a quarter of a ball to the other side is a second break, less is none
  assert.equal(shapeWords(read([0, 0.254, -0.0107, 0]), FEET), 'Double break');
  assert.equal(shapeWords(read([0, 0.254, -0.0106, 0]), FEET), `Left to right, 10${IN} out at the apex`);
});

test('what it would do beyond the hole is no part of its shape', () => {
  assert.equal(shapeWords(read([0, 0.254, 0, -0.3], { time_s: 2 }), FEET), `Left to right, 10${IN} out at the apex`);
});

test('an apex too small to see is not said', () => {
  assert.equal(apexWords({ apex: { y_m: 0.009 } }, FEET), '');
  assert.equal(apexWords({ apex: { y_m: -0.254 } }, FEET), `apex 10${IN}`);
});

test('the slope is said with its way down', () => {
  assert.equal(slopeWords({ slope_percent: 2, fall_deg: 90 }), '2 percent, falls right');
  assert.equal(slopeWords({ stations: [{}, {}, {}] }), '3 slopes along the line');
});

test('where a missed putt stops: past and short, left and right', () => {
  const words = (finish, holed = false) => finishWords({ finish, holed }, FEET);
  assert.equal(words({ x_m: 0.508, y_m: 0.254 }), `20${IN} past, 10${IN} left`);
  assert.equal(words({ x_m: -0.508, y_m: -0.254 }), `20${IN} short, 10${IN} right`);
  assert.equal(words({ x_m: 0.508, y_m: 0.02 }), `20${IN} past`);
  assert.equal(words(null), 'runs away');
  assert.equal(words(null, true), 'still drops');
});
