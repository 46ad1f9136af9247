/**
 * Whatever is kept can be undone with one touch.
 * @import {State} from '../types.js'
 * @import {App} from '../app.js'
 */
import { html } from 'lit-html';

/** @param {Pick<App, 'store' | 'record'>} app */
export const undoable = ({ store, record }) => ({
  /**
   * Changes what lasts, and remembers how it was.
   * @param {string} words @param {Partial<State>} patch @param {Partial<State>} [also] what is not undone
   * @param {string} [entry] that came or went @param {string} [screen] that tells of it
   */
  keep(words, patch, also = {}, entry, screen = store.state.screen) {
    const { state } = store;
    const before = Object.fromEntries(Object.keys(patch).map((name) => [name, state[/** @type {keyof State} */ (name)]]));
    store.change(words, { ...patch, ...also, undo: { screen, words, before, entry }, problem: null });
  },
  undo() {
    const { undo } = store.state;
    if (!undo) return;
    store.change('undo', { ...undo.before, undo: null });
    const entry = store.state.entries?.find(({ id }) => id === undo.entry);
    if (entry) void record.change(entry.id, { gone: entry.gone ? undefined : true });
  },
});

/** What was kept last on this screen, and the way back. @param {State} state @param {() => void} onUndo */
export function undoLine({ undo, screen }, onUndo) {
  const said = html`${undo?.words} <button type="button" class="word" @click=${onUndo}>Undo</button>`;
  return html`<p class="kept" role="status">${undo?.screen === screen ? said : ''}</p>`;
}
