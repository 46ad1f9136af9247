import assert from 'node:assert/strict';
import test from 'node:test';
import { gridOf, leftOf, placeWords } from '../../../../webapp/features/walk/plan.js';

const PACES = { distance: 'ft', pace_m: 0.9144 };
const METRES = { distance: 'm', pace_m: 0.9144 };
const green = (breadth_m, length_m, places, points = []) => ({ breadth_m, length_m, places, points });
const left = (of, settings = PACES, passed = []) => leftOf({ settings, walkPage: { passed } }, of);

test('a square green is walked on five times five places, in whole paces', () => {
  const grid = gridOf(green(12.8016, 12.8016, 25), PACES);
  assert.equal(grid.length, 25);
  assert.equal(new Set(grid.map(String)).size, 25);
  for (const [x, y] of grid) {
    assert.ok(x > 0 && x < 12.8016 && y > 0 && y < 12.8016);
    for (const side of [x, y]) assert.ok(Math.abs(side / 0.9144 - Math.round(side / 0.9144)) < 1e-3);
  }
});

test('it goes to and fro: from each place to the next is one step of the grid', () => {
  for (const of of [green(12, 12, 25), green(8, 20, 25), green(30, 6, 16)]) {
    const grid = gridOf(of, METRES);
    const longest = Math.max(...grid.slice(1).map(([x, y], i) => Math.hypot(x - grid[i][0], y - grid[i][1])));
    assert.ok(longest < 1.5 * Math.sqrt((of.breadth_m * of.length_m) / grid.length) + 1, `${longest}`);
  }
});

test('a long green has more rows than columns', () => {
  const grid = gridOf(green(6, 18, 25), METRES);
  const [columns, rows] = [0, 1].map((i) => new Set(grid.map((place) => place[i])).size);
  assert.ok(rows > 2 * columns);
});

test('what is read, however the walk was begun, is not asked for again', () => {
  const grid = gridOf(green(12, 12, 25), METRES);
  const points = grid.slice(0, 10).map(([x_m, y_m]) => ({ x_m: x_m + 0.2, y_m }));
  assert.equal(left(green(12, 12, 25, points), METRES).length, 15);
  assert.deepEqual(left(green(12, 12, 25, points), METRES)[0], grid[10]);
  assert.equal(left(green(12, 12, 25, points), METRES, [grid[10]]).length, 14);
});

test('a second walk of a finer grid goes between the first one’s places', () => {
  const points = gridOf(green(12, 12, 25), METRES).map(([x_m, y_m]) => ({ x_m, y_m }));
  const more = left(green(12, 12, 36, points), METRES);
  assert.ok(more.length > 15 && more.length < 36);
  assert.equal(left(green(12, 12, 25, points), METRES).length, 0);
});

test('a place is told in paces or in metres from the corner', () => {
  assert.equal(placeWords([2.7432, 5.4864], PACES), '6 on, 3 from the left');
  assert.equal(placeWords([2.5, 5], METRES), '5 on, 2.5 from the left');
});
