/** @import {App, Feature} from '../../app.js' */
import { openDrawn } from '../../parts/sheet.js';
import { actions } from './actions.js';
import { view } from './view.js';

/** @param {App} app @returns {Feature} */
export function notes(app) {
  const act = actions(app);
  return { id: 'notes', label: 'Notes', view: () => view(app.store.state, act), drawn: openDrawn };
}
