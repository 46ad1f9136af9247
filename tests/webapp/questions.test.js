import assert from 'node:assert/strict';
import test from 'node:test';
import { keepAsking } from '../../webapp/questions.js';
import { createStore } from '../../webapp/store.js';

/** What is asked, and its replies when the test gives them. */
function app(question, state = {}) {
  const store = createStore({ engine: { kind: 'ready' }, answers: {}, refusals: {}, n: 1, wanted: true, ...state });
  const asked = [];
  const engine = {
    ask: (name, fields, { signal, onShare }) =>
      new Promise((resolve, reject) => asked.push({ name, fields, signal, onShare, resolve, reject })),
  };
  keepAsking({ store, engine }, [
    { into: 'double', ask: 'twice', when: ({ wanted }) => wanted, fields: ({ n }) => (n === null ? null : { n }), ...question },
  ]);
  return { store, asked, set: (patch) => store.change('test', patch) };
}
const settled = () => new Promise((resolve) => setImmediate(resolve));
const of = (asked) => asked.map(({ fields }) => fields.n);

test('it is asked when it is wanted, and once: the answer stands with what was asked', async () => {
  const { store, asked, set } = app({}, { wanted: false });
  assert.deepEqual(asked, []);
  set({ wanted: true });
  set({ other: 1 });
  assert.deepEqual([asked.length, asked[0].name, asked[0].fields], [1, 'twice', { n: 1 }]);
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual(store.state.answers, { double: { is: 2, asked: { n: 1 } } });
  set({ other: 2 });
  assert.equal(asked.length, 1);
});

test('no answer lands under newer fields, and of those in between only the newest are asked', async () => {
  const { store, asked, set } = app({});
  set({ n: 2 });
  set({ n: 3 });
  assert.deepEqual(of(asked), [1]);
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual(store.state.answers, {});
  assert.deepEqual(of(asked), [1, 3]);
  asked[1].resolve({ is: 6 });
  await settled();
  assert.deepEqual(store.state.answers.double, { is: 6, asked: { n: 3 } });
});

test('an answer does not stand when its fields have changed', async () => {
  const { store, asked, set } = app({});
  asked[0].resolve({ is: 2 });
  await settled();
  set({ n: 2, answers: { ...store.state.answers, another: {} } });
  assert.deepEqual(store.state.answers, { another: {} });
  assert.deepEqual(of(asked), [1, 2]);
  asked[1].reject({ code: 'no_putt' });
  await settled();
  set({ n: 3 });
  assert.deepEqual(store.state.refusals, {});
});

test('under the finger the newest answer stands until the next one comes', async () => {
  const { store, asked, set } = app({ follows: true });
  set({ n: 2 });
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual(store.state.answers.double, { is: 2, asked: { n: 1 } });
  assert.deepEqual(of(asked), [1, 2]);
  asked[1].resolve({ is: 4 });
  await settled();
  set({ n: 3 });
  assert.deepEqual(store.state.answers.double, { is: 4, asked: { n: 2 } });
  set({ n: null });
  asked[2].resolve({ is: 6 });
  await settled();
  assert.deepEqual(store.state.answers, {});
});

test('with nothing to ask no answer stands, and nothing is asked', async () => {
  const { store, asked, set } = app({});
  asked[0].resolve({ is: 2 });
  await settled();
  set({ n: null });
  assert.deepEqual(store.state.answers, {});
  assert.equal(asked.length, 1);
  set({ n: 1 });
  assert.deepEqual(of(asked), [1, 1]);
});

test('a refusal stands in the place of the answer, and an answer in the place of the refusal', async () => {
  const { store, asked, set } = app({ follows: true });
  asked[0].resolve({ is: 2 });
  await settled();
  set({ n: 2 });
  asked[1].reject({ code: 'no_putt', message: 'no' });
  await settled();
  assert.deepEqual(store.state.refusals, { double: { code: 'no_putt', message: 'no' } });
  assert.equal(store.state.answers.double, undefined);
  set({ n: 3 });
  asked[2].resolve({ is: 6 });
  await settled();
  assert.equal(store.state.refusals.double, undefined);
  assert.equal(store.state.answers.double.is, 6);
});

