/**
 * Rounds in the player's words.
 * @import {RoundBandAnswer, RoundChangeAnswer, RoundLeavesAnswer, PuttedAnswer} from '../../engine/protocol.js'
 * @import {RoundEntry, Settings} from '../../types.js'
 */
import { dayWords, number, several, signed } from '../../format.js';
import { bandWords } from '../../parts/filters.js';

/** @param {RoundEntry} round */
export const roundName = ({ name, place, at }) => [name || place || 'Round', dayWords(at)].join(', ');

/** @param {Pick<PuttedAnswer, 'gained'>} putted */
export function gainedWords({ gained }) {
  const size = number(Math.abs(gained), 1);
  if (size === '0') return 'level';
  return `${size} ${gained > 0 ? 'gained' : 'lost'}`;
}

/** @param {PuttedAnswer} putted */
export const betweenWords = ({ gained_low, gained_high }) => `${signed(gained_low, 1)} to ${signed(gained_high, 1)}`;

/** What does not count, and why. @param {PuttedAnswer} putted */
export const leftOut = ({ unfinished, from_off_the_green }) =>
  [
    unfinished && `${several(unfinished, 'hole')} not finished, left out`,
    from_off_the_green && `${several(from_off_the_green, 'hole')} holed from off the green`,
  ]
    .filter(Boolean)
    .join('; ');

/** @param {RoundLeavesAnswer} leaves */
export function leaveWords({ misses, short, long, left, right, low, high }) {
  if (!misses) return 'No misses.';
  const pairs = /** @type {[number, string, number, string][]} */ ([
    [short, 'short', long, 'long'],
    [left, 'left', right, 'right'],
    [low, 'low', high, 'high'],
  ]).filter(([a, , b]) => a + b);
  return `${several(misses, 'miss', 'misses')}${
    pairs.length ? `: ${pairs.map(([a, one, b, other]) => `${a} ${one}, ${b} ${other}`).join('; ')}` : ''
  }.`;
}

/** What changed beyond chance in the last four weeks. @param {RoundChangeAnswer[]} changes @param {Settings} settings */
export function changed(changes, settings) {
  const beyond = changes.filter(({ beyond_chance }) => beyond_chance);
  if (!beyond.length) return 'In the last four weeks nothing changed beyond chance.';
  const said = beyond.map(({ from_m, to_m, before, now }) => {
    const where = from_m === null || to_m === null ? 'in all' : bandWords([from_m, to_m], settings);
    return `${where} ${signed(now, 1)} in 18 holes, before ${signed(before, 1)}`;
  });
  return `Changed beyond chance in the last four weeks: ${said.join('; ')}.`;
}

/** The band that lost most; null where none did. @param {RoundBandAnswer[]} bands */
export const worst = (bands) =>
  bands.reduce(
    (/** @type {RoundBandAnswer | null} */ most, band) => (band.gained < Math.min(0, most?.gained ?? 0) ? band : most),
    null,
  );
