/** Where what is logged or noted happens. @import {State} from '../../types.js' @import {RecordActions} from './actions.js' */
import { html } from 'lit-html';

/** @param {State} state @param {RecordActions} act */
export const placeField = ({ place }, act) =>
  html`<label class="text-field">Place<input autocomplete="off" maxlength="80" placeholder="e.g. North course"
    .value=${place}
      @change=${(/** @type {Event} */ event) => act.setPlace(/** @type {HTMLInputElement} */ (event.target).value)}></label>`;
