import assert from 'node:assert/strict';
import test from 'node:test';
import { nameOf, refusalWords } from '../../webapp/refusal.js';

const FEET = { distance: 'ft', aim: 'in', pace_m: 0.9144, arm_m: 0.66 };
const NARROW = '\u00a0';
const refusal = (more) => ({
  code: 'bad_field',
  message: 'distance_m is 40; it takes a number from 0.3 to 30 m',
  field: 'distance_m',
  value: 40,
  low: 0.3,
  high: 30.48,
  unit: 'm',
  ...more,
});

test('a refusal is said in the unit of the player, with what was typed where that is known', () => {
  assert.equal(refusalWords(refusal({}), FEET), `Distance takes 1 to 100${NARROW}ft; “131.2” does not fit.`);
  assert.equal(refusalWords(refusal({}), FEET, '131'), `Distance takes 1 to 100${NARROW}ft; “131” does not fit.`);
  assert.equal(
    refusalWords(refusal({ field: 'stations[1].at_m', value: 'near', low: 0, high: 3.048 }), FEET),
    `From the ball takes 0 to 10${NARROW}ft; “near” does not fit.`,
  );
});

test('where there is no range the engine’s own sentence stands', () => {
  const said = 'The places are out of order.';
  for (const open of [{ low: null }, { high: null }, { low: null, high: null }, { field: null }, { unit: 'entries' }])
    assert.equal(refusalWords(refusal({ message: 'the places are out of order', ...open }), FEET), said);
});

test('a putt that cannot be stopped says so in the unit of the pace', () => {
  const words = refusalWords(refusal({ code: 'runs_away', field: 'past_m', value: 0.254 }), FEET);
  assert.match(words, /^It runs away: no ball stops 10\u00a0in past this hole\./);
});

test('a field has the name of its last part', () => {
  assert.equal(nameOf('stations[2].slope_percent'), 'Slope');
  assert.equal(nameOf('mood'), 'mood');
  assert.equal(nameOf('mood', 'It'), 'It');
});
