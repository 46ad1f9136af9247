import assert from 'node:assert/strict';
import test from 'node:test';
import { sides } from '../../../../webapp/features/practice/words.js';

test('seen from the far side of the feet, a right-hander swings through to the right, a left-hander to the left', () => {
  assert.deepEqual(sides({ handed: 'right' }), ['Back', 'Through']);
  assert.deepEqual(sides({ handed: 'left' }), ['Through', 'Back']);
});
