/**
 * Keeps the screen's answers in step: each question is asked anew when what it hangs on has changed.
 * @import {App} from '../../app.js'
 * @import {Asks} from '../../engine/protocol.js'
 * @import {PathPoint, Seen, Sighting, State} from '../../types.js'
 */
import { chalkStep, fieldOfView } from '../../format.js';
import { pathUntil } from '../../parts/picture/frame.js';

/** Touches are told in pixels of a picture so wide, as a phone shows it: the engine's 5 px are a finger's. */
const SHOWN_PX = 390;
/** Points of a line that are enough on a photograph. */
const ENOUGH = 40;

/**
 * @template {keyof Seen} Name
 * @typedef {{part: Sighting['part'], name: Name & keyof Asks, fields: (state: State) => object | null}} Question
 */

/** @type {Question<keyof Seen>[]} */
const QUESTIONS = [
  { part: 'view', name: 'view', fields: ({ putt, sighted, sighting: { stand, size } }) =>
    ({ ...putt, stand, eye_height_m: sighted[`${sighted.eye}_m`], back_m: sighted.back_m, width_px: size.width, height_px: size.height }) },
  { part: 'chalk', name: 'chalk', fields: ({ putt, settings }) => ({ ...putt, every_m: chalkStep(settings).si }) },
  { part: 'ramp', name: 'ramp', fields: ({ read, putt, sighted: { height_m, rolled_m } }) =>
    read?.putt === putt ? { launch_mps: read.value.launch_mps, stimp_ft: putt.stimp_ft, ...(height_m !== null && rolled_m !== null && { trial: { height_m, rolled_m } }) } : null },
  { part: 'photo', name: 'camera', fields: cameraFields },
];

/** @param {PathPoint[]} path @returns {[number, number][]} */
function thinned(path) {
  const step = Math.max(1, Math.ceil(path.length / ENOUGH));
  return path.filter((_, i) => i % step === 0 || i === path.length - 1).map(([, x, y]) => [x, y]);
}

/** The three lines and the aim on the green, in the order in which the picture gets them back. @param {State} state */
export function linesOnGreen({ read, window, putt }) {
  if (read?.putt !== putt) return null;
  const fits = window?.putt === putt ? window.value : null;
  return {
    chosen: thinned(pathUntil(read.value.path, read.value.time_s)),
    high: fits ? thinned(fits.high_line) : [],
    low: fits ? thinned(fits.low_line) : [],
    spot: /** @type {[number, number][]} */ ([[putt.distance_m, read.value.aim_offset_m]]),
  };
}

/** @param {State} state */
export function cameraFields(state) {
  const { putt, sighted, sighting: { photo } } = state;
  const lines = linesOnGreen(state);
  if (!photo?.ball || !photo.hole || !lines) return null;
  const { width, height } = photo.picture;
  const [width_px, height_px] = [SHOWN_PX, (SHOWN_PX * height) / width];
  // a photograph has one plane; of several slopes the middle one lies most nearly under it
  const { slope_percent, fall_deg } = putt.stations?.[Math.floor(putt.stations.length / 2)] ?? putt;
  return {
    width_px, height_px,
    ball_px: [photo.ball[0] * width_px, photo.ball[1] * height_px],
    hole_px: [photo.hole[0] * width_px, photo.hole[1] * height_px],
    distance_m: putt.distance_m, slope_percent, fall_deg,
    eye_height_m: sighted[`${sighted.eye}_m`],
    fov_deg: fieldOfView(photo.lens_mm ?? sighted.lens_mm, photo.picture),
    roll_deg: sighted.roll_deg,
    points_m: [...lines.chosen, ...lines.high, ...lines.low, ...lines.spot],
  };
}

/** @param {App} app */
export function keepSeen({ store, engine }) {
  /** @type {Partial<Record<keyof Seen, string>>} */
  let asked = {};

  /** @param {keyof Seen} name @param {Partial<Seen>} answers @param {Sighting['refusals']} refusals */
  const land = (name, answers, refusals) => {
    const { sighting } = store.state;
    store.change(`answer ${name}`, { sighting: { ...sighting, answers: { ...sighting.answers, ...answers }, refusals: { ...sighting.refusals, [name]: undefined, ...refusals } } });
  };

  /** @param {Question<keyof Seen>} question @param {State} state */
  async function ask({ name, fields }, state) {
    const request = fields(state);
    const said = JSON.stringify(request);
    if (said === (asked[name] ?? 'null')) return;
    asked[name] = said;
    if (!request) return;
    try {
      const value = await engine.latest(name, /** @type {any} */ (request));
      if (value && asked[name] !== 'null') land(name, { [name]: { ...value, asked: request } }, {});
    } catch (error) {
      if (asked[name] === said) land(name, { [name]: undefined }, { [name]: /** @type {Error} */ (error).message });
    }
  }

  store.subscribe((state, before) => {
    if (state.screen !== 'sight') return;
    if (state.engine.kind === 'ready' && before.engine.kind !== 'ready' && state.restarted) asked = {};
    for (const question of QUESTIONS) if (question.part === state.sighting.part) void ask(question, state);
  });
}
