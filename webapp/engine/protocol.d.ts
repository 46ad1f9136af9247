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
  roll_test: { request: RollTestFields; value: RollTestAnswer };
  stimpmeter: { request: StimpmeterFields; value: StimpmeterAnswer };
  level: { request: LevelFields; value: LevelAnswer };
  floor: { request: FloorFields; value: FloorAnswer };
  feel: { request: FeelFields; value: FeelAnswer };
  felt: { request: FeltFields; value: FeltAnswer };
  look: { request: LookFields; value: LookAnswer };
  camera: { request: CameraFields; value: CameraAnswer };
  marked: { request: MarkedFields; value: CameraAnswer };
  follow: { request: FollowFields; value: FollowAnswer };
  lens: { request: LensFields; value: LensAnswer };
  view: { request: ViewFields; value: ViewAnswer };
  chalk: { request: ChalkFields; value: ChalkAnswer };
  ramp: { request: RampFields; value: RampAnswer };
  translate: { request: TranslateFields; value: TranslateAnswer };
  table: { request: TableFields; value: TableAnswer };
  drills: { request: DrillsFields; value: DrillsAnswer };
  plan: { request: PlanFields; value: PlanAnswer };
  gate: { request: GateFields; value: GateAnswer };
  ball_line: { request: BallLineFields; value: BallLineAnswer };
  eyes: { request: EyesFields; value: EyesAnswer };
  findings: { request: FindingsFields; value: FindingsAnswer };
}

export interface PuttFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
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
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
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
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
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
  /** 0 to 200 */ strokes: Array<OwnStroke>;
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
  /** 3 to 600 */ taps_s?: Array<number> | null;
  /** 40 to 6000 */ rates?: Array<Array<number>> | null;
  /** 40 to 6000 */ angles?: Array<Array<number>> | null;
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

export interface RollTestFields {
  /** 2 to 40 */ rolls: Array<BallFields>;
  skid: "rolled" | "putted";
  measure?: "tape" | "paces";
}

export interface BallFields {
  /** a number from 1 to 15 m */ distance_m: number;
  /** a number from 1 to 15 s */ time_s: number;
  way: "out" | "back";
}

export interface RollTestAnswer {
  stimp_ft: number;
  stimp_sd_ft: number;
  slope_percent: number;
  slope_sd_percent: number;
  suspects: Array<number>;
}

export interface StimpmeterFields {
  /** 1 to 10 */ out_ft: Array<number>;
  /** 1 to 10 */ back_ft: Array<number>;
}

export interface StimpmeterAnswer {
  stimp_ft: number;
  stimp_sd_ft: number;
  slope_percent: number;
  slope_sd_percent: number;
  again: Array<"out" | "back">;
}

export interface LevelFields {
  /** 1 to 2000 */ readings: Array<ReadingFields>;
  /** 2 */ bias_deg?: Array<number> | null;
}

export interface ReadingFields {
  /** a number from -180 to 180 degrees */ beta_deg: number;
  /** a number from -90 to 90 degrees */ gamma_deg: number;
  /** a number from 0 to 270 degrees */ turned_deg: number;
  /** a number from 0.001 to 600 s */ weight_s: number;
}

export interface LevelAnswer {
  slope_percent: number;
  fall_deg: number;
  bias_deg: [number, number];
  slope_sd_percent: number;
  check: Check;
  zeroed: boolean;
}

export interface Check {
  positions: number;
  apart_percent: number | null;
}

export interface FloorFields {
  /** a number from 0 to 20 % */ slope_percent: number;
  /** a number from 0 to 20 % */ slope_sd_percent: number;
  /** a number from 0.5 to 2.2 m */ eye_m: number;
}

export interface FloorAnswer {
  shift_m: number;
  shift_sd_m: number;
  verdict: "level" | "unsure" | "tilted";
}

export interface FeelFields {
  /** 0 to 5000 */ trials: Array<TrialFields>;
}

export interface TrialFields {
  /** a number from 0 to 20 % */ felt_percent: number;
  /** a number from 0 to 20 % */ measured_percent: number;
  fall: "left" | "right" | "toes" | "heels";
}

