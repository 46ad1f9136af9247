/**
 * Whether the app is whole on this phone, in words.
 * @import {State} from './types.js'
 */
import { dayWords, several } from './format.js';

export const MENDED = 'Part of the app on this phone was damaged or missing. It has been fetched again.';
const ROOM = 'The phone has no room left for all of the app. Free some; it is tried again.';

/** @param {State['offline']} offline */
export function offlineWords(offline) {
  switch (offline.kind) {
    case 'whole':
      return `All of the app is on this phone since ${dayWords(offline.since)}: no signal is needed.`;
    case 'lost':
      return offline.why === 'room'
        ? ROOM
        : `${several(offline.lost, 'file', 'files')} of the app on this phone ${offline.lost === 1 ? 'is' : 'are'} damaged ` +
            'or missing. Open it once where there is a signal.';
    case 'refused':
      if (offline.why === 'room') return ROOM;
      return offline.update
        ? 'A new version did not come whole. The one you have stays; it is tried again.'
        : 'Not all of the app has come to this phone: it needs a signal yet. It is tried again.';
    case 'coming':
      return 'The app is on its way to this phone. Leave it open a moment longer.';
    case 'never':
      return 'This browser does not keep the app on the phone: it needs a signal at each start.';
    default:
      return 'Looking whether all of the app is on this phone.';
  }
}
