/** @import {App, Feature} from '../../app.js' */
import { openDrawn } from '../../parts/sheet.js';
import { onOtherTab } from '../../records/db.js';
import { actions } from './actions.js';
import { view } from './view.js';

const NEEDS = ['notes', 'findings', 'practice'];

/** @param {App} app @returns {Feature} */
export function notes(app) {
  const { store } = app;
  const act = actions(app);
  // Not before it is wanted: the read comes first
  const open = () => void (store.state.entries === null && NEEDS.includes(store.state.screen) && act.load());
  store.subscribe((state, before) => state.screen !== before.screen && open());
  onOtherTab(() => store.state.entries !== null && act.load());
  queueMicrotask(open);
  return { id: 'notes', label: 'Notes', view: () => view(store.state, act), drawn: openDrawn };
}
