import type { Engine } from './engine/client.js';
import type { Question } from './questions.js';
import type { Part } from './records/part.js';
import type { Parts } from './records/parts.js';
import type { Records } from './records/record.js';
import type { Store } from './store.js';
import type { State } from './types.js';

/** What a feature is made from. */
export interface App {
  store: Store;
  engine: Pick<Engine, 'ask'>;
  record: Records;
  parts: Parts;
  /** The app's own files on this phone: looks at all of them; what it finds stands as `state.offline`. */
  files: { check(): void };
}

/** A screen, its word in the bottom row, and all that is its own. Its style is the .css file in its folder. */
export interface Feature {
  id: string;
  /** Its word in the row of screens; with a `mark`, that is drawn instead. */
  label?: string;
  mark?: unknown;
  /** The screen within which it is found. */
  within?: string;
  /** Other addresses that lead to it: of older versions, or of a part of it. */
  formerly?: string[];
  /** Its parts of what is kept, which "set this part back" makes new: how each is read back. */
  keeps?: { [Name in keyof State]?: Part<State[Name]> };
  /** Its part of the state that goes with the page. */
  initial?: Partial<State>;
  questions?: Question[];
  make(app: App): Screen;
}

export interface Screen {
  view(): unknown;
  /** Called after each drawing of it. */
  drawn?(root: HTMLElement): void;
}
