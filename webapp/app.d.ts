import type { Engine } from './engine/client.js';
import type { Records } from './records/record.js';
import type { Store } from './store.js';

/** What a feature is made from. */
export interface App {
  store: Store;
  engine: Pick<Engine, 'ask' | 'latest'>;
  record: Records;
}

/** A feature: a screen, and its word in the bottom row, or the feature within which it is found. */
export interface Feature {
  id: string;
  label?: string;
  within?: string;
  view(): unknown;
  /** Called after each drawing of its screen. */
  drawn?(root: HTMLElement): void;
}
