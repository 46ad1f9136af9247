import assert from 'node:assert/strict';
import test from 'node:test';
import { asideWords } from '../../../../webapp/features/record/words.js';
import { parts } from '../../kept.js';

test('what was set aside is named as its player knows it', () => {
  assert.equal(asideWords({ what: 'settings.pace_m', value: 0 }), 'Settings, pace: 0');
  assert.equal(asideWords({ what: 'calibration.home_stimp_ft', value: 'x' }), 'Green, home stimp: "x"');
  assert.equal(asideWords({ what: 'putt', value: { far: 'a'.repeat(200) } }).length, 'The putt in hand: '.length + 80);
});

test('every part that is kept has its words', () => {
  for (const name of parts.kept.filter((name) => !['aside', 'cautioned', 'unkept', 'read', 'window'].includes(name)))
    assert.doesNotMatch(asideWords({ what: name, value: 1 }), new RegExp(`^${name}:`), name);
});
