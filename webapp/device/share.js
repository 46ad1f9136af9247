/** Gives a file or an address away: by the phone's own sheet where it has one, else as a download or on the clipboard. */

/** @param {File | string} what @returns {Promise<string>} what became of it, in words */
export async function give(what) {
  const data = typeof what === 'string' ? { url: what } : { files: [what] };
  if (navigator.canShare?.(data)) {
    try {
      await navigator.share(data);
      return 'Given to the phone.';
    } catch (error) {
      if (/** @type {Error} */ (error).name === 'AbortError') return '';
    }
  }
  return typeof what === 'string' ? copy(what) : save(what);
}

/** @param {string} text */
async function copy(text) {
  try {
    await navigator.clipboard.writeText(text);
    return 'Copied.';
  } catch {
    return 'Touch the link above and copy it.';
  }
}

/** @param {File} file */
function save(file) {
  const address = URL.createObjectURL(file);
  Object.assign(document.createElement('a'), { href: address, download: file.name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
  return 'Saved with the downloads.';
}
