/**
 * Whether the browser keeps what is here until its owner deletes it. Unasked, a browser may clear it when the phone runs short
 * of room; an iPhone's clears a site that was not opened for seven days, but not one that was put on the home screen.
 */

/** The promise is asked for; null where this browser gives none. @returns {Promise<boolean | null>} */
export async function askToStay() {
  const { storage } = navigator;
  if (!storage?.persist) return null;
  try {
    return (await storage.persisted()) || (await storage.persist());
  } catch {
    return null;
  }
}

/** Whether it was given. @returns {Promise<boolean | null>} */
export async function stays() {
  try {
    return (await navigator.storage?.persisted?.()) ?? null;
  } catch {
    return null;
  }
}

/**
 * On an iPhone or iPad: in the browser (`tab`), or opened from the home screen, which has a record of its own. Other phones do
 * not tell.
 */
export const place = () => {
  const { standalone } = /** @type {{standalone?: boolean}} */ (/** @type {unknown} */ (navigator));
  return standalone === undefined ? 'elsewhere' : standalone ? 'home' : 'tab';
};
