/**
 * The read of the putt in hand: where to start the ball and how hard, seen from above.
 * @import {Feature} from '../../app.js'
 */
import './read.css';
import { openDrawn } from '../../parts/sheet.js';
import { watchSize } from '../../parts/size.js';
import { actions } from './actions.js';
import { questions } from './questions.js';
import { view } from './view.js';

/** @type {Feature} */
export const read = {
  id: 'read',
  keeps: ['putt', 'player', 'felt', 'read', 'window'],
  label: 'Read',
  initial: {
    sheet: '',
    active: 'distance_m',
    station: 0,
    size: { width: 390, height: 400 },
    presets: [],
    costs: null,
    refusal: null,
    closed: null,
  },
  questions,
  make(app) {
    const act = actions(app);
    const watch = watchSize(act.sized);
    let { active } = app.store.state;
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