test('what was refused is asked once more when it is wanted once more, and what was answered is not', async () => {
  const { asked, set } = app({});
  asked[0].reject({ code: 'no_putt' });
  await settled();
  set({ other: 1 });
  assert.equal(asked.length, 1);
  set({ wanted: false });
  set({ wanted: true });
  assert.equal(asked.length, 2);
  asked[1].resolve({ is: 2 });
  await settled();
  set({ wanted: false });
  set({ wanted: true });
  assert.equal(asked.length, 2);
});

test('where the engine dies it is asked again once the engine is back, and the death is no refusal', async () => {
  const { store, asked, set } = app({});
  set({ engine: { kind: 'restarting' } });
  asked[0].reject({ code: 'engine_lost' });
  await settled();
  assert.deepEqual([of(asked), store.state.refusals], [[1], {}]);
  set({ n: 2 });
  assert.deepEqual(of(asked), [1]);
  set({ engine: { kind: 'ready' } });
  assert.deepEqual(of(asked), [1, 2]);
});

test('an engine that starts is asked at once: it answers when it is there', () => {
  assert.deepEqual(of(app({}, { engine: { kind: 'starting' } }).asked), [1]);
  assert.deepEqual(of(app({}, { engine: { kind: 'failed' } }).asked), []);
});

test('one that takes long tells its share, stops when it is wanted no longer, and begins anew', async () => {
  const { store, asked, set } = app({ share: (share) => ({ share }) });
  assert.equal(store.state.share, 0);
  asked[0].onShare(0.4);
  assert.equal(store.state.share, 0.4);
  set({ wanted: false });
  assert.ok(asked[0].signal.aborted);
  asked[0].onShare(0.5);
  assert.equal(store.state.share, 0.4);
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual(store.state.answers, {});
  set({ wanted: true });
  assert.deepEqual([of(asked), store.state.share], [[1, 1], 0]);
  set({ n: 2 });
  assert.ok(asked[1].signal.aborted);
});

test('one that does not tell its share is not stopped: its answer is there when it is wanted again', async () => {
  const { store, asked, set } = app({});
  set({ wanted: false });
  assert.ok(!asked[0].signal.aborted);
  asked[0].resolve({ is: 2 });
  await settled();
  assert.equal(store.state.answers.double.is, 2);
});

test('fields are made only when what they hang on has changed', async () => {
  let made = 0;
  const fields = ({ n }) => {
    made++;
    return { n };
  };
  const { asked, set } = app({ on: ({ n, wanted }) => [n, wanted], fields });
  asked[0].resolve({ is: 2 });
  await settled();
  const before = made;
  set({ other: 1 });
  set({ other: 2 });
  assert.equal(made, before);
  set({ n: 2 });
  assert.deepEqual(of(asked), [1, 2]);
});

test('it lands where it says, a refusal too', async () => {
  const { store, asked, set } = app({
    lands: ({ is }, { n }, { other }) => ({ own: [is, n, other] }),
    refused: ({ code }, { n }, { other }) => ({ unfound: [code, n, other] }),
  });
  set({ other: 'here' });
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual([store.state.own, store.state.answers], [[2, 1, 'here'], {}]);
  set({ n: 2 });
  asked[1].reject({ code: 'too_few' });
  await settled();
  assert.deepEqual([store.state.unfound, store.state.refusals], [['too_few', 2, 'here'], {}]);
});

test('what the engine was dying over is asked again though nothing else has changed', async () => {
  const { asked, set } = app({});
  set({ engine: { kind: 'restarting' } });
  asked[0].reject({ code: 'engine_died' });
  await settled();
  set({ engine: { kind: 'ready' } });
  assert.deepEqual(of(asked), [1, 1]);
});

test('no refusal lands under newer fields', async () => {
  const { store, asked, set } = app({});
  set({ n: 2 });
  asked[0].reject({ code: 'no_putt' });
  await settled();
  assert.deepEqual(store.state.refusals, {});
  assert.deepEqual(of(asked), [1, 2]);
});

test('what it hangs on may change while it is asked: it is asked anew', async () => {
  const { asked, set } = app({ on: ({ n }) => [n] });
  set({ n: 2 });
  asked[0].resolve({ is: 2 });
  await settled();
  assert.deepEqual(of(asked), [1, 2]);
});
