import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import test from 'node:test';
import { counted, did } from '../../../../webapp/features/watch/drills.js';

const PUTT = { distance_m: 3, fall_deg: 90 };
const seen = (value, putt = PUTT) => ({
  value: { start_deg: 1, result: 'missed', stop: { x_m: 3.2, y_m: 0.1 }, ...value },
  aim_deg: 0.5,
  putt,
});

test('a gate lets through what starts near the line meant', () => {
  assert.equal(did('start_gate', seen({}), 0.6), true);
  assert.equal(did('start_gate', seen({}), 0.4), false);
  assert.equal(did('start_gate', seen({ start_deg: null }), 0.6), null);
});

test('a miss on the high side of a shallow break is the right side', () => {
  assert.equal(did('shallow_breaks', seen({})), true); // falls right: high is left
  assert.equal(did('shallow_breaks', seen({}, { distance_m: 3, fall_deg: -90 })), false);
  assert.equal(did('shallow_breaks', seen({ result: 'holed', stop: null })), true);
});

test('pace is judged by where it stopped', () => {
  assert.equal(did('foot_past', seen({})), true);
  assert.equal(did('foot_past', seen({ stop: { x_m: 2.8, y_m: 0 } })), false);
  assert.equal(did('long_pace', seen({ stop: { x_m: 4.1, y_m: 0 } })), false);
  assert.equal(did('long_pace', seen({ result: 'unseen', stop: null })), null);
});

test('it counts in the block in hand, and not in a pause', () => {
  const run = { block: 0, good: 3, bad: 1, paused: false };
  const state = { practice: { run, blocks: [{ drill: 'foot_past' }] }, answers: {} };
  const once = counted(state, { ...seen({ launch_mps: 2, words: 'A foot past.' }), meant_mps: 2.1 });
  assert.equal(once.run.good, 4);
  assert.equal(once.run.said, 'A foot past.');
  const [strike] = once.run.strikes;
  assert.deepEqual([strike.start_deg, strike.aim_deg, strike.launch_mps, strike.meant_mps], [1, 0.5, 2, 2.1]);
  assert.equal(counted({ ...state, practice: once }, seen({})).run.strikes.length, 2);
  assert.equal(counted({ ...state, practice: { ...state.practice, run: { ...run, paused: true } } }, seen({})), null);
});

test('every drill that says a camera can count it is counted, and no other', () => {
  const drills = new URL('../../../../pycore/drills/', import.meta.url);
  const files = readdirSync(drills).filter((name) => name.endsWith('.toml'));
  for (const file of files) {
    const says = /^watched = true$/m.test(readFileSync(new URL(file, drills), 'utf-8'));
    assert.equal(did(file.replace('.toml', ''), seen({}), 0.6) !== null, says, file);
  }
});
