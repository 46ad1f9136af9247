/** Paper or slate. @import {Settings} from '../types.js' */

const night = matchMedia('(prefers-color-scheme: dark)');
const GROUND = { light: '#faf8f2', dark: '#1b2023' };

/** What a theme is now. @param {Settings['theme']} theme @returns {'light' | 'dark'} */
export const worn = (theme) => (theme === 'system' ? (night.matches ? 'dark' : 'light') : theme);

/** @param {Settings['theme']} theme */
export function wear(theme) {
  document.documentElement.dataset.theme = worn(theme);
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[worn(theme)]);
}

/** @param {() => void} onChange */
export const watchNight = (onChange) => night.addEventListener('change', onChange);
