import assert from 'node:assert/strict';
import test from 'node:test';
import { parts } from '../kept.js';

const RUN = { session: 's', block: 0, spent_s: 5, paused: false, good: 0, bad: 0 };
const BLOCK = { drill: 'gate', minutes: 5, why: '', instead: [] };

test('a session that runs is a row of its own, and comes back into practice', () => {
  const { practice } = parts.restore(null);
  const { run: _, ...plan } = { ...practice, blocks: [BLOCK] };
  const rows = parts.rowsOf({ practice: { ...plan, run: RUN }, screen: 'read' });
  assert.deepEqual(rows, { practice: plan, run: RUN });
  assert.deepEqual(parts.restore(parts.wholeOf(rows)).practice, { ...practice, blocks: [BLOCK], run: RUN });
  assert.equal(parts.restore(parts.wholeOf({ practice: plan })).practice.run, null);
});

test('a fresh phone fits what is asked of one', () => {
  const misfits = [];
  const fresh = parts.restore(null);
  const rows = JSON.parse(JSON.stringify(parts.rowsOf(fresh)));
  assert.deepEqual(parts.restore(parts.wholeOf(rows), misfits), fresh);
  assert.deepEqual(misfits, []);
  assert.deepEqual(parts.toldIn(parts.phoneOf(fresh)), { good: parts.phoneOf(fresh), bad: [] });
});

test('read and window are painted and not kept, the session and the putt in hand are this tab’s own', () => {
  assert.ok(parts.painted.includes('read') && !parts.kept.includes('read') && !parts.kept.includes('window'));
  assert.deepEqual(parts.ofTab, ['putt', 'felt']);
  const { practice } = parts.restore(null);
  assert.deepEqual(parts.going({ practice }), []);
  assert.deepEqual(parts.going({ practice: { ...practice, run: RUN } }), ['practice']);
});

test('what does not fit is set aside once, by its place', () => {
  const misfits = [];
  parts.restore({ schema: 4, putt: { distance_m: 900 }, settings: 7, player: { pace_sd_fraction: 'much' } }, misfits);
  assert.deepEqual(misfits.map(({ what }) => what).toSorted(), ['player.pace_sd_fraction', 'putt', 'settings']);
});
