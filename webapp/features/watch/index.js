/**
 * The phone behind the ball: what it sees of each putt, said and kept.
 * @import {Feature} from '../../app.js'
 */
import './watch.css';
import { actions } from './actions.js';
import { paint } from './overlay.js';
import { questions } from './questions.js';
import { view } from './view.js';

/** @type {Feature} */
export const watch = {
  id: 'watch',
  within: 'read',
  initial: {
    watchPage: {
      stream: null,
      width: 0,
      height: 0,
      attitude: null,
      ball: null,
      hole: null,
      measuring: false,
      end: null,
      other: null,
      chosen: null,
      camera: '',
      phase: 'off',
      problem: '',
      slow: false,
      share: 0,
      last: null,
      count: 0,
      silent: false,
      pictures: false,
      told: '',
    },
  },
  questions,
  make(app) {
    const act = actions(app);
    // nobody is filmed who has gone elsewhere
    app.store.subscribe(({ screen, watchPage }) => {
      if (watchPage.stream && screen !== 'watch') act.close();
    });
    document.addEventListener('visibilitychange', () => document.hidden && act.close());
    return {
      view: () => view(app.store.state, act),
      drawn: (root) => paint(root, app.store.state),
    };
  },
};
