/** The words that the app's modules share. Engine names and units are those of the wire. */

import type * as Engine from './engine/protocol.js';

export type DistanceUnit = 'ft' | 'm' | 'paces';
export type AimUnit = 'in' | 'cm' | 'cups' | 'balls' | 'degrees' | 'arm';

export interface Settings {
  distance: DistanceUnit;
  aim: AimUnit;
  pace_m: number;
  arm_m: number;
  handed: 'right' | 'left';
  theme: 'light' | 'dark' | 'system';
  stimp_ft: number;
  past_m: number;
}

export interface Slope {
  slope_percent: number;
  fall_deg: number;
}

export interface Station extends Slope {
  at_m: number;
}

/** A putt has one slope, or stations in its place. */
export interface Putt extends Partial<Slope> {
  distance_m: number;
  stimp_ft: number;
  past_m: number;
  stations?: Station[];
}

export interface Player {
  start_line_sd_deg: number;
  pace_sd_fraction: number;
  slope_sd_percent: number;
  start_line_bias_deg: number;
  pace_bias_fraction: number;
}

export type Point = Engine.Point;
export type Preset = Engine.Preset;
export type Read = Engine.ReadAnswer;
export type Window = Engine.WindowAnswer;
export type Cost = Engine.SensitivityRow;
/** Seconds, metres along, metres left, metres a second. */
export type PathPoint = Read['path'][number];

/** An answer and the putt that it answers. */
export interface Answered<T> {
  putt: Putt;
  value: T;
}

export type EngineState =
  | { kind: 'starting' }
  | { kind: 'ready' }
  | { kind: 'restarting' }
  | { kind: 'failed' };

export type InputField = 'distance_m' | 'slope_percent' | 'fall_deg' | 'stimp_ft' | 'past_m';
export type Sheet = '' | 'slopes' | 'player' | 'costs';

/** What was typed and refused; it stays in its field until it is mended. */
export interface Problem {
  field: string;
  text: string;
  message: string;
}

export interface State {
  screen: string;
  sheet: Sheet;
  settings: Settings;
  putt: Putt;
  player: Player;
  presets: Preset[];
  read: Answered<Read> | null;
  window: Answered<Window> | null;
  costs: Answered<Cost[]> | null;
  /** Why the putt in hand has no read. */
  refusal: Answered<string> | null;
  /** Why the hole takes no ball at the pace in hand. */
  closed: Answered<string> | null;
  problem: Problem | null;
  active: InputField;
  station: number;
  size: { width: number; height: number };
  engine: EngineState;
  /** The engine died and came back; said until the next putt. */
  restarted: boolean;
  cautioned: boolean;
  updateWaits: boolean;
  canInstall: boolean;
}
