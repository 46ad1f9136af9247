/**
 * What stands where a screen has failed: the way out and the way back. The row of screens stays below it.
 * @import {App, Feature} from './app.js'
 */
import { html } from 'lit-html';
import { giveBackup } from './records/backup.js';
import { inWords } from './records/record.js';

/**
 * @param {Pick<App, 'store' | 'parts'>} app @param {Feature | undefined} feature
 * @param {{said: string, again: () => void}} fault
 */
export function faultView({ store, parts }, feature, fault) {
  const say = (/** @type {string} */ said) => {
    fault.said = said;
    store.change('say', {});
  };
  const exporting = () => void giveBackup(store.state, parts).then(say, (error) => say(inWords(error)));
  function setBack() {
    /** @type {Record<string, any>} */
    const fresh = parts.restore(null);
    const names = /** @type {(keyof typeof store.state)[]} */ (Object.keys(feature?.keeps ?? {}));
    const aside = names.map((name) => ({ what: name, value: store.state[name] }));
    store.change('set back', {
      ...Object.fromEntries(names.map((name) => [name, fresh[name]])),
      ...feature?.initial,
      aside: [...store.state.aside, ...aside],
    });
    fault.again();
  }
  return html`<main class="page prose">
    <h1>This screen has failed</h1>
    <p>What you kept is untouched: the other screens work. Try again first. If it fails again, export everything, then set this
      part back to how it was when it was new; what it had is put aside and goes out with the next export.</p>
    ${fault.said ? html`<p class="said" role="status">${fault.said}</p>` : ''}
    <div class="does">
      <button type="button" class="word" @click=${fault.again}>Try again</button>
      <button type="button" class="word" @click=${exporting}>Export everything</button>
      <button type="button" class="word" @click=${setBack}>Set this part back</button>
    </div>
  </main>`;
}
