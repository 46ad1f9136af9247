import assert from 'node:assert/strict';
import test from 'node:test';
import { stretch } from '../../../webapp/parts/stretch.js';
import { typed } from '../../../webapp/parts/typed.js';
import { pick } from '../../../webapp/pick.js';
import { createStore } from '../../../webapp/store.js';

const FEET = { name: 'feet', unit: 'ft', si: 0.3048, digits: 1 };

test('a number that was typed is taken in SI, or refused at its field in the unit of the player', () => {
  const store = createStore({ problem: null });
  const taken = { label: 'Length', low: 0.3048, high: 3.048 };
  assert.ok(Math.abs(typed(store, 'length_m', '5', taken, FEET) - 1.524) < 1e-9);
  assert.ok(typed(store, 'length_m', '10', taken, FEET) > 3); // an end, though the conversion leaves something over
  assert.equal(store.state.problem, null);
  assert.equal(typed(store, 'length_m', '10.1', taken, FEET), undefined);
  assert.deepEqual(store.state.problem, {
    field: 'length_m',
    text: '10.1',
    message: 'Length takes 1 to 10\u00a0ft; “10.1” does not fit.',
  });
  assert.equal(
    typed(store, 'strokes', '2.5', { label: 'Strokes', low: 1, high: 9, whole: true }, { ...FEET, si: 1 }),
    undefined,
  );
  assert.equal(typed(store, 'length_m', 'two', taken, FEET), undefined);
});

test('a place on a curve lies between two points, or beyond the outermost two', () => {
  const curve = [
    [0, 0],
    [1, 10],
    [3, 30],
  ];
  const at = (place) => {
    const { from, to, share } = stretch(curve, place);
    return [from[1] + share * (to[1] - from[1]), share];
  };
  assert.deepEqual(at(2), [20, 0.5]);
  assert.deepEqual(at(1), [10, 1]);
  assert.deepEqual(at(-1), [-10, -1]);
  assert.deepEqual(at(5), [50, 2]);
});

test('what is not there is told where it is missed', () => {
  assert.equal(pick([1, 2], 1), 2);
  assert.equal(pick({ a: 0 }, 'a'), 0);
  assert.throws(() => pick([1, 2], 2), /nothing under 2/);
  assert.throws(() => pick({ a: 0 }, 'b'), /nothing under b/);
});
