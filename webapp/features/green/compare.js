/**
 * The putt in hand on today's green and at home.
 * @import {State, Answers} from '../../types.js'
 * @import {GreenActions} from './actions.js'
 */
import { html } from 'lit-html';
import { aim, distanceUnit, number, percents, withUnit } from '../../format.js';
import { card } from './card.js';
import { greenField } from './green-field.js';

/** @param {State} state @param {GreenActions} act */
export function compare(state, act) {
  const {
    calibration,
    answers: { translated, table },
    refusals,
  } = state;
  return html`<div class="fields">${greenField(state, act, 'home_stimp_ft', calibration.home_stimp_ft)}</div>
    ${
      refusals.translated
        ? html`<p class="problem" role="alert">The putt in hand cannot be holed at this pace on this
      green.</p>`
        : ''
    }
    ${translated ? sides(state, translated) : ''}
    ${
      table
        ? html`<h2>For the pocket</h2>${card(state, table)}<button type="button" class="word"
      @click=${() => print()}>Print the card</button>`
        : ''
    }`;
}

/** @param {State} state @param {Answers['translated']} found */
function sides({ putt, settings, read }, { today, home, slope_percent, breaks_like_percent }) {
  const unit = distanceUnit(settings);
  /** @param {Answers['translated']['today'] | null} green */
  const aimed = (green) => {
    if (!green) return 'no such putt';
    const said = aim(green, settings);
    return `${said.number}\u00a0${said.unit}`;
  };
  /** @param {Answers['translated']['today'] | null} green */
  const paced = (green) => (green ? withUnit(green.plays_like_m, unit) : '–');
  return html`<section aria-live="polite">
    ${
      breaks_like_percent === null
        ? html`<p class="say">${home ? 'This putt is as good as straight on both.' : 'At home there is no such putt.'}</p>`
        : html`<p class="say">On ${number(today.stimp_ft, 1)} this ${percents(slope_percent)} breaks like <span
          class="big like">${number(breaks_like_percent, 1)}<small> %</small></span> at home</p>`
    }
    <table class="sides"><thead><tr><td></td><th scope="col"><svg class="key" viewBox="0 0 24 6" aria-hidden="true"><path
      class="today" d="M0 3H24"></path></svg> Today ${number(today.stimp_ft, 1)}</th><th scope="col"><svg class="key"
        viewBox="0 0 24 6" aria-hidden="true"><path class="home" d="M0 3H24"></path></svg> Home
          ${home ? number(home.stimp_ft, 1) : ''}</th></tr></thead>
      <tbody><tr><th scope="row">Aim</th><td>${aimed(today)}</td><td>${aimed(home)}</td></tr><tr><th
        scope="row">Plays like</th><td>${paced(today)}</td><td>${paced(home)}</td></tr></tbody></table>
    ${curves(putt.distance_m, today, home)}
    ${read ? html`<p class="quiet">The putt in hand: ${withUnit(putt.distance_m, unit)}.</p>` : ''}
  </section>`;
}

/**
 * Both paths to the hole from above, the line to the hole lying across.
 * @param {number} distance_m @param {Answers['translated']['today']} today @param {Answers['translated']['home']} home
 */
function curves(distance_m, today, home) {
  const paths = [today, home].map((green) => green?.path.filter(([, x]) => x <= distance_m) ?? []);
  const widest = Math.max(0.15, ...paths.flat().map(([, , y]) => Math.abs(y)));
  // the swing is shown larger than the length, or nothing would be seen of it
  const X = 300 / distance_m;
  const Y = Math.min(60 / widest, 4 * X);
  const swings = paths.flat().map(([, , y]) => y * Y);
  const [up, down] = [Math.max(0, ...swings) + 12, 12 - Math.min(0, ...swings)];
  const [first, second] = paths.map((path) =>
    path.map(([, x, y], i) => `${i ? 'L' : 'M'}${(20 + x * X).toFixed(1)} ${(75 - y * Y).toFixed(1)}`).join(''),
  );
  return html`<svg class="curves" viewBox="0 ${75 - up} 340 ${up + down}" role="img"
    aria-label="Both paths from above, the swing drawn larger than the length">
    <path class="aim-line" d="M20 75H320"></path><circle class="cup" cx="320" cy="75" r="6"></circle><circle class="ball"
      cx="20" cy="75" r="4"></circle>
    <path class="today" d=${first}></path><path class="home" d=${second}></path></svg>`;
}
