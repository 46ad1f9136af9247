/** Keeps the screen on while something has to be looked at from afar. */

/** @param {(held: boolean) => void} onHeld whether the screen really stays on */
export function createWake(onHeld = () => {}) {
  let wanted = false;
  let asking = false;
  /** @type {WakeLockSentinel | null} */
  let lock = null;

  async function take() {
    if (!wanted || asking || lock || document.hidden || !('wakeLock' in navigator)) return;
    asking = true;
    try {
      lock = await navigator.wakeLock.request('screen');
      lock.addEventListener('release', () => {
        lock = null;
        onHeld(false);
      });
      onHeld(true);
      if (!wanted) void lock.release();
    } catch {
      // A phone that saves power may refuse; the session goes on without
    } finally {
      asking = false;
    }
  }
  document.addEventListener('visibilitychange', take);

  /** @param {boolean} awake */
  return (awake) => {
    wanted = awake;
    if (awake) void take();
    else void lock?.release();
  };
}
