/** @import {App, Feature} from '../../app.js' */
import { pick } from '../../pick.js';
import { withSpeed } from '../../doubt.js';
import { askToStay, stays } from '../../device/stay.js';
import { rangeOf } from '../../fields.js';
import { svg } from 'lit-html';
import { unitOf } from '../../format.js';
import { EYE, enterSighted } from '../../parts/eye-height.js';
import { typed } from '../../parts/typed.js';
import { ownRange } from '../../records/forms.js';
import { view } from './view.js';
import { keeps } from './kept.js';

/** What a typed number may be, SI. */
const RANGES = {
  pace_m: ownRange('pace_m'),
  stimp_ft: rangeOf('PuttFields', 'stimp_ft'),
  past_m: rangeOf('PuttFields', 'past_m'),
};

/** @param {App} app */
function actions({ store }) {
  return {
    /** @param {string} name @param {string} value */
    choose: (name, value) =>
      store.change(`set ${name}`, { settings: { ...store.state.settings, [name]: value }, problem: null }),
    /** @param {string} name @param {string} label @param {string} text */
    enter(name, label, text) {
      const { settings, putt } = store.state;
      const value = typed(store, name, text, { label, ...pick(RANGES, name) }, unitOf(name, settings));
      if (value === undefined) return;
      const inHand = { stimp_ft: () => withSpeed(putt, value), past_m: () => ({ ...putt, past_m: value }) };
      const usual = name in inHand ? { putt: inHand[/** @type {keyof typeof inHand} */ (name)]() } : {};
      store.change(`set ${name}`, { settings: { ...settings, [name]: value }, problem: null, ...usual });
    },
    /** @param {keyof typeof EYE} name @param {string} text */
    enterEye: (name, text) => enterSighted(store, name, EYE[name], text),
    askToStay: async () => store.change('asked to stay', { stays: await askToStay() }),
  };
}

/** @typedef {ReturnType<typeof actions>} SettingsActions */

const mark = svg`<svg width="24" height="24" viewBox="0 0 24 24" aria-hidden="true">
  <path d="M3 7H13M19 7H21M3 17H5M11 17H21"></path><circle cx="16" cy="7" r="3"></circle><circle cx="8" cy="17" r="3"></circle>
    </svg>`;

/** @type {Feature} */
export const settings = {
  id: 'settings',
  keeps,
  label: 'Settings',
  mark,
  make(app) {
    const act = actions(app);
    const { store, files } = app;
    function look() {
      files.check();
      void stays().then((stays) => store.change('stays', { stays }));
    }
    store.subscribe(({ screen }, before) => screen === 'settings' && before.screen !== screen && look());
    if (store.state.screen === 'settings') look();
    return { view: () => view(app.store.state, act) };
  },
};
