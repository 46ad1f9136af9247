import assert from 'node:assert/strict';
import test from 'node:test';
import { createStore } from '../../../../webapp/store.js';

/** What the phone says aloud. @type {string[]} */
const spoken = [];
globalThis.navigator ??= {};
globalThis.document = { addEventListener() {}, hidden: false };
globalThis.speechSynthesis = { cancel() {}, speak: ({ words }) => spoken.push(words) };
globalThis.SpeechSynthesisUtterance = class {
  constructor(words) {
    this.words = words;
  }
};
const { actions } = await import('../../../../webapp/features/walk/actions.js');

const GREEN = {
  kind: 'green',
  id: 'g',
  at: '2026-05-03T17:30:00.000Z',
  changed: '2026-05-03T17:30:00.000Z',
  place: 'Larkmoor (invented)',
  text: '',
  name: 'Practice green',
  breadth_m: 12,
  length_m: 12,
  places: 25,
  points: [],
  holes: {},
};
const readings = (...beta) => beta.map((beta_deg) => ({ beta_deg, gamma_deg: 0.4, weight_s: 1 }));

/** A walk under way, and what its phone does. */
function walk(points = []) {
  spoken.length = 0;
  const store = createStore({
    screen: 'walk',
    entries: [{ ...GREEN, points }],
    engine: { kind: 'ready' },
    settings: { distance: 'ft', pace_m: 0.9144 },
    answers: {},
    refusals: {},
    walkPage: { page: 'walk', green: 'g', passed: [], lifted: true, tilt: { kind: 'off' }, draft: {}, texts: {} },
  });
  const record = {
    async change(id, patch) {
      store.change('written', {
        entries: store.state.entries.map((entry) => (entry.id === id ? { ...entry, ...patch(entry) } : entry)),
      });
      return true;
    },
  };
  const act = actions({ store, record });
  return {
    store,
    act,
    taken: () => store.state.entries[0].points,
    /** Lies, or moves, and the engine has said what it makes of it. */
    async feel(seconds, ...beta) {
      const felt = readings(...beta);
      const laid = { slope_percent: 2, fall_deg: 80, slope_sd_percent: 0.12, asked: { readings: felt } };
      store.change('tilt', {
        walkPage: { ...store.state.walkPage, tilt: { kind: 'live', seconds, readings: felt } },
        answers: { laid },
      });
      act.feel();
      await new Promise((resolve) => setTimeout(resolve));
    },
  };
}

test('a phone that has settled takes one reading, and says so and where to go next', async () => {
  const { feel, taken } = walk();
  await feel(1.5, 1, 1);
  assert.equal(taken().length, 0);
  await feel(2.5, 1, 1.1);
  assert.deepEqual(taken(), [{ x_m: 0.914, y_m: 0.914, slope_percent: 2, fall_deg: 80, sd_percent: 0.12 }]);
  assert.deepEqual(spoken, ['Taken. 1 on, 4 from the left']);
});

test('the same place is taken once: the phone has to be lifted', async () => {
  const { feel, taken } = walk();
  await feel(2.5, 1, 1);
  await feel(3, 1, 1);
  assert.equal(taken().length, 1);
  await feel(3, 1, 25);
  await feel(3, 25, 1.5);
  assert.equal(taken().length, 1);
  await feel(2.5, 1.5, 1.5);
  assert.equal(taken().length, 2);
  assert.equal(taken()[1].x_m, 3.658);
});

test('a hand that is nearly still takes nothing', async () => {
  const { feel, taken } = walk();
  await feel(3, 1, 1.2, 0.9, 1.4);
  assert.equal(taken().length, 0);
});

test('an answer of before the phone was laid here is not taken', async () => {
  const { store, act, taken } = walk();
  const laid = { slope_percent: 9, fall_deg: 0, slope_sd_percent: 0.12, asked: { readings: readings(5) } };
  const tilt = { kind: 'live', seconds: 3, readings: readings(1) };
  store.change('tilt', { walkPage: { ...store.state.walkPage, tilt }, answers: { laid } });
  act.feel();
  await new Promise((resolve) => setTimeout(resolve));
  assert.equal(taken().length, 0);
});

test('the last can be taken back, and a place passed over', async () => {
  const { feel, taken, act, store } = walk();
  await feel(2.5, 1, 1);
  await act.takeBack();
  assert.equal(taken().length, 0);
  act.pass();
  await feel(3, 1, 25);
  await feel(2.5, 1, 1);
  assert.equal(taken()[0].x_m, 3.658);
  assert.equal(store.state.walkPage.passed.length, 1);
});
