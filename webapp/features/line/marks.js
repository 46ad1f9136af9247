/** A picture on which nothing was touched yet. */
export const UNMARKED = { ball: null, hole: null, end: null, other: null };
