import assert from 'node:assert/strict';
import test from 'node:test';
import { toCsv } from '../../../webapp/records/table.js';
import { fromFile as fileOf, preview, toJson } from '../../../webapp/records/transfer.js';
import { parts } from '../kept.js';

const fromFile = (text) => fileOf(text, parts);

const PUTT = {
  kind: 'putt',
  id: 'a',
  at: '2026-05-03T17:30:00.000Z',
  changed: '2026-05-03T18:00:00.000Z',
  place: 'Lower green, "the bowl"',
  text: 'two\nlines, with a comma',
  distance_m: 3,
  stimp_ft: 10,
  past_m: 0.3,
  aim_deg: -1.5,
  slope_percent: 2,
  fall_deg: 90,
  result: { x_m: 0.4, y_m: -0.1 },
  gate: 'clean',
};
const { slope_percent, fall_deg, ...LEVEL } = PUTT;
const STATIONS = { ...LEVEL, id: 'b', stations: [{ at_m: 0, slope_percent: 1, fall_deg: 60 }], result: 'holed' };
const NOTE = { kind: 'note', id: 'n', at: PUTT.at, changed: PUTT.changed, place: 'x', text: 'dry', stimp_ft: 9.5 };
const NOTHING = { entries: [], before: [], bad: [], phone: {} };

test('what is written as JSON comes back as it was', () => {
  const back = fromFile(toJson([PUTT, STATIONS, NOTE], [{ ...PUTT, text: 'before' }], { settings: { handed: 'left' } }));
  assert.deepEqual(back.entries, [PUTT, STATIONS, NOTE]);
  assert.equal(back.before[0].text, 'before');
  assert.deepEqual(back.phone, { settings: { handed: 'left' } });
  assert.deepEqual(back.bad, []);
});

test('where slope and speed came from goes with the putt, in both kinds of file', () => {
  const told = { tilt_source: 'level', tilt_sd_percent: 0.4 };
  const putt = { ...PUTT, ...told, stimp_source: 'rolls', stimp_sd_ft: 0.3 };
  const places = { ...STATIONS, stations: [{ ...STATIONS.stations[0], ...told }], stimp_source: 'kept', stimp_sd_ft: 0.8 };
  const note = { ...NOTE, stimp_sd_ft: 0.3, stimp_source: 'stimpmeter' };
  assert.deepEqual(fromFile(toJson([putt, places, note], [], {})).entries, [putt, places, note]);
  assert.deepEqual(fromFile(toCsv([putt, places])).entries, [putt, places]);
  const { bad } = fromFile(toJson([{ ...putt, tilt_source: 'guess' }], [], {}));
  assert.match(bad[0], /tilt_source is "guess"; it takes felt, level/);
});

test('a file of version 3 tells of a player without a misread', () => {
  const player = { start_line_sd_deg: 1.5, pace_sd_fraction: 0.085, slope_sd_percent: 0 };
  const text = toJson([PUTT], [], { player, settings: { aim: 'arm' } }).replace('"version": 5', '"version": 3');
  const { phone } = fromFile(text);
  assert.equal(phone.player.slope_sd_percent, 0.61);
  assert.equal(phone.settings.aim, 'in');
});

test('putts come back from CSV with their commas, quotes, line ends and stations', () => {
  const text = toCsv([PUTT, NOTE, STATIONS]);
  assert.match(text, /^id,at,changed,place,text,distance_m,/);
  assert.match(text, /\r\n$/);
  assert.match(text, /"Lower green, ""the bowl"""/);
  assert.deepEqual(fromFile(text), { ...NOTHING, table: true, entries: [PUTT, STATIONS] });
  assert.deepEqual(fromFile(`\ufeff${text}`).entries, [PUTT, STATIONS]); // as a spreadsheet begins it
});

test('a bad line is named by its number in the file and takes no other with it', () => {
  const lines = [
    'id,at,distance_m,stimp_ft,slope_percent,fall_deg,past_m,aim_deg,result',
    'a,2026-05-03T17:30:00Z,3,10,2,90,0.3,1,holed',
    'b,2026-05-03T17:30:00Z,99,10,2,90,0.3,1,holed',
    'c,2026-05-03T17:30:00Z,3,10,2,90,0.3,1',
    'd,2026-05-03T17:30:00Z,three,10,2,90,0.3,1,holed',
    'e,2026-05-03T17:30:00Z,3,10,2,90,0.3,1,holed',
  ];
  const { entries, bad } = fromFile(lines.join('\n'));
  assert.deepEqual(
    entries.map(({ id }) => id),
    ['a', 'e'],
  );
  assert.equal(bad.length, 3);
  assert.match(bad[0], /^Line 3: distance_m is 99; it takes a number from 0\.3 to 30/);
  assert.match(bad[1], /^Line 4: it has 8 cells; the first line has 9/);
  assert.match(bad[2], /^Line 5: distance_m is "three"/);
});

