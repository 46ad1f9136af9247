import assert from 'node:assert/strict';
import test from 'node:test';
import { createStore } from '../../webapp/store.js';

test('each change is told once, in order, to all: one made by a listener waits its turn', () => {
  const store = createStore({ n: 0, other: 'stays' });
  /** @type {string[]} */
  const told = [];
  store.subscribe(({ n }, before, action) => {
    told.push(`first ${action} ${before.n} to ${n}`);
    if (action !== 'one') return;
    store.change('two', { n: 2 });
    store.change('three', { n: 3 });
  });
  store.subscribe(({ n }, before, action) => told.push(`second ${action} ${before.n} to ${n}`));
  store.change('one', { n: 1 });
  assert.deepEqual(told, [
    'first one 0 to 1',
    'second one 0 to 1',
    'first two 1 to 2',
    'second two 1 to 2',
    'first three 2 to 3',
    'second three 2 to 3',
  ]);
});

test('a change replaces what it names, at once, and leaves the state before as it was', () => {
  const store = createStore({ n: 0, other: 'stays' });
  const before = store.state;
  store.change('one', { n: 1 });
  assert.deepEqual(store.state, { n: 1, other: 'stays' });
  assert.deepEqual(before, { n: 0, other: 'stays' });
});

test('a listener that throws takes nothing from the others, nor from later changes, and its error is not lost', async () => {
  const store = createStore({ n: 0 });
  /** @type {number[]} */
  const told = [];
  /** @type {Error[]} */
  const raised = [];
  const hear = (/** @type {Error} */ error) => raised.push(error);
  const others = process.listeners('uncaughtException');
  process.removeAllListeners('uncaughtException').on('uncaughtException', hear);
  store.subscribe(() => {
    throw new Error('broken');
  });
  store.subscribe(({ n }) => told.push(n));
  store.change('one', { n: 1 });
  store.change('two', { n: 2 });
  await new Promise((resolve) => setTimeout(resolve));
  process.removeAllListeners('uncaughtException');
  for (const other of others) process.on('uncaughtException', other);
  assert.deepEqual(told, [1, 2]);
  assert.deepEqual(
    raised.map(({ message }) => message),
    ['broken', 'broken'],
  );
});
