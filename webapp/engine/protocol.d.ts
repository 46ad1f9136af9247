// Written by `python3 build` from the engine's types; change those, not this.
export interface Asks {
  read: { request: PuttFields; value: ReadAnswer };
  window: { request: WindowFields; value: WindowAnswer };
  roll: { request: RollFields; value: RollAnswer };
  sensitivity: { request: PuttFields; value: SensitivityAnswer };
  presets: { request: NoFields; value: PresetsAnswer };
  tempo: { request: TempoFields; value: TempoAnswer };
  stroke_length: { request: StrokeLengthFields; value: StrokeLengthAnswer };
  find_tempo: { request: FindTempoFields; value: FindTempoAnswer };
  arc: { request: ArcFields; value: ArcAnswer };
}

export interface PuttFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** Length(low=1, high=12) */ stations?: Array<StationFields> | null;
  /** a number from 0 to 1 m */ past_m: number;
}

export interface StationFields {
  /** a number from 0 to 30 m */ at_m: number;
  /** a number from 0 to 8 % */ slope_percent: number;
  /** a number from -360 to 360 degrees */ fall_deg: number;
}

export interface ReadAnswer {
  aim_deg: number;
  aim_offset_m: number;
  launch_mps: number;
  entry_mps: number;
  entry_deg: number;
  time_s: number;
  apex: Point;
  plays_like_m: number;
  path: Array<[number, number, number, number]>;
}

export interface Point {
  x_m: number;
  y_m: number;
}

export interface WindowFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** Length(low=1, high=12) */ stations?: Array<StationFields> | null;
  /** a number from 0 to 1 m */ past_m: number;
  player?: PlayerFields | null;
}

export interface PlayerFields {
  /** a number from 0 to 20 degrees */ start_line_sd_deg: number;
  /** a number from 0 to 0.5 of the roll */ pace_sd_fraction: number;
  /** a number from 0 to 4 % */ slope_sd_percent?: number;
  /** a number from -20 to 20 degrees */ start_line_bias_deg?: number;
  /** a number from -0.5 to 0.5 of the roll */ pace_bias_fraction?: number;
}

export interface WindowAnswer {
  edge: Array<[number, number, number]>;
  launch_min_mps: number;
  launch_max_mps: number;
  aim_tolerance_deg: [number, number] | null;
  pace_tolerance_fraction: [number, number] | null;
  high_line: Array<[number, number, number, number]>;
  low_line: Array<[number, number, number, number]>;
  make_probability: number;
}

export interface RollFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** Length(low=1, high=12) */ stations?: Array<StationFields> | null;
  /** a number from 0.05 to 15 m/s */ launch_mps: number;
  /** a number from -180 to 180 degrees */ aim_deg: number;
}

export interface RollAnswer {
  stop: Point | null;
  runs_away: boolean;
  time_s: number;
  path: Array<[number, number, number, number]>;
  holed: boolean;
}

export interface SensitivityAnswer {
  rows: Array<SensitivityRow>;
}

export interface SensitivityRow {
  change: "slope" | "speed" | "start_left" | "start_right" | "pace_long" | "pace_short";
  finish: Point | null;
  holed: boolean;
  miss_m: number;
}

export interface NoFields {
}

export interface PresetsAnswer {
  players: Array<Preset>;
}

export interface Preset {
  name: "tour" | "amateur";
  source: string;
  start_line_sd_deg: number;
  pace_sd_fraction: number;
}

export interface TempoFields {
  /** a number from 0.15 to 0.6 s */ forward_s: number;
  /** a number from 1 to 4 */ ratio?: number;
  /** a number from 0.5 to 10 s */ rest_s?: number;
  /** a number from 1 to 600 */ strokes?: number;
  /** a number from 0 to 8 */ count_in?: number;
}

export interface TempoAnswer {
  cycle_s: number;
  lead_s: number;
  total_s: number;
  back_s: number;
  forward_s: number;
  interpolated: boolean;
  events: Array<TempoEvent>;
  curve: Array<[number, number]>;
}

export interface TempoEvent {
  at_s: number;
  kind: "count" | "start" | "top" | "impact" | "finish";
  stroke: number;
}

export interface StrokeLengthFields {
  /** Length(low=0, high=200) */ strokes: Array<OwnStroke>;
  /** a number from 0.05 to 15 m/s */ launch_mps: number;
}

export interface OwnStroke {
  /** a number from 0.02 to 1 m */ backswing_m: number;
  /** a number from 0.1 to 40 m */ roll_m: number;
  /** a number from 5 to 15 ft */ stimp_ft: number;
}

export interface StrokeLengthAnswer {
  backswing_m: number;
  start_m: number;
  per_mps_m: number;
  residual_m: number;
  within: boolean;
}

export interface FindTempoFields {
  /** Length(low=3, high=600) */ taps_s?: Array<number> | null;
  /** Length(low=40, high=20000) */ rates?: Array<Array<number>> | null;
  /** Length(low=40, high=20000) */ angles?: Array<Array<number>> | null;
}

export interface FindTempoAnswer {
  by: "taps" | "motion";
  strokes: Array<FoundStroke>;
  unused: Array<UnusedPart>;
  ratio: number;
  back_s: number;
  forward_s: number;
  ratio_sd: number | null;
  back_sd_s: number | null;
  forward_sd_s: number | null;
}

export interface FoundStroke {
  at_s: number;
  back_s: number;
  forward_s: number;
  ratio: number;
}

export interface UnusedPart {
  from_s: number;
  to_s: number;
  reason: "gap" | "cut_off" | "unlike" | "wrong_count";
}

export interface ArcFields {
  /** a number from 55 to 90 degrees */ lie_deg: number;
  /** a number from 0.45 to 1.3 m */ length_m: number;
  /** a number from 0 to 1 m */ above_grip_m?: number;
  /** a number from 0.05 to 0.4 m */ reach_m?: number;
}

export interface ArcAnswer {
  radius_m: number;
  points: Array<ArcPlace>;
}

export interface ArcPlace {
  along_m: number;
  inside_m: number;
  rise_m: number;
  turn_deg: number;
}
