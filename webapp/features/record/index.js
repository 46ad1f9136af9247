/**
 * What was putted, noted and practised, kept on the phone; out of it and into it.
 * @import {Feature} from '../../app.js'
 */
import './record.css';
import { openDrawn } from '../../parts/sheet.js';
import { actions } from './actions.js';
import { BLANK } from './blank.js';
import { view } from './view.js';
import { keeps } from './kept.js';

/** @type {Feature} */
export const record = {
  id: 'record',
  keeps,
  label: 'Record',
  formerly: ['notes'],
  initial: { recordPage: BLANK },
  make(app) {
    const act = actions(app);
    return { view: () => view(app.store.state, act), drawn: openDrawn };
  },
};
