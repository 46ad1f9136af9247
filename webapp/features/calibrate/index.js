/** @import {App, Feature} from '../../app.js' */
import { actions } from './actions.js';
import { keepCalibrated } from './asks.js';
import { view } from './view.js';

/** @param {App} app @returns {Feature} */
export function calibrate(app) {
  const act = actions(app);
  keepCalibrated(app);
  app.store.subscribe((state, before) => {
    const left = state.screen !== 'calibrate' || state.calibrating.part !== 'level';
    const was = before.screen === 'calibrate' && before.calibrating.part === 'level';
    if (left && was && state.calibrating.tilt.kind !== 'off') act.stopLevel();
  });
  return { id: 'calibrate', label: 'Calibrate', view: () => view(app.store.state, act) };
}
