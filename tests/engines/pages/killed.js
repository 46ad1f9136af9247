/** Says what is held, then logs putt after putt until its browser dies, and says of each when it is kept. */
import { readAll, write } from '/records/db.js';
import { checked } from '/records/entry.js';

const say = (word) => fetch('/heard', { method: 'POST', body: JSON.stringify(word) });
const round = location.search.slice(1);
const at = '2026-05-03T17:30:00.000Z';
// As long as one may be: a kill has to fall into the writing
const picture = `data:image/jpeg;base64,${'A'.repeat(190_000)}`;
const seen = { aim_deg: 1, start_deg: 1.2, start_sd_deg: 0.1, launch_mps: 2, launch_sd_mps: 0.02, picture };
const putt = (id) => ({ kind: 'putt', id, at, changed: at, place: '', text: '', distance_m: 3, result: 'holed', ...seen });

try {
  await say({ held: (await readAll()).map((entry) => checked(entry).id) });
  let said;
  for (let i = 0; ; i += 1) {
    const id = `${round}-${i}`;
    // The one before is told while this one is written
    await Promise.all([write([putt(id)]), said]);
    said = say({ kept: id });
  }
} catch (error) {
  await say({ broken: String(error) });
}