test('a flag may be in capitals; another word is refused', () => {
  const head = 'id,at,distance_m,stimp_ft,slope_percent,fall_deg,past_m,aim_deg,result,sample';
  const row = 'a,2026-05-03T17:30:00Z,3,10,2,90,0.3,1,holed';
  assert.equal(fromFile(`${head}\n${row},TRUE`).entries[0].sample, true);
  assert.equal(fromFile(`${head}\n${row},FALSE`).entries[0].sample, undefined);
  assert.match(fromFile(`${head}\n${row},yes`).bad[0], /^Line 2: sample is "yes"/);
});

test('what is no record is said to be none', () => {
  assert.throws(() => fromFile('{"format": "borrowline-rec'), /cut off/);
  assert.throws(() => fromFile('{"format": "other", "entries": []}'), /no record/);
  assert.throws(() => fromFile('{"format": "borrowline-record", "version": 1.5, "entries": []}'), /version is none/);
  assert.throws(() => fromFile('{"format": "borrowline-record", "version": 99, "entries": []}'), /newer Borrowline/);
  const next = { ...JSON.parse(toJson([], [], {})), version: JSON.parse(toJson([], [], {})).version + 1 };
  assert.throws(() => fromFile(JSON.stringify(next)), /newer Borrowline/);
  assert.throws(() => fromFile('a,b\n1,2'), /names no distance_m/);
  assert.throws(() => fromFile('distance_m,result,mood\n'), /names mood/);
});

test('a file of version 2 had drill results and green speeds elsewhere', () => {
  const drill = { id: 'd', date: PUTT.at, session: 's', drill: 'tee_gate', spent_s: 60, good: 3, bad: 1 };
  const speed = { place: 'Lower green', date: '2026-05-03', stimp_ft: 9.4, stimp_sd_ft: 0.3 };
  const file = {
    format: 'borrowline-record',
    version: 2,
    entries: [PUTT],
    drills: [drill],
    phone: { calibration: { speeds: [speed] } },
  };
  const { entries } = fromFile(JSON.stringify(file));
  assert.deepEqual(
    entries.map(({ kind }) => kind),
    ['putt', 'drill', 'note'],
  );
  assert.equal(entries[1].name, 'tee gate');
  assert.equal(entries[2].stimp_ft, 9.4);
});

test('of one entry the newer wins, and what is the same stays', () => {
  const earlier = { ...PUTT, changed: '2026-05-01T00:00:00.000Z' };
  const own = {};
  const counts = (held, file) => {
    const { fresh, newer, kept } = preview(held, own, { ...NOTHING, entries: file });
    return [fresh.length, newer.length, kept];
  };
  assert.deepEqual(counts([], [PUTT, STATIONS]), [2, 0, 0]);
  assert.deepEqual(counts([earlier], [PUTT]), [0, 1, 0]);
  assert.deepEqual(counts([PUTT], [earlier]), [0, 0, 1]);
  assert.deepEqual(counts([PUTT], [PUTT]), [0, 0, 1]);
  assert.deepEqual(preview([], own, { ...NOTHING, entries: [PUTT, earlier] }).fresh, [PUTT]);
});

test('a walked green comes back from a file, and one that does not fit is named', () => {
  const point = { x_m: 1, y_m: 2, slope_percent: 1.8, fall_deg: 95, sd_percent: 0.12 };
  const head = { kind: 'green', id: 'g', at: PUTT.at, changed: PUTT.changed, place: 'Larkmoor (invented)', text: '' };
  const green = {
    ...head,
    name: 'Lower',
    breadth_m: 12,
    length_m: 14,
    places: 25,
    points: [point],
    holes: { '2026-05-03': [3, 4] },
  };
  assert.deepEqual(fromFile(toJson([green], [], {})).entries, [green]);
  for (const wrong of [
    { points: [{ ...point, slope_percent: 21 }] },
    { points: Array(121).fill(point) },
    { holes: { today: [3, 4] } },
    { holes: { '2026-05-03': [3] } },
    { breadth_m: 0 },
    { places: 2.5 },
  ]) {
    const { entries, bad } = fromFile(toJson([{ ...green, ...wrong }], [], {}));
    assert.deepEqual([entries.length, bad.length], [0, 1], JSON.stringify(wrong));
    assert.match(bad[0], new RegExp(Object.keys(wrong)[0]));
  }
});

