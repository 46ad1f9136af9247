import assert from 'node:assert/strict';
import test from 'node:test';
import {
  changeWords,
  headline,
  inHundred,
  leaveWords,
  madeWords,
  restsOn,
  spreadWords,
} from '../../../../webapp/features/findings/words.js';

const FEET = { distance: 'ft', aim: 'in', pace_m: 0.9144 };
const IN = '\u00a0in';
const cost = (skill, putts_per_100, low, high) => ({ skill, putts_per_100, low, high });

test('a fault that can be told from the next is named', () => {
  assert.equal(
    headline({ costs: [cost('pace', 8.2, 6, 10), cost('reading', 3, 1, 5)], caution: null }),
    'Pace costs you most: 8 putts in 100 holes.',
  );
  assert.equal(
    headline({ costs: [cost('start_line', 8, 6, 10)], caution: null }),
    'Start line costs you most: 8 putts in 100 holes.',
  );
});

test('a fault that is not told apart from the next is not blamed', () => {
  assert.equal(
    headline({ costs: [cost('pace', 8, 4, 12), cost('reading', 7, 3, 11)], caution: null }),
    'Pace or reading: not yet told apart.',
  );
  assert.equal(
    headline({ costs: [cost('pace', 8, 4, 12), cost('alignment', 7, 3, 11)], caution: null }),
    'Pace or how you line up: not yet told apart.',
  );
});

test('ranges that touch do not hide a fault that is clear: the next lies half a range below', () => {
  assert.equal(
    headline({ costs: [cost('pace', 10, 6, 14), cost('reading', 5, 2, 7)], caution: null }),
    'Pace costs you most: 10 putts in 100 holes.',
  );
});

test('what is within chance is not blamed, a lean beyond it is', () => {
  assert.equal(headline({ costs: [cost('pace', 5, 0, 10)], caution: null }), 'Nothing stands out.');
  assert.equal(headline({ costs: [cost('pace', 5, -1, 10)], caution: null }), 'Nothing stands out.');
  assert.equal(
    headline({ costs: [{ ...cost('pace', 5, -1, 10), lean: true }], caution: null }),
    'Pace costs you most: 5 putts in 100 holes.',
  );
});

test('where only misses are logged nobody is blamed', () => {
  const missed = { costs: [cost('pace', 8, 6, 10)], caution: 'Only misses are logged.' };
  assert.equal(headline(missed), 'Not all putts seem to be logged.');
});

test('without putts nothing is blamed', () => {
  assert.equal(headline({ costs: [], caution: null }), 'Log putts, and this says what costs you most.');
});

test('where misses stop, by the sides of the hole', () => {
  const leaves = {
    misses: 20,
    short: 5,
    short_low: 0.112,
    short_high: 0.469,
    beyond_m: -0.254,
    beyond_low_m: -0.508,
    beyond_high_m: 0.0508,
  };
  assert.equal(
    leaveWords(leaves, FEET),
    `5 of 20 misses stopped short of the hole: 11 to 47 in 100. Against the pace wanted they stop 10${IN} short: between 20${
      IN
    } short and 2${IN} past.`,
  );
  assert.equal(leaveWords({ ...leaves, beyond_m: null }, FEET), '5 of 20 misses stopped short of the hole: 11 to 47 in 100.');
  assert.equal(leaveWords({ ...leaves, misses: 0 }, FEET), 'No misses yet.');
});

test('a change whose range holds nought is within chance', () => {
  const change = { before: 0.4, now: 0.5, low: -0.02, high: 0.22 };
  assert.equal(
    madeWords(change),
    'In the last four weeks 50 in 100 made, before 40: 2 fewer to 22 more, within chance. Distances may differ.',
  );
  assert.match(madeWords({ ...change, low: 0.01 }), /1 more to 22 more, beyond chance/);
  assert.match(madeWords({ ...change, low: -0.2, high: -0.01 }), /beyond chance/);
});

test('pace and reading are shares, lines are degrees', () => {
  assert.deepEqual(changeWords({ skill: 'pace', what: 'bias', before: 0.08, now: 0.03, beyond_chance: true }), [
    'Pace, lean',
    '8\u00a0%',
    '3\u00a0%',
    'yes',
  ]);
  assert.equal(changeWords({ skill: 'reading', what: 'sd', before: 0.2, now: 0.1, beyond_chance: true })[1], '20\u00a0%');
  assert.deepEqual(changeWords({ skill: 'start_line', what: 'sd', before: 1.24, now: 0.9, beyond_chance: false }), [
    'Start line, spread',
    '1.2°',
    '0.9°',
    'no',
  ]);
});

test('a spread is said with its range and the putts that it rests on', () => {
  assert.equal(
    spreadWords({ sd: 0.98, sd_low: 0.7, sd_high: 1.31, unit: 'degrees', n: 40 }),
    'Spread 1°: 0.7 to 1.3. From 40 putts.',
  );
  assert.equal(
    spreadWords({ sd: 0.08, sd_low: 0.06, sd_high: 0.11, unit: 'fraction', n: 1 }),
    'Spread 8\u00a0%: 6 to 11. From 1 putt.',
  );
  assert.equal(spreadWords({ sd: null, sd_low: null, sd_high: null, unit: 'degrees', n: 0 }), '');
});

test('what the findings rest on is told: how many, and that an invented player is among them', () => {
  const value = { used: 30, left_out: [], make: [{ tries: 20 }, { tries: 10 }] };
  assert.equal(restsOn(value, []), 'From 30 putts. Each range holds the truth 19 times in 20.');
  assert.match(restsOn(value, [{ sample: true }]), /The invented player is among them\.$/);
  assert.match(restsOn({ ...value, used: 10 }, []), /^Costs and skills are from the newest 10 putts, the rest from all 30\./);
  assert.equal(inHundred(undefined), '–');
});
