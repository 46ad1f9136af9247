/**
 * The greens that have been walked or laid out, the one in hand, and what follows from it.
 * @import {Entry, GreenEntry, NoteEntry, OnMap, PuttEntry, State} from '../../types.js'
 */
import { clocked, TOLD_SD_FT } from '../../doubt.js';
import { dayOf, today } from '../../format.js';

/** How well a place on the green is known that was paced off, m: each coordinate, as a standard deviation. */
export const PLACE_SD_M = 0.25;

/** Newest change first. @param {Entry[] | null} entries @returns {GreenEntry[]} */
export const greensOf = (entries) =>
  /** @type {GreenEntry[]} */ ((entries ?? []).filter(({ kind, gone }) => kind === 'green' && !gone)).toSorted(
    (a, b) => Number(a.changed < b.changed) - Number(a.changed > b.changed),
  );

/**
 * The green in hand: the chosen one, else the one that was changed last.
 * @param {State} state @returns {GreenEntry | undefined}
 */
export function greenOf({ entries, walkPage: { green } }) {
  const all = greensOf(entries);
  return all.find(({ id }) => id === green) ?? all[0];
}

/** What the engine asks of the green, once it has enough readings. @param {GreenEntry | undefined} green */
export const surveyOf = (green) => (green && green.points.length > 2 ? { points: green.points, place_sd_m: PLACE_SD_M } : null);

/** Where the hole is today, or was last. @param {GreenEntry} green @returns {OnMap | null} */
export function holeOf({ holes }) {
  const days = Object.keys(holes).toSorted();
  return holes[today()] ?? holes[days.at(-1) ?? ''] ?? null;
}

/** The putt in hand as one of the green's map. @param {State} state @param {GreenEntry} green */
function ownOf({ putt: { survey } }, { points }) {
  return survey &&
    survey.points.length === points.length &&
    survey.points.every(({ x_m, y_m }, i) => x_m === points[i]?.x_m && y_m === points[i]?.y_m)
    ? survey
    : null;
}

/** A finger has placed ball or hole. @param {State} state */
export const isPlaced = ({ walkPage: { ball, hole } }) => Boolean(ball ?? hole);

/**
 * Ball and hole where the finger has put them, else where the putt in hand and the day have them.
 * @param {State} state @returns {{ball: OnMap, hole: OnMap} | null}
 */
export function placedOf(state) {
  const green = greenOf(state);
  if (!green || !surveyOf(green)) return null;
  const { ball, hole } = state.walkPage;
  const own = ownOf(state, green);
  const { breadth_m, length_m } = green;
  return {
    ball: ball ?? /** @type {OnMap | undefined} */ (own?.ball) ?? [breadth_m / 2, length_m / 4],
    hole: hole ?? /** @type {OnMap | undefined} */ (own?.hole) ?? holeOf(green) ?? [breadth_m / 2, (2 * length_m) / 3],
  };
}

/** The speed that was measured or told at a place today. @param {State} state @param {string} place */
export function speedToday({ entries }, place) {
  const day = today();
  const note = /** @type {NoteEntry | undefined} */ (
    entries?.find(
      (each) =>
        each.kind === 'note' && !each.gone && each.stimp_ft !== undefined && each.place === place && dayOf(each.at) === day,
    )
  );
  return note?.stimp_ft === undefined ? null : clocked(note.stimp_ft, 'kept', note.stimp_sd_ft ?? TOLD_SD_FT);
}

/**
 * Putts kept at the green's place whose slopes were measured, the newest first. What came off a map tells nothing new of it.
 * @param {State} state @param {GreenEntry} green @returns {PuttEntry[]}
 */
export const puttsOf = ({ entries }, { place }) =>
  /** @type {PuttEntry[]} */ (
    (entries ?? []).filter(
      (each) =>
        each.kind === 'putt' &&
        !each.gone &&
        each.place === place &&
        (each.stations !== undefined || each.slope_percent !== undefined) &&
        !each.stations?.some(({ tilt_source }) => tilt_source === 'surveyed'),
    )
  );

/**
 * What the engine asks of a kept putt to make readings of it; what it does not know it leaves out.
 * @param {PuttEntry} putt @param {{ball: OnMap, hole: OnMap}} placed
 */
export const keptOf = ({ stations, slope_percent = 0, fall_deg = 0, tilt_sd_percent, distance_m }, placed) => ({
  ...placed,
  distance_m,
  slopes: (stations ?? [{ at_m: undefined, slope_percent, fall_deg, tilt_sd_percent }]).map((each) => ({
    at_m: each.at_m,
    slope_percent: each.slope_percent,
    fall_deg: each.fall_deg,
    sd_percent: each.tilt_sd_percent,
  })),
});
