/**
 * The first putt of a hole, with what is added later: slope, fall, whose read it was, the slope felt.
 * @import {RoundEntry, RoundPutt, State} from '../../types.js'
 * @import {RoundsActions} from './actions.js'
 */
import { html } from 'lit-html';
import { doesNotFit, fromText, inUnit, unitOf } from '../../format.js';
import { numberField } from '../../parts/number-field.js';
import { sheet } from '../../parts/sheet.js';
import { whoseAim } from '../../parts/whose-aim.js';
import { RANGES } from '../../records/checks.js';

/** @type {['slope_percent' | 'fall_deg' | 'felt_percent', string, string][]} */
const NUMBERS = [
  ['slope_percent', 'Slope', ''],
  ['fall_deg', 'Falls', '90 to the right, 180 uphill, 270 to the left.'],
  ['felt_percent', 'Slope you felt', 'Before you knew the number.'],
];

/** @param {State} state @param {RoundEntry} round @param {RoundsActions} act */
export function holeSheet({ roundsPage, settings, problem }, round, act) {
  const hole = round.holes.find((each) => each.hole === roundsPage.hole);
  const putt = hole?.putts[0];
  if (!hole || !putt) return '';
  const add = (/** @type {Partial<RoundPutt>} */ patch) => act.addToPutt(round.id, hole.hole, patch);
  const fields = NUMBERS.map(([name, label, hint]) => {
    const unit = unitOf(name === 'felt_percent' ? 'slope_percent' : name, settings);
    const mine = problem?.field === `hole-${name}` ? problem : null;
    const value = putt[name];
    const typed = (/** @type {string} */ text) => {
      const number = fromText(text, unit);
      const [low, high] = RANGES[name];
      if (!text.trim()) return add({ [name]: undefined });
      if (number >= low && number <= high) return add({ [name]: number });
      return act.refuse(`hole-${name}`, text, doesNotFit(label, text, low, high, unit));
    };
    const shown = mine?.text ?? (value === undefined ? '' : inUnit(value, unit));
    return numberField({
      name: `hole-${name}`,
      label,
      hint,
      unit: unit.unit,
      value: shown,
      message: mine?.message,
      onText: typed,
    });
  });
  const { read: whose = '' } = putt;
  const body = html`<p class="quiet">For afterwards: in a round Rule 4.3a does not allow a device to give you a line.</p>
    <div class="fields">${fields}</div>
    ${whoseAim({
      label: 'Whose aim was played',
      name: 'hole-read',
      value: whose,
      onWhose: (read) => add({ read: read || undefined }),
    })}`;
  return sheet({ title: `Hole ${hole.hole}, first putt`, body, onClose: () => act.openHole(0) });
}
