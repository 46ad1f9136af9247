/**
 * Everything on the phone as one file, also what does not fit: where a screen has failed it is the way out.
 * @import {State} from '../types.js'
 */
import { give } from '../device/share.js';
import { readAll, readAllBefore } from './db.js';
import { toJson } from './transfer.js';

/** What a file tells of the phone besides its records. @param {State} state */
export const phoneOf = ({ settings, player, calibration, sighted }) => ({ settings, player, calibration, sighted });

/** @param {State} state @returns {Promise<string>} what became of it; empty where the player thought better of it */
export async function giveBackup(state) {
  const entries = [...(await readAll()), ...state.unkept];
  const text = toJson(entries, await readAllBefore(), phoneOf(state), state.aside);
  // Phones share .txt, but no .json
  return give(new File([text], `borrowline-${new Date().toISOString().slice(0, 10)}.json.txt`, { type: 'text/plain' }));
}
