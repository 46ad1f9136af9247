/** The browser's own offer to install, kept until the player takes it. */

/**
 * @param {(canInstall: boolean) => void} onOffer
 * @returns {() => void} shows the browser's question
 */
export function watchInstall(onOffer) {
  /** @type {(Event & {prompt?: () => Promise<unknown>}) | null} */
  let offer = null;
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer = event;
    onOffer(true);
  });
  addEventListener('appinstalled', () => onOffer(false));
  return () => {
    void offer?.prompt?.();
    onOffer(false);
  };
}
