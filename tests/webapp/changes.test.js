import assert from 'node:assert/strict';
import test from 'node:test';
import { since } from '../../webapp/changes.js';

const CHANGES = ['0.3.0', '0.2.0', '0.1.0'].map((version) => ({ version, date: '2026-05-03', what: [`in ${version}`] }));

test('what is new is what came after the version in hand', () => {
  assert.deepEqual(since(CHANGES, '0.1.0'), ['in 0.3.0', 'in 0.2.0']);
  assert.deepEqual(since(CHANGES, '0.3.0'), []);
});

test('of a version that the list does not know, the newest', () => {
  assert.deepEqual(since(CHANGES, '0.2.9'), ['in 0.3.0']);
});
