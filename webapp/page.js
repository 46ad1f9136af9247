/**
 * What stands round every screen: the quiet lines and the row of screens.
 * @import {State} from './types.js'
 * @import {Feature} from './app.js'
 */
import { html } from 'lit-html';

const ENGINE = { starting: 'Engine is starting', ready: '', restarting: 'Engine stopped. Restarting', failed: '' };

/**
 * @param {State} state @param {Feature[]} features @param {Feature} shown
 * @param {{accept: () => void, heard: () => void, update: () => void, install: () => void, restart: () => void}} act
 */
export const page = (state, features, shown, act) => html`
  <p class="engine" role="status">${state.engine.kind === 'ready' && state.restarted ? 'Engine restarted' : ENGINE[state.engine.kind]}</p>
  ${shown.view()}
  <footer class="foot">
    ${state.engine.kind === 'failed' ? line('The engine does not start. The last read stays.', 'Try again', act.restart) : ''}
    ${state.trouble ? html`<div role="alert">${line(state.trouble, 'Understood', act.heard)}</div>` : ''}
    ${state.cautioned ? '' : line('For practice. In a round, Rule 4.3a does not allow a device to give you a line; ask the committee.', 'Understood', act.accept)}
    ${state.updateWaits ? line('A new version is ready.', 'Use it now', act.update) : ''}
    ${state.canInstall && state.cautioned ? line('Keep it on the home screen, for greens with no signal.', 'Install', act.install, 'line can-wait') : ''}
    <nav class="screens" aria-label="Screens">
      ${features.filter(({ label }) => label).map(({ id, label }) => html`<a href="#${id}" aria-current=${id === (shown.within ?? shown.id) ? 'page' : 'false'}>${label}</a>`)}
    </nav>
  </footer>`;

/** @param {string} text @param {string} does @param {() => void} onClick */
const line = (text, does, onClick, look = 'line') =>
  html`<div class=${look}><p>${text}</p><button type="button" class="word" @click=${onClick}>${does}</button></div>`;
