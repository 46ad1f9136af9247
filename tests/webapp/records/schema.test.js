import assert from 'node:assert/strict';
import test from 'node:test';
import { SETTINGS } from '../../../webapp/features/settings/kept.js';
import { isNewer, SCHEMA } from '../../../webapp/records/schema.js';
import { parts } from '../kept.js';

const { restore, toldIn } = parts;

test('nothing, and what is no record, become a fresh phone', () => {
  for (const data of [undefined, null, 7, 'x', [], {}, { schema: 0 }, { schema: '2' }]) {
    const { settings, putt, unkept, practice } = restore(data);
    assert.deepEqual(settings, SETTINGS);
    assert.equal(putt.distance_m, 3.048);
    assert.deepEqual(unkept, []);
    assert.equal(practice.run, null);
  }
});

test('what does not fit is left to its default, and takes nothing else with it', () => {
  const settings = { distance: 'm', aim: 'elbows', handed: 'left', stimp_ft: '11', past_m: Infinity };
  assert.deepEqual(restore({ schema: SCHEMA, settings }).settings, { ...SETTINGS, distance: 'm', handed: 'left' });
});

test('a list keeps its entries that fit', () => {
  const rolls = [
    { distance_m: 3, time_s: 2, way: 'out' },
    { distance_m: 3, time_s: 2, way: 'up' },
  ];
  assert.deepEqual(restore({ schema: SCHEMA, calibration: { rolls } }).calibration.rolls, rolls.slice(0, 1));
});

test('the putt of a fresh phone has the player’s own green', () => {
  const { putt } = restore({ schema: SCHEMA, settings: { stimp_ft: 12, past_m: 0.5 }, putt: { distance_m: 3 } });
  assert.equal(putt.stimp_ft, 12);
  assert.equal(putt.past_m, 0.5);
});

test('a session goes on only where its block is', () => {
  const run = { session: 's', block: 1, spent_s: 5, paused: false, good: 0, bad: 0 };
  const block = { drill: 'gate', minutes: 5, why: '', instead: [] };
  const runOf = (blocks) => restore({ schema: SCHEMA, practice: { blocks, run } }).practice.run;
  assert.deepEqual(runOf([block, block]), run);
  assert.equal(runOf([block]), null);
});

test('the caution stands until it was accepted', () => {
  assert.equal(restore({ schema: SCHEMA, cautioned: 'yes' }).cautioned, false);
  assert.equal(restore({ schema: SCHEMA, cautioned: true }).cautioned, true);
});

test('what a newer app kept is not read', () => {
  const data = { schema: SCHEMA + 1, settings: { ...SETTINGS, handed: 'left' } };
  assert.ok(isNewer(data));
  assert.ok(!isNewer({ schema: SCHEMA }));
  assert.equal(restore(data).settings.handed, 'right');
});

test('a part of a file is taken whole or not at all', () => {
  const { good, bad } = toldIn({ settings: { handed: 'left', mood: 1 }, player: { pace_sd_fraction: 'much' }, sighted: 3 });
  assert.deepEqual(good, { settings: { handed: 'left' } });
  assert.deepEqual(bad, ['player', 'sighted']);
});

test('a player of before gets the misread of the preset, a typed one keeps its own', () => {
  const of = (player, felt) => restore({ schema: 3, player, felt }).player.slope_sd_percent;
  assert.equal(of({ start_line_sd_deg: 1, pace_sd_fraction: 0.065, slope_sd_percent: 0 }), 0.31);
  assert.equal(of({ start_line_sd_deg: 1, pace_sd_fraction: 0.065, slope_sd_percent: 0.87 }), 0.31); // of a slope measured once
  assert.equal(of({ start_line_sd_deg: 1.5, pace_sd_fraction: 0.085, slope_sd_percent: 0 }), 0.61);
  assert.equal(of({ start_line_sd_deg: 1.2, pace_sd_fraction: 0.08, slope_sd_percent: 0.5 }), 0.5);
  assert.equal(of({ start_line_sd_deg: 1.2, pace_sd_fraction: 0.08, slope_sd_percent: 0 }), 0.31);
});

test('a slope that was felt keeps its spread when an older version is left', () => {
  const felt = {
    felt_percent: 2,
    fall: 'right',
    slope_percent: 2.3,
    slope_sd_percent: 0.7,
    correction_percent: 0.3,
    trials: 8,
  };
  const putt = { distance_m: 3, slope_percent: 2.3, fall_deg: 90, stimp_ft: 10, past_m: 0.3 };
  assert.deepEqual(restore({ schema: 3, putt, felt }).putt, { ...putt, tilt_source: 'felt', tilt_sd_percent: 0.7 });
  assert.deepEqual(restore({ schema: 3, putt }).putt, putt);
});

test('an aim at arm’s length becomes inches, and a screen that nobody chose follows the phone', () => {
  const { settings } = restore({ schema: 3, settings: { ...SETTINGS, aim: 'arm', theme: 'dark', arm_m: 0.66 } });
  assert.equal(settings.aim, 'in');
  assert.equal(settings.theme, 'dark');
  assert.equal(restore({ schema: 3, settings: { ...SETTINGS, theme: 'light' } }).settings.theme, 'system');
  assert.equal(restore({ schema: SCHEMA, settings: { ...SETTINGS, theme: 'light' } }).settings.theme, 'light');
});

test('a source without its spread is no putt', () => {
  const putt = { distance_m: 3, slope_percent: 2, fall_deg: 90, stimp_ft: 11.5, past_m: 0.3, tilt_source: 'level' };
  assert.notEqual(restore({ schema: SCHEMA, putt }).putt.stimp_ft, 11.5);
  const whole = { ...putt, tilt_sd_percent: 0.4 };
  assert.deepEqual(restore({ schema: SCHEMA, putt: whole }).putt, whole);
  assert.notEqual(restore({ schema: SCHEMA, putt: { ...whole, tilt_source: 'guessed' } }).putt.stimp_ft, 11.5);
});
