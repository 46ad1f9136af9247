import assert from 'node:assert/strict';
import test from 'node:test';
import { blankHole, cardOf, isCard, isDone, roundOf } from '../../../webapp/records/card.js';
import { countedOf, EVERYTHING, puttsOf, roundsOf } from '../../../webapp/records/chosen.js';
import { checked } from '../../../webapp/records/entry.js';
import { fromFile } from '../../../webapp/records/transfer.js';
import { parts } from '../kept.js';

const AT = '2026-05-03T12:00:00.000Z';
const HEAD = { at: AT, changed: AT, place: 'Larkmoor', text: '' };
const MISSED = { distance_m: 6, result: 'missed', side: 'left', length: 'short', slope_percent: 2 };
const HOLES = [
  { hole: 1, putts: [MISSED, { distance_m: 0.8, result: 'missed' }, { distance_m: null, result: 'holed' }] },
  { hole: 2, putts: [] },
  { hole: 4, putts: [{ distance_m: 3, result: 'missed', length: 'long' }] },
];
const ROUND = { kind: 'round', id: 'r', ...HEAD, name: 'Spring', competition: true, holes: HOLES };

test('a round that is mended and kept again is the same', () => {
  const { text, changed, ...rest } = checked(ROUND);
  const card = cardOf({ ...rest, text, changed });
  assert.ok(isCard(JSON.parse(JSON.stringify(card))));
  assert.deepEqual(roundOf(card), { ...rest, text });
});

test('a hole is done when its putts, and how a miss was left, are said', () => {
  const hole = { ...blankHole(1), distance_m: 5 };
  assert.ok(!isDone(hole));
  assert.ok(isDone({ ...hole, taken: 1 }));
  assert.ok(!isDone({ ...hole, taken: 2 }));
  assert.ok(isDone({ ...hole, taken: 2, told: true }));
  assert.ok(isDone({ ...blankHole(1), taken: 0 }));
  assert.ok(!isDone({ ...blankHole(1), taken: 2, told: true }));
});

test('a round that cannot be is refused in words', () => {
  const wrong = [
    [[{ hole: 1, putts: [{ distance_m: null, result: 'holed' }] }], /distance_m of the first putt of hole 1 is missing/],
    [[{ hole: 1, putts: [{ distance_m: 3, result: 'holed' }, MISSED] }], /a putt follows one that was holed/],
    [[HOLES[0], HOLES[0]], /one hole twice/],
    [[{ hole: 0, putts: [] }], /hole is 0; it takes a number from 1/],
    [[{ hole: 1, putts: [{ ...MISSED, side: 'up' }] }], /side is "up"; it takes left, right or nothing/],
  ];
  for (const [holes, why] of wrong) assert.throws(() => checked({ ...ROUND, holes }), why);
});

test('a file of version 3 did not say whose read was played; the invented player’s were his own', () => {
  const putt = { kind: 'putt', ...HEAD, distance_m: 3, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3, aim_deg: 6 };
  const entries = [
    { ...putt, id: 'a', result: 'holed' },
    { ...putt, id: 'b', result: 'holed', sample: true },
  ];
  const read = fromFile(JSON.stringify({ format: 'borrowline-record', version: 3, entries }), parts);
  assert.deepEqual(read.bad, []);
  assert.deepEqual(
    read.entries.map(({ id, read, aim_deg }) => [id, read, aim_deg]),
    [
      ['a', undefined, 6],
      ['b', 'own', 6],
    ],
  );
});

test('what is asked for is chosen by day, place, practice or competition, and distance', () => {
  const round = checked(ROUND);
  const putt = checked({ kind: 'putt', id: 'p', ...HEAD, at: '2026-06-03T12:00:00Z', distance_m: 3, result: 'holed' });
  const gone = { ...putt, id: 'g', gone: true };
  const all = [putt, gone, round];
  const ids = (only) =>
    [...puttsOf(all, { ...EVERYTHING, ...only }), ...roundsOf(all, { ...EVERYTHING, ...only })].map(({ id }) => id);
  assert.deepEqual(ids({}), ['p', 'r']);
  assert.deepEqual(ids({ from: '2026-05-04' }), ['p']);
  assert.deepEqual(ids({ to: '2026-05-04' }), ['r']);
  assert.deepEqual(ids({ place: 'elsewhere' }), []);
  assert.deepEqual(ids({ how: 'competition' }), ['r']);
  assert.deepEqual(ids({ how: 'practice' }), ['p']);
  assert.deepEqual(ids({ band: [5, 7] }), ['r']);
  assert.deepEqual(roundsOf(all, { ...EVERYTHING, band: [5, 7] })[0].holes, [round.holes[0]]);
  const week = puttsOf(all, { ...EVERYTHING, since: '7' }, Date.parse('2026-06-09T20:00:00Z'));
  assert.deepEqual(
    week.map(({ id }) => id),
    ['p'],
  );
  assert.deepEqual(puttsOf(all, { ...EVERYTHING, since: '7' }, Date.parse('2026-06-11T20:00:00Z')), []);
});

test('putts without a green, and those of rounds, are counted', () => {
  const bare = checked({ kind: 'putt', id: 'p', ...HEAD, distance_m: 3, result: { x_m: 0.4, y_m: 0 } });
  const counted = countedOf([bare, checked(ROUND)], EVERYTHING);
  assert.deepEqual(
    counted.map(({ distance_m, result, length }) => [distance_m, result, length]),
    [
      [3, 'missed', null],
      [6, 'missed', 'short'],
      [0.8, 'missed', null],
      [3, 'missed', 'long'],
    ],
  );
});
