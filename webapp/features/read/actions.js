/**
 * What a touch on the read can do.
 * @import {App} from '../../app.js'
 * @import {InputField, Player, Putt, Refusal, Sheet, Station} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { offMap, plain, untilted } from '../../doubt.js';
import { fromText, smallUnit, unitOf } from '../../format.js';
import { nameOf, refusalWords } from '../../refusal.js';
import { undoable } from '../../parts/undo.js';
import { withValue } from './inputs.js';

/** @param {App} app */
export function actions({ store, engine, record }) {
  const { undo } = undoable({ store, record });
  /** @param {string} action @param {Putt} putt */
  const setPutt = (action, putt) =>
    store.change(action, { putt: offMap(putt, inHand()), problem: null, restarted: false, ...unfelt(putt) });
  const inHand = () => store.state.putt;

  /** Another slope in place of the one that was felt was not. @param {Putt} putt */
  const unfelt = (putt) => (store.state.felt && putt.tilt_source !== 'felt' ? { felt: null } : {});

  /**
   * Typed words are tried on the engine first: what it refuses leaves the read as it was.
   * @param {string} field @param {string} text
   * @param {(value: number) => Promise<unknown>} attempt
   * @param {(value: number) => void} take
   */
  async function enter(field, text, attempt, take) {
    const part = field.replace(/^\d+\./, '');
    const unit = unitOf(part, store.state.settings);
    const value = fromText(text, unit);
    const refuse = (/** @type {string} */ message) => store.change('refuse entry', { problem: { field, text, message } });
    if (Number.isNaN(value)) return refuse(`${nameOf(part)} takes a number of ${unit.name}; “${text}” is none.`);
    store.change('try entry', { problem: { field, text, message: '' } });
    try {
      await attempt(value);
    } catch (error) {
      const refusal = /** @type {Refusal} */ (error);
      // a place on a green may lie anywhere; of this putt none lies past the hole
      const high = part === 'at_m' ? Math.min(refusal.high ?? Infinity, inHand().distance_m) : refusal.high;
      if (refusal.code !== 'runs_away')
        return refuse(refusalWords({ ...refusal, message: refusal.message, high }, store.state.settings, text));
    }
    take(value);
  }

  /** @param {string} field @param {string} text @param {(value: number) => Putt} put the value into the putt in hand */
  const enterPutt = (field, text, put) =>
    enter(
      field,
      text,
      (value) => engine.ask('read', plain(offMap(put(value), inHand()))),
      (value) => setPutt(`enter ${field}`, put(value)),
    );

  return {
    /** @param {InputField} active */
    choose: (active) => store.change('choose input', { active, problem: null }),
    /** @param {InputField} field @param {number} value in SI */
    setField: (field, value) => setPutt(`drag ${field}`, withValue(inHand(), store.state.station, field, value)),
    /** @param {InputField} field @param {string} text */
    enterField: (field, text) => enterPutt(field, text, (value) => withValue(inHand(), store.state.station, field, value)),
    /** @param {number} index @param {keyof Station} part @param {string} text */
    enterStation: (index, part, text) =>
      enterPutt(`${index}.${part}`, text, (value) =>
        withStations((list) =>
          list.map((s, i) => (i === index ? { ...(part === 'at_m' ? s : untilted(s)), [part]: value } : s)),
        ),
      ),
    addStation: () =>
      store.change('add station', {
        putt: offMap(
          withStations((list) => halved(list, inHand().distance_m)),
          inHand(),
        ),
        station: store.state.putt.stations ? store.state.station + 1 : 1,
        problem: null,
      }),
    /** @param {number} index */
    removeStation(index) {
      const list = (inHand().stations ?? []).filter((_, i) => i !== index);
      const [last] = list;
      if (!last) return;
      const { stations: _, survey: __, ...rest } = inHand();
      const { at_m: ___, ...only } = last;
      store.change('remove station', {
        putt: list.length > 1 ? { ...rest, stations: list } : { ...rest, ...only },
        station: 0,
        problem: null,
      });
    },
    /** @param {number} station */
    holdStation: (station) => store.change('hold station', { station, problem: null }),
    /** @param {Sheet} sheet */
    open: (sheet) => store.change('open sheet', { sheet, problem: null }),
    close: () => store.change('close sheet', { sheet: '', problem: null }),
    /** To what measures a slope or the green's speed, and back with it. @param {'level' | 'speed'} part */
    measure(part) {
      store.change('to measure', { sheet: '', problem: null, greenPage: { ...store.state.greenPage, part, sent: true } });
      location.hash = 'green';
    },
    /** @param {number} past_m */
    takePace(past_m) {
      const { si } = smallUnit(store.state.settings);
      setPutt('take the best pace', { ...inHand(), past_m: Number((Math.round(past_m / si) * si).toFixed(4)) });
      store.change('close sheet', { sheet: '' });
    },
    undo,
    /** @param {Player} player */
    setPlayer: (player) => store.change('choose player', { player, problem: null }),
    /** @param {keyof Player} field @param {string} text */
    enterPlayer(field, text) {
      const changed = (/** @type {number} */ value) => ({ ...store.state.player, [field]: value });
      return enter(
        field,
        text,
        (value) => engine.ask('window', { ...plain(inHand()), player: changed(value) }),
        (value) => store.change('enter player', { player: changed(value), problem: null }),
      );
    },
    /** @param {{width: number, height: number}} size */
    sized: (size) => store.change('size picture', { size }),
  };

  /** @param {(stations: Station[]) => Station[]} edit @returns {Putt} */
  function withStations(edit) {
    const { slope_percent = 0, fall_deg = 0, tilt_source, tilt_sd_percent, stations, ...rest } = inHand();
    return { ...rest, stations: edit(stations ?? [{ at_m: 0, slope_percent, fall_deg, tilt_source, tilt_sd_percent }]) };
  }
}

/**
 * One station more, at the hole if none is there, else halfway along the widest gap.
 * @param {Station[]} list @param {number} distance_m
 */
function halved(list, distance_m) {
  const last = pick(list, list.length - 1);
  if (last.at_m < distance_m) return [...list, { ...untilted(last), at_m: distance_m }];
  const gaps = list.slice(1).map((s, i) => s.at_m - pick(list, i).at_m);
  const gap = Math.max(...gaps);
  const i = gaps.indexOf(gap);
  const before = pick(list, i);
  return list.toSpliced(i + 1, 0, { ...untilted(before), at_m: before.at_m + gap / 2 });
}

/** @typedef {ReturnType<typeof actions>} ReadActions */
