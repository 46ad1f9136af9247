/**
 * A place's book: the speeds of its greens by day, notes, and putts worth keeping, to be tried and studied.
 * @import {Feature} from '../../app.js'
 */
import './book.css';
import { actions } from './actions.js';
import { view } from './view.js';

/** @type {Feature} */
export const book = {
  id: 'book',
  within: 'record',
  initial: { bookPage: { place: null, open: '', guess: '', seen: null, said: '' } },
  make(app) {
    const act = actions(app);
    return { view: () => view(app.store.state, act) };
  },
};
