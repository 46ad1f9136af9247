/**
 * The findings as text, for a coach: the words and numbers of the screen.
 * @import {Settings, State} from '../../types.js'
 * @import {Table} from './tables.js'
 */
import { changeTable, costTable, makeTable, weekTable } from './tables.js';
import { headline, leaveWords, madeWords, NAMES, restsOn, signed, SKILLS, spreadWords } from './words.js';

/** @param {NonNullable<State['findings']>} findings @param {Settings} settings @param {Date} now */
export function report({ value, entries }, settings, now) {
  const skills = SKILLS.map((name) =>
    [`${NAMES[name]}:`, value.skills[name].words, spreadWords(value.skills[name])].filter(Boolean).join(' '),
  );
  const tables = [makeTable(value.make, settings), changeTable(value.changes), weekTable(value.weeks)].filter(
    ({ rows }) => rows.length,
  );
  const parts = [
    [headline(value), restsOn(value, entries)],
    value.costs.length ? listed(costTable(value, settings)) : [],
    skills,
    [leaveWords(value.leaves, settings)],
    ...tables.map(listed),
    value.made_change ? [madeWords(value.made_change)] : [],
    [signed(now, settings.name)],
  ];
  return `${parts
    .filter((lines) => lines.length)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`;
}

/** A line a row, each number under its name. @param {Table} table */
const listed = ({ title, head, rows }) => [`${title}.`, head.join(' | '), ...rows.map((cells) => cells.join(' | '))];
