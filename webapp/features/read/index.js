/** @import {App, Feature} from '../../app.js' */
import { openDrawn } from '../../parts/sheet.js';
import { actions } from './actions.js';
import { keepAnswered } from './asks.js';
import { view } from './view.js';

/** @param {App} app @returns {Feature} */
export function read(app) {
  const act = actions(app);
  keepAnswered(app);
  const sizes = new ResizeObserver(([{ contentRect }]) => {
    const [width, height] = [Math.round(contentRect.width), Math.round(contentRect.height)];
    if (width && height) act.sized({ width, height });
  });
  /** @type {Element | null} */
  let observed = null;
  let { active } = app.store.state;

  return {
    id: 'read',
    label: 'Read',
    view: () => view(app.store.state, act),
    drawn(root) {
      openDrawn(root);
      if (active !== app.store.state.active) {
        active = app.store.state.active;
        /** @type {HTMLElement | null} */ (root.querySelector('#ruler, #dial'))?.focus({ preventScroll: true });
      }
      const stage = root.querySelector('.stage');
      if (stage === observed) return;
      observed = stage;
      sizes.disconnect();
      if (stage) sizes.observe(stage);
    },
  };
}
