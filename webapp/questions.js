/**
 * The one way to ask the engine. A feature declares what it wants to know and what that hangs on; here it is asked when it is
 * wanted, asked anew when what it hangs on has changed or the engine has come back, and dropped when it belongs to older
 * fields.
 * What a touch asks once (a try of typed words, a log) is no question of this kind: it goes to the engine by itself.
 * @import {App} from './app.js'
 * @import {Asks} from './engine/protocol.js'
 * @import {Refusal, State} from './types.js'
 */

/**
 * @typedef {object} Question
 * @property {string} into the answer's name: it stands as `state.answers[into]`, with what was `asked`, and what the engine
 *   says against it as `state.refusals[into]`
 * @property {keyof Asks & string} ask
 * @property {(state: State) => boolean} [when] it is wanted; always, where this is missing
 * @property {(state: State) => readonly unknown[]} [on] what its fields hang on, where making them takes long
 * @property {(state: State) => object | null} fields null: there is nothing to ask
 * @property {boolean} [follows] what is asked changes under the finger: the newest answer stands until the next one comes.
 *   Else the newest question alone counts, and nothing stands that belongs to another
 * @property {(value: any, asked: any, state: State) => Partial<State>} [lands] where it lands elsewhere
 * @property {(refusal: Refusal, asked: any, state: State) => Partial<State>} [refused] what a refusal does
 * @property {(share: number) => Partial<State>} [share] of an answer that takes long: how much of it is done. Such a question
 *   stops when it is wanted no longer
 */

/** @param {App} app @param {Question[]} questions */
export function keepAsking(app, questions) {
  const attend = questions.map((question) => keeper(app, question));
  const all = () => {
    for (const each of attend) each();
  };
  app.store.subscribe(all);
  all();
}

/** @param {App} app @param {Question} question @returns {() => void} looks whether there is something to ask */
function keeper({ store, engine }, question) {
  const { into, when, on, fields, follows, share } = question;
  /** What the answer that stands, or is on its way, was asked. @type {string | undefined} */
  let asked = 'null';
  /** @type {readonly unknown[] | undefined} */
  let hungOn;
  /** @type {AbortController | null} */
  let working = null;
  /** What was refused is asked once more when it is wanted once more. */
  let refusedLast = false;

  function attend() {
    const { state } = store;
    if (when && !when(state)) {
      if (share) working?.abort();
      if (refusedLast) again();
      return;
    }
    const hangsOn = on?.(state);
    if (hangsOn && hungOn && hangsOn.every((part, i) => part === hungOn?.[i])) return;
    hungOn = hangsOn;
    const request = fields(state);
    const said = JSON.stringify(request);
    if (said === asked) return;
    if (share) working?.abort();
    if (working) return; // asked anew when it comes back
    if (asked !== said && (!follows || !request)) drop();
    asked = said;
    if (!request) return;
    if (state.engine.kind === 'starting' || state.engine.kind === 'ready') void ask(request, said);
    else again();
  }

  /** It was asked for nothing: the next look begins anew. */
  function again() {
    asked = undefined;
    hungOn = undefined;
    refusedLast = false;
  }

  /** @param {object} request @param {string} said */
  async function ask(request, said) {
    const { signal } = (working = new AbortController());
    refusedLast = false;
    const onShare = share && ((/** @type {number} */ done) => signal.aborted || store.change(`share of ${into}`, share(done)));
    if (share) store.change(`begin ${into}`, share(0));
    const newest = () => JSON.stringify(fields(store.state)) === said;
    try {
      const value = await engine.ask(question.ask, /** @type {any} */ (request), { signal, onShare });
      if (signal.aborted) again();
      else if (follows || newest()) store.change(`answer ${into}`, landed(value, request));
    } catch (error) {
      const refusal = /** @type {Refusal} */ (error);
      if (refusal.code.startsWith('engine')) again();
      else {
        refusedLast = true;
        if (follows || newest()) store.change(`refusal ${into}`, refused(refusal, request));
      }
    }
    working = null;
    hungOn = undefined;
    attend();
  }

  /** @param {any} value @param {object} request */
  function landed(value, request) {
    const { answers, refusals } = store.state;
    if (question.lands) return question.lands(value, request, store.state);
    return { answers: { ...answers, [into]: { ...value, asked: request } }, refusals: { ...refusals, [into]: undefined } };
  }

  /** @param {Refusal} refusal @param {object} request */
  function refused(refusal, request) {
    const { answers, refusals } = store.state;
    if (question.refused) return question.refused(refusal, request, store.state);
    return { answers: { ...answers, [into]: undefined }, refusals: { ...refusals, [into]: refusal } };
  }

  function drop() {
    const { answers, refusals } = store.state;
    const stands = Object.hasOwn(answers, into) || Object.hasOwn(refusals, into);
    if (!stands) return;
    const without = (/** @type {object} */ all) => Object.fromEntries(Object.entries(all).filter(([name]) => name !== into));
    store.change(`drop ${into}`, { answers: without(answers), refusals: without(refusals) });
  }

  return attend;
}
