/**
 * Which entries are asked for: what findings and rounds share. A day is the player's own.
 * @import {Entry, Only, PuttEntry, RoundEntry} from '../types.js'
 */
import { localTime } from '../format.js';

/** @type {Only} */
export const EVERYTHING = { since: '', from: '', to: '', place: '', how: '', band: null };
const DAY_MS = 86_400_000;

/** Whether any of it is left out. @param {Only} only */
export const isAll = (only) => JSON.stringify(only) === JSON.stringify(EVERYTHING);

/** @param {Only} only @param {number} now @returns {(entry: Entry) => boolean} by day, place, and practice or competition */
function chosen({ since, from, to, place, how }, now) {
  const first = since ? localTime(new Date(now - (Number(since) - 1) * DAY_MS).toISOString()).slice(0, 10) : '';
  return (entry) => {
    const day = localTime(entry.at).slice(0, 10);
    if (entry.gone || day < first || day < from || (to && day > to) || (place && entry.place !== place)) return false;
    const inCompetition = entry.kind === 'round' && entry.competition === true;
    return !how || inCompetition === (how === 'competition');
  };
}

/** @param {Only} only @param {number | null} distance_m */
const inBand = ({ band }, distance_m) => !band || (distance_m !== null && distance_m >= band[0] && distance_m < band[1]);

/**
 * Putts that were logged one by one.
 * @param {Entry[]} entries @param {Only} only @param {number} [now] @returns {PuttEntry[]}
 */
export function puttsOf(entries, only, now = Date.now()) {
  const fits = chosen(only, now);
  return entries.flatMap((entry) => (entry.kind === 'putt' && fits(entry) && inBand(only, entry.distance_m) ? [entry] : []));
}

/**
 * Putts of which no more is known than from where, and what came of it: of rounds, and of tables without a green.
 * @param {Entry[]} entries @param {Only} only @param {number} [now]
 */
export function countedOf(entries, only, now = Date.now()) {
  const fits = chosen(only, now);
  const rounds = entries.flatMap((entry) => (entry.kind === 'round' && fits(entry) ? [entry] : []));
  const bare = puttsOf(entries, only, now).filter((putt) => !hasGreen(putt));
  return [
    ...bare.map(({ at, distance_m, result, length = null }) => ({ at, distance_m, length, result: resultOf(result) })),
    ...rounds.flatMap(({ at, holes }) =>
      holes.flatMap(({ putts }) =>
        putts.flatMap(({ distance_m, result, length = null }) =>
          distance_m !== null && inBand(only, distance_m) ? [{ at, distance_m, length, result }] : [],
        ),
      ),
    ),
  ];
}

/**
 * Blocks of putts that were heard. They are asked of no distance, since none was holed.
 * @param {Entry[]} entries @param {Only} only @param {number} [now]
 */
export function heardOf(entries, only, now = Date.now()) {
  const fits = chosen(only, now);
  return entries
    .flatMap((entry) => (entry.kind === 'drill' && entry.heard && !only.band && fits(entry) ? [entry] : []))
    .map(({ at, heard }) => ({ ...heard, at }));
}

/** @param {PuttEntry['result']} result @returns {'holed' | 'missed'} */
const resultOf = (result) => (result === 'holed' ? 'holed' : 'missed');

/** Whether its green is told, and so what it needed. @param {PuttEntry} putt */
export const hasGreen = ({ stimp_ft }) => stimp_ft !== undefined;

/**
 * Rounds, oldest first, of each the holes that are asked for by their first putts.
 * @param {Entry[]} entries @param {Only} only @param {number} [now] @returns {RoundEntry[]}
 */
export function roundsOf(entries, only, now = Date.now()) {
  const fits = chosen(only, now);
  const rounds = entries.flatMap((entry) => (entry.kind === 'round' && fits(entry) ? [entry] : []));
  const asked = only.band
    ? rounds.map((round) => ({
        ...round,
        holes: round.holes.filter(({ putts: [first] }) => first && inBand(only, first.distance_m)),
      }))
    : rounds;
  return asked.filter(({ holes }) => holes.length).sort((a, b) => (a.at < b.at ? -1 : 1));
}
