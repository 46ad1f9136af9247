/** What is said where the putt in hand cannot be holed. @import {State} from '../../types.js' */
import { html } from 'lit-html';

/** @param {State} state */
export const noPutt = ({ refusal, putt }) =>
  refusal?.putt === putt
    ? html`<p class="problem" role="alert">No such putt: on this green no ball stops past the hole at this pace. Change the
      slope, the speed or the pace on the Read screen.</p>`
    : '';
