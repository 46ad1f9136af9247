import assert from 'node:assert/strict';
import test from 'node:test';
import { createSound, render, schedule, VOICES } from '../../../webapp/device/sound.js';

const RATE = 8000;
/** Two strokes, the first of which begins the cycle. */
const TEMPO = {
  lead_s: 1,
  cycle_s: 2,
  total_s: 5,
  events: [
    { at_s: 0.5, kind: 'count', stroke: 0 },
    { at_s: 1, kind: 'start', stroke: 1 },
    { at_s: 1.6, kind: 'top', stroke: 1 },
    { at_s: 1.9, kind: 'impact', stroke: 1 },
    { at_s: 3, kind: 'start', stroke: 2 },
  ],
};

/** A sound card that notes what it is told. */
function soundCard() {
  const told = [];
  class Node {
    gain = { value: 1, setTargetAtTime: (...of) => told.push(['volume', ...of]) };
    constructor(_context, options) {
      Object.assign(this, options);
    }
    connect = (into) => into;
    start = (when) => told.push(['start', when]);
    stop = (when) => told.push(['stop', when]);
  }
  class Context extends EventTarget {
    state = 'running';
    currentTime = 10;
    outputLatency = 0.2;
    baseLatency = 0.01;
    destination = {};
    constructor({ sampleRate = RATE } = {}) {
      super();
      this.sampleRate = sampleRate;
    }
    createGain = () => new Node();
    createBuffer = (channels, length, rate) => ({
      channels,
      length,
      rate,
      copyToChannel: (samples) => told.push(['samples', samples]),
    });
    resume = async () => {};
  }
  Object.assign(globalThis, { AudioBufferSourceNode: Node, GainNode: Node, document: new EventTarget() });
  let context;
  globalThis.AudioContext = class extends Context {
    constructor(options) {
      super(options);
      context = this;
    }
  };
  globalThis.navigator ??= {};
  return { told, Context, context: () => context };
}

/** Where a sound begins: samples that are not silent after 50 ms that are. */
function begins(samples, rate) {
  const found = [];
  let silent = Infinity;
  samples.forEach((value, i) => {
    if (Math.abs(value) < 0.02) silent++;
    else {
      if (silent > rate * 0.02) found.push(i / rate);
      silent = 0;
    }
  });
  return found;
}

test('each note of the count-in and of one cycle is heard at its time, those of later cycles are not rendered', () => {
  const samples = render(TEMPO, RATE);
  assert.equal(samples.length, 3 * RATE);
  assert.deepEqual(begins(samples, RATE), [0.5, 1, 1.6, 1.9]);
  const at = (second) => samples[second * RATE];
  assert.ok(at(0.5) < at(1)); // the count is softer than a stroke
  assert.ok(at(1) < at(1.9)); // impact is the loudest
});

test('pitch rises from start over top to impact', () => {
  assert.ok(VOICES.start.hz < VOICES.top.hz && VOICES.top.hz < VOICES.impact.hz);
  // 660 Hz crosses nought 1320 times a second: 66 times in 50 ms
  const note = render(TEMPO, 48_000).slice(1.6 * 48_000, 1.65 * 48_000);
  const crossings = note.filter((value, i) => i && Math.sign(value) !== Math.sign(note[i - 1])).length;
  assert.ok(Math.abs(crossings - 66) <= 1, `${crossings}`);
});

test('the sound card repeats the cycle without the count-in, and ends after the last', () => {
  const { told, Context } = soundCard();
  const source = schedule(new Context(), TEMPO, {}, 7);
  assert.equal(source.loop, true);
  assert.deepEqual([source.loopStart, source.loopEnd], [1, 3]);
  assert.deepEqual(told.slice(1), [
    ['start', 7],
    ['stop', 12],
  ]);
});

test('what the ear has is behind what left the page: by the way out and by the headphones', async () => {
  const { told, context } = soundCard();
  const states = [];
  const sound = createSound((state) => states.push(state));
  assert.equal(sound.heard(0), null);
  await sound.play(TEMPO, 0.5);
  const began = told.find(([what]) => what === 'start')[1];
  assert.ok(began > 10);
  context().currentTime = began + 3;
  assert.ok(Math.abs(sound.heard(0) - 2.8) < 1e-9);
  assert.ok(Math.abs(sound.heard(0.25) - 2.55) < 1e-9);
  sound.stop();
  assert.equal(sound.heard(0), null);
  assert.deepEqual(states, ['playing', 'off']);
});

test('a chime is heard only where sound was allowed by a touch', async () => {
  const { told } = soundCard();
  const sound = createSound(() => {});
  sound.chime(1);
  assert.deepEqual(told, []);
  await sound.ready();
  sound.chime(1);
  const [, samples] = told.find(([what]) => what === 'samples');
  assert.equal(begins(samples, 48_000).length, 3);
});

test('where no sound comes out the row is kept in time all the same, from just after the touch', async (context) => {
  context.mock.timers.enable({ apis: ['setTimeout'] });
  const { Context } = soundCard();
  globalThis.AudioContext = class extends Context {
    resume = () => new Promise(() => {});
  };
  const states = [];
  const sound = createSound((state) => states.push(state));
  const playing = sound.play(TEMPO, 0.5);
  context.mock.timers.tick(1000);
  await playing;
  assert.deepEqual(states, ['silent']);
  assert.ok(sound.heard(0) > -0.16 && sound.heard(0) < -0.05, `${sound.heard(0)}`);
  context.mock.timers.tick(5200);
  assert.deepEqual(states, ['silent', 'off']);
});
