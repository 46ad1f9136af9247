/**
 * What a touch on the line's screen can do.
 * @import {App} from '../../app.js'
 * @import {Mark, Putt, Refusal, Share, Sighted, LinePage} from '../../types.js'
 */
import { plain } from '../../doubt.js';
import { refusalWords } from '../../refusal.js';
import { toldBy } from '../../device/exif.js';
import { isCropped, openPicture } from '../../device/picture.js';
import { give } from '../../device/share.js';
import { number, today } from '../../format.js';
import { enterSighted } from '../../parts/eye-height.js';
import { isLens } from '../../records/forms.js';
import { isPutt } from '../../records/putt.js';
import { FIELDS } from './fields.js';
import { UNMARKED, wanted } from './marks.js';
import { addressOf } from './link.js';
import { liveActions } from './live-actions.js';
import { drawn } from './overlay.js';

const JPEG_QUALITY = 0.9;

/** @param {App} app */
export function actions({ store, engine }) {
  /** @param {string} action @param {Partial<LinePage>} patch */
  const set = (action, patch) => store.change(action, { linePage: { ...store.state.linePage, ...patch }, problem: null });

  return {
    ...liveActions(store, set),
    /** @param {LinePage['part']} part */
    show: (part) => set(`show ${part}`, { part, told: '' }),
    /** @param {LinePage['stand']} stand */
    standAt: (stand) => set(`stand at ${stand}`, { stand }),
    /** @param {Sighted['eye']} eye */
    hold: (eye) => store.change(`eye ${eye}`, { sighted: { ...store.state.sighted, eye } }),
    /** @param {boolean} sound */
    hear: (sound) => set('sound', { sound }),
    /** @param {LinePage['size']} size */
    sized: (size) => set('size view', { size }),
    /** @param {keyof typeof FIELDS} name @param {string} text */
    enter(name, text) {
      const { sighted, putt } = store.state;
      const ofTrial = name === 'height_m' || name === 'rolled_m';
      if (ofTrial && !text.trim())
        return store.change(`empty ${name}`, { sighted: { ...sighted, [name]: null }, problem: null });
      enterSighted(store, name, FIELDS[name], text);
      // The ramp keeps its loss when the greens change
      if (name === 'rolled_m' && store.state.sighted !== sighted)
        store.change('green of the trial', { sighted: { ...store.state.sighted, rolled_stimp_ft: putt.stimp_ft } });
    },
    /** The ramp as if it lost nothing. */
    forgetTrial: () =>
      store.change('forget trial', {
        sighted: { ...store.state.sighted, height_m: null, rolled_m: null, rolled_stimp_ft: null },
        problem: null,
      }),

    /** @param {File} file */
    async choosePhoto(file) {
      set('open photo', { photoProblem: '', told: 'Opening the photograph' });
      try {
        const [picture, { lens_mm: told_mm, size }] = await Promise.all([openPicture(file), toldBy(file)]);
        const lens_mm = isLens(told_mm) ? told_mm : null;
        set('photo', {
          photo: { ...UNMARKED, picture, lens_mm, cropped: isCropped(picture, size), live: false, attitude: null },
          told: '',
        });
      } catch {
        set('no photo', {
          photoProblem: `“${file.name}” is no picture that this phone can open. Another one will do, as JPEG or PNG.`,
          told: '',
        });
      }
    },
    /** @param {Mark} mark @param {Share} at */
    mark(mark, at) {
      const { photo } = store.state.linePage;
      if (photo) set(`mark ${mark}`, { photo: { ...photo, [mark]: at.map((share) => Math.max(0, Math.min(1, share))) } });
    },
    /** Sets the mark that is wanted now, whether or not the last one is drawn yet. @param {Share} at */
    touch(at) {
      const { photo, measuring } = store.state.linePage;
      const mark = photo && wanted(photo, measuring);
      if (mark) this.mark(mark, at);
    },
    again() {
      const { photo } = store.state.linePage;
      if (photo) set('mark again', { photo: { ...photo, ...UNMARKED } });
    },
    dropPhoto: () => set('drop photo', { photo: null }),
    /** @param {boolean} measuring */
    measure: (measuring) => set(measuring ? 'measure lens' : 'lens as it was', { measuring, photo: null }),
    keepLens() {
      const {
        sighted,
        linePage: { photo },
        answers: { lens },
      } = store.state;
      if (!photo || !lens) return;
      const date = today();
      store.change('keep lens', {
        sighted: {
          ...sighted,
          ...(photo.live ? { live_mm: lens.lens_mm, live_date: date } : { lens_mm: lens.lens_mm, lens_date: date }),
        },
      });
      set('lens kept', {
        measuring: false,
        photo: null,
        told: `The lens is kept on this phone: ${number(lens.lens_mm, 1)} mm.`,
      });
    },
    async givePhoto() {
      const canvas = drawn(store.state);
      if (!canvas) return;
      /** @type {Blob | null} */
      const blob = await new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', JPEG_QUALITY));
      if (blob) set('give photo', { told: await give(new File([blob], 'borrowline.jpg', { type: 'image/jpeg' })) });
    },

    async giveLink() {
      set('give link', { told: await give(addressOf(store.state.putt)) });
    },
    /**
     * What came by a link, tried on the engine: it never takes the place of the putt in hand by itself.
     * @param {LinePage['sent'] & object} sent
     */
    async receive(sent) {
      set('a putt came', { part: 'send', sent });
      if (!sent.putt) return;
      try {
        const read = await engine.ask('read', plain(sent.putt));
        set('its read', { sent: { ...sent, read } });
      } catch (error) {
        const refusal = /** @type {Refusal} */ (error);
        const { code } = refusal;
        const problem =
          code === 'runs_away'
            ? 'On this green no ball stops past the hole at this pace.'
            : `The link holds no putt that can be read: ${refusalWords(refusal, store.state.settings)}`;
        set('it has none', { sent: { read: null, putt: code === 'runs_away' ? sent.putt : null, problem } });
      }
    },
    take() {
      const { sent } = store.state.linePage;
      if (!isPutt(sent?.putt)) return;
      store.change('take the putt', {
        putt: /** @type {Putt} */ (sent?.putt),
        station: 0,
        linePage: { ...store.state.linePage, sent: null },
      });
      location.hash = 'read';
    },
    leave: () => set('leave the putt', { sent: null }),
  };
}

/** @typedef {ReturnType<typeof actions>} LineActions */
