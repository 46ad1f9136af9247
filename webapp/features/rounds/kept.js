/**
 * What is kept of rounds: the one that is being entered.
 * @import {Card} from '../../types.js'
 */
import { isCard } from '../../records/card.js';
import { single } from '../../records/part.js';

export const keeps = { card: single('card', isCard, /** @type {Card | null} */ (null)) };
