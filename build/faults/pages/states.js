/**
 * What a player does in each state in which the app is killed, what the screen says meanwhile, and what is kept.
 *
 * `acts` does one step each time it is called, with a number that rises. `shows` tells how far the screen says that things are,
 * or null. `held` tells the same of what is kept, and what is wrong with it, in round `turn`.
 */

const IMPORTED = 400;
const NOTE = 'Ball after ball toward the rise. '.repeat(8);
const AT = '2026-05-03T17:30:00.000Z';
const find = (selector) => document.querySelector(selector);
const click = (selector) => find(selector)?.click();
const press = (words) =>
  [...document.querySelectorAll('button')].find(({ textContent }) => textContent.includes(words))?.click();
const near = (a, b) => Math.abs(a - b) < 1e-9;
/** What the import of a round sets. @param {number} turn */
const paceOf = (turn) => 0.5 + (turn % 40) / 100;

function type(selector, text, event) {
  const input = find(selector);
  if (!input) return;
  input.value = text;
  input.dispatchEvent(new Event(event, { bubbles: true }));
}

async function kept() {
  const db = await import('/records/db.js');
  const [all, marks] = await Promise.all([db.readAll(), db.readMarks()]);
  return { all, marks };
}

/** A session's blocks that are over, and where it stands: each block is one entry, and the session is in the next one. */
async function session() {
  const { all, marks } = await kept();
  const drills = all.filter(({ kind }) => kind === 'drill');
  const { run } = marks;
  const id = run?.session ?? drills[0]?.session;
  const done = drills.filter((each) => each.session === id);
  const wrong = [];
  if (run && done.length !== run.block) wrong.push(`${done.length} blocks are over, and the session is in block ${run.block}`);
  if (!run && done.length > marks.practice.blocks.length)
    wrong.push(`${done.length} blocks of ${marks.practice.blocks.length}`);
  return { run, done, wrong };
}
async function counted() {
  const { run, wrong } = await session();
  return { value: run?.good ?? 0, wrong };
}
async function blocks() {
  const { run, done, wrong } = await session();
  return { value: run ? run.block : done.length, wrong };
}
const count = () => (find('.run-counts .good .big') ? Number(find('.run-counts .good .big').textContent) : null);
const GOOD = '.run-counts .good';
const SKIP = '.run-does [aria-keyshortcuts=n]';

/** The entries of a round's file, and its settings, are there or not. @param {number} turn */
async function taken(turn) {
  const { all, marks } = await kept();
  const there = all.filter(({ id }) => id.startsWith(`import ${turn} `)).length;
  const wrong = [];
  if (there % IMPORTED) wrong.push(`${there} of ${IMPORTED} are there`);
  if (near(marks.settings.pace_m, paceOf(turn)) !== there > 0) wrong.push('settings and entries came apart');
  return { there: there > 0, wrong };
}

const twice = (list) => (list.length > new Set(list).size ? ['something is there twice'] : []);

