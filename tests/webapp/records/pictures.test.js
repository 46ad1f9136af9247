import assert from 'node:assert/strict';
import test from 'node:test';
import { BUDGET, checkPicture, fileOf, makeRoom, taken, withoutPicture } from '../../../webapp/records/pictures.js';

const AT = '2026-05-03T17:30:00.000Z';
const picture = (length) => `data:image/jpeg;base64,${'A'.repeat(length - 23)}`;
const putt = (id, length) => ({
  kind: 'putt',
  id,
  at: AT,
  changed: AT,
  ...(length ? { picture: picture(length) } : {}),
});

test('the oldest pictures make room, their putts stay, and no more go than have to', () => {
  const entries = [
    putt('new', BUDGET / 2),
    putt('bare'),
    { kind: 'note', id: 'n' },
    putt('old', BUDGET / 4),
    putt('oldest', 1000),
  ];
  assert.equal(taken(entries), BUDGET * 0.75 + 1000);
  assert.deepEqual(makeRoom(entries, BUDGET / 4 - 1000), []);
  assert.deepEqual(
    makeRoom(entries, BUDGET / 4).map(({ id, picture: left, changed }) => [id, left, changed > AT]),
    [['oldest', undefined, true]],
  );
  assert.deepEqual(
    makeRoom(entries, BUDGET / 2).map(({ id }) => id),
    ['oldest', 'old'],
  );
});

test('what was put into a book by hand takes room and is never the one to go', () => {
  const entries = [putt('new', BUDGET / 4), { ...putt('kept', BUDGET / 2), kind: 'worth' }];
  assert.equal(taken(entries), BUDGET * 0.75);
  assert.deepEqual(
    makeRoom(entries, BUDGET).map(({ id }) => id),
    ['new'],
  );
  assert.equal(withoutPicture(entries[1]).picture, undefined);
});

test('what is no JPEG is no picture', () => {
  assert.equal(checkPicture(picture(100)).length, 100);
  for (const wrong of [7, 'data:text/html;base64,AAAA', `${picture(100)}"><script>`, picture(300_000)])
    assert.throws(() => checkPicture(wrong), /picture is .*; it takes a JPEG/);
});

test('a picture goes out as the file that it was', async () => {
  const file = fileOf(`data:image/jpeg;base64,${btoa('\xff\xd8\x01')}`);
  assert.equal(file.type, 'image/jpeg');
  assert.deepEqual([...new Uint8Array(await file.arrayBuffer())], [0xff, 0xd8, 1]);
  assert.equal(withoutPicture(putt('a', 50)).picture, undefined);
});
