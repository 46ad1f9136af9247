/** The words that the app's modules share. Engine names and units are those of the wire. */

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

export interface Preset extends Player {
  name: string;
  source: string;
}

export interface Point {
  x_m: number;
  y_m: number;
}

/** Seconds, metres along, metres left, metres a second. */
export type PathPoint = [number, number, number, number];

export interface Read {
  aim_deg: number;
  aim_offset_m: number;
  launch_mps: number;
  entry_mps: number;
  entry_deg: number;
  time_s: number;
  apex: Point;
  plays_like_m: number;
  path: PathPoint[];
}

export interface Window {
  aim_tolerance_deg: [number, number];
  pace_tolerance_fraction: [number, number];
  high_line: PathPoint[];
  low_line: PathPoint[];
  make_probability: number;
}

export interface Cost {
  change: 'slope' | 'speed' | 'start_left' | 'start_right' | 'pace_long' | 'pace_short';
  finish: Point | null;
  holed: boolean;
  miss_m: number | null;
}

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
