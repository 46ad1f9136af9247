/**
 * Another screen is there: the page's title names it, and its heading has the focus, so that it is read out and the next
 * key goes on from it.
 * @param {HTMLElement} root @param {string} name
 */
export function arrive(root, name) {
  document.title = `${name} · Borrowline`;
  /** @type {HTMLElement | null} */
  const heading = root.querySelector('main h1') ?? root.querySelector('main');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}
