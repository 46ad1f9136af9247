import assert from 'node:assert/strict';
import test from 'node:test';
import { createEngine } from '../../../webapp/engine/client.js';

/** A worker that says what it is told to. */
class FakeWorker {
  /** @type {FakeWorker[]} */
  static all = [];
  asked = [];
  ended = false;
  constructor(_path, { name }) {
    this.manner = name;
    FakeWorker.all.push(this);
  }
  postMessage = (text) => this.asked.push(text);
  terminate = () => (this.ended = true);
  tell = (data) => this.onmessage({ data });
}
globalThis.Worker = FakeWorker;

/** An engine that is ready and has been asked something. */
function busy({ mock }) {
  FakeWorker.all = [];
  mock.timers.enable({ apis: ['setInterval'] });
  const engine = createEngine();
  const [worker] = FakeWorker.all;
  worker.tell({ kind: 'starting', from: 'files' });
  worker.tell({ kind: 'ready', from: 'files' });
  const answer = engine.ask('read', {}).then(String, ({ code }) => code);
  assert.equal(worker.asked.length, 1);
  return { engine, worker, answer, seconds: (count) => mock.timers.tick(count * 1000) };
}

test('a worker that is slow and gives signs of life is not dead', async (context) => {
  const { worker, answer, seconds } = busy(context);
  for (let i = 0; i < 9; i++) {
    seconds(6);
    worker.tell({ kind: 'alive' });
  }
  assert.equal(worker.ended, false);
  worker.tell({ kind: 'reply', reply: '{"ok":true,"value":"late"}' });
  assert.equal(await answer, 'late');
});

test('one that gives none is', async (context) => {
  const { worker, answer, seconds } = busy(context);
  seconds(8);
  assert.equal(worker.ended, true);
  assert.equal(await answer, 'engine_died');
  assert.equal(FakeWorker.all[1].manner, 'plain');
});

test('nor does one live for ever that goes round in circles', async (context) => {
  const { worker, answer, seconds } = busy(context);
  for (let i = 0; i < 10 && !worker.ended; i++) {
    seconds(6);
    if (!worker.ended) worker.tell({ kind: 'alive' });
  }
  assert.equal(worker.ended, true);
  assert.equal(await answer, 'engine_died');
});

test('a start over a poor network gives signs of life, and one that does not come up is begun anew when asked', (context) => {
  FakeWorker.all = [];
  context.mock.timers.enable({ apis: ['setInterval'] });
  const engine = createEngine();
  const [first] = FakeWorker.all;
  first.tell({ kind: 'starting', from: 'files' });
  for (let i = 0; i < 4; i++) {
    context.mock.timers.tick(19_000);
    first.tell({ kind: 'alive' });
  }
  assert.equal(first.ended, false);
  engine.restart();
  assert.equal(first.ended, true);
  assert.equal(FakeWorker.all.length, 2);
});
