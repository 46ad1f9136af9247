import { render } from 'lit-html';
import { createStore } from './store.js';
import { createEngine } from './engine/client.js';
import { createRecord } from './records/record.js';
import { keepSaved, load } from './records/saved.js';
import { watchInstall } from './device/install.js';
import { wear, watchNight } from './device/theme.js';
import { watchUpdates } from './device/update.js';
import { page } from './page.js';
import { read } from './features/read/index.js';
import { IDLE } from './features/calibrate/idle.js';
import { STILL } from './features/practice/idle.js';
import { practice } from './features/practice/index.js';
import { calibrate } from './features/calibrate/index.js';
import { UNSEEN } from './features/sight/idle.js';
import { sight } from './features/sight/index.js';
import { BLANK } from './features/notes/idle.js';
import { notes } from './features/notes/index.js';
import { findings } from './features/findings/index.js';
import { settings } from './features/settings/index.js';
import { about } from './features/about/index.js';

const FEATURES = [read, sight, practice, calibrate, notes, findings, settings, about];

const screen = () => location.hash.slice(1) || 'read';
const store = createStore({
  ...load(),
  screen: screen(),
  sheet: '',
  active: 'distance_m',
  station: 0,
  size: { width: 390, height: 400 },
  calibrating: IDLE,
  sighting: UNSEEN,
  practising: STILL,
  entries: null,
  exported: '',
  noting: BLANK,
  findings: null,
  unfound: '',
  share: null,
  presets: [],
  costs: null,
  refusal: null,
  closed: null,
  problem: null,
  engine: { kind: 'starting' },
  restarted: false,
  updateWaits: false,
  canInstall: false,
});
const engine = createEngine({
  onState: (state) =>
    store.change('engine', state.kind === 'restarting' ? { engine: state, restarted: true } : { engine: state }),
});
const record = createRecord(store);
const features = FEATURES.map((make) => make({ store, engine, record }));

let takeOver = () => {};
const install = watchInstall((canInstall) => store.change('install offer', { canInstall }));
const act = {
  accept: () => store.change('accept caution', { cautioned: true }),
  update: () => takeOver(),
  install,
  restart: () => engine.restart(),
  heard: () => store.change('trouble heard', { trouble: '' }),
};

const root = /** @type {HTMLElement} */ (document.getElementById('app'));
function draw() {
  const shown = features.find(({ id }) => id === store.state.screen) ?? features[0];
  wear(store.state.settings.theme);
  render(page(store.state, features, shown, act), root);
  shown.drawn?.(root);
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
keepSaved(store);
addEventListener('hashchange', () => store.change('go', { screen: screen(), sheet: '', problem: null }));
watchNight(draw);
root.replaceChildren();
draw();

watchUpdates(() => store.change('update waits', { updateWaits: true })).then(
  (take) => (takeOver = take),
  (error) => console.warn('Not yet complete offline.', error),
);
