/** @import {State} from './types.js' */

/**
 * The one record of what the app knows. Only named actions change it, and views draw from it.
 * @param {State} initial
 */
export function createStore(initial) {
  let state = initial;
  /** @type {Set<(state: State, before: State, action: string) => void>} */
  const listeners = new Set();

  return {
    /** @returns {Readonly<State>} */
    get state() {
      return state;
    },
    /**
     * @param {string} action what happened, in words for whoever debugs
     * @param {Partial<State>} patch
     */
    change(action, patch) {
      const before = state;
      state = { ...state, ...patch };
      for (const listener of listeners) listener(state, before, action);
    },
    /** @param {(state: State, before: State, action: string) => void} listener */
    subscribe(listener) {
      listeners.add(listener);
    },
  };
}

/** @typedef {ReturnType<typeof createStore>} Store */
