/** @import {State} from './types.js' */

/**
 * One that throws takes nothing from the others.
 * @param {(state: State, before: State, action: string) => void} listener @param {[State, State, string]} change
 */
function hear(listener, change) {
  try {
    listener(...change);
  } catch (error) {
    queueMicrotask(() => {
      throw error;
    });
  }
}

/**
 * The one record of what the app knows. Only named actions change it, and views draw from it.
 * @param {State} initial
 */
export function createStore(initial) {
  let state = initial;
  /** @type {Set<(state: State, before: State, action: string) => void>} */
  const listeners = new Set();
  /** Changes that not all have heard of yet. @type {[State, State, string][]} */
  const told = [];
  let telling = false;

  /** Each change once, in order, to all: one that a listener makes waits until the one before has been told to everybody. */
  function tell() {
    if (telling) return;
    telling = true;
    try {
      for (let next = told.shift(); next; next = told.shift()) for (const listener of listeners) hear(listener, next);
    } finally {
      telling = false;
    }
  }

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
      told.push([state, before, action]);
      tell();
    },
    /** @param {(state: State, before: State, action: string) => void} listener */
    subscribe(listener) {
      listeners.add(listener);
    },
  };
}

/** @typedef {ReturnType<typeof createStore>} Store */