export interface FeelAnswer {
  groups: Array<GroupAnswer>;
  sides: Array<SidesAnswer>;
  curves: Array<CurveAnswer>;
}

export interface GroupAnswer {
  kind: "left" | "right" | "toes" | "heels" | "small" | "large";
  trials: number;
  bias: EstimateAnswer | null;
  spread: EstimateAnswer | null;
  more: number;
}

export interface EstimateAnswer {
  value: number;
  low: number;
  high: number;
}

export interface SidesAnswer {
  one: "left" | "right" | "toes" | "heels";
  other: "left" | "right" | "toes" | "heels";
  difference: EstimateAnswer | null;
  differs: boolean;
  more: number;
}

export interface CurveAnswer {
  fall: "left" | "right" | "toes" | "heels";
  points: Array<[number, number, number]>;
}

export interface FeltFields {
  /** 0 to 5000 */ trials: Array<TrialFields>;
  /** a number from 0 to 8 % */ felt_percent: number;
  fall: "left" | "right" | "toes" | "heels";
}

export interface FeltAnswer {
  slope_percent: number;
  slope_sd_percent: number;
  correction_percent: number;
  trials: number;
}

export interface LookFields {
  /** a number from 0 to 1e+09 */ case: number;
}

export interface LookAnswer {
  slope_percent: number;
  fall: "left" | "right" | "toes" | "heels";
  grid: Array<Array<[number, number]>>;
  ball: Array<[number, number]>;
  hole: Array<[number, number]>;
  flag: Array<[number, number]>;
}

export interface CameraFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 1 to 20000 px */ width_px: number;
  /** a number from 1 to 20000 px */ height_px: number;
  /** 1 to 1000 */ points_m: Array<Array<number>>;
  /** 2 */ ball_px: Array<number>;
  /** 2 */ hole_px: Array<number>;
  /** a number from 0.2 to 3 m */ eye_height_m?: number | null;
  /** a number from -60 to 90 degrees */ pitch_deg?: number | null;
  /** a number from 2 to 150 degrees */ fov_deg?: number | null;
  /** a number from -180 to 180 degrees */ roll_deg?: number | null;
  held?: HeldFields | null;
  /** 2 */ middle_px?: Array<number> | null;
}

export interface HeldFields {
  /** a number from -360 to 360 degrees */ alpha_deg?: number;
  /** a number from -360 to 360 degrees */ beta_deg: number;
  /** a number from -360 to 360 degrees */ gamma_deg: number;
  /** a number from -360 to 360 degrees */ screen_deg?: number;
}

export interface CameraAnswer {
  points_px: Array<[number, number] | null>;
  error_px: number | null;
  error_m: number | null;
  eye_height_m: number;
  pitch_deg: number;
  told_pitch_deg: number | null;
  height_sd_m: number;
  pitch_sd_deg: number;
  roll_deg: number;
  fov_deg: number;
}

export interface MarkedFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 1 to 20000 px */ width_px: number;
  /** a number from 1 to 20000 px */ height_px: number;
  /** 1 to 1000 */ points_m: Array<Array<number>>;
  ball: MarkFields;
  hole: MarkFields;
  /** a number from 0.2 to 3 m */ eye_height_m: number;
  /** a number from 2 to 150 degrees */ fov_deg: number;
}

export interface MarkFields {
  /** 2 */ at_px: Array<number>;
  held: HeldFields;
}

export interface FollowFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 1 to 20000 px */ width_px: number;
  /** a number from 1 to 20000 px */ height_px: number;
  /** 1 to 1000 */ points_m: Array<Array<number>>;
  ball: MarkFields;
  hole: MarkFields;
  /** a number from 0.2 to 3 m */ eye_height_m: number;
  /** a number from 2 to 150 degrees */ fov_deg: number;
  now: HeldFields;
}

export interface FollowAnswer {
  points_px: Array<[number, number] | null>;
}

export interface LensFields {
  /** a number from 1 to 20000 px */ width_px: number;
  /** a number from 1 to 20000 px */ height_px: number;
  /** 2 */ ends_px: Array<Array<number>>;
  /** a number from 0.1 to 5 m */ length_m: number;
  /** a number from 0.2 to 20 m */ distance_m: number;
}

