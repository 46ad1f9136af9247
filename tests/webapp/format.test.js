import assert from 'node:assert/strict';
import test from 'node:test';
import {
  aim,
  aimField,
  aimSpread,
  aimWords,
  chalkStep,
  clock,
  dayWords,
  distanceUnit,
  doesNotFit,
  fallWords,
  fieldOfView,
  fromText,
  inUnit,
  localTime,
  number,
  percent,
  sideOf,
  signed,
  smallUnit,
  timeWords,
  unitOf,
  withUnit,
} from '../../webapp/format.js';

const FEET = { distance: 'ft', aim: 'in', pace_m: 0.9144 };
const METRES = { ...FEET, distance: 'm', aim: 'cm' };
const NARROW = '\u00a0';

test('a foot is 0.3048 m, an inch 25.4 mm (international yard and pound agreement, 1959)', () => {
  assert.equal(withUnit(3.048, distanceUnit(FEET)), `10${NARROW}ft`);
  assert.equal(withUnit(0.254, smallUnit(FEET)), `10${NARROW}in`);
  assert.equal(withUnit(3.048, distanceUnit(METRES)), `3.05${NARROW}m`);
  assert.equal(withUnit(0.254, smallUnit(METRES)), `25${NARROW}cm`);
  assert.equal(withUnit(1.8288, distanceUnit({ ...FEET, distance: 'paces' })), `2${NARROW}paces`);
  assert.equal(inUnit(3.048 + 0.07 * 0.3048, distanceUnit(FEET)), '10.1');
  assert.equal(chalkStep(FEET).si, 0.3048);
  assert.equal(chalkStep(METRES).si, 0.25);
});

test('whoever aims in centimetres has small lengths in centimetres, whatever the distance is in', () => {
  assert.equal(smallUnit({ ...FEET, aim: 'cm' }).unit, 'cm');
  assert.equal(smallUnit({ ...FEET, distance: 'm' }).unit, 'cm');
  assert.equal(unitOf('past_m', FEET).unit, 'in');
});

test('a number has a true minus and no trailing noughts', () => {
  assert.equal(number(-1.5, 2), '−1.5');
  assert.equal(number(-0.001, 2), '0');
  assert.equal(number(2, 3), '2');
  assert.equal(signed(1.25, 1), '+1.3');
  assert.equal(signed(-1, 0), '−1');
  assert.equal(signed(0, 0), '0');
});

test('what is typed is read with either decimal sign and either minus; what is no number is none', () => {
  const feet = distanceUnit(FEET);
  for (const text of ['10', ' 10 ', '10.0', '10,0']) assert.equal(fromText(text, feet), 3.048);
  for (const text of ['-10', '−10']) assert.equal(fromText(text, feet), -3.048);
  assert.equal(fromText('.5', unitOf('slope_percent', FEET)), 0.5);
  for (const text of ['', '1e3', 'ten', '1.2.3', '-', '10 ft', 'Infinity']) assert.ok(Number.isNaN(fromText(text, feet)), text);
});

test('a refusal names the field, what was typed and what would do, in the unit of the player', () => {
  assert.equal(
    doesNotFit('Distance', '99', 0.3048, 30.48, distanceUnit(FEET)),
    `Distance takes 1 to 100${NARROW}ft; “99” does not fit.`,
  );
});

test('an aim in every unit: 10.8 cm is a hole (Rules of Golf, 108 mm) and 42.67 mm a ball', () => {
  const at = (unit, aim_offset_m, aim_deg = 0) => aim({ aim_deg, aim_offset_m }, { ...FEET, aim: unit });
  assert.deepEqual(at('in', -0.254), { number: '10', unit: 'in' });
  assert.deepEqual(at('in', 0.0508), { number: '2', unit: 'in' });
  assert.deepEqual(at('in', 0.0635), { number: '2.5', unit: 'in' });
  assert.deepEqual(at('cm', 0.123), { number: '12', unit: 'cm' });
  assert.deepEqual(at('cups', 0.216), { number: '2', unit: 'cups' });
  assert.deepEqual(at('cups', -0.108), { number: '1', unit: 'cup' });
  assert.deepEqual(at('balls', 0.064005), { number: '1.5', unit: 'balls' });
  assert.deepEqual(at('degrees', 0, -2.34), { number: '2.3', unit: '°' });
});

test('where the aim lies: the left is positive', () => {
  const words = (aim_offset_m) => aimWords({ aim_offset_m });
  assert.equal(words(0.2), 'left of the cup');
  assert.equal(words(-0.2), 'right of the cup');
  assert.equal(words(0.03), 'left of centre, in the cup');
  // half a hole is 54 mm; an eighth of a ball is 5.3 mm
  assert.equal(words(-0.053), 'right of centre, in the cup');
  assert.equal(words(-0.055), 'right of the cup');
  assert.equal(words(0.005), 'dead centre');
  assert.equal(words(0.0055), 'left of centre, in the cup');
  assert.equal(sideOf(-1), 'right');
});