test('a row that was edited in a table counts as newer, though its time of change stands', () => {
  const text = toCsv([PUTT, STATIONS]).replace('-1.5', '-2.5');
  const { edited, kept, newer, fresh } = preview([PUTT, STATIONS], {}, fromFile(text));
  assert.deepEqual(
    edited.map(({ id, aim_deg }) => [id, aim_deg]),
    [['a', -2.5]],
  );
  assert.ok(edited[0].changed > PUTT.changed);
  assert.deepEqual([kept, newer.length, fresh.length], [1, 0, 0]);
});

test('what a spreadsheet rounds is no edit', () => {
  const long = { ...PUTT, distance_m: 3.0480000000000005 };
  const { edited } = preview([long], {}, fromFile(toCsv([long]).replace('3.0480000000000005', '3.048')));
  assert.deepEqual(edited, []);
});

test('semicolons and decimal commas are read', () => {
  const text = 'id;at;distance_m;stimp_ft;slope_percent;fall_deg;past_m;aim_deg;result;x_m;y_m\n';
  const { entries, bad } = fromFile(`${text}a;2026-05-03T17:30:00Z;3,5;10;2,5;90;0,3;1;missed;-0,4;0,2\n`);
  assert.deepEqual(bad, []);
  assert.deepEqual([entries[0].distance_m, entries[0].slope_percent, entries[0].result], [3.5, 2.5, { x_m: -0.4, y_m: 0.2 }]);
});

test('distance and result alone are putts without a read, and the same ones when they come again', () => {
  const text = 'distance_ft,result\n10,Holed\n10,Holed\n20,missed\n';
  const { entries, bad } = fromFile(text);
  assert.deepEqual(bad, []);
  assert.equal(new Set(entries.map(({ id }) => id)).size, 3);
  assert.ok(entries.every((entry) => !('read' in entry) && !('stimp_ft' in entry)));
  assert.deepEqual(
    entries.map(({ distance_m, result }) => [Number(distance_m.toFixed(4)), result]),
    [
      [3.048, 'holed'],
      [3.048, 'holed'],
      [6.096, 'missed'],
    ],
  );
  const then = entries.map((entry) => ({ ...entry, at: PUTT.at, changed: PUTT.changed }));
  const { fresh, newer, edited } = preview(then, {}, fromFile(text));
  assert.deepEqual([fresh, newer, edited], [[], [], []]);
});

test('a text that a spreadsheet takes for a formula is harmless, and comes back whole', () => {
  const texts = ['=1+1', '+a', '-b', '@c', "'=d", "'e", "''=f"];
  const putts = texts.map((text, i) => ({ ...PUTT, id: `p${i}`, text }));
  const table = toCsv(putts);
  assert.ok(!/,"?[=+@]/.test(table));
  assert.deepEqual(
    fromFile(table).entries.map(({ text }) => text),
    texts,
  );
});

test('settings are offered only where they differ from the phone’s own', () => {
  const phone = { settings: { distance: 'm', aim: 'cm' } };
  const file = { entries: [], before: [], bad: [], phone };
  assert.equal(preview([], structuredClone(phone), file).phone, null);
  assert.deepEqual(preview([], { settings: { distance: 'ft', aim: 'cm' } }, file).phone, phone);
});

test('what differs in a file of one’s own at the same time of change is no edit: only a table is edited by hand', () => {
  const file = { ...NOTHING, entries: [{ ...PUTT, text: 'other' }] };
  assert.equal(preview([PUTT], {}, file).edited.length, 0);
  assert.equal(preview([PUTT], {}, { ...file, table: true }).edited.length, 1);
});

test('a file of another player is named, where there is an own record that it would mix with', () => {
  const file = { ...NOTHING, phone: { settings: { name: 'Ada' } } };
  const stranger = (own, name) => preview(own, { settings: { name } }, file).stranger;
  assert.equal(stranger([PUTT], 'Bea'), true);
  assert.equal(stranger([PUTT], 'Ada'), false);
  assert.equal(stranger([{ ...PUTT, sample: true }], 'Bea'), false);
  assert.equal(preview([PUTT], { settings: { name: 'Bea' } }, NOTHING).stranger, false);
});

test('a table holds no pictures, and takes none away', () => {
  const seen = { ...PUTT, picture: 'data:image/jpeg;base64,AAAA' };
  assert.deepEqual(fromFile(toJson([seen], [], {})).entries, [seen]);
  const table = toCsv([seen]);
  assert.deepEqual(preview([seen], {}, fromFile(table)).edited, []);
  const [edited] = preview([seen], {}, fromFile(table.replace(',-1.5,', ',-2.5,'))).edited;
  assert.deepEqual([edited.aim_deg, edited.picture], [-2.5, seen.picture]);
});
