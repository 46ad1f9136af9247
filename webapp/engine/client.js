/**
 * The one owner of the engine's worker: questions out one at a time, answers back, a new worker when one dies.
 *
 * @import { Asks, Refusal } from './protocol.js'
 *
 * @typedef {'snapshot' | 'files'} Source where Python came from: the memory kept after an earlier start, or its files
 * @typedef {{ kind: 'starting', from: Source | null }
 *   | { kind: 'ready', from: Source }
 *   | { kind: 'restarting', reason: string }
 *   | { kind: 'failed', reason: string }} EngineState
 * @typedef {{ kind: 'starting', from: Source }
 *   | { kind: 'ready', from: Source }
 *   | { kind: 'alive' }
 *   | { kind: 'reply', reply: string }
 *   | { kind: 'share', share: number }
 *   | { kind: 'stopped' }
 *   | { kind: 'died', reason: string }} FromWorker
 * @typedef {{ worker: Worker, heard: FromWorker[] }} Early a worker started before, and what it has said
 * @typedef {{ onShare?: (share: number) => void, signal?: AbortSignal }} Meanwhile what is told of a long answer, and what
 *   stops it
 * @typedef {{ name: string, request: string, latest: boolean, onShare?: (share: number) => void,
 *   resolve: (value: any) => void, reject: (error: EngineError) => void }} Question
 */
import { STOP } from './stop.js';

/**
 * Longest silence in each of the worker's doings before it counts as dead, and how long each may take in all: a slow phone's
 * engine goes on giving signs of life, and so does one that goes round in circles. The files may come over a poor network.
 */
const PATIENCE_MS = {
  files: { silence: 20_000, whole: 90_000 },
  snapshot: { silence: 20_000, whole: 60_000 },
  answer: { silence: 8_000, whole: 60_000 },
};
const TICK_MS = 500;
const DEATHS_IN_A_ROW = 3;

export class EngineError extends Error {
  /**
   * @param {string} code the engine's own, or `engine_died` or `engine_failed`
   * @param {string} message in the engine's units, for programs and their makers
   * @param {Partial<Omit<Refusal, 'code' | 'message'>>} [at] what a sentence in a person's units is made of
   */
  constructor(code, message, { field = null, value = null, low = null, high = null, unit = null } = {}) {
    super(message);
    this.name = 'EngineError';
    this.code = code;
    this.field = field;
    this.value = value;
    this.low = low;
    this.high = high;
    this.unit = unit;
  }
}

/** The worker that the page started before this script came, once. @returns {Early | undefined} */
function takeEarly() {
  const page = /** @type {{ early?: Early }} */ (globalThis);
  const { early } = page;
  page.early = undefined;
  return early;
}

