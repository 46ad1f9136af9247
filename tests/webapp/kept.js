/** All that the features keep, as the page has it. */
import { keeps as green } from '../../webapp/features/green/kept.js';
import { keeps as line } from '../../webapp/features/line/kept.js';
import { keeps as practice } from '../../webapp/features/practice/kept.js';
import { keeps as read } from '../../webapp/features/read/kept.js';
import { keeps as record } from '../../webapp/features/record/kept.js';
import { keeps as rounds } from '../../webapp/features/rounds/kept.js';
import { keeps as settings } from '../../webapp/features/settings/kept.js';
import { createParts } from '../../webapp/records/parts.js';

export const parts = createParts({ ...read, ...line, ...green, ...practice, ...record, ...rounds, ...settings });
