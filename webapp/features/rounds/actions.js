/**
 * What a touch on the rounds can do.
 * @import {App} from '../../app.js'
 * @import {Left} from '../../parts/leave.js'
 * @import {Card, CardHole, Only, RoundEntry, RoundPutt, RoundsPage, Settings} from '../../types.js'
 */
import { pick } from '../../pick.js';
import { today } from '../../format.js';
import { blankHole, cardOf, isDone, roundOf } from '../../records/card.js';

/** @param {App} app */
export function actions({ store, record }) {
  /** @param {string} action @param {Partial<RoundsPage>} patch */
  const set = (action, patch) => store.change(action, { roundsPage: { ...store.state.roundsPage, ...patch } });
  /** @param {string} action @param {Partial<Card>} patch */
  const setCard = (action, patch) => store.state.card && store.change(action, { card: { ...store.state.card, ...patch } });

  /**
   * What is said of the hole in hand; once all of it is, the next one comes.
   * @param {string} action @param {(hole: CardHole) => CardHole} change @param {boolean} [stays]
   */
  function say(action, change, stays = false) {
    const { card } = store.state;
    if (!card) return;
    const hole = change(pick(card.holes, card.at_hole));
    const holes = card.holes.with(card.at_hole, hole);
    const goesOn = !stays && isDone(hole) && card.at_hole + 1 < holes.length;
    setCard(action, { holes, at_hole: card.at_hole + (goesOn ? 1 : 0) });
  }

  return {
    /** @param {Partial<Only>} only */
    filter: (only) => store.change('ask for some', { only: { ...store.state.only, ...only } }),
    /** @param {Settings['against']} against */
    setAgainst: (against) => store.change('against', { settings: { ...store.state.settings, against } }),
    list: () => set('all rounds', { page: 'list', open: '', hole: 0, said: '' }),
    /** @param {string} id */
    open: (id) => set('open a round', { page: 'round', open: id, said: '' }),

    start() {
      const holes = Array.from({ length: 18 }, (_, i) => blankHole(i + 1));
      const { place } = store.state;
      const card = { id: crypto.randomUUID(), at: today(), name: '', place, competition: true, at_hole: 0, holes };
      store.change('start a round', { card, roundsPage: { page: 'card', open: '', hole: 0, said: '' } });
    },
    /** @param {string} id */
    mend(id) {
      const round = store.state.entries?.find((entry) => entry.id === id);
      if (round?.kind === 'round')
        store.change('mend a round', { card: cardOf(round), roundsPage: { page: 'card', open: '', hole: 0, said: '' } });
    },
    goOn: () => set('go on with the round', { page: 'card' }),
    /** @param {Partial<Pick<Card, 'name' | 'place' | 'at' | 'competition'>>} patch */
    describe: (patch) => setCard('describe the round', patch),
    /** @param {number} count */
    setHoles(count) {
      const { card } = store.state;
      if (!card) return;
      const holes = Array.from({ length: count }, (_, i) => card.holes[i] ?? blankHole(i + 1));
      setCard('so many holes', { holes, at_hole: Math.min(card.at_hole, count - 1) });
    },
    /** @param {number} at_hole */
    goTo: (at_hole) => setCard('go to a hole', { at_hole }),

    /** @param {number} distance_m */
    setDistance: (distance_m) => say('from there', (hole) => ({ ...hole, distance_m }), true),
    /** How many putts; the first miss then asks how it was left. @param {number} taken */
    setTaken: (taken) =>
      say('so many putts', (hole) => ({ ...hole, taken, gaveUp: false, told: taken < 2 ? false : hole.told })),
    giveUp: () => say('given up', (hole) => ({ ...hole, taken: null, gaveUp: true })),
    /** @param {Left} left */
    setLeave: (left) =>
      say('left so', (hole) => {
        const { side: _, length: __, ...rest } = hole.putts[0] ?? {};
        return { ...hole, told: true, putts: [{ ...rest, ...left }, ...hole.putts.slice(1)] };
      }),

    async keep() {
      const { card, entries } = store.state;
      if (!card) return;
      const changed = new Date().toISOString();
      const old = entries?.find(({ id }) => id === card.id);
      const { text, ...round } = roundOf(card);
      // a day that was not changed keeps its hour
      const at = old && old.at.slice(0, 10) === card.at.slice(0, 10) ? old.at : `${card.at.slice(0, 10)}T12:00:00`;
      if (await record.write([{ ...round, at, text: old?.text ?? text, changed }], [], { card: null }))
        set('round kept', { page: 'round', open: round.id, said: 'Kept.' });
    },
    forget() {
      store.change('forget the card', { card: null, roundsPage: { page: 'list', open: '', hole: 0, said: '' } });
    },
    /** @param {number} hole 0 closes it */
    openHole: (hole) => store.change('open a hole', { problem: null, roundsPage: { ...store.state.roundsPage, hole } }),
    /** @param {string} field @param {string} text @param {string} message */
    refuse: (field, text, message) => store.change('refuse a hole', { problem: { field, text, message } }),
    /** What is added to a first putt. @param {string} id @param {number} number @param {Partial<RoundPutt>} patch */
    async addToPutt(id, number, patch) {
      const added = await record.change(id, (round) => ({
        holes: /** @type {RoundEntry} */ (round).holes.map((hole) =>
          hole.hole === number ? { ...hole, putts: hole.putts.map((putt, i) => (i ? putt : { ...putt, ...patch })) } : hole,
        ),
      }));
      if (added) store.change('added to a putt', { problem: null });
    },
    /** @param {string} id */
    async remove(id) {
      if (await record.change(id, { gone: true }))
        set('round deleted', { page: 'list', open: '', said: 'Deleted; the record’s list can bring it back.' });
    },
    /**
     * To what is known of such putts, or to a session planned from it.
     * @param {[number, number]} band @param {'findings' | 'practice'} screen
     */
    follow(band, screen) {
      store.change('follow a band', { only: { ...store.state.only, since: '', from: '', to: '', how: '', band } });
      location.hash = screen;
    },
  };
}

/** @typedef {ReturnType<typeof actions>} RoundsActions */
