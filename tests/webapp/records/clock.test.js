import assert from 'node:assert/strict';
import test from 'node:test';
import { after } from '../../../webapp/records/clock.js';
import { preview } from '../../../webapp/records/transfer.js';

const LATER = '2199-05-03T17:30:00.000Z';

test('what is changed after the clock was set back is newer all the same', () => {
  assert.equal(after(LATER), '2199-05-03T17:30:00.001Z');
  assert.ok(Math.abs(Date.parse(after('2001-01-01T00:00:00.000Z')) - Date.now()) < 1000);
  assert.ok(Math.abs(Date.parse(after(undefined)) - Date.now()) < 1000);
  assert.ok(Math.abs(Date.parse(after('no time')) - Date.now()) < 1000);
});

test('so an older export does not replace a newer edit', () => {
  const exported = { kind: 'note', id: 'a', at: LATER, changed: LATER, place: '', text: 'as exported' };
  const edited = { ...exported, text: 'edited', changed: after(exported.changed) };
  const file = { entries: [exported], before: [], bad: [], phone: {} };
  const { fresh, newer, kept } = preview([edited], {}, file);
  assert.deepEqual([fresh.length, newer.length, kept], [0, 0, 1]);
});