export const STATES = {
  running: { acts: () => click(GOOD), shows: count, held: counted },
  paused: { acts: (step) => (step < 8 ? click(GOOD) : step === 8 && click('.go')), shows: count, held: counted },
  between: {
    acts: (step) => click(step % 2 ? SKIP : GOOD),
    shows: () => (find('.run-head .over') ? Number.parseInt(find('.run-head .over').textContent, 10) - 1 : null),
    held: blocks,
  },
  finished: {
    acts: (step) => step < 2 && click(step ? SKIP : GOOD),
    shows: () => document.querySelectorAll('.costs tbody tr').length || null,
    held: blocks,
  },
  settings: {
    acts: (step) => type('#stimp_ft', String(5 + (step + 1) / 10), 'change'),
    shows: () => Math.round(10 * (find('#stimp_ft').value - 5)),
    held: async () => ({ value: Math.round(10 * ((await kept()).marks.settings.stimp_ft - 5)), wrong: [] }),
  },
  calibration: {
    acts(step) {
      if (step % 2) return press('Keep this roll');
      type('#time_s', '3', 'change');
      type('#distance_m', '3', 'change');
    },
    shows: () => document.querySelectorAll('[aria-label^="Remove roll"]').length,
    held: async () => ({ value: (await kept()).marks.calibration.rolls.length, wrong: [] }),
  },
  writing: {
    acts: (step) => type('#note-text', NOTE.slice(0, step + 1), 'input'),
    shows: () => find('#note-text').value.length,
    async held() {
      const { text } = (await kept()).marks.draft;
      return { value: text.length, wrong: NOTE.startsWith(text) ? [] : ['other words'] };
    },
  },
  noted: {
    acts: (step) => (step % 2 ? click('form.note [type=submit]') : type('#note-text', `note ${step / 2 + 1}`, 'input')),
    shows: () => (find('.said') ? Number(find('.entry-what')?.textContent.match(/note (\d+)/)?.[1] ?? 0) : null),
    async held() {
      const { all, marks } = await kept();
      const notes = all.filter(({ text }) => text.startsWith('note ')).map(({ text }) => text);
      const both = notes.includes(marks.draft.text) ? ['a note that is kept is still being written'] : [];
      return { value: notes.length, wrong: [...twice(notes), ...both] };
    },
  },
  logged: {
    acts(step) {
      const form = find('form.typed');
      form.elements.x_m.value = String(10 + step);
      form.elements.y_m.value = '0';
      form.requestSubmit();
    },
    shows: () => Number(find('.logged-line strong')?.textContent.match(/\d+/)?.[0] ?? 9) - 9 || null,
    async held() {
      const putts = (await kept()).all.filter(({ kind }) => kind === 'putt');
      return { value: putts.length, wrong: twice(putts.map(({ result }) => result.x_m)) };
    },
  },
  watched: {
    acts() {},
    shows: () => Number(find('.seen-putt')?.textContent.match(/(\d+) seen here/)?.[1] ?? 0) || null,
    async held() {
      const putts = (await kept()).all.filter(({ kind }) => kind === 'putt');
      const bare = putts.filter(({ launch_mps, picture }) => !launch_mps || !picture);
      const wrong = bare.length ? [`${bare.length} putts without what was seen`] : [];
      return { value: putts.length, wrong: [...wrong, ...twice(putts.map(({ launch_mps }) => launch_mps))] };
    },
  },
  importing: {
    acts: (step) => step || press('replace settings'),
    shows: () => (find('.said')?.textContent.includes(' new') ? 1 : null),
    async held(turn) {
      const { there, wrong } = await taken(turn);
      return { value: there ? 1 : 0, wrong };
    },
  },
  erasing: {
    acts: (step) => step || press('Yes, delete everything'),
    shows: () => (find('.said')?.textContent.includes('is deleted') ? 1 : null),
    async held(turn) {
      const { there, wrong } = await taken(turn);
      return { value: there ? 0 : 1, wrong };
    },
  },
  older: {
    acts: (step) => step || location.replace('/'),
    shows: () => null,
    async held(turn) {
      const { all, marks } = await kept();
      if (marks.schema === undefined) return { value: 0, wrong: localStorage.borrowline ? [] : ['neither here nor there'] };
      const drills = all.filter(({ id }) => id === `old ${turn}`).length;
      const speeds = all.filter(({ stimp_ft }) => stimp_ft !== undefined).length;
      const wrong = drills === 1 && speeds === 1 ? [] : [`${drills} drills and ${speeds} speeds, of one each`];
      if (!near(marks.settings.pace_m, paceOf(turn))) wrong.push('the settings have not moved');
      return { value: 0, wrong };
    },
  },
};

/**
 * Sets the player going; what the screen shows comes as console messages, in order.
 * @param {string} name @param {number} everyMs
 */
export function go(name, everyMs) {
  const { acts, shows } = STATES[name];
  let [step, last] = [0, null];
  const look = () => {
    const value = shows();
    if (value !== null && value !== last) console.log(`seen ${JSON.stringify({ at: Date.now(), value })}`);
    last = value;
    requestAnimationFrame(look);
  };
  look();
  setInterval(() => acts(step++), everyMs);
}

/** A file to import, with settings beside the entries. @param {number} turn */
export function file(turn) {
  const note = { kind: 'note', at: AT, changed: AT, place: 'Larkmoor (invented)', text: 'x'.repeat(300) };
  const entries = Array.from({ length: IMPORTED }, (_, i) => ({ ...note, id: `import ${turn} ${i}` }));
  const phone = { settings: { pace_m: paceOf(turn) } };
  return JSON.stringify({ format: 'borrowline-record', version: 3, exported: AT, entries, phone });
}

/** A phone that has what the first versions kept, and nothing else. @param {number} turn */
export async function makeOlder(turn) {
  const { stores, dropTwin } = await import('/records/stores.js');
  const both = await stores();
  const tables = ['entries', 'before', 'marks'];
  const tx = both.first.transaction(tables, 'readwrite');
  for (const name of tables) void tx.objectStore(name).clear();
  await tx.done;
  await dropTwin();
  const place = 'Larkmoor (invented)';
  localStorage.borrowline = JSON.stringify({
    schema: 1,
    cautioned: true,
    settings: { pace_m: paceOf(turn) },
    calibration: { place, speeds: [{ place, date: '2026-05-03', stimp_ft: 10, stimp_sd_ft: 0.2 }] },
    practice: {
      finished: [{ id: `old ${turn}`, session: 's', drill: 'string_line', date: AT, spent_s: 60, good: 1, bad: 0 }],
    },
  });
}
