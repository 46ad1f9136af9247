/**
 * What makes the aim unsure, by how much each, and what would make it less.
 * @import {Answers, Settings, Source, State} from '../../types.js'
 * @import {ReadActions} from './actions.js'
 * @import {Told} from '../../doubt.js'
 */
import { html } from 'lit-html';
import { speedTold, tiltTold } from '../../doubt.js';
import { aim, aimSpread, distanceUnit, number, percents, withUnit } from '../../format.js';
import { sheet } from '../../parts/sheet.js';

/** @type {Record<Source | 'typed', string>} */
export const BY = {
  typed: 'typed',
  felt: 'felt with the feet',
  level: 'measured with a level',
  rolls: 'from rolled balls',
  stimpmeter: 'off the Stimpmeter',
  kept: 'kept from another day',
  surveyed: 'from the survey',
  filmed: 'from a film',
};

/** @param {Pick<State, 'answers'>} state @param {Told['source']} source */
const whose = ({ answers }, source) =>
  source !== 'typed' ? '' : answers.ownFeel?.sd_percent ? ', as sure as your feet have been' : ', as sure as the player reads';

/** @param {Answers['byTilt'] | undefined} read @param {Settings} settings */
function moves(read, settings) {
  if (!read) return '…';
  const off = aimSpread(read, settings);
  if (!off || read.launch_sd_fraction === null) return 'so much that some such greens have no read';
  const { unit } = aim({ aim_deg: 1, aim_offset_m: 1 }, settings);
  // a roll's length goes with the square of its speed
  const length = withUnit(2 * read.launch_sd_fraction * read.plays_like_m, distanceUnit(settings));
  return `±${off}${unit === '°' ? '' : '\u00a0'}${unit} of aim, ±${length} of length`;
}

/** @param {State} state @param {ReadActions} act */
export function doubt(state, act) {
  const { putt, settings, answers } = state;
  const [tilt, speed] = [tiltTold(state), speedTold(state)];
  const places = putt.stations ? `Slope, ${putt.stations.length} places; the least sure` : 'Slope';
  const body = html`
    <p>Two times in three the aim that is true lies within the ±.</p>
    <section class="from"><h3>${places}: ${BY[tilt.source]}${whose(state, tilt.source)}</h3>
      <p>±${percents(tilt.sd, 2)} each way: ${moves(answers.byTilt, settings)}.</p>
      <button type="button" class="word"
        @click=${() => act.measure('level')}>${
          tilt.source === 'level' ? 'Lay the phone down again' : 'Lay the phone down'
        }</button></section>
    <section class="from"><h3>Green speed: ${BY[speed.source]}</h3>
      <p>±${number(speed.sd, 1)} ft: ${moves(answers.bySpeed, settings)}.</p>
      <button type="button" class="word"
        @click=${() => act.measure('speed')}>${
          speed.source === 'rolls' ? 'Roll more balls' : 'Roll a ball'
        }</button></section>`;
  return sheet({ title: 'How sure', body, onClose: act.close });
}
