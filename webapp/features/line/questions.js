/**
 * What the line's screen asks of the engine.
 * @import {Question} from '../../questions.js'
 * @import {PathPoint, Share, LinePage, State} from '../../types.js'
 */
import { plain } from '../../doubt.js';
import { chalkStep, fieldOfView } from '../../format.js';
import { pathUntil } from '../../parts/picture/frame.js';

/** Touches are told in pixels of a picture so wide, as a phone shows it: the engine's 5 px are a finger's. */
const SHOWN_PX = 390;
/** Points of a line that are enough on a photograph. */
const ENOUGH = 40;

/** @param {LinePage['part']} part */
const on =
  (part) =>
  (/** @type {State} */ { screen, linePage }) =>
    screen === 'line' && linePage.part === part;

/** @type {Question[]} */
export const questions = [
  {
    into: 'view',
    ask: 'view',
    when: on('view'),
    follows: true,
    fields: ({ putt, settings, sighted, linePage: { stand, size } }) =>
      size.width
        ? {
            ...plain(putt),
            stand,
            eye_height_m: sighted[`${sighted.eye}_m`],
            back_m: sighted.back_m,
            width_px: size.width,
            height_px: size.height,
            square_m: 2 * chalkStep(settings).si,
          }
        : null,
  },
  {
    into: 'chalk',
    ask: 'chalk',
    when: on('chalk'),
    fields: ({ putt, settings }) => ({ ...plain(putt), every_m: chalkStep(settings).si }),
  },
  {
    into: 'ramp',
    ask: 'ramp',
    when: on('ramp'),
    fields: ({ read, putt, sighted: { height_m, rolled_m, rolled_stimp_ft } }) =>
      read?.putt === putt
        ? {
            launch_mps: read.value.launch_mps,
            stimp_ft: rolled_stimp_ft ?? putt.stimp_ft,
            ...(height_m !== null && rolled_m !== null && { trial: { height_m, rolled_m } }),
          }
        : null,
  },
  { into: 'camera', ask: 'camera', when: on('photo'), follows: true, fields: cameraFields },
  { into: 'marked', ask: 'marked', when: on('photo'), follows: true, fields: markedFields },
  { into: 'follow', ask: 'follow', when: on('photo'), follows: true, fields: followFields },
  { into: 'lens', ask: 'lens', when: on('photo'), fields: lensFields },
];

/** @param {PathPoint[]} path @returns {[number, number][]} */
function thinned(path) {
  const step = Math.max(1, Math.ceil(path.length / ENOUGH));
  return path.filter((_, i) => i % step === 0 || i === path.length - 1).map(([, x, y]) => [x, y]);
}

/**
 * The three lines, the aim and the marks on the green, in the order in which the picture gets them back.
 * @param {State} state
 */
export function linesOnGreen({ read, window, putt }) {
  if (read?.putt !== putt) return null;
  const fits = window?.putt === putt ? window.value : null;
  return {
    chosen: thinned(pathUntil(read.value.path, read.value.time_s)),
    high: fits ? thinned(fits.high_line) : [],
    low: fits ? thinned(fits.low_line) : [],
    spot: /** @type {[number, number][]} */ ([[putt.distance_m, read.value.aim_offset_m]]),
    marks: /** @type {[number, number][]} */ ([
      [0, 0],
      [putt.distance_m, 0],
    ]),
  };
}

/** A picture's size, its green and what to draw into it. @param {State} state @param {{width: number, height: number}} size */
function pictured(state, { width, height }) {
  const lines = linesOnGreen(state);
  if (!lines || !width) return null;
  const { distance_m, slope_percent, fall_deg, stations, survey } = plain(state.putt);
  return {
    width_px: SHOWN_PX,
    height_px: (SHOWN_PX * height) / width,
    ...(survey ? { survey } : { distance_m, ...(stations ? { stations } : { slope_percent, fall_deg }) }),
    eye_height_m: state.sighted[`${state.sighted.eye}_m`],
    points_m: Object.values(lines).flat(),
  };
}

/** @param {Share} at @param {{width_px: number, height_px: number}} size @returns {[number, number]} */
const pixel = ([x, y], { width_px, height_px }) => [x * width_px, y * height_px];

/** @param {State} state */
export function cameraFields(state) {
  const {
    sighted,
    linePage: { photo, measuring },
  } = state;
  const green = photo && pictured(state, photo.picture);
  if (measuring || !photo?.ball || !photo.hole || !green) return null;
  return {
    ...green,
    ball_px: pixel(photo.ball, green),
    hole_px: pixel(photo.hole, green),
    fov_deg: fieldOfView(photo.lens_mm ?? (photo.live ? sighted.live_mm : sighted.lens_mm), photo.picture),
    ...(photo.attitude ? { held: photo.attitude } : { roll_deg: sighted.roll_deg }),
  };
}

/**
 * The same as long as the marks are: how far the line may be off is worked out once, not with every turn.
 * @param {State} state
 */
function markedFields(state) {
  const {
    sighted,
    linePage: { live },
  } = state;
  const green = live && pictured(state, live);
  if (!live?.ball || !live.hole || !green) return null;
  return {
    ...green,
    fov_deg: fieldOfView(sighted.live_mm, live),
    ball: { at_px: pixel(live.ball.at, green), held: live.ball.attitude },
    hole: { at_px: pixel(live.hole.at, green), held: live.hole.attitude },
  };
}

/** @param {State} state */
export function followFields(state) {
  const marked = markedFields(state);
  const now = state.linePage.live?.attitude;
  return marked && now ? { ...marked, now } : null;
}

/** @param {State} state */
function lensFields({ sighted: { thing_m, away_m }, linePage: { photo, measuring } }) {
  if (!measuring || !photo?.end || !photo.other) return null;
  const size = { width_px: SHOWN_PX, height_px: (SHOWN_PX * photo.picture.height) / photo.picture.width };
  return { ...size, ends_px: [pixel(photo.end, size), pixel(photo.other, size)], length_m: thing_m, distance_m: away_m };
}
