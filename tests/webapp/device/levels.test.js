/** The worklet's levels, run as the sound thread runs it: 128 samples at a time, at the rates that phones have. */
import assert from 'node:assert/strict';
import test from 'node:test';

/** What it tells of a sound. @param {Float32Array} sound @param {number} rate */
async function levels(sound, rate) {
  /** @type {number[][]} */
  const told = [[], [], []];
  /** @type {any} */
  let kind;
  Object.assign(globalThis, {
    sampleRate: rate,
    AudioWorkletProcessor: class {
      port = {
        postMessage: (/** @type {number[][]} */ bands) => {
          for (const [i, band] of bands.entries()) told[i].push(...band);
        },
      };
    },
    registerProcessor: (/** @type {string} */ _, /** @type {any} */ made) => (kind = made),
  });
  await import(`../../../webapp/device/levels.js?rate=${rate}&n=${Math.random()}`);
  const worklet = new kind();
  for (let at = 0; at < sound.length; at += 128) worklet.process([[sound.subarray(at, at + 128)]]);
  return told;
}

/** A tone of 0.5 from 0.2 s on. @param {number} hz @param {number} rate */
const tone = (hz, rate) =>
  Float32Array.from({ length: rate / 2 }, (_, i) => (i < rate / 5 ? 0 : 0.5 * Math.sin((2 * Math.PI * hz * i) / rate)));

for (const rate of [16_000, 44_100, 48_000]) {
  test(`each tone is in its own band, at ${rate} a second`, async () => {
    for (const [band, hz] of [200, 1600, 6000].entries()) {
      const told = await levels(tone(hz, rate), rate);
      const late = told.map((levels) => Math.max(...levels.slice(300, 400)));
      assert.ok(Math.abs(late[band] - 0.5) < 0.06, `${hz} Hz: ${late}`);
      for (const [other, level] of late.entries()) assert.ok(other === band || level < 0.35 * late[band], `${hz} Hz: ${late}`);
    }
  });

  test(`a moment is told to the millisecond, at ${rate} a second`, async () => {
    const sound = new Float32Array(rate);
    const at = Math.round(0.6123 * rate);
    for (let i = 0; i < 0.01 * rate; i++)
      sound[at + i] = 0.8 * Math.sin((2 * Math.PI * 2000 * i) / rate) * Math.exp((-i / rate) * 300);
    const [, middle] = await levels(sound, rate);
    const first = middle.findIndex((level) => level > 0.2);
    assert.ok(Math.abs(first - 612) <= 1, `${first}`);
  });
}
