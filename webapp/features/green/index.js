/**
 * What is known of this green today: its slope, its speed, and how the putt in hand compares with home.
 * @import {Feature} from '../../app.js'
 */
import './green.css';
import { actions } from './actions.js';
import { questions } from './questions.js';
import { view } from './view.js';
import { keeps } from './kept.js';

/** @type {Feature} */
export const green = {
  id: 'green',
  keeps,
  label: 'Green',
  formerly: ['calibrate'],
  initial: {
    greenPage: {
      part: 'level',
      draft: { eye_m: 1.5 },
      tilt: { kind: 'off' },
      zero: null,
      sent: false,
      back: null,
      by: 'rolls',
      way: 'out',
      rolling: null,
    },
  },
  questions,
  make(app) {
    const { store } = app;
    const act = actions(app);
    store.subscribe((state, before) => {
      const { sent, part, tilt } = state.greenPage;
      // within the touch that sent here: some phones give leave only then
      if (sent && !before.greenPage.sent && part === 'level' && tilt.kind === 'off') void act.startLevel();
      if (tilt !== before.greenPage.tilt) act.followTurning();
      const left = state.screen !== 'green' || state.greenPage.part !== 'level';
      const was = before.screen === 'green' && before.greenPage.part === 'level';
      if (left && was && state.greenPage.tilt.kind !== 'off') act.stopLevel();
    });
    return { view: () => view(store.state, act) };
  },
};
