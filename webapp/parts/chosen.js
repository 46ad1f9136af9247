/** A number that is come to is chosen whole, so that what is typed takes its place. */

const SETTLED_MS = 50;
const TAKEN_WHOLE = 'input[inputmode="decimal"], input[readonly]';

/** For all such fields of the page, those to come too. @param {Document} page */
export function chooseWhole(page) {
  /** @type {HTMLInputElement | null} */
  let fresh = null;
  page.addEventListener('focusin', ({ target }) => {
    fresh = target instanceof HTMLInputElement && target.matches(TAKEN_WHOLE) ? target : null;
    fresh?.select();
  });
  // In WebKit the end of the touch that brought the focus sets the caret, some of the time after its click is told
  page.addEventListener('click', ({ target }) => {
    const field = target === fresh ? fresh : null;
    fresh = null;
    if (!field) return;
    const { value } = field;
    const again = () => field.value === value && field.selectionStart === field.selectionEnd && field.select();
    again();
    setTimeout(again);
    setTimeout(again, SETTLED_MS);
  });
}
