/** Paper or slate. @import {Settings} from '../types.js' */

const night = matchMedia('(prefers-color-scheme: dark)');
const GROUND = { light: '#faf8f2', dark: '#1b2023' };

/** @param {Settings['theme']} theme */
export function wear(theme) {
  const worn = theme === 'system' ? (night.matches ? 'dark' : 'light') : theme;
  document.documentElement.dataset.theme = worn;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[worn]);
}

/** @param {() => void} onChange */
export const watchNight = (onChange) => night.addEventListener('change', onChange);
