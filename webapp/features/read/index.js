/**
 * The read of the putt in hand: where to start the ball and how hard, seen from above.
 * @import {Feature} from '../../app.js'
 */
import './read.css';
import { openDrawn } from '../../parts/sheet.js';
import { watchSize } from '../../parts/size.js';
import { actions } from './actions.js';
import { alike, questions } from './questions.js';
import { view } from './view.js';
import { isYou, youOf } from './you.js';
import { keeps } from './kept.js';

/** @type {Feature} */
export const read = {
  id: 'read',
  keeps,
  label: 'Read',
  initial: {
    sheet: '',
    active: 'distance_m',
    station: 0,
    size: { width: 390, height: 400 },
    costs: null,
    refusal: null,
    closed: null,
  },
  questions,
  make(app) {
    const act = actions(app);
    const watch = watchSize(act.sized);
    let { active } = app.store.state;
    app.store.subscribe((state, before) => {
      const { findings } = state;
      if (!findings || findings.value === before.findings?.value) return;
      const you = youOf(findings);
      app.store.change('you, as found', { you, ...(you && isYou(state) && { player: you.value }) });
    });
    // What has been read stays so when its numbers come from somewhere else
    app.store.subscribe(({ read, putt, window }, before) => {
      if (!read || read.putt === putt || putt === before.putt || !alike(read.putt, putt)) return;
      app.store.change('read as before', {
        read: { ...read, putt },
        window: window && alike(window.putt, putt) ? { ...window, putt } : window,
      });
    });
    return {
      view: () => view(app.store.state, act),
      drawn(root) {
        openDrawn(root);
        if (active !== app.store.state.active) {
          active = app.store.state.active;
          /** @type {HTMLElement | null} */ (root.querySelector('#ruler, #dial'))?.focus({ preventScroll: true });
        }
        watch(root.querySelector('.stage'));
      },
    };
  },
};
