/**
 * Everything on the phone as one file, also what does not fit: where a screen has failed it is the way out.
 * @import {State} from '../types.js'
 * @import {Parts} from './parts.js'
 */
import { give } from '../device/share.js';
import { today } from '../format.js';
import { readAll, readAllBefore } from './db.js';
import { toJson } from './transfer.js';

/**
 * @param {State} state @param {Parts} parts
 * @returns {Promise<string>} what became of it; empty where the player thought better of it
 */
export async function giveBackup(state, parts) {
  const entries = [...(await readAll()), ...state.unkept];
  const text = toJson(entries, await readAllBefore(), parts.phoneOf(state), state.aside);
  // Phones share .txt, but no .json
  return give(new File([text], `borrowline-${today()}.json.txt`, { type: 'text/plain' }));
}
