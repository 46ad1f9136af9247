/**
 * All drills, by skill.
 * @import {Drill, State} from '../../../types.js'
 * @import {PracticeActions} from '../actions.js'
 */
import { html } from 'lit-html';
import { SKILLS, THINGS } from '../words.js';

/** @param {State} state @param {PracticeActions} act */
export function drills({ practicePage }, act) {
  const skills = /** @type {[Drill['skill'], string][]} */ (Object.entries(SKILLS));
  return html`<h1>Drills</h1>${skills.map(
    ([skill, words]) => html`<section class="skill"><h2>${words}</h2>
    ${practicePage.drills
      .filter((drill) => drill.skill === skill)
      .map(
        ({ id, name, needs }) => html`<button type="button" class="row" @click=${() => act.openDrill(id)}>
      <strong>${name}</strong><span
        class="quiet">${needs.map((thing) => THINGS[thing]).join(', ') || 'needs nothing'}</span></button>`,
      )}
  </section>`,
  )}`;
}
