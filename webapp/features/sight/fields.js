/**
 * The numbers that the line's screen keeps, each with its words and its range in SI.
 * @import {Settings, Sighted} from '../../types.js'
 * @import {Unit} from '../../format.js'
 * @typedef {{label: string, unit: (settings: Settings) => Unit, low: number, high: number, hint?: string}} Field
 */
import { distanceUnit, smallUnit } from '../../format.js';

/** @param {Settings} settings */
const small = (settings) => ({ ...smallUnit(settings), digits: 1 });
/** A pace is too coarse for a trial. @param {Settings} settings */
const measured = (settings) => distanceUnit(settings.distance === 'paces' ? { ...settings, distance: 'ft' } : settings);
const lens = () => ({ name: 'millimetres', unit: 'mm', si: 1, digits: 0 });
const degrees = () => ({ name: 'degrees', unit: '°', si: 1, digits: 1 });

/** @type {Record<Exclude<keyof Sighted, 'eye' | 'lens_date' | 'live_date'>, Field>} */
export const FIELDS = {
  standing_m: { label: 'Eye, standing', unit: small, low: 0.2, high: 3 },
  crouching_m: { label: 'Eye, crouching', unit: small, low: 0.2, high: 3 },
  back_m: { label: 'Eye behind ball or hole', unit: measured, low: 0.3, high: 10 },
  lens_mm: { label: 'Lens', unit: lens, low: 10, high: 500, hint: 'As for 35 mm film. Most phones: 24 to 28.' },
  live_mm: { label: 'Lens, moving picture', unit: lens, low: 10, high: 500, hint: 'As for 35 mm film. Measure it once.' },
  thing_m: { label: 'How long it is', unit: small, low: 0.1, high: 5 },
  away_m: { label: 'Lens to its middle', unit: small, low: 0.2, high: 20 },
  roll_deg: { label: 'Camera leans right', unit: degrees, low: -45, high: 45 },
  height_m: { label: 'Let go at', unit: small, low: 0.02, high: 1.5 },
  rolled_m: { label: 'Rolled, on the level', unit: measured, low: 0.1, high: 30 },
};
