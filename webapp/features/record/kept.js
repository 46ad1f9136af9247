/**
 * What is kept of the record's screen: what is being written, and how putts are logged.
 * @import {Draft, Logging} from '../../types.js'
 */
import { isText, oneOf } from '../../records/forms.js';
import { fields, single } from '../../records/part.js';

/** @type {Draft} */
export const DRAFT = { text: '', weather: '', speed: '' };

/** @type {Logging} */
const LOGGING = { read: '', by: 'picture' };

export const keeps = {
  draft: fields('draft', DRAFT, { text: isText, weather: isText, speed: isText }),
  logging: fields('logging', LOGGING, { read: oneOf('', 'app', 'own'), by: oneOf('picture', 'words') }),
  place: single('place', isText, ''),
};
