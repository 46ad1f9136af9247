/** @import {Feature} from '../../app.js' */
import { html } from 'lit-html';
import { CHANGES, VERSION } from '../../changes.js';
import { dayWords } from '../../format.js';

/** Fetched from the phone itself, once they are asked for. @param {Event} event */
async function openLicences({ target }) {
  const text = /** @type {HTMLElement} */ (/** @type {Element} */ (target).querySelector('pre'));
  text.textContent ||= await fetch('licences.txt').then(
    (response) => response.text(),
    () => 'They are not on this phone yet: open this once where there is a signal.',
  );
}

const page = () => html`<main class="page prose" tabindex="0">
  <h1>About</h1>
  <p class="lead">Borrowline reads a putt: where to start the ball, how hard, and how much room there is. Borrow is the
    allowance that a slope asks.</p>
  <h2>For practice</h2>
  <p>It is made for the practice green. In a round, Rule 4.3a of the Rules of Golf does not allow a device that recommends a
    line of play: the first breach costs the general penalty, the second disqualifies. Other rules may hold where you play: ask
      the committee before you use it anywhere but in practice.</p>
  <h2>How to read the picture</h2>
  <p>The strong curve is the path of the ball. The broken line is where it starts: from the ball to the cross, the aim. The
    hatched band is the room: its long-dashed edge is the high, soft line, its dotted edge the low, firm line. The strokes on
      the green point downhill and are longer where it is steeper. Ball and hole are to scale; on a long putt the circle
        magnifies the hole.</p>
  <h2>What it leaves out</h2>
  <p>Grain, wind, wet or worn turf, footprints and spike marks; bumps smaller than the slopes you give; the bounce and skid of
    the first few feet; how a cup’s edge is cut. Green speed is taken as the same everywhere. A read is as good as its slope and
      its green speed.</p>
  <h2>Your data</h2>
  <p>Nothing leaves this phone. There is no account, no tracking and no advertising, and after the first visit no network is
    needed.</p>
  <h2>What is new</h2>
  ${CHANGES.map(
    ({ version, date, what }) =>
      html`<h3>Version ${version}, ${dayWords(date)}</h3><ul>${what.map((each) => html`<li>${each}</li>`)}</ul>`,
  )}
  <details @toggle=${openLicences}><summary>Licences, in full</summary><pre class="licences" tabindex="0"></pre></details>
  <p class="quiet">Version ${VERSION}</p>
</main>`;

/** @type {Feature} */
export const about = { id: 'about', within: 'settings', make: () => ({ view: page }) };
