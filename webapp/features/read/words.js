/**
 * A read as a caddie would say it.
 * @import {Read, Putt, Settings, Cost, Window} from '../../types.js'
 */
import {
  aim,
  aimWords,
  distanceUnit,
  fallWords,
  number,
  percent,
  sideOf,
  smallUnit,
  STRAIGHT_M,
  withUnit,
} from '../../format.js';

/** Which way it breaks, and how far it swings out. @param {Read} read @param {Settings} settings */
export function shapeWords({ path, apex, time_s, aim_offset_m }, settings) {
  const ys = path.filter(([t]) => t <= time_s).map(([, , y]) => y);
  const [left, right] = [Math.max(...ys), -Math.min(...ys)];
  if (Math.max(left, right) < STRAIGHT_M) return 'Straight';
  const crosses = Math.abs(aim_offset_m) > STRAIGHT_M && aim_offset_m * apex.y_m < 0;
  if (crosses || Math.min(left, right) >= STRAIGHT_M) return 'Double break';
  const way = apex.y_m > 0 ? 'Left to right' : 'Right to left';
  return `${way}, ${withUnit(Math.abs(apex.y_m), smallUnit(settings))} out at the apex`;
}

/** @param {Read} read @param {Settings} settings */
export const apexWords = ({ apex }, settings) =>
  Math.abs(apex.y_m) < STRAIGHT_M ? '' : `apex ${withUnit(Math.abs(apex.y_m), smallUnit(settings))}`;

/** How surely a share is known. @param {Pick<Window, 'make_interval'>} window */
export function rangeWords({ make_interval: ends }) {
  if (!ends) return '';
  const [low, high] = ends.map((end) => number(end * 100, 0));
  return `, ${low}\u202fto\u202f${high}`;
}

/** @param {Putt} putt */
export const slopeWords = (putt) =>
  putt.stations
    ? `${putt.stations.length} slopes along the line`
    : `${putt.slope_percent} percent, ${fallWords(putt.fall_deg ?? 0)}`;

/**
 * The picture in words.
 * @param {Read | undefined} read @param {Putt} putt @param {number | undefined} chance @param {Settings} settings
 */
export function pictureWords(read, putt, chance, settings) {
  const green = `${withUnit(putt.distance_m, distanceUnit(settings))} putt seen from above, ${slopeWords(putt)}.`;
  if (!read) return green;
  const { number, unit } = aim(read, settings);
  const odds = chance === undefined ? '' : ` Make ${percent(chance)}.`;
  const like = withUnit(read.plays_like_m, distanceUnit(settings));
  return (
    `${green} Aim ${number} ${unit} ${aimWords(read)}. ${shapeWords(read, settings)}. ` +
    `Plays like ${like} on the level.${odds}`
  );
}

/** @type {Record<Cost['change'], string>} */
export const CHANGES = {
  slope: 'Slope ½ % more',
  speed: 'Green 1 ft faster',
  start_left: 'Start 1° left',
  start_right: 'Start 1° right',
  pace_long: 'Pace 5 % long',
  pace_short: 'Pace 5 % short',
};

/** Where a missed putt finishes. @param {Cost} cost @param {Settings} settings */
export function finishWords({ finish, holed }, settings) {
  if (holed) return 'still drops';
  if (!finish) return 'runs away';
  const unit = smallUnit(settings);
  const along = `${withUnit(Math.abs(finish.x_m), unit)} ${finish.x_m < 0 ? 'short' : 'past'}`;
  return Math.abs(finish.y_m) < unit.si ? along : `${along}, ${withUnit(Math.abs(finish.y_m), unit)} ${sideOf(finish.y_m)}`;
}
