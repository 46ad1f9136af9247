/**
 * The practice screen: a session, the tempo, the drills, feet and eye.
 * @import {State} from '../../types.js'
 * @import {PracticeActions} from './actions.js'
 */
import { html } from 'lit-html';
import { undoLine } from '../../parts/undo.js';
import { done } from './parts/done.js';
import { drill } from './parts/drill.js';
import { drills } from './parts/drills.js';
import { eye } from './parts/eye.js';
import { feet } from './parts/feet.js';
import { find } from './parts/find.js';
import { length } from './parts/length.js';
import { runner } from './parts/runner.js';
import { session } from './parts/session.js';
import { strip } from './parts/strip.js';
import { tempo } from './parts/tempo.js';
import { week } from './parts/week.js';

const PAGES = { session, week, done, tempo, find, length, drills, drill, strip, feet, eye };
const SENSES = ['feet', 'eye'];
/** @type {[keyof typeof PAGES, string, string[]][]} */
const TABS = [
  ['session', 'Session', ['session', 'week', 'done']],
  ['tempo', 'Tempo', ['tempo', 'find', 'length']],
  ['drills', 'Drills', ['drills', 'drill', 'strip']],
  ['feet', 'Feet', ['feet']],
  ['eye', 'Eye', ['eye']],
];

/** @param {State} state @param {PracticeActions} act */
export function view(state, act) {
  const { page } = state.practicePage;
  if (page === 'run' && state.practice.run) return runner(state, act);
  const shown = page === 'run' ? 'session' : page;
  return html`<main class="page practice ${SENSES.includes(shown) ? 'senses' : ''}">
    <nav class="tabs" aria-label="Practice">
      ${TABS.map(
        ([to, label, pages]) =>
          html`<button type="button" class="pick" aria-pressed=${pages.includes(shown)}
            @click=${() => act.go(to)}>${label}</button>`,
      )}
    </nav>
    ${SENSES.includes(shown) ? undoLine(state, act.undo) : ''}
    ${PAGES[shown](state, act)}
  </main>`;
}