export interface LensAnswer {
  fov_deg: number;
  error_deg: number;
  lens_mm: number;
}

export interface ViewFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  stand: "ball" | "low" | "hole";
  /** a number from 0.2 to 3 m */ eye_height_m: number;
  /** a number from 0.3 to 10 m */ back_m: number;
  /** a number from 1 to 20000 px */ width_px: number;
  /** a number from 1 to 20000 px */ height_px: number;
  /** a number from 0.2 to 1 m */ square_m?: number;
}

export interface ViewAnswer {
  horizon_px: number;
  turf: Array<[number, number]>;
  grid: Array<Array<[number, number]>>;
  grid_m: number;
  falls: Array<Array<[number, number]>>;
  hole: Array<[number, number]>;
  flag: Array<[number, number]>;
  spot: [number, number] | null;
  apex: [number, number] | null;
  time_s: number;
  chosen: Array<[number, number, number, number]>;
  high: Array<[number, number, number, number]> | null;
  low: Array<[number, number, number, number]> | null;
}

export interface ChalkFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  /** a number from 0.1 to 2 m */ every_m: number;
}

export interface ChalkAnswer {
  rows: Array<ChalkRow>;
}

export interface ChalkRow {
  at_m: number;
  chosen_m: number | null;
  high_m: number | null;
  low_m: number | null;
}

export interface RampFields {
  /** a number from 0.05 to 15 m/s */ launch_mps: number;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  trial?: TrialFields | null;
}

export interface RampAnswer {
  height_m: number;
  kept_fraction: number;
}

export interface TranslateFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  /** a number from 5 to 15 ft */ home_stimp_ft: number;
}

export interface TranslateAnswer {
  today: GreenAnswer;
  home: GreenAnswer | null;
  slope_percent: number;
  breaks_like_percent: number | null;
}

export interface GreenAnswer {
  stimp_ft: number;
  aim_deg: number;
  aim_offset_m: number;
  launch_mps: number;
  plays_like_m: number;
  path: Array<[number, number, number, number]>;
}

export interface TableFields {
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  /** 1 to 12 */ distances_m: Array<number>;
  /** 1 to 8 */ slopes_percent: Array<number>;
}

export interface TableAnswer {
  rows: Array<Array<TableCell>>;
}

export interface TableCell {
  aim_deg: number | null;
  aim_offset_m: number | null;
  up_m: number | null;
  down_m: number | null;
}

export interface DrillsFields {
}

export interface DrillsAnswer {
  drills: Array<DrillCard>;
}

export interface DrillCard {
  id: string;
  name: string;
  skill: "alignment" | "start_line" | "pace" | "reading" | "tempo";
  role: "set_up" | "main" | "last";
  why: string;
  needs: Array<"level_floor" | "mirror" | "laser" | "ball" | "balls" | "hole" | "string" | "chalk">;
  places: Array<"room" | "green">;
  least: number;
  most: number;
  picture: "eyes" | "arc" | "tempo" | "gate" | "ball_line" | "string" | "feet" | "chalk" | "past" | "stop" | "shallow" | "long" | "walk" | "last";
  setup: Array<string>;
  cues: Array<string>;
  good: string;
  bad: string;
  cautions: Array<string>;
}

export interface PlanFields {
  /** a number from 10 to 60 minutes */ minutes: number;
  place: "room" | "green";
  /** 0 to 8 */ at_hand?: Array<"level_floor" | "mirror" | "laser" | "ball" | "balls" | "hole" | "string" | "chalk">;
  weights?: WeightFields;
}

export interface WeightFields {
  /** a number from 0 to 100 */ alignment?: number;
  /** a number from 0 to 100 */ start_line?: number;
  /** a number from 0 to 100 */ pace?: number;
  /** a number from 0 to 100 */ reading?: number;
  /** a number from 0 to 100 */ tempo?: number;
}

export interface PlanAnswer {
  blocks: Array<PlanBlock>;
}

export interface PlanBlock {
  drill: string;
  minutes: number;
  why: string;
  instead: Array<string>;
}

