/** A number that is come to is chosen whole, so that what is typed takes its place. */

const TAKEN_WHOLE = 'input[inputmode="decimal"], input[readonly]';

/** For all such fields of the page, those to come too. @param {Document} page */
export function chooseWhole(page) {
  /** @type {HTMLInputElement | null} */
  let fresh = null;
  page.addEventListener('focusin', ({ target }) => {
    fresh = target instanceof HTMLInputElement && target.matches(TAKEN_WHOLE) ? target : null;
    fresh?.select();
  });
  // In WebKit the end of the touch that brought the focus sets the caret, and the choice is gone
  page.addEventListener('click', ({ target }) => {
    if (target === fresh && fresh?.selectionStart === fresh?.selectionEnd) fresh?.select();
    fresh = null;
  });
}
