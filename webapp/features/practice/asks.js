/**
 * What the practice screen asks of the engine, and when: each answer follows what it hangs on.
 * @import {App} from '../../app.js'
 * @import {CostAnswer} from '../../engine/protocol.js'
 * @import {Practising, State} from '../../types.js'
 */
import { unitless } from './words.js';

/** The gate a foot ahead of the ball. */
export const GATE_AT_M = 0.3048;

/** What the figures of a drill hang on. */
const BODY = /** @type {const} */ (['lie_deg', 'length_m', 'above_grip_m', 'gap_m', 'eyes_m']);
const SCHEDULE = /** @type {const} */ (['forward_s', 'ratio', 'rest_s', 'strokes']);

/** A skill weighs what it costs; tempo, which no putt tells, as much as the others do on average. @param {CostAnswer[]} costs */
function weighed(costs) {
  if (!costs.length) return {};
  const known = costs.map(({ skill, putts_per_100 }) => /** @type {const} */ ([skill, Math.max(0, putts_per_100)]));
  const tempo = known.reduce((sum, [, weight]) => sum + weight, 0) / known.length;
  return { alignment: 0, start_line: 0, pace: 0, reading: 0, ...Object.fromEntries(known), tempo };
}

/** @param {App} app */
export function asks({ store, engine }) {
  /** @param {string} action @param {Partial<Practising>} patch */
  const learn = (action, patch) => store.change(action, { practising: { ...store.state.practising, ...patch } });
  /** @param {string} action @param {() => Promise<Partial<Practising> | undefined>} ask */
  async function ask(action, ask) {
    try {
      const patch = await ask();
      if (patch) learn(action, patch);
    } catch (error) {
      const { code, message } = /** @type {{code?: string, message: string}} */ (error);
      if (code?.startsWith('engine')) console.warn('No answer.', message);
      else learn(`no ${action}`, { note: unitless(message) });
    }
  }

  const askPlan = () =>
    ask('plan', async () => {
      const { minutes, place, at_hand, weights } = store.state.practice;
      const plan = await engine.latest('plan', { minutes, place, at_hand, weights });
      // A session that has begun keeps the plan it began with
      if (plan && !store.state.practice.run)
        store.change('plan', { practice: { ...store.state.practice, blocks: plan.blocks } });
      return undefined;
    });
  const askTempo = () =>
    ask('tempo', async () => {
      const { forward_s, ratio, rest_s, strokes } = store.state.practice.tempo;
      const tempo = await engine.latest('tempo', { forward_s, ratio, rest_s, strokes });
      return tempo && { tempo };
    });
  const askDrills = () => ask('drills', async () => ({ drills: (await engine.ask('drills', {})).drills }));

  /** The figures of the drill on the screen. @param {State} state */
  function askFigures({ practising, practice, putt, player }) {
    const shown = practising.page === 'run' && practice.run ? practice.blocks[practice.run.block].drill : practising.drill;
    const picture = practising.drills.find(({ id }) => id === shown)?.picture;
    const { stimp_ft, distance_m } = putt;
    if (picture === 'gate')
      void ask('gate', async () => {
        const matching = { at_m: GATE_AT_M, stimp_ft, player, posts: /** @type {const} */ ('balls') };
        const { matching_gap_m } = await engine.ask('gate', { ...matching, gap_m: 0.06 });
        return { gate: await engine.ask('gate', { ...matching, gap_m: practice.gap_m ?? matching_gap_m }) };
      });
    if (picture === 'ball_line')
      void ask('ball line', async () => ({ line: await engine.ask('ball_line', { ...putt, player }) }));
    if (picture === 'eyes')
      void ask('eyes', async () => ({ eyes: await engine.ask('eyes', { left_m: practice.eyes_m, distance_m }) }));
    if (picture === 'arc' || practising.page === 'strip')
      void ask('arc', async () => ({
        arc: await engine.ask('arc', {
          lie_deg: practice.lie_deg,
          length_m: practice.length_m,
          above_grip_m: practice.above_grip_m,
        }),
      }));
  }

  const askLength = () =>
    ask('length', async () => {
      const { practice, read } = store.state;
      if (!read) return { note: 'Read a putt first: its launch speed is what the length is for.' };
      return {
        length: await engine.ask('stroke_length', { strokes: practice.strokes, launch_mps: read.value.launch_mps }),
        note: '',
      };
    });

  /** @param {State['practice']['weights']} weights */
  function weigh(weights) {
    const { practice } = store.state;
    if (JSON.stringify(weights) !== JSON.stringify(practice.weights))
      store.change('weigh skills', { practice: { ...practice, weights } });
  }

  store.subscribe((state, before) => {
    const { practice: p, practising: now } = state;
    const { practice: was, practising: then } = before;
    const opened =
      state.screen === 'practice' &&
      (before.screen !== 'practice' || (state.engine.kind === 'ready' && before.engine.kind !== 'ready'));
    if (opened) {
      if (!now.drills.length) void askDrills();
      if (!p.blocks.length) void askPlan();
      if (!now.tempo) void askTempo();
    }
    if (state.findings && state.findings !== before.findings) weigh(weighed(state.findings.value.costs));
    if (
      (was.run && !p.run) ||
      p.weights !== was.weights ||
      p.minutes !== was.minutes ||
      p.place !== was.place ||
      p.at_hand !== was.at_hand
    )
      void askPlan();
    if (SCHEDULE.some((name) => p.tempo[name] !== was.tempo[name])) void askTempo();
    const figures =
      now.drill !== then.drill ||
      p.run?.block !== was.run?.block ||
      now.page !== then.page ||
      now.drills !== then.drills ||
      BODY.some((name) => p[name] !== was[name]);
    if (figures && (now.page === 'drill' || now.page === 'strip' || now.page === 'run')) askFigures(state);
    if (
      now.page === 'length' &&
      p.strokes.length > 2 &&
      (then.page !== 'length' || p.strokes !== was.strokes || state.read !== before.read)
    )
      void askLength();
  });
  return { askDrills, askPlan, askTempo };
}