export interface GateFields {
  /** a number from 0.04 to 0.4 m */ gap_m: number;
  /** a number from 0.1 to 2 m */ at_m: number;
  posts?: "tees" | "balls";
  /** a number from 0.04 to 0.05 m */ ball_m?: number;
  /** a number from 5 to 15 ft */ stimp_ft?: number;
  player?: PlayerFields | null;
}

export interface GateAnswer {
  passes_deg: number;
  share_of_holed: number | null;
  matching_gap_m: number;
}

export interface BallLineFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  /** a number from 0.1 to 5 degrees */ off_deg?: number;
  player?: PlayerFields | null;
}

export interface BallLineAnswer {
  at_foot_m: number;
  at_hole_m: number;
  make: number;
  make_left: number;
  make_right: number;
}

export interface EyesFields {
  /** a number from -0.2 to 0.2 m */ left_m: number;
  /** a number from 0.3 to 30 m */ distance_m: number;
}

export interface EyesAnswer {
  turned_deg: number;
  at_hole_m: number;
}

export interface FindingsFields {
  /** 0 to 100000 */ putts: Array<LoggedFields>;
  handedness?: "right" | "left";
}

export interface LoggedFields {
  /** a number from 0.3 to 30 m */ distance_m: number;
  /** a number from 0 to 8 % */ slope_percent?: number | null;
  /** a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** 1 to 12 */ stations?: Array<StationFields> | null;
  /** a number from 5 to 15 ft */ stimp_ft: number;
  /** a number from 0 to 1 m */ past_m: number;
  /** 1 to 64 */ id: string;
  /** 10 to 40 */ at: string;
  /** a number from -90 to 90 degrees */ aim_deg: number;
  result: "holed" | FinishFields;
  gate?: "left" | "right" | "clean" | null;
  /** a number from -20 to 20 degrees */ line_error_deg?: number | null;
  /** a number from 0 to 8 % */ felt_percent?: number | null;
}

export interface FinishFields {
  /** a number from -30 to 30 m */ x_m: number;
  /** a number from -30 to 30 m */ y_m: number;
}

export interface FindingsAnswer {
  used: number;
  skills: SkillsAnswer;
  costs: Array<CostAnswer>;
  cost_set: CostSetAnswer;
  make: Array<BandAnswer>;
  published: Array<PublishedAnswer>;
  leaves: LeavesAnswer;
  weeks: Array<WeekAnswer>;
  changes: Array<ChangeAnswer>;
  made_change: MadeChangeAnswer | null;
  strikes: Array<[number, number]>;
  opening: Array<[number, number, number]>;
  opening_m: number;
  left_out: Array<LeftOutAnswer>;
}

export interface SkillsAnswer {
  alignment: SkillAnswer;
  start_line: SkillAnswer;
  pace: SkillAnswer;
  reading: SkillAnswer;
}

export interface SkillAnswer {
  bias: number | null;
  bias_low: number | null;
  bias_high: number | null;
  sd: number | null;
  sd_low: number | null;
  sd_high: number | null;
  unit: "degrees" | "of the roll" | "of the break";
  n: number;
  words: string;
}

export interface CostAnswer {
  skill: "alignment" | "start_line" | "pace" | "reading";
  putts_per_100: number;
  low: number;
  high: number;
}

export interface CostSetAnswer {
  from_m: number;
  to_m: number;
  slope_percent: number;
}

export interface BandAnswer {
  from_m: number;
  to_m: number;
  tries: number;
  made: number;
  low: number;
  high: number;
}

export interface PublishedAnswer {
  name: "tour" | "1995";
  source: string;
  shares: Array<[number, number]>;
}

export interface LeavesAnswer {
  misses: number;
  short: number;
  short_low: number;
  short_high: number;
  beyond_m: number | null;
  beyond_low_m: number | null;
  beyond_high_m: number | null;
}

export interface WeekAnswer {
  monday: string;
  tries: number;
  made: number;
  low: number;
  high: number;
}

export interface ChangeAnswer {
  skill: "alignment" | "start_line" | "pace" | "reading";
  what: "bias" | "sd";
  before: number;
  now: number;
  beyond_chance: boolean;
}

export interface MadeChangeAnswer {
  before: number;
  now: number;
  low: number;
  high: number;
}

export interface LeftOutAnswer {
  id: string;
  why: string;
}
