/** A sheet over the screen; the browser's own dialog keeps focus inside and closes it on Escape. */
import { html } from 'lit-html';

/** @param {Element | undefined} element */
function show(element) {
  if (element instanceof HTMLDialogElement && !element.open)
    queueMicrotask(() => element.isConnected && !element.open && element.showModal());
}

/** @param {{title: string, body: unknown, onClose: () => void}} sheet */
export const sheet = ({ title, body, onClose }) => html`<dialog class="sheet" aria-label=${title} @close=${onClose}
  @click=${(/** @type {MouseEvent} */ event) =>
    event.target === event.currentTarget && /** @type {HTMLDialogElement} */ (event.currentTarget).close()}>
  <div class="sheet-body">
    <header class="sheet-head"><h2>${title}</h2><button type="button" class="word" @click=${onClose}>Done</button></header>
    ${body}
  </div>
</dialog>`;

/** Opens the sheet that the last drawing put on the page. @param {ParentNode} root */
export const openDrawn = (root) => show(root.querySelector('dialog.sheet') ?? undefined);
