/** @import {App, Feature} from '../../app.js' */
import { actions } from './actions.js';
import { keepSeen } from './asks.js';
import { puttIn } from './link.js';
import { paint } from './overlay.js';
import { rollOn } from './roll.js';
import { view } from './view.js';

/** @param {App} app @returns {Feature} */
export function sight(app) {
  const act = actions(app);
  keepSeen(app);
  const sizes = new ResizeObserver(([{ contentRect }]) => {
    const [width, height] = [Math.round(contentRect.width), Math.round(contentRect.height)];
    if (width && height) act.sized({ width, height });
  });
  /** @type {Element | null} */
  let observed = null;

  function open() {
    const putt = puttIn(location.hash.slice(1));
    if (putt === undefined) return;
    history.replaceState(null, '', '#sight');
    app.store.change('open link', { screen: 'sight' });
    void act.receive({ read: null, putt, problem: putt ? '' : 'The link is cut short or damaged: ask for it once more.' });
  }
  // nobody is filmed who has gone elsewhere
  app.store.subscribe(({ screen, sighting: { live, part } }) => {
    if (live && (screen !== 'sight' || part !== 'photo')) act.closeLive();
  });
  document.addEventListener('visibilitychange', () => document.hidden && act.closeLive());
  addEventListener('hashchange', open);
  open();

  return {
    id: 'sight',
    label: 'Line',
    view: () => view(app.store.state, act),
    drawn(root) {
      const { state } = app.store;
      paint(root, state);
      if (state.sighting.answers.view) rollOn(state.sighting.answers.view);
      const stage = root.querySelector('.eye-stage');
      if (stage === observed) return;
      observed = stage;
      sizes.disconnect();
      if (stage) sizes.observe(stage);
    },
  };
}
