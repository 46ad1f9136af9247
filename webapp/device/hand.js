/** Hands a file to the phone's own sharing where that takes it, or puts it among the downloads. */

/** @param {string} name @param {string} text */
export async function handOver(name, text) {
  // Phones share text as .txt and .csv, not as .json
  const file = new File([text], name.replace(/\.json$/, '.json.txt'), { type: name.endsWith('.csv') ? 'text/csv' : 'text/plain' });
  if (matchMedia('(pointer: coarse)').matches && navigator.canShare?.({ files: [file] })) {
    await navigator.share({ files: [file] });
    return;
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
