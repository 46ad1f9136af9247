/**
 * A green walked once: the walk, its map, and the putts on it.
 * @import {Feature} from '../../app.js'
 */
import './walk.css';
import { watchSize } from '../../parts/size.js';
import { actions } from './actions.js';
import { questions } from './questions.js';
import { view } from './view.js';

/** @type {Feature} */
export const walk = {
  id: 'walk',
  within: 'green',
  initial: {
    walkPage: {
      page: 'map',
      green: '',
      draft: {},
      texts: {},
      tilt: { kind: 'off' },
      lifted: true,
      passed: [],
      mending: null,
      lent: '',
      size: { width: 0, height: 0 }, // until the map has one
      view: null,
      ball: null,
      hole: null,
      placing: 'ball',
      dragged: null,
      finding: false,
      want: { distance_m: 3.6576, slope_percent: 2, break: 'right', way: null, here: false },
      told: '',
    },
  },
  questions,
  make(app) {
    const { store } = app;
    const act = actions(app);
    const watch = watchSize(act.sized);
    store.subscribe((state, before) => {
      if (state.walkPage.tilt !== before.walkPage.tilt || state.answers.laid !== before.answers.laid) act.feel();
      const walking = (/** @type {typeof state} */ { screen, walkPage }) => screen === 'walk' && walkPage.page === 'walk';
      if (walking(before) && !walking(state) && state.walkPage.tilt.kind !== 'off') act.stop();
    });
    let seen = '';
    return {
      view: () => view(store.state, act),
      drawn(root) {
        watch(root.querySelector('.map-stage'));
        const { page } = store.state.walkPage;
        if (seen !== page) root.querySelector('main')?.scrollTo(0, 0);
        seen = page;
      },
    };
  },
};
