/**
 * The line where the eye has it: in perspective, in a picture, on the ground, on a ramp, and as a link.
 * @import {Feature} from '../../app.js'
 */
import './line.css';
import { watchSize } from '../../parts/size.js';
import { actions } from './actions.js';
import { puttIn } from './link.js';
import { paint } from './overlay.js';
import { questions } from './questions.js';
import { rollOn } from './roll.js';
import { view } from './view.js';
import { keeps } from './kept.js';

/** @type {Feature} */
export const line = {
  id: 'line',
  keeps,
  label: 'Line',
  formerly: ['sight'],
  initial: {
    linePage: {
      part: 'view',
      stand: 'ball',
      size: { width: 0, height: 0 }, // until the stage has one
      sound: true,
      photo: null,
      live: null,
      measuring: false,
      photoProblem: '',
      sent: null,
      told: '',
    },
  },
  questions,
  make(app) {
    const act = actions(app);
    const watch = watchSize(act.sized);

    function open() {
      const putt = puttIn(location.hash.slice(1));
      if (putt === undefined) return;
      history.replaceState(null, '', '#line');
      app.store.change('open link', { screen: 'line' });
      void act.receive({ read: null, putt, problem: putt ? '' : 'The link is cut short or damaged: ask for it once more.' });
    }
    // nobody is filmed who has gone elsewhere
    app.store.subscribe(({ screen, linePage: { live, part } }) => {
      if (live && (screen !== 'line' || part !== 'photo')) act.closeLive();
    });
    document.addEventListener('visibilitychange', () => document.hidden && act.closeLive());
    addEventListener('hashchange', open);
    open();

    return {
      view: () => view(app.store.state, act),
      drawn(root) {
        const { state } = app.store;
        paint(root, state);
        if (state.answers.view) rollOn(state.answers.view);
        watch(root.querySelector('.eye-stage'));
      },
    };
  },
};
