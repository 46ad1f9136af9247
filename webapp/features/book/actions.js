/**
 * What a touch on the book can do.
 * @import {App} from '../../app.js'
 * @import {BookPage, Putt, Refusal, WorthEntry} from '../../types.js'
 */
import { openPicture, smallJpeg } from '../../device/picture.js';
import { plain, withSpeed } from '../../doubt.js';
import { BUDGET, KEPT, makeRoom, taken } from '../../records/pictures.js';
import { refusalWords } from '../../refusal.js';

const NOT_OF_A_PUTT = ['kind', 'id', 'at', 'changed', 'place', 'text', 'name', 'picture', 'sample', 'gone'];
/** The putt alone, with how sure it is. @param {WorthEntry} entry */
const puttOf = (entry) =>
  /** @type {Putt} */ (
    /** @type {unknown} */ (Object.fromEntries(Object.entries(entry).filter(([name]) => !NOT_OF_A_PUTT.includes(name))))
  );

/** @param {App} app */
export function actions({ store, engine, record }) {
  /** @param {string} action @param {Partial<BookPage>} patch */
  const set = (action, patch) => store.change(action, { bookPage: { ...store.state.bookPage, ...patch } });
  /** @param {string} id @returns {WorthEntry | undefined} */
  function worth(id) {
    const entry = store.state.entries?.find((each) => each.id === id && !each.gone);
    return entry?.kind === 'worth' ? entry : undefined;
  }

  return {
    /** @param {string} place */
    turn: (place) => set('another place', { place, open: '', guess: '', seen: null, said: '' }),
    /** The putt in hand, under a name. @param {string} name @param {string} place @returns {Promise<boolean>} */
    async keep(name, place) {
      const now = new Date().toISOString();
      /** @type {WorthEntry} */
      const entry = {
        kind: 'worth',
        id: crypto.randomUUID(),
        at: now,
        changed: now,
        place,
        text: '',
        name: name.trim(),
        ...store.state.putt,
      };
      const kept = await record.write([entry]);
      if (kept) set('worth keeping', { place, said: 'Kept in the book.' });
      return kept;
    },
    /** @param {string} id */
    open: (id) => set('study', { open: id, guess: '', seen: null, said: '' }),
    /** @param {string} guess as typed */
    guess: (guess) => set('guess', { guess }),
    /** The break, once a guess is made. @param {string} id */
    async see(id) {
      const entry = worth(id);
      if (!entry) return;
      try {
        const seen = await engine.ask('read', plain(puttOf(entry)));
        if (store.state.bookPage.open === id) set('see it', { seen, said: '' });
      } catch (error) {
        set('no such putt', { said: refusalWords(/** @type {Refusal} */ (error), store.state.settings) });
      }
    },
    /** On the first screen, at the green's speed of today. @param {string} id */
    tryIt(id) {
      const entry = worth(id);
      if (!entry) return;
      store.change('try it at the speed of today', { putt: withSpeed(puttOf(entry), store.state.settings.stimp_ft) });
      location.hash = 'read';
    },
    /** A photograph of it, small enough for the record. @param {string} id @param {File} file */
    async show(id, file) {
      const entry = worth(id);
      const { entries } = store.state;
      if (!entry || !entries) return;
      const whole = await openPicture(file).catch(() => null);
      if (!whole) return set('no picture', { said: 'This file holds no picture that can be opened here.' });
      const picture = smallJpeg(whole, KEPT);
      const room = makeRoom(entries, picture.length);
      const after = entries.map((each) => room.find(({ id }) => id === each.id) ?? each);
      if (taken(after) + picture.length > BUDGET)
        return set('no room', { said: 'The book’s pictures take all the room that there is: delete one first.' });
      if ((await record.write(room)) && (await record.change(id, { picture })))
        set('shown', { said: 'The photograph is kept.' });
    },
    /** @param {string} id */
    async hide(id) {
      if (await record.change(id, { picture: undefined })) set('picture deleted', { said: 'The photograph is deleted.' });
    },
    /** @param {string} id */
    async remove(id) {
      if (await record.change(id, { gone: true }))
        set('out of the book', { open: '', said: 'Deleted; the record’s list can bring it back.' });
    },
  };
}

/** @typedef {ReturnType<typeof actions>} BookActions */