test('a chance is never said to be certain', () => {
  assert.equal(percent(0.423), `42${NARROW}%`);
  assert.equal(percent(1), `>99${NARROW}%`);
  assert.equal(percent(0.004), `<1${NARROW}%`);
  assert.equal(percent(0.994), `99${NARROW}%`);
  assert.equal(percent(0.995), `>99${NARROW}%`);
  assert.equal(percent(0.005), `1${NARROW}%`);
});

test('which way a green falls, clockwise from straight downhill', () => {
  const said = {
    0: 'straight downhill',
    4: 'straight downhill',
    356: 'straight downhill',
    45: 'downhill, falls right',
    90: 'falls right',
    135: 'uphill, falls right',
    180: 'straight uphill',
    225: 'uphill, falls left',
    270: 'falls left',
    '-90': 'falls left',
    315: 'downhill, falls left',
    360: 'straight downhill',
    450: 'falls right',
  };
  for (const [deg, words] of Object.entries(said)) assert.equal(fallWords(Number(deg)), words, deg);
});

test('a clock shows the second that has begun', () => {
  assert.equal(clock(0), '0:00');
  assert.equal(clock(59.2), '1:00');
  assert.equal(clock(61), '1:01');
  assert.equal(clock(600), '10:00');
});

test('a lens of 26 mm sees 67.3° of the tall side of a picture of 3:4 (36 x 24 mm film, by its diagonal)', () => {
  // half the film's diagonal, 21.633 mm, times 4/5 is 17.307 mm; 2 atan(17.307 / 26) = 67.31°
  assert.ok(Math.abs(fieldOfView(26, { width: 3, height: 4 }) - 67.31) < 0.02);
});

test('a local time names the same moment', () => {
  const at = '2026-05-03T17:30:00.000Z';
  assert.equal(new Date(localTime(at)).toISOString(), at);
  assert.match(localTime(at), /^2026-05-0[34]T\d\d:\d\d:00\.000[+-]\d\d:\d\d$/);
});

test('a local time has the offset of its place: east is before Greenwich', () => {
  const { TZ } = process.env;
  const at = '2026-11-15T21:30:00.000Z';
  const there = {
    'Australia/Sydney': '2026-11-16T08:30:00.000+11:00',
    'America/St_Johns': '2026-11-15T18:00:00.000-03:30',
    UTC: '2026-11-15T21:30:00.000+00:00',
  };
  for (const [zone, said] of Object.entries(there)) {
    process.env.TZ = zone;
    assert.equal(localTime(at), said);
  }
  if (TZ === undefined) delete process.env.TZ;
  else process.env.TZ = TZ;
});

test('an aim is typed and shown where it meets the line through the hole: 3° at 3 m are 157 mm', () => {
  const inches = aimField({ distance: 'ft', aim: 'in' }, 3);
  assert.equal(inches.text(3), '6.2');
  assert.ok(Math.abs(inches.deg('6.19') - 3) < 0.01);
  assert.ok(inches.deg('-6.19') < -2.9);
  const degrees = aimField({ distance: 'ft', aim: 'degrees' }, 3);
  assert.deepEqual([degrees.text(3), degrees.deg('3')], ['3', 3]);
});

test('how far an aim may be off is rounded, and not said where it is not known', () => {
  const settings = { distance: 'ft', aim: 'in' };
  assert.equal(aimSpread({ aim_sd_deg: 1, aim_offset_sd_m: 2.2 * 0.0254 }, settings), '2');
  assert.equal(aimSpread({ aim_sd_deg: 1, aim_offset_sd_m: 0.42 * 0.0254 }, settings), '0.4');
  assert.equal(aimSpread({ aim_sd_deg: null, aim_offset_sd_m: 0.1 }, settings), '');
  assert.equal(aimSpread({ aim_sd_deg: 1, aim_offset_sd_m: null }, settings), '');
});

test('a pace is as long as the player’s own', () => {
  assert.equal(inUnit(8, distanceUnit({ distance: 'paces', aim: 'in', pace_m: 0.8 })), '10');
});

test('days and times are written as the language’s own formatter writes them', () => {
  const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
  const time = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
  for (let month = 0; month < 12; month++) {
    const when = new Date(2026, month, 3 + month, 2 * month, 5 * month);
    assert.equal(dayWords(when), day.format(when));
    assert.equal(timeWords(when.toISOString()), time.format(when));
  }
});

test('a day is the one that the player’s clock shows, west of Greenwich too', async () => {
  const { TZ } = process.env;
  process.env.TZ = 'America/St_Johns';
  const west = await import('../../webapp/format.js?west');
  assert.equal(west.dayOf('2026-05-04T01:00:00Z'), '2026-05-03');
  assert.equal(west.dayWords('2026-05-03'), '3 May 2026');
  if (TZ === undefined) delete process.env.TZ;
  else process.env.TZ = TZ;
});
