/** Name of the folder of Python's files, a hash of all that is in it; written in by the build. */
declare const RUNTIME: string;

/** A style imported for the page's one style sheet. */
declare module '*.css';
