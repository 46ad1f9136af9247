/**
 * What stands round every screen: the quiet lines and the row of screens.
 * @import {State} from './types.js'
 * @import {Feature} from './app.js'
 */
import { html } from 'lit-html';
import { MENDED, offlineWords } from './offline-words.js';

const ENGINE = { starting: 'Engine is starting', ready: '', restarting: 'Engine stopped. Restarting', failed: '' };
const CAUTION = 'For practice. In a round, Rule 4.3a does not allow a device to give you a line; ask the committee.';

/**
 * @param {State} state @param {Feature[]} features @param {unknown} shown the screen's view
 * @param {{accept: () => void, heard: () => void, seen: () => void, lookAway: () => void, update: () => void,
 *   install: () => void, restart: () => void}} act
 */
export function page(state, features, shown, act) {
  const { engine, restarted, trouble, unopened, looking, cautioned, news, offline, canInstall } = state;
  const doing = engine.kind === 'ready' && restarted ? 'Engine restarted' : ENGINE[engine.kind];
  return html`
    <p class="engine" role="status">${doing}</p>
    ${shown}
    <footer class="foot">
      ${engine.kind === 'failed' ? line('The engine does not start. The last read stays.', 'Try again', act.restart) : ''}
      ${trouble && !unopened ? html`<div role="alert">${line(trouble, 'Understood', act.heard)}</div>` : ''}
      ${looking ? line(`Looking at ${looking.name}, read only.`, 'Back to mine', act.lookAway) : ''}
      ${unopened ? html`<p class="line" role="alert">${unopened}</p>` : ''}
      ${told(offline, act.seen)}
      ${cautioned ? '' : line(CAUTION, 'Understood', act.accept)}
      ${news ? line(['A new version is ready.', ...news].join(' '), 'Use it now', act.update) : ''}
      ${
        canInstall && cautioned
          ? line('Keep it on the home screen, for greens with no signal.', 'Install', act.install, 'line can-wait')
          : ''
      }
      ${row(features, state.screen)}
    </footer>`;
}

/** What is wrong with the app's files, or was. @param {State['offline']} offline @param {() => void} seen */
function told(offline, seen) {
  const mended = offline.kind === 'whole' && offline.mended > 0;
  if (mended) return html`<div role="status">${line(MENDED, 'Understood', seen)}</div>`;
  const wrong = offline.kind === 'lost' || offline.kind === 'refused';
  return wrong ? html`<p class="line" role="alert">${offlineWords(offline)}</p>` : '';
}

/** @param {Feature[]} features @param {string} screen */
function row(features, screen) {
  const within = features.find(({ id }) => id === screen)?.within ?? screen;
  const link = (/** @type {Feature} */ { id, label, mark }) =>
    html`<a href="#${id}" class=${mark ? 'mark' : ''} aria-label=${label} aria-current=${id === within ? 'page' : 'false'}
      >${mark ?? label}</a>`;
  return html`<nav class="screens" aria-label="Screens">${features.filter(({ label }) => label).map(link)}</nav>`;
}

/** @param {string} text @param {string} does @param {() => void} onClick */
const line = (text, does, onClick, look = 'line') =>
  html`<div class=${look}><p>${text}</p><button type="button" class="word" @click=${onClick}>${does}</button></div>`;
