import './abilities.js';
import './style.css';
import './parts/parts.css';
import { render } from 'lit-html';
import { createStore } from './store.js';
import { keepAsking } from './questions.js';
import { createEngine } from './engine/client.js';
import { createRecord } from './records/record.js';
import { createParts } from './records/parts.js';
import { keepSaved, load } from './records/saved.js';
import { watchInstall } from './device/install.js';
import { wear, watchNight } from './device/theme.js';
import { watchOffline } from './device/offline.js';
import { chooseWhole } from './parts/chosen.js';
import { arrive } from './parts/arrive.js';
import { faultView } from './fault.js';
import { mend, mendedOf, withMended } from './mend.js';
import { page } from './page.js';
import { read } from './features/read/index.js';
import { line } from './features/line/index.js';
import { watch } from './features/watch/index.js';
import { green } from './features/green/index.js';
import { walk } from './features/walk/index.js';
import { practice } from './features/practice/index.js';
import { record } from './features/record/index.js';
import { book } from './features/book/index.js';
import { findings } from './features/findings/index.js';
import { rounds } from './features/rounds/index.js';
import { settings } from './features/settings/index.js';
import { about } from './features/about/index.js';
import './page.css';

/** @type {import('./app.js').Feature[]} */
const FEATURES = [read, line, watch, green, walk, practice, record, rounds, findings, book, settings, about];
/** Where the app begins. */
const HOME = read.id;

/** @param {unknown} error @returns {never} */
function raise(error) {
  throw error;
}

/** A screen that waits longer for what is kept is shown without it. */
const PATIENCE_MS = 1000;

/** The screen that an address leads to. */
function screen() {
  const address = location.hash.slice(1);
  return FEATURES.find(({ id, formerly = [] }) => id === address || formerly.includes(address))?.id ?? HOME;
}

const parts = createParts(Object.assign({}, ...FEATURES.map(({ keeps }) => keeps)));
const store = createStore(
  Object.assign(
    /** @type {import('./types.js').State} */ ({
      ...load(parts),
      screen: screen(),
      entries: null,
      looking: null,
      own: null,
      exported: '',
      answers: {},
      refusals: {},
      problem: null,
      undo: null,
      engine: { kind: 'starting' },
      restarted: false,
      news: null,
      offline: { kind: 'unknown' },
      stays: null,
      canInstall: false,
    }),
    ...FEATURES.map(({ initial }) => initial),
  ),
);
const engine = createEngine({
  onState: (state) =>
    store.change('engine', state.kind === 'restarting' ? { engine: state, restarted: true } : { engine: state }),
});
const files = watchOffline({
  onWaiting: (news) => store.change('update waits', { news }),
  // What was mended stands until it was heard, whatever the next look finds
  onOffline: (offline) => store.change('files', { offline: withMended(offline, mendedOf(store.state.offline)) }),
});
mend({ store, engine, files });
const app = { store, engine, files, record: createRecord(store, parts), parts };
const kept = keepSaved(store, app.record, parts);
// The first paint of a read waits for nothing; what another screen shows is in the database
if (screen() !== 'read') await Promise.race([kept, new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
/**
 * A part that cannot be made is shown as failed.
 * @param {import('./app.js').Feature} feature @returns {import('./app.js').Screen}
 */
function made(feature) {
  try {
    return feature.make(app);
  } catch (error) {
    console.warn(feature.id, error);
    return { view: () => raise(error) };
  }
}
const screens = new Map(FEATURES.map((feature) => [feature.id, made(feature)]));
const names = new Map(FEATURES.map(({ id, label }) => [id, label ?? id.charAt(0).toUpperCase() + id.slice(1)]));
keepAsking(
  app,
  FEATURES.flatMap(({ questions = [] }) => questions),
);

const install = watchInstall((canInstall) => store.change('install offer', { canInstall }));
const act = {
  accept: () => store.change('accept caution', { cautioned: true }),
  update: files.takeOver,
  install,
  restart: () => engine.restart(),
  lookAway: () => app.record.lookAway(),
  heard: () => store.change('trouble heard', { trouble: '' }),
  seen: () => store.change('mended files heard', { offline: withMended(store.state.offline, -mendedOf(store.state.offline)) }),
};

let root = /** @type {HTMLElement} */ (document.getElementById('app'));
/** Screens that have failed, until they are tried again. @type {Map<string, {said: string, again: () => void}>} */
const faults = new Map();
let at = '';
function draw() {
  const { state } = store;
  const shown = screens.get(state.screen);
  const fault = faults.get(state.screen);
  const feature = FEATURES.find(({ id }) => id === state.screen);
  try {
    wear(state.settings.theme);
    render(page(state, FEATURES, fault ? faultView(app, feature, fault) : shown?.view(), act), root);
    if (!fault) shown?.drawn?.(root);
    if (state.screen !== at && (at || state.screen !== HOME)) arrive(root, names.get(state.screen) ?? '');
    at = state.screen;
  } catch (error) {
    if (fault) throw error;
    console.warn(state.screen, error);
    const again = () => {
      faults.delete(state.screen);
      store.change('try again', {});
    };
    faults.set(state.screen, { said: '', again });
    // What was drawn half is drawn on no more
    const fresh = /** @type {HTMLElement} */ (root.cloneNode(false));
    root.replaceWith(fresh);
    root = fresh;
    draw();
  }
}

let due = false;
store.subscribe(() => {
  if (due) return;
  due = true;
  requestAnimationFrame(() => {
    due = false;
    draw();
  });
});
addEventListener('hashchange', () => store.change('go', { screen: screen(), sheet: '', problem: null }));
watchNight(draw);
chooseWhole(document);
root.replaceChildren();
draw();

// When all else has been asked for: what is put on the phone holds up no first visit
void files.install();
