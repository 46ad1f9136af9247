import assert from 'node:assert/strict';
import test from 'node:test';
import { tiltMeasured } from '../../webapp/doubt.js';

const slope = (tilt_source, tilt_sd_percent) => ({ slope_percent: 2, fall_deg: 90, tilt_source, tilt_sd_percent });

test('a tilt that was measured is as sure as the least sure of its places; a guess is no measurement', () => {
  assert.equal(tiltMeasured(slope('level', 0.27)), 0.27);
  assert.equal(tiltMeasured({ stations: [slope('level', 0.1), slope('surveyed', 0.3)] }), 0.3);
  for (const guessed of [slope('felt', 0.5), slope('kept', 0.3), slope()]) assert.equal(tiltMeasured(guessed), null);
  assert.equal(tiltMeasured({ stations: [slope('level', 0.1), slope('felt', 0.5)] }), null);
});
