/** One of a few words, all of them in sight. */
import { html } from 'lit-html';

/**
 * @param {{label: string, name: string, value: string, options: [string, string][], onValue: (value: string) => void}} choice
 */
export const choice = ({ label, name, value, options, onValue }) => html`<fieldset class="choice">
  <legend>${label}</legend>
  <div class="choice-row">
    ${options.map(
      ([id, words]) =>
        html`<label><input type="radio" name=${name} value=${id} .checked=${id === value}
          @change=${() => onValue(id)}><span>${words}</span></label>`,
    )}
  </div>
</fieldset>`;
