/** What is known of the app's own files on this phone. */
export type Offline =
  | { kind: 'unknown' }
  /** This browser keeps none. */
  | { kind: 'never' }
  | { kind: 'coming' }
  /** A new version (`update`), or the only one. */
  | { kind: 'refused'; why: Why; update: boolean }
  | { kind: 'lost'; lost: number; why: Why }
  /** `bytes`: of all that is kept, where the browser tells it; `mended`: how many files were fetched again. */
  | { kind: 'whole'; since: string; bytes: number | null; mended: number };
/** There is no room left, or a file did not come as it should. */
export type Why = 'room' | 'fetch';
/** As the service worker tells it. */
export type Files = Offline & { type: 'files' };
