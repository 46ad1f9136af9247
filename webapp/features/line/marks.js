/** @import {LinePage, Mark, Photo} from '../../types.js' */

/** A picture on which nothing was touched yet. */
export const UNMARKED = { ball: null, hole: null, end: null, other: null };

/** @param {LinePage['measuring']} measuring @returns {Mark[]} in the order in which they are asked for */
export const marksOf = (measuring) => (measuring ? ['end', 'other'] : ['ball', 'hole']);

/** The mark that the next touch sets. @param {Photo} photo @param {LinePage['measuring']} measuring */
export const wanted = (photo, measuring) => marksOf(measuring).find((name) => !photo[name]);