/** @param {{ onState?: (state: EngineState) => void }} options */
export function createEngine({ onState = () => {} } = {}) {
  /** @type {Question[]} */
  const waiting = [];
  /** @type {Question | null} */
  let asked = null;
  /** @type {EngineState} */
  let state = { kind: 'starting', from: null };
  /** @type {Worker} */
  let worker;
  /** @type {ReturnType<typeof setInterval> | undefined} */
  let watch;
  let deaths = 0;
  /** What is left of the patience with the silence, and with what the worker does in all, ms. */
  let left = { silence: 0, whole: 0 };
  let silence = 0;

  /** @param {EngineState} next */
  function enter(next) {
    state = next;
    onState(state);
  }

  /** @param {'usual' | 'plain'} manner plain: from the files, whatever snapshot there is */
  function start(manner) {
    const early = manner === 'usual' ? takeEarly() : undefined;
    worker = early?.worker ?? new Worker('engine/worker.js', { type: 'module', name: manner });
    worker.onmessage = ({ data }) => receive(data);
    worker.onerror = (event) => died(event.message || 'its program could not be loaded');
    worker.onmessageerror = () => died('its message could not be read');
    expect('files');
    early?.heard.forEach(receive);
  }

  /** @param {keyof typeof PATIENCE_MS} doing */
  function expect(doing) {
    clearInterval(watch);
    const { whole } = PATIENCE_MS[doing];
    ({ silence } = PATIENCE_MS[doing]);
    left = { silence, whole };
    // A phone that is busy or asleep lets neither the engine nor this clock run: a tick that comes late counts as one
    watch = setInterval(() => {
      left.silence -= TICK_MS;
      left.whole -= TICK_MS;
      if (left.silence <= 0) died(`it was silent for ${silence / 1000} s`);
      else if (left.whole <= 0) died(`it came to no end in ${whole / 1000} s`);
    }, TICK_MS);
  }

  /** @param {FromWorker} message */
  function receive(message) {
    if (message.kind === 'starting') {
      expect(message.from);
      if (state.kind === 'starting') enter(message);
    } else if (message.kind === 'alive') {
      left.silence = silence;
    } else if (message.kind === 'ready') {
      clearInterval(watch);
      enter(message);
      send();
    } else if (message.kind === 'reply') {
      clearInterval(watch);
      deaths = 0;
      settle(message.reply);
      send();
    } else if (message.kind === 'share') {
      expect('answer');
      asked?.onShare?.(message.share);
    } else if (message.kind === 'stopped') {
      clearInterval(watch);
      asked = null;
      send();
    } else {
      died(message.reason);
    }
  }

  function send() {
    if (state.kind !== 'ready' || asked) return;
    asked = waiting.shift() ?? null;
    if (!asked) return;
    worker.postMessage(asked.request);
    expect('answer');
  }

  /** @param {string} text */
  function settle(text) {
    const question = asked;
    asked = null;
    const reply = JSON.parse(text);
    if (reply.ok) question?.resolve(reply.value);
    else question?.reject(new EngineError(reply.code, reply.message, reply));
  }

  function retire() {
    clearInterval(watch);
    worker.onmessage = worker.onerror = worker.onmessageerror = null;
    worker.terminate();
  }

  /** @param {string} reason */
  function died(reason) {
    retire();
    const lost = [...(asked ? [asked] : []), ...waiting.splice(0)];
    asked = null;
    deaths += 1;
    if (deaths < DEATHS_IN_A_ROW) {
      enter({ kind: 'restarting', reason });
      start('plain');
    } else {
      enter({ kind: 'failed', reason });
    }
    for (const question of lost) question.reject(new EngineError('engine_died', `The engine stopped: ${reason}.`));
  }

  /**
   * @param {string} name
   * @param {object} fields
   * @param {boolean} latest
   * @param {Meanwhile} [meanwhile]
   */
  function put(name, fields, latest, { onShare, signal } = {}) {
    return new Promise((resolve, reject) => {
      if (state.kind === 'failed') {
        reject(new EngineError('engine_failed', `The engine does not start: ${state.reason}.`));
        return;
      }
      const question = { name, request: JSON.stringify({ ask: name, ...fields }), latest, onShare, resolve, reject };
      const old = latest ? waiting.findIndex((other) => other.latest && other.name === name) : -1;
      if (old < 0) waiting.push(question);
      else for (const given of waiting.splice(old, 1, question)) given.resolve(undefined);
      signal?.addEventListener('abort', () => leave(question));
      send();
    });
  }

  /** @param {Question} question */
  function leave(question) {
    const place = waiting.indexOf(question);
    if (place >= 0) waiting.splice(place, 1);
    if (question === asked) worker.postMessage(STOP);
    question.resolve(undefined);
  }

  start('usual');
  onState(state);

  return {
    /**
     * The engine's answer. Rejects with an EngineError.
     * @template {keyof Asks & string} Name
     * @param {Name} name
     * @param {Asks[Name]['request']} fields
     * @param {Meanwhile} [meanwhile] what is stopped resolves to undefined
     * @returns {Promise<Asks[Name]['value']>}
     */
    ask: (name, fields, meanwhile) => put(name, fields, false, meanwhile),

    /**
     * As `ask`, for a value that changes under the finger: of the questions of one name one is being answered and the
     * newest waits; those it replaced, and those stopped, resolve to undefined.
     * @template {keyof Asks & string} Name
     * @param {Name} name
     * @param {Asks[Name]['request']} fields
     * @param {Meanwhile} [meanwhile]
     * @returns {Promise<Asks[Name]['value'] | undefined>}
     */
    latest: (name, fields, meanwhile) => put(name, fields, true, meanwhile),

    /** Begins anew where it has failed or does not come up. */
    restart() {
      if (state.kind === 'ready') return;
      retire();
      deaths = 0;
      enter({ kind: 'restarting', reason: 'asked to' });
      start('plain');
    },
  };
}

/** @typedef {ReturnType<typeof createEngine>} Engine */
