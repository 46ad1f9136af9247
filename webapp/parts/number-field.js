/** A number to type: kept as typed until it is taken or mended. */
import { html, nothing } from 'lit-html';

/**
 * @param {object} field
 * @param {string} field.name
 * @param {string} field.label
 * @param {string} field.value
 * @param {string} field.unit
 * @param {string} [field.message] why the typed text was refused
 * @param {(text: string) => void} field.onText
 * @param {string} [field.hint]
 */
export const numberField = ({ name, label, value, unit, message, onText, hint }) => html`<div class="number-field">
  <label for=${name}>${label}</label>
  <span class="number-entry"><input id=${name} inputmode="decimal" autocomplete="off" .value=${value}
    aria-invalid=${message ? 'true' : 'false'}
    aria-describedby=${message || hint ? `${name}-note` : nothing}
      @change=${(/** @type {Event} */ event) => onText(/** @type {HTMLInputElement} */ (event.target).value)}><span
        class="unit">${unit}</span></span>
  ${
    message
      ? html`<p class="problem" id="${name}-note" role="alert">${message}</p>`
      : hint
        ? html`<p class="quiet"
    id="${name}-note">${hint}</p>`
        : nothing
  }
</div>`;
