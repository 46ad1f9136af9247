/** Whose aim was played: the app's, the player's own, or not said. */
import { choice } from './choice.js';

/** @typedef {'app' | 'own' | ''} Whose */
/** @type {[Whose, string][]} */
const READS = [
  ['app', 'the app’s'],
  ['own', 'my own'],
  ['', 'not said'],
];

/** @param {{label: string, name: string, value: Whose, onWhose: (whose: Whose) => void}} choice */
export const whoseAim = ({ onWhose, ...rest }) =>
  choice({ ...rest, options: READS, onValue: (whose) => onWhose(/** @type {Whose} */ (whose)) });
