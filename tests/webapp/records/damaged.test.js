import assert from 'node:assert/strict';
import test from 'node:test';
import { SCHEMA } from '../../../webapp/records/schema.js';
import { fromFile } from '../../../webapp/records/transfer.js';
import { parts } from '../kept.js';

const { restore, wholeOf } = parts;

// The short form; DAMAGED=5000 is the long one
const ROUNDS = Number(process.env.DAMAGED ?? 300);
const WRONG = [
  undefined,
  null,
  true,
  '',
  'x',
  -1,
  0,
  5e-324,
  1e-310,
  1e308,
  -1e308,
  [],
  {},
  [[]],
  [null],
  { a: { b: {} } },
  'x'.repeat(9999),
];
const RUN = { session: 's', block: 0, spent_s: 5, paused: false, good: 0, bad: 0 };
const TRIAL = { felt_percent: 1, measured_percent: 1.2, fall: 'left', date: '2026-05-03' };
const ENTRY = {
  kind: 'note',
  id: 'a',
  at: '2026-05-03T17:30:00.000Z',
  changed: '2026-05-03T17:30:00.000Z',
  place: '',
  text: 'kept',
};

/** The same numbers each time. @param {number} seed */
function chances(seed) {
  let state = seed;
  return () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
}

function whole() {
  const fresh = restore(null);
  const block = { drill: 'gate', minutes: 5, why: '', instead: [] };
  return structuredClone({
    ...fresh,
    practice: { ...fresh.practice, blocks: [block], run: RUN },
    calibration: { ...fresh.calibration, feet: [TRIAL], rolls: [{ distance_m: 3, time_s: 2, way: 'out' }] },
  });
}

/** One to four of its places hold something else. @param {any} data @param {() => number} chance */
function damage(data, chance) {
  for (let left = 1 + Math.floor(4 * chance()); left; left--) {
    let at = data;
    for (;;) {
      const names = Object.keys(at);
      if (!names.length) break;
      const name = names[Math.floor(chance() * names.length)];
      if (typeof at[name] === 'object' && at[name] !== null && chance() < 0.7) at = at[name];
      else {
        at[name] = structuredClone(WRONG[Math.floor(chance() * WRONG.length)]);
        break;
      }
    }
  }
  return data;
}

test('of damaged stores each starts, and what was read fits when it is read again', () => {
  const chance = chances(20_260_503);
  for (let i = 0; i < ROUNDS; i++) {
    const data = JSON.parse(JSON.stringify({ schema: 1 + Math.floor(chance() * SCHEMA), ...damage(whole(), chance) }));
    const first = restore(chance() < 0.5 ? data : wholeOf({ ...data, run: data.practice?.run }));
    const misfits = [];
    const again = restore(JSON.parse(JSON.stringify({ schema: SCHEMA, ...first })), misfits);
    assert.deepEqual(misfits, [], JSON.stringify(data));
    assert.deepEqual(again.settings, first.settings);
    assert.deepEqual(again.practice, first.practice);
    assert.ok(first.settings.pace_m >= 0.3);
  }
});

test('of damaged files each is refused in words, or its whole entries are taken', () => {
  const chance = chances(7);
  for (let i = 0; i < ROUNDS; i++) {
    const { settings, player, calibration, sighted } = damage(whole(), chance);
    const part = damage(
      { entries: [ENTRY, { ...ENTRY, id: 'b' }], before: [ENTRY], phone: { settings, player, calibration, sighted } },
      chance,
    );
    const text = JSON.stringify({ format: 'borrowline-record', version: 1 + Math.floor(3 * chance()), ...part });
    try {
      const { entries, bad } = fromFile(text, parts);
      for (const entry of entries) assert.ok(entry.id && entry.at);
      for (const why of bad) assert.equal(typeof why, 'string');
    } catch (error) {
      assert.equal(error.constructor, Error, `${error.stack} ${text}`);
      assert.match(error.message, /^(This is no record|The file is)/);
    }
  }
});
