// Written by `python3 build` from the engine's types; change those, not this.
export interface Asks {
  read: { request: ReadFields; value: ReadAnswer };
  window: { request: WindowFields; value: WindowAnswer };
  best_pace: { request: PaceFields; value: PaceAnswer };
  roll: { request: RollFields; value: RollAnswer };
  sensitivity: { request: PuttFields; value: SensitivityAnswer };
  presets: { request: NoFields; value: PresetsAnswer };
  tempo: { request: TempoFields; value: TempoAnswer };
  stroke_length: { request: StrokeLengthFields; value: StrokeLengthAnswer };
  find_tempo: { request: FindTempoFields; value: FindTempoAnswer };
  arc: { request: ArcFields; value: ArcAnswer };
  heard: { request: HeardFields; value: HeardAnswer };
  on_beat: { request: OnBeatFields; value: OnBeatAnswer };
  paces: { request: PacesFields; value: PacesAnswer };
  roll_test: { request: RollTestFields; value: RollTestAnswer };
  stimpmeter: { request: StimpmeterFields; value: StimpmeterAnswer };
  survey: { request: SurveyFields; value: SurveyAnswer };
  find_putts: { request: FindPuttsFields; value: FindPuttsAnswer };
  survey_stations: { request: StationsFields; value: SurveyStationsAnswer };
  survey_points: { request: KeptPuttFields; value: SurveyPointsAnswer };
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
  watched: { request: WatchedFields; value: WatchedAnswer };
  block: { request: BlockFields; value: BlockAnswer };
  translate: { request: TranslateFields; value: TranslateAnswer };
  table: { request: TableFields; value: TableAnswer };
  drills: { request: DrillsFields; value: DrillsAnswer };
  plan: { request: PlanFields; value: PlanAnswer };
  gate: { request: GateFields; value: GateAnswer };
  ball_line: { request: BallLineFields; value: BallLineAnswer };
  eyes: { request: EyesFields; value: EyesAnswer };
  shim: { request: ShimFields; value: ShimAnswer };
  week: { request: TournamentFields; value: TournamentAnswer };
  findings: { request: FindingsFields; value: FindingsAnswer };
  rounds: { request: RoundsFields; value: RoundsAnswer };
}

/** A putt, and how far its green may be off. */
export interface ReadFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** doubt of the tilt: standard deviation of each part, along and across; a number from 0 to 4 % */ tilt_sd_percent?: number | null;
  /** doubt of the speed: standard deviation; a number from 0 to 2 ft */ stimp_sd_ft?: number | null;
}

/** The green's tilt at one place along the line. */
export interface StationFields {
  /** place: from the ball along the line to the hole; a number from 0 to 30 m */ at_m: number;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent: number;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg: number;
}

/** The readings, and where ball and hole lie on the map. */
export interface PlacedFields {
  /** readings: of the level, at places on the map; 3 to 120 */ points: Array<PointFields>;
  /** spread of a place: standard deviation of each coordinate; a number from 0 to 2 m */ place_sd_m?: number;
  /** ball: its place on the map; 2 */ ball: Array<number>;
  /** hole: its place on the map; 2 */ hole: Array<number>;
}

/** The level read at a place of the map. */
export interface PointFields {
  /** place: to the right on the map; a number from -100 to 100 m */ x_m: number;
  /** place: up the map; a number from -100 to 100 m */ y_m: number;
  /** slope: rise over run, down the fall line; a number from 0 to 20 % */ slope_percent: number;
  /** falls: clockwise from up the map; a number from -360 to 360 degrees */ fall_deg: number;
  /** spread: standard deviation of each part of the slope; a number from 0.01 to 5 % */ sd_percent: number;
}

/** Aim, pace and shape; the spreads are None where no doubt was given, or where so doubtful a green has no read. */
export interface ReadAnswer {
  aim_deg: number;
  aim_offset_m: number;
  launch_mps: number;
  aim_sd_deg: number | null;
  aim_offset_sd_m: number | null;
  launch_sd_fraction: number | null;
  entry_mps: number;
  entry_deg: number;
  time_s: number;
  apex: Point;
  plays_like_m: number;
  path: Array<[t_s: number, x_m: number, y_m: number, speed_mps: number]>;
}

/** A place, m. */
export interface Point {
  x_m: number;
  y_m: number;
}

/**
 * A putt and who strikes it; without a player, the tour preset. A doubt of the tilt stands in place of the player's, and
 * so does what a survey leaves open.
 *
 * A player who is known from a record comes with the ends of each skill's interval.
 */
export interface WindowFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** doubt of the tilt: standard deviation of each part, along and across; a number from 0 to 4 % */ tilt_sd_percent?: number | null;
  /** doubt of the speed: standard deviation; a number from 0 to 2 ft */ stimp_sd_ft?: number | null;
  /** player: who strikes it; the tour preset if left out */ player?: PlayerFields | null;
  /** least: the lower ends of the player's intervals */ player_low?: PlayerFields | null;
  /** most: the upper ends of the player's intervals */ player_high?: PlayerFields | null;
}

/** A player's spread and bias; the start line is biased to the left where positive. */
export interface PlayerFields {
  /** start line spread: standard deviation; a number from 0 to 20 degrees */ start_line_sd_deg: number;
  /** pace spread: standard deviation; a number from 0 to 0.5 of the roll */ pace_sd_fraction: number;
  /** slope spread: standard deviation of how slopes are read; a number from 0 to 4 % */ slope_sd_percent?: number;
  /** start line bias: left is positive; a number from -20 to 20 degrees */ start_line_bias_deg?: number;
  /** pace bias: long is positive; a number from -0.5 to 0.5 of the roll */ pace_bias_fraction?: number;
}

/**
 * The starts and paces that hole; tolerances are None where the chosen pace is too firm for any start.
 *
 * `make_interval` holds the share as surely as the ends of the player's skills do; None where they are not given.
 */
export interface WindowAnswer {
  edge: Array<[launch_mps: number, right_deg: number, left_deg: number]>;
  launch_min_mps: number;
  launch_max_mps: number;
  aim_tolerance_deg: [right: number, left: number] | null;
  pace_tolerance_fraction: [short: number, long: number] | null;
  high_line: Array<[t_s: number, x_m: number, y_m: number, speed_mps: number]>;
  low_line: Array<[t_s: number, x_m: number, y_m: number, speed_mps: number]>;
  make_probability: number;
  make_interval: [low: number, high: number] | null;
}

/**
 * A putt without its pace, and who strikes it; without a player, the tour preset. What a survey leaves open stands in
 * place of how the player reads slopes.
 */
export interface PaceFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** player: who strikes it; the tour preset if left out */ player?: PlayerFields | null;
}

/** The pace that costs least, and what the paces about it cost. */
export interface PaceAnswer {
  past_m: number;
  expected_putts: number;
  make_probability: number;
  three_putt_probability: number;
  curve: Array<[past_m: number, expected_putts: number, make_probability: number]>;
}

/** A green and a strike. */
export interface RollFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** launch speed: of the ball as it begins to roll; a number from 0.05 to 15 m/s */ launch_mps: number;
  /** aim: start line, left of the line to the hole; a number from -180 to 180 degrees */ aim_deg: number;
}

/** Where a strike goes; a ball that runs away has no stop, and its path ends far off. */
export interface RollAnswer {
  stop: Point | null;
  runs_away: boolean;
  time_s: number;
  path: Array<[t_s: number, x_m: number, y_m: number, speed_mps: number]>;
  holed: boolean;
}

/** A putt: where, what green, what pace. */
export interface PuttFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
}

/** What each error costs. */
export interface SensitivityAnswer {
  rows: Array<SensitivityRow>;
}

/** One error, and where the ball then rests, from the hole's centre; None if it runs away. */
export interface SensitivityRow {
  change: "slope" | "speed" | "start_left" | "start_right" | "pace_long" | "pace_short";
  finish: Point | null;
  holed: boolean;
  miss_m: number;
}

/** A question without fields. */
export interface NoFields {
}

/** The players that come with the engine. */
export interface PresetsAnswer {
  players: Array<Preset>;
}

/** A player to compare with. */
export interface Preset {
  name: "tour" | "amateur";
  source: string;
  start_line_sd_deg: number;
  pace_sd_fraction: number;
  slope_sd_percent: number;
}

/** A row of strokes in time. */
export interface TempoFields {
  /** forward swing: from the top to the ball; a number from 0.15 to 0.6 s */ forward_s: number;
  /** ratio: of the backswing's time to the forward swing's; a number from 1 to 4 */ ratio?: number;
  /** rest: between two strokes; a number from 0.5 to 10 s */ rest_s?: number;
  /** strokes; a number from 1 to 600 */ strokes?: number;
  /** count-in: beats before the first stroke; a number from 0 to 8 */ count_in?: number;
}

/** A row of strokes; `curve` is the head's place over one cycle: -1 at the top, 0 at the ball, 1 at the finish. */
export interface TempoAnswer {
  cycle_s: number;
  lead_s: number;
  total_s: number;
  back_s: number;
  forward_s: number;
  interpolated: boolean;
  events: Array<TempoEvent>;
  curve: Array<[t_s: number, place: number]>;
}

/** One moment, seconds from the first beat; strokes count from 1, the count-in is 0. */
export interface TempoEvent {
  at_s: number;
  kind: "count" | "start" | "top" | "impact" | "finish";
  stroke: number;
}

/** The player's own strokes, and the launch speed of the putt in hand (a read tells it). */
export interface StrokeLengthFields {
  /** strokes: the player's own; 0 to 200 */ strokes: Array<OwnStroke>;
  /** launch speed: of the ball as it begins to roll; a number from 0.05 to 15 m/s */ launch_mps: number;
}

/** One of the player's strokes on a level place: how far back, how far the ball rolled, how fast the green was. */
export interface OwnStroke {
  /** backswing: how far back the head went; a number from 0.02 to 1 m */ backswing_m: number;
  /** roll: how far the ball rolled on the level; a number from 0.1 to 40 m */ roll_m: number;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
}

/** How far back for the launch, from the line through the strokes; `within` is whether they reach so far. */
export interface StrokeLengthAnswer {
  backswing_m: number;
  residual_m: number;
  within: boolean;
}

/**
 * Taps at start, top and impact of each stroke; or samples of a phone that was swung.
 *
 * `rates` are t_s and degrees a second about the phone's x, y and z; `angles` are t_s, alpha, beta and gamma.
 */
export interface FindTempoFields {
  /** taps: at start, top and impact; 3 to 600 */ taps_s?: Array<number> | null;
  /** rates: s, then degrees a second about x, y, z; 40 to 6000 */ rates?: Array<Array<number>> | null;
  /** angles: s, then alpha, beta, gamma in degrees; 40 to 6000 */ angles?: Array<Array<number>> | null;
}

/**
 * The middle of the strokes and their spread (SD; None for a single one).
 *
 * `ratio_low` and `ratio_high` hold the player's ratio 19 times in 20, with what the method does not know of a stroke's
 * shape; None for a single stroke.
 */
export interface FindTempoAnswer {
  by: "taps" | "motion";
  strokes: Array<FoundStroke>;
  unused: Array<UnusedPart>;
  ratio: number;
  back_s: number;
  forward_s: number;
  ratio_low: number | null;
  ratio_high: number | null;
  ratio_sd: number | null;
  back_sd_s: number | null;
  forward_sd_s: number | null;
}

/** A stroke that was made out; the top lies in the middle of a pause. Taps tell no pause or press. */
export interface FoundStroke {
  at_s: number;
  back_s: number;
  forward_s: number;
  ratio: number;
  pause_s: number;
  press_deg: number;
}

/** What was not used, and why. */
export interface UnusedPart {
  from_s: number;
  to_s: number;
  reason: "gap" | "cut_off" | "unlike" | "wrong_count";
}

/** A putter, and how far above its grip the stroke turns; that is an assumption until it is measured. */
export interface ArcFields {
  /** lie: of the shaft from the floor; the Equipment Rules want it at least 10 degrees off the vertical; a number from 55 to 80 degrees */ lie_deg: number;
  /** length: of the putter; a number from 0.45 to 1.3 m */ length_m: number;
  /** above grip: from the grip's end to where it turns; a number from 0 to 1 m */ above_grip_m?: number;
  /** reach: of the head, back and through; a number from 0.05 to 0.4 m */ reach_m?: number;
}

/** The head's way on the floor. */
export interface ArcAnswer {
  radius_m: number;
  points: Array<ArcPlace>;
}

/** The head along the line from the ball, back and through alike. */
export interface ArcPlace {
  along_m: number;
  inside_m: number;
  rise_m: number;
  turn_deg: number;
}

/** The sound, and what stood in the ball's way. */
export interface HeardFields {
  /** bands: levels below 800 Hz, to 3 kHz, above; 3 */ bands: Array<Array<number>>;
  /** rate: levels a second in each band; a number from 500 to 2000 a second */ rate_hz?: number;
  /** marks: nearest first; 1 to 3 */ marks_m: Array<number>;
  /** floor speed: feet on the Stimpmeter; a bare floor has many; a number from 3 to 60 ft */ stimp_ft?: number | null;
  /** spread of the speed; a number from 0 to 20 ft */ stimp_sd_ft?: number;
  /** skid: a putted ball skids before it rolls */ skid?: "rolled" | "putted";
}

/**
 * Seconds count from the first sample; `marks` has for each arrival its place in `marks_m`.
 *
 * `stimp_ft` is what the sounds alone say of the floor; None where no putt met two marks.
 */
export interface HeardAnswer {
  strokes: Array<HeardStroke>;
  stimp_ft: number | null;
  stimp_sd_ft: number | null;
  heard: Array<HeardSound>;
  left_out: Array<LeftOut>;
}

/** A putt that was heard: the strike, the marks it met, and how far it would have run on this floor. */
export interface HeardStroke {
  impact_s: number;
  arrivals_s: Array<number>;
  marks: Array<number>;
  launch_mps: number;
  launch_sd_mps: number;
  roll_m: number;
  roll_sd_m: number;
}

/** A short sound, and what it is taken for. */
export interface HeardSound {
  at_s: number;
  part: "impact" | "arrival" | "other";
}

/** A sound that belongs to no stroke, and why. */
export interface LeftOut {
  at_s: number;
  reason: "lasting" | "tone" | "rebound" | "alone";
}

/**
 * The sound while a tempo played, and when its notes left the app, on the clock of the sound's first level.
 *
 * Without `delay_s` the notes themselves are listened for, as an earpiece held to the microphone gives them.
 */
export interface OnBeatFields {
  /** bands: levels below 800 Hz, to 3 kHz, above; 3 */ bands: Array<Array<number>>;
  /** rate: levels a second in each band; a number from 500 to 2000 a second */ rate_hz?: number;
  /** beats; 1 to 2000 */ beats_s: Array<number>;
  /** delay: from a note's leaving to its being heard here; a number from -0.1 to 0.8 s */ delay_s?: number | null;
  /** spread of the delay; a number from 0 to 0.8 s */ delay_sd_s?: number;
  /** strikes before: how far off the beat, s; late is positive; 0 to 2000 */ earlier_s?: Array<number>;
}

/**
 * The delay as it was given, or as `heard` notes tell it; None where too few were heard. `lean` and `spread` are of
 * all strikes, those before among them; None for fewer than two.
 */
export interface OnBeatAnswer {
  delay_s: number | null;
  delay_sd_s: number | null;
  heard: number;
  strikes: Array<Strike>;
  lean: Held | null;
  spread: Held | null;
}

/** A strike near a beat: the beat's place in `beats_s`, when it was, and how far off the beat, late positive. */
export interface Strike {
  beat: number;
  at_s: number;
  off_s: number;
}

/** A value with its 95 % interval. */
export interface Held {
  value: number;
  low: number;
  high: number;
}

/** How far putts would have run, and how far they were meant to. */
export interface PacesFields {
  /** rolls: heard; 0 to 2000 */ rolls_m: Array<number>;
  /** meant: how far the ball should run; a number from 0.3 to 40 m */ meant_m: number;
  /** spread of a roll: which all share: the floor's speed; a number from 0 to 60 m */ roll_sd_m?: number;
}

/** Errors of the rolls, as fractions of what was meant, long positive; lean and spread of two or more of them. */
export interface PacesAnswer {
  errors: Array<number>;
  lean: Held | null;
  spread: Held | null;
}

/** Rolls out and back along one line; rolled by hand, or putted, which skids first; taped or paced. */
export interface RollTestFields {
  /** rolls; 2 to 40 */ rolls: Array<BallFields>;
  /** skid: a putted ball skids before it rolls */ skid: "rolled" | "putted";
  /** measure: what the distances were measured with */ measure?: "tape" | "paces";
}

/**
 * A ball rolled along the line: how far from where it was let go to where it stopped, and how long that took.
 *
 * Of a ball that was watched, how it slowed along the line, with its spread, in place of both.
 */
export interface BallFields {
  /** distance: from where it was let go to where it stopped; a number from 1 to 15 m */ distance_m?: number | null;
  /** time: until it stopped; a number from 1 to 15 s */ time_s?: number | null;
  /** slowing: along the line, as it was watched; a number from -2 to 4 m/s2 */ deceleration_mps2?: number | null;
  /** spread of the slowing: standard deviation; a number from 0.0001 to 1 m/s2 */ deceleration_sd_mps2?: number | null;
  /** way */ way: "out" | "back";
}

/** With the rolls that look wrong, by their place in the request; two where nothing tells which of them it is. */
export interface RollTestAnswer {
  stimp_ft: number;
  stimp_sd_ft: number;
  slope_percent: number;
  slope_sd_percent: number;
  suspects: Array<number>;
}

/** Lengths off the Stimpmeter, out and back along one line. */
export interface StimpmeterFields {
  /** out; 1 to 10 */ out_ft: Array<number>;
  /** back; 1 to 10 */ back_ft: Array<number>;
}

/** With the ways whose balls lie more than 8 in apart: the booklet has them rolled again. */
export interface StimpmeterAnswer {
  stimp_ft: number;
  stimp_sd_ft: number;
  slope_percent: number;
  slope_sd_percent: number;
  again: Array<"out" | "back">;
}

/** The readings, and places where the slope is asked for. */
export interface SurveyFields {
  /** readings: of the level, at places on the map; 3 to 120 */ points: Array<PointFields>;
  /** spread of a place: standard deviation of each coordinate; a number from 0 to 2 m */ place_sd_m?: number;
  /** places; 0 to 400 */ at?: Array<Array<number>>;
  /** unit of height: lines lie whole ones apart; a number from 0.001 to 1 m */ height_unit_m?: number;
}

/**
 * The green: tilts at the places asked for, height lines, tilts on a grid (whose spreads are for drawing: those of the
 * likeliest green alone), over what length it changes, readings that do not fit and are left out, and where one more would
 * teach most.
 */
export interface SurveyAnswer {
  at: Array<TiltAnswer>;
  contours: Array<ContourAnswer>;
  grid: Array<GridAnswer>;
  length_m: number;
  suspects: Array<number>;
  next: Array<[x_m: number, y_m: number]>;
}

/** Slope, where it falls (clockwise from up the map), and the spread of each part of it. */
export interface TiltAnswer {
  slope_percent: number;
  fall_deg: number;
  sd_percent: number;
}

/** Points of one height, m over the map's origin. */
export interface ContourAnswer {
  height_m: number;
  points: Array<[x_m: number, y_m: number]>;
}

/** The same at a place of the drawn grid. */
export interface GridAnswer {
  slope_percent: number;
  fall_deg: number;
  sd_percent: number;
  x_m: number;
  y_m: number;
}

/** A surveyed green, the putt that is wanted on it, and the hole if there is one. */
export interface FindPuttsFields {
  /** survey: the green's readings */ survey: MapFields;
  /** wanted: what the putt has to be */ want: WantFields;
  /** hole: its place on the map; 2 */ hole?: Array<number> | null;
}

/** A green walked once: its readings. */
export interface MapFields {
  /** readings: of the level, at places on the map; 3 to 120 */ points: Array<PointFields>;
  /** spread of a place: standard deviation of each coordinate; a number from 0 to 2 m */ place_sd_m?: number;
}

/** The putt that is wanted. */
export interface WantFields {
  /** distance: shortest and longest; 2 */ distance_m: Array<number>;
  /** slope: flattest and steepest; 2 */ slope_percent: Array<number>;
  /** break: the side to which the ball curves */ break?: "left" | "right" | "none" | null;
  /** way: within 45 degrees of straight up or down the fall; across is the rest */ way?: "up" | "down" | "across" | null;
}

/** Putts as wanted, the best known first. */
export interface FindPuttsAnswer {
  putts: Array<FoundAnswer>;
}

/** A putt on the map; slope and fall as a read takes them, with the spread of each part. */
export interface FoundAnswer {
  /** y_m */ ball: [x_m: number, y_m: number];
  /** y_m */ hole: [x_m: number, y_m: number];
  distance_m: number;
  slope_percent: number;
  fall_deg: number;
  sd_percent: number;
}

/** A surveyed green, and ball and hole on it. */
export interface StationsFields {
  /** survey: the green's readings, and where ball and hole lie */ survey: PlacedFields;
}

/** What a kept putt keeps of the survey: its slopes, and the spread of each part of the one tilt that does as much. */
export interface SurveyStationsAnswer {
  distance_m: number;
  stations: Array<StationAnswer>;
  sd_percent: number;
}

/** Slope and fall at a place along a putt, as a read takes them. */
export interface StationAnswer {
  at_m: number;
  slope_percent: number;
  fall_deg: number;
}

/** A putt whose slopes were kept, and where on the map it lay. */
export interface KeptPuttFields {
  /** ball: its place on the map; 2 */ ball: Array<number>;
  /** hole: its place on the map; 2 */ hole: Array<number>;
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m: number;
  /** slopes: as the putt has them; 1 to 12 */ slopes: Array<KeptSlopeFields>;
}

/** A slope that was kept with a putt: at one place of its line, or the whole putt's. */
export interface KeptSlopeFields {
  /** place: from the ball; the whole putt's if left out; a number from 0 to 30 m */ at_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent: number;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg: number;
  /** spread: standard deviation of each part; assumed where it is not known; a number from 0 to 4 % */ sd_percent?: number;
}

/** The slopes of a kept putt as readings at their places. */
export interface SurveyPointsAnswer {
  points: Array<PointAnswer>;
}

/** A reading of the green, as a survey takes it. */
export interface PointAnswer {
  x_m: number;
  y_m: number;
  slope_percent: number;
  fall_deg: number;
  sd_percent: number;
}

/** Readings in one position or more; `bias_deg` (about x, about y) found earlier is used where there is only one. */
export interface LevelFields {
  /** readings; 1 to 2000 */ readings: Array<ReadingFields>;
  /** bias: about x, about y; 2 */ bias_deg?: Array<number> | null;
  /** age of the bias: since it was found; a number from 0 to 36500 days */ bias_age_days?: number;
}

/** What the phone showed for a while, turned clockwise from its first position. */
export interface ReadingFields {
  /** beta: about the phone's x; a number from -180 to 180 degrees */ beta_deg: number;
  /** gamma: about the phone's y; a number from -90 to 90 degrees */ gamma_deg: number;
  /** turned: clockwise from the first position; a number from 0 to 270 degrees */ turned_deg: number;
  /** time: for which the phone showed it; a number from 0.001 to 600 s */ weight_s: number;
}

/** Slope and fall line, from the phone's top in its first position; `zeroed` says whether the bias is known. */
export interface LevelAnswer {
  slope_percent: number;
  fall_deg: number;
  /** about_y */ bias_deg: [about_x: number, about_y: number];
  slope_sd_percent: number;
  check: Check;
  zeroed: boolean;
}

/** How many positions were held, and by how much they disagree, None where they cannot. */
export interface Check {
  positions: number;
  apart_percent: number | null;
}

/** A floor, and how high the eye is over it. */
export interface FloorFields {
  /** slope: rise over run, where it is steepest; a number from 0 to 20 % */ slope_percent: number;
  /** slope spread: standard deviation; a number from 0 to 20 % */ slope_sd_percent: number;
  /** eye height: over the floor; a number from 0.5 to 2.2 m */ eye_m: number;
}

/** How far the floor's tilt moves the eye line, and whether that is little enough for mirror and laser. */
export interface FloorAnswer {
  shift_m: number;
  shift_sd_m: number;
  verdict: "level" | "unsure" | "tilted";
}

/** Trials, none included. */
export interface FeelFields {
  /** trials; 0 to 5000 */ trials: Array<FeltTrialFields>;
}

/** A slope as felt and as measured. */
export interface FeltTrialFields {
  /** felt; a number from 0 to 20 % */ felt_percent: number;
  /** measured; a number from 0 to 20 % */ measured_percent: number;
  /** falls: where the ground runs down to, as the feet stand on it */ fall: "left" | "right" | "toes" | "heels";
}

/** What the trials say; `sd_percent` is how far a slope that is felt and not corrected is off, None without trials. */
export interface FeelAnswer {
  sd_percent: number | null;
  groups: Array<GroupAnswer>;
  sides: Array<SidesAnswer>;
  curves: Array<CurveAnswer>;
}

/** Trials of one kind; `bias` is felt less measured, `more` the trials that are still needed. */
export interface GroupAnswer {
  kind: "left" | "right" | "toes" | "heels" | "small" | "large";
  trials: number;
  bias: EstimateAnswer | null;
  spread: EstimateAnswer | null;
  more: number;
}

/** A value with its 95 % interval, per cent of slope. */
export interface EstimateAnswer {
  value: number;
  low: number;
  high: number;
}

/** One way of falling against its opposite. */
export interface SidesAnswer {
  one: "left" | "right" | "toes" | "heels";
  other: "left" | "right" | "toes" | "heels";
  difference: EstimateAnswer | null;
  differs: boolean;
  more: number;
}

/** What is likely where a slope is felt: felt, likely, and how surely, per cent. */
export interface CurveAnswer {
  fall: "left" | "right" | "toes" | "heels";
  points: Array<[felt: number, likely: number, sd: number]>;
}

/** A slope felt, to be corrected by the trials. */
export interface FeltFields {
  /** trials; 0 to 5000 */ trials: Array<FeltTrialFields>;
  /** felt; a number from 0 to 8 % */ felt_percent: number;
  /** falls: where the ground runs down to, as the feet stand on it */ fall: "left" | "right" | "toes" | "heels";
}

/** A felt slope, corrected, with the trials of its kind that the correction stands on. */
export interface FeltAnswer {
  slope_percent: number;
  slope_sd_percent: number;
  correction_percent: number;
  trials: number;
}

/** The number of a picture; the same number gives the same picture. */
export interface LookFields {
  /** case; a number from 0 to 1e+09 */ case: number;
}

/** A green to guess from: points right of the line and down from the horizon; and what it is. */
export interface LookAnswer {
  slope_percent: number;
  fall: "left" | "right" | "toes" | "heels";
  grid: Array<Array<[right: number, down: number]>>;
  ball: Array<[right: number, down: number]>;
  hole: Array<[right: number, down: number]>;
  flag: Array<[right: number, down: number]>;
}

/**
 * A picture with ball and hole touched on it, and what is known of its camera.
 *
 * Pitch is down from level and roll clockwise as the camera's holder sees it; how the phone was held tells both. The middle
 * is where the lens looked: a picture that was cropped has it elsewhere than in its own middle.
 */
export interface CameraFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** points: places on the green to find in the picture; 1 to 1000 */ points_m: Array<Array<number>>;
  /** ball: where it was touched; 2 */ ball_px: Array<number>;
  /** hole: where it was touched; 2 */ hole_px: Array<number>;
  /** eye height: of the lens or the eye over the green; a number from 0.2 to 3 m */ eye_height_m?: number | null;
  /** pitch: of the camera, down from level; a number from -60 to 90 degrees */ pitch_deg?: number | null;
  /** field of view: of the lens, from top to bottom; a number from 2 to 150 degrees */ fov_deg?: number | null;
  /** roll: of the camera, clockwise; a number from -180 to 180 degrees */ roll_deg?: number | null;
  /** attitude: how the phone was held */ held?: AttitudeFields | null;
  /** middle: where the lens looked; 2 */ middle_px?: Array<number> | null;
}

/** How the phone was held, as its browser tells it, and how far the screen had turned its picture. */
export interface AttitudeFields {
  /** alpha: about the phone's z; a number from -360 to 360 degrees */ alpha_deg?: number;
  /** beta: about the phone's x; a number from -360 to 360 degrees */ beta_deg: number;
  /** gamma: about the phone's y; a number from -360 to 360 degrees */ gamma_deg: number;
  /** screen: how far it had turned its picture; a number from -360 to 360 degrees */ screen_deg?: number;
}

/**
 * The points in the picture, None where one is not before the lens; how far they may be off, None if anywhere.
 *
 * `error_m` is what `error_px` covers across the view at the hole.
 * `told_pitch_deg` is the pitch that was told; far from the one found, it speaks against what else was told.
 * `height_sd_m` and `pitch_sd_deg` are the deviations that a told height and pitch are taken to have.
 */
export interface CameraAnswer {
  points_px: Array<[right_px: number, down_px: number] | null>;
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

/** The moving picture with ball and hole touched on it. */
export interface MarkedFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** points: places on the green to find in the picture; 1 to 1000 */ points_m: Array<Array<number>>;
  /** ball: where it was touched */ ball: MarkFields;
  /** hole: where it was touched */ hole: MarkFields;
  /** eye height: of the lens or the eye over the green; a number from 0.2 to 3 m */ eye_height_m: number;
  /** field of view: of the lens, from top to bottom; a number from 2 to 150 degrees */ fov_deg: number;
}

/** Where something was touched on the moving picture, and how the phone was held at that moment. */
export interface MarkFields {
  /** touch: right of the picture's left edge, down from its top; 2 */ at_px: Array<number>;
  /** attitude: how the phone was held */ held: AttitudeFields;
}

/** The same, and how the phone is held now. */
export interface FollowFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** points: places on the green to find in the picture; 1 to 1000 */ points_m: Array<Array<number>>;
  /** ball: where it was touched */ ball: MarkFields;
  /** hole: where it was touched */ hole: MarkFields;
  /** eye height: of the lens or the eye over the green; a number from 0.2 to 3 m */ eye_height_m: number;
  /** field of view: of the lens, from top to bottom; a number from 2 to 150 degrees */ fov_deg: number;
  /** attitude: how the phone was held */ now: AttitudeFields;
}

/** The points in the picture as the phone is held now, None where one is not before the lens. */
export interface FollowAnswer {
  points_px: Array<[right_px: number, down_px: number] | null>;
}

/** A picture with both ends touched of something of known length, square to the lens and so far off. */
export interface LensFields {
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** ends: of the known length, where they were touched; 2 */ ends_px: Array<Array<number>>;
  /** length: from end to end; a number from 0.1 to 5 m */ length_m: number;
  /** distance: from the lens to it; a number from 0.2 to 20 m */ distance_m: number;
}

/** Vertical field of view, how far a finger may put it off, and the focal length as for 35 mm film. */
export interface LensAnswer {
  fov_deg: number;
  error_deg: number;
  lens_mm: number;
}

/** A putt, from where it is looked at, and how large the picture is. */
export interface ViewFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** stand: behind the ball, on the low side, or behind the hole */ stand: "ball" | "low" | "hole";
  /** eye height: of the lens or the eye over the green; a number from 0.2 to 3 m */ eye_height_m: number;
  /** back: from the eye to what it stands behind; a number from 0.3 to 10 m */ back_m: number;
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** square: side of the least square of the grid; a number from 0.2 to 1 m */ square_m?: number;
}

/** The putt in perspective, px; `lines` go to the ball's rest or to where it drops, None if the hole takes none. */
export interface ViewAnswer {
  horizon_px: number;
  turf: Array<[right_px: number, down_px: number]>;
  grid: Array<Array<[right_px: number, down_px: number]>>;
  grid_m: number;
  falls: Array<Array<[right_px: number, down_px: number]>>;
  hole: Array<[right_px: number, down_px: number]>;
  flag: Array<[right_px: number, down_px: number]>;
  spot: [right_px: number, down_px: number] | null;
  apex: [right_px: number, down_px: number] | null;
  time_s: number;
  chosen: Array<[t_s: number, right_px: number, down_px: number, radius_px: number]>;
  high: Array<[t_s: number, right_px: number, down_px: number, radius_px: number]> | null;
  low: Array<[t_s: number, right_px: number, down_px: number, radius_px: number]> | null;
}

/** A putt, and how far apart the dots are. */
export interface ChalkFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** every: from dot to dot; a number from 0.1 to 2 m */ every_m: number;
}

/** Where to put the dots. */
export interface ChalkAnswer {
  rows: Array<ChalkRow>;
}

/** A place along the line, and how far left of it the three lines are; None where the ball does not come so far. */
export interface ChalkRow {
  at_m: number;
  chosen_m: number | null;
  high_m: number | null;
  low_m: number | null;
}

/** The speed that the ball has to leave with, and what the ramp was tried with; without a trial it loses nothing. */
export interface RampFields {
  /** launch speed: of the ball as it begins to roll; a number from 0.05 to 15 m/s */ launch_mps: number;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** trial */ trial?: RampTrialFields | null;
}

/** How far a ball rolled on the level that was let go at a height of the ramp. */
export interface RampTrialFields {
  /** height: on the ramp, where the ball was let go; a number from 0.02 to 1.5 m */ height_m: number;
  /** rolled: how far it then rolled on the level; a number from 0.1 to 30 m */ rolled_m: number;
}

/** How high on the ramp the ball is let go, and the share of its energy that the ramp leaves it. */
export interface RampAnswer {
  height_m: number;
  kept_fraction: number;
}

/**
 * Where a ball was seen in a film of a putt, and what is known of camera, marks and green.
 *
 * Pitch and roll are told, or how the phone was held. Without the hole there is no line, without its distance the lens's
 * height or the ball's width is the ruler. The green's shape may be left out, and then is taken for level, more or less.
 * The words tell the start from the line meant, where there is one.
 */
export interface WatchedFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** frames: in the order of their times; 1 to 5000 */ frames: Array<Array<number | null>>;
  /** width: of the picture; a number from 1 to 20000 px */ width_px: number;
  /** height: of the picture; a number from 1 to 20000 px */ height_px: number;
  /** field of view: of the lens, from top to bottom; a number from 2 to 150 degrees */ fov_deg: number;
  /** attitude: how the phone was held */ held?: AttitudeFields | null;
  /** pitch: of the camera, down from level; a number from -60 to 90 degrees */ pitch_deg?: number | null;
  /** roll: of the camera, clockwise; a number from -180 to 180 degrees */ roll_deg?: number | null;
  /** lens height: over the green under the phone; a number from 0.03 to 3 m */ eye_height_m?: number | null;
  /** ball: where it meets the green; 2 */ ball_px?: Array<number> | null;
  /** hole: its centre, where it meets the green; 2 */ hole_px?: Array<number> | null;
  /** doubt of the distance: standard deviation; a tape's if left out; a number from 0 to 3 m */ distance_sd_m?: number | null;
  /** doubt of the tilt: standard deviation of each part, along and across; a number from 0 to 4 % */ tilt_sd_percent?: number | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft?: number | null;
  /** doubt of the speed: standard deviation; a number from 0 to 3 ft */ stimp_sd_ft?: number | null;
  /** points: places on the green to find in the picture; 0 to 1000 */ points_m?: Array<Array<number>>;
  /** aim: start line meant, left of the hole; a number from -90 to 90 degrees */ aim_deg?: number | null;
  /** unit: of the words */ unit?: "ft" | "m";
}

/**
 * How the ball was struck and how it ran, with standard deviations; what was not seen well enough is None.
 *
 * `start_deg` is left of the ball-to-hole line, `deceleration_mps2` what friction less the pull of the tilt takes along
 * that line, `across_percent` how steeply the green falls to the left of it. `seen_m` is how much of the way was seen,
 * `used` in how many frames. The paths are those of the ball as far as it was seen, on the green and in the picture.
 */
export interface WatchedAnswer {
  start_deg: number | null;
  start_sd_deg: number | null;
  launch_mps: number | null;
  launch_sd_mps: number | null;
  moment_s: number | null;
  deceleration_mps2: number | null;
  deceleration_sd_mps2: number | null;
  across_percent: number | null;
  across_sd_percent: number | null;
  stimp_ft: number | null;
  stimp_sd_ft: number | null;
  result: "holed" | "missed" | "unseen";
  stop: Stop | null;
  seen_m: number;
  used: number;
  path: Array<[t_s: number, x_m: number, y_m: number]>;
  path_px: Array<[right_px: number, down_px: number]>;
  points_px: Array<[right_px: number, down_px: number] | null>;
  untold: Array<Untold>;
  words: string;
}

/** Where the ball came to rest, from where it lay, and how far that may be off (standard deviation). */
export interface Stop {
  x_m: number;
  y_m: number;
  sd_m: number;
}

/** What is None in the answer, and why. */
export interface Untold {
  field: string;
  why: string;
}

/** The watched strikes of one block of practice. */
export interface BlockFields {
  /** strikes; 0 to 500 */ strikes: Array<SeenStrike>;
}

/** A strike as `watched` tells it, and what was meant; null where it was not seen. */
export interface SeenStrike {
  /** start: left of the hole; a number from -90 to 90 degrees */ start_deg?: number | null;
  /** doubt of the start: standard deviation; a number from 0 to 20 degrees */ start_sd_deg?: number | null;
  /** launch; a number from 0.05 to 20 m/s */ launch_mps?: number | null;
  /** doubt of the launch: standard deviation; a number from 0 to 5 m/s */ launch_sd_mps?: number | null;
  /** aim: start line meant, left of the hole; a number from -90 to 90 degrees */ aim_deg: number;
  /** launch meant; a number from 0.05 to 20 m/s */ meant_mps: number;
}

/** Starts in degrees, left of the line meant; pace as a share of the roll's length, long positive. Of two or more. */
export interface BlockAnswer {
  start: RowAnswer | null;
  pace: RowAnswer | null;
}

/** How a row of strikes leans and scatters; `more` is how many of them are still wanted until the lean is settled. */
export interface RowAnswer {
  strikes: number;
  lean: SettledAnswer;
  spread: SettledAnswer;
  more: number;
}

/** A value with its 95 % interval. */
export interface SettledAnswer {
  value: number;
  low: number;
  high: number;
}

/** A putt on today's green, and the speed of the green at home. */
export interface TranslateFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** green speed at home: feet on the Stimpmeter; a number from 5 to 15 ft */ home_stimp_ft: number;
}

/**
 * Both greens; home is None where there is no such putt. `breaks_like_percent` is the slope at the hole that
 * breaks as much at home, None for a straight putt.
 */
export interface TranslateAnswer {
  today: GreenAnswer;
  home: GreenAnswer | null;
  slope_percent: number;
  breaks_like_percent: number | null;
}

/** The putt on one of the greens; path as in a read. */
export interface GreenAnswer {
  stimp_ft: number;
  aim_deg: number;
  aim_offset_m: number;
  launch_mps: number;
  plays_like_m: number;
  path: Array<[t_s: number, x_m: number, y_m: number, speed_mps: number]>;
}

/** Distances and slopes on a green of one speed. */
export interface TableFields {
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** distances; 1 to 12 */ distances_m: Array<number>;
  /** slopes; 1 to 8 */ slopes_percent: Array<number>;
}

/** A row for each distance, a cell for each slope. */
export interface TableAnswer {
  rows: Array<Array<TableCell>>;
}

/** Aim across the slope and pace straight up and down it; None where no ball stops. */
export interface TableCell {
  aim_deg: number | null;
  aim_offset_m: number | null;
  up_m: number | null;
  down_m: number | null;
}

/** The whole catalogue. */
export interface DrillsFields {
}

/** All drills. */
export interface DrillsAnswer {
  drills: Array<DrillCard>;
}

/** One drill. */
export interface DrillCard {
  id: string;
  name: string;
  skill: "alignment" | "start_line" | "pace" | "reading" | "tempo";
  role: "set_up" | "main" | "last";
  why: string;
  needs: Array<"level_floor" | "mirror" | "laser" | "ball" | "balls" | "hole" | "string" | "chalk">;
  bring: string;
  places: Array<"room" | "green">;
  least: number;
  most: number;
  picture: "eyes" | "arc" | "tempo" | "gate" | "ball_line" | "string" | "feet" | "chalk" | "past" | "stop" | "shallow" | "long" | "walk" | "last" | "stance" | "books" | "skirting" | "hand" | "closed" | "coins" | "wall" | "shim" | "heard";
  setup: Array<string>;
  cues: Array<string>;
  good: string;
  bad: string;
  cautions: Array<string>;
  watched: boolean;
}

/** How long, where, with what; without weights, all skills alike. */
export interface PlanFields {
  /** time; a number from 10 to 60 minutes */ minutes: number;
  /** place */ place: "room" | "green";
  /** at hand: what there is to practise with; 0 to 8 */ at_hand?: Array<"level_floor" | "mirror" | "laser" | "ball" | "balls" | "hole" | "string" | "chalk">;
  /** weights: how much work each skill needs */ weights?: WeightFields;
}

/** How much work each skill needs, on any scale. */
export interface WeightFields {
  /** alignment; a number from 0 to 100 */ alignment?: number;
  /** start line; a number from 0 to 100 */ start_line?: number;
  /** pace; a number from 0 to 100 */ pace?: number;
  /** reading; a number from 0 to 100 */ reading?: number;
  /** tempo; a number from 0 to 100 */ tempo?: number;
}

/** A session. */
export interface PlanAnswer {
  blocks: Array<PlanBlock>;
}

/** One block; `instead` are the ids that could take its place. */
export interface PlanBlock {
  drill: string;
  minutes: number;
  why: string;
  instead: Array<string>;
}

/** A gate: clear width, way from the ball, and what its posts are. */
export interface GateFields {
  /** gap: clear width between the posts; a number from 0.04 to 0.4 m */ gap_m: number;
  /** way: from the ball to the gate; a number from 0.1 to 2 m */ at_m: number;
  /** posts: what the gate is made of */ posts?: "tees" | "balls";
  /** ball: its diameter; a number from 0.04 to 0.05 m */ ball_m?: number;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft?: number;
  /** player: who strikes it; the tour preset if left out */ player?: PlayerFields | null;
}

/** Starts that pass, to either side; of holed level 8 ft putts, the share that pass; the gap for two in three. */
export interface GateAnswer {
  passes_deg: number;
  share_of_holed: number | null;
  matching_gap_m: number;
}

/** The putt in hand, and how far off the line on the ball is laid. */
export interface BallLineFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** off: how far the line on the ball is turned; a number from 0.1 to 5 degrees */ off_deg?: number;
  /** player: who strikes it; the tour preset if left out */ player?: PlayerFields | null;
}

/** Where a line that is off points, and how often the putt drops with it straight, off to the left and to the right. */
export interface BallLineAnswer {
  at_foot_m: number;
  at_hole_m: number;
  make: number;
  make_left: number;
  make_right: number;
}

/** How far left of the ball line the eyes are, seen from behind the ball; right is negative. */
export interface EyesFields {
  /** eyes: how far left of the ball line; a number from -0.2 to 0.2 m */ left_m: number;
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m: number;
}

/** How a line laid by such eyes is turned, anticlockwise, and where it passes the hole, m to the left. */
export interface EyesAnswer {
  turned_deg: number;
  at_hole_m: number;
}

/** How far apart the feet stand, from middle to middle. */
export interface ShimFields {
  /** feet apart: from middle to middle; a number from 0.1 to 1 m */ apart_m?: number;
}

/** Thickness for each slope. */
export interface ShimAnswer {
  shims: Array<Shim>;
}

/** What lies under one foot, and the slope that it makes. */
export interface Shim {
  slope_percent: number;
  thickness_m: number;
}

/** The day of the first round, and how many days there are before it. */
export interface TournamentFields {
  /** first tee: a day, or a day and time, as 2026-05-07T08:10; 10 to 40 */ first_tee: string;
  /** days before; a number from 0 to 7 days */ days_before: number;
}

/** The days until the first round. */
export interface TournamentAnswer {
  days: Array<TournamentDay>;
}

/** A day, how many there are until the first round, and its sessions. */
export interface TournamentDay {
  day: string;
  left: number;
  sessions: Array<TournamentSession>;
}

/** A session of a day; `id` is its own within the week. */
export interface TournamentSession {
  id: string;
  name: string;
  place: "room" | "green";
  minutes: number;
  weights: SkillWeights;
  why: string;
}

/** How much work each skill needs, as a plan takes it. */
export interface SkillWeights {
  alignment: number;
  start_line: number;
  pace: number;
  reading: number;
  tempo: number;
}

/** A record of putts, in any order, those that are counted or heard alone, and the hand of the player. */
export interface FindingsFields {
  /** putts; 0 to 100000 */ putts: Array<LoggedFields>;
  /** counted putts: of which the green is not told; 0 to 100000 */ counted?: Array<CountedFields>;
  /** heard putts: of which pace alone is told; 0 to 100000 */ heard?: Array<HeardBlockFields>;
  /** handedness: the hand that the player plays with */ handedness?: "right" | "left";
  /** against: the players that faults and putts are measured by */ against?: "tour" | "amateur";
}

/** One putt: what was meant, and what came of it. */
export interface LoggedFields {
  /** distance: from the ball to the hole's centre; a number from 0.3 to 30 m */ distance_m?: number | null;
  /** slope: rise over run, down the fall line; a number from 0 to 8 % */ slope_percent?: number | null;
  /** falls: where the green runs down to, clockwise from the line: 0 straight downhill, 90 to the right, 180 uphill; a number from -360 to 360 degrees */ fall_deg?: number | null;
  /** stations: slopes at places along the line, in its order; 1 to 12 */ stations?: Array<StationFields> | null;
  /** survey: a green walked once, and where on it ball and hole lie */ survey?: PlacedFields | null;
  /** green speed: feet on the Stimpmeter; a number from 5 to 15 ft */ stimp_ft: number;
  /** pace: how far past the hole's centre the ball would roll, hole covered; a number from 0 to 1 m */ past_m: number;
  /** id; 1 to 64 */ id: string;
  /** time: when it was struck, as ISO 8601 has it; 10 to 40 */ at: string;
  /** aim: start line meant, left of the hole; a number from -90 to 90 degrees */ aim_deg?: number | null;
  /** read: whose aim was played; null where that is not known */ read?: "app" | "own" | null;
  /** result: or where the ball stopped */ result: "holed" | "missed" | FinishFields;
  /** side: of the hole, on which a miss stopped */ side?: "left" | "right" | null;
  /** length: of a miss */ length?: "short" | "long" | null;
  /** gate: which post the ball touched, if any */ gate?: "left" | "right" | "clean" | null;
  /** line error: how far left of the line meant the ball's own line lay; a number from -20 to 20 degrees */ line_error_deg?: number | null;
  /** felt: the slope as the feet felt it; a number from 0 to 8 % */ felt_percent?: number | null;
  /** start: measured, left of the hole; a number from -90 to 90 degrees */ start_deg?: number | null;
  /** spread of the start: standard deviation; a number from 0 to 20 degrees */ start_sd_deg?: number | null;
  /** launch: measured, of the ball as it rolls; a number from 0.05 to 15 m/s */ launch_mps?: number | null;
  /** spread of the launch: standard deviation; a number from 0 to 5 m/s */ launch_sd_mps?: number | null;
  /** spread of the finish: standard deviation; a number from 0 to 30 m */ finish_sd_m?: number | null;
  /** doubt of a tilt that was measured: standard deviation of each part; a number from 0 to 4 % */ tilt_sd_percent?: number | null;
}

/** Where a ball stopped, from the hole's centre: x on along the line, y to its left. */
export interface FinishFields {
  /** long: beyond the hole; short is negative; a number from -30 to 30 m */ x_m: number;
  /** left: of the hole; right is negative; a number from -30 to 30 m */ y_m: number;
}

/** A putt of which no more is known than from where, and what came of it: it is counted, and tells nothing of the skills. */
export interface CountedFields {
  /** time: when it was struck, as ISO 8601 has it; 10 to 40 */ at: string;
  /** distance: from the ball to the hole; a number from 0.01 to 60 m */ distance_m: number;
  /** result */ result: "holed" | "missed";
  /** length: of a miss */ length?: "short" | "long" | null;
}

/** Putts on a floor that were heard, all meant to run as far: they tell of pace alone. */
export interface HeardBlockFields {
  /** time: when they were struck, as ISO 8601 has it; 10 to 40 */ at: string;
  /** meant: how far the ball should run; a number from 0.3 to 40 m */ meant_m: number;
  /** rolls: as `heard` has them; 1 to 2000 */ rolls_m: Array<number>;
  /** spread of a roll: which all share: the floor's speed; a number from 0 to 60 m */ roll_sd_m?: number;
}

/**
 * The honest answer. `skills` and `costs` rest on the newest `used` putts, all else on every putt.
 *
 * `strikes` are the misses among them: start error (degrees, left positive) and error of roll (fraction). `opening`
 * is what a level putt of `opening_m` takes: error of roll, and the starts (degrees) that hole, right and left.
 * `caution` says why such a record tells nothing of the skills, where it does not.
 */
export interface FindingsAnswer {
  used: number;
  caution: string | null;
  skills: SkillsAnswer;
  costs: Array<CostAnswer>;
  cost_set: CostSetAnswer;
  make: Array<BandAnswer>;
  published: Array<PublishedAnswer>;
  leaves: LeavesAnswer;
  weeks: Array<WeekAnswer>;
  seasons: Array<SeasonAnswer>;
  changes: Array<ChangeAnswer>;
  made_change: MadeChangeAnswer | null;
  strikes: Array<[start_error_deg: number, roll_error: number]>;
  opening: Array<[roll_error: number, right_deg: number, left_deg: number]>;
  opening_m: number;
  left_out: Array<LeftOutAnswer>;
}

/** The four skills. */
export interface SkillsAnswer {
  alignment: SkillAnswer;
  start_line: SkillAnswer;
  pace: SkillAnswer;
  reading: SkillAnswer;
}

/**
 * Bias and spread of a skill, each with its 95 % interval; None where the putts say nothing of it.
 *
 * Start line and alignment in degrees, left positive; pace as a fraction of the roll's length; reading as aim meant over
 * aim needed, minus one.
 */
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

/**
 * Putts that a skill costs in a hundred of a fixed set, against the yardstick's, in intervals as wide as three at once ask
 * for; `lean` says that its bias is beyond chance. Leans come first, then spreads.
 */
export interface CostAnswer {
  skill: "alignment" | "start_line" | "pace" | "reading";
  putts_per_100: number;
  low: number;
  high: number;
  lean: boolean;
}

/** The lengths and the slope of the fixed set. */
export interface CostSetAnswer {
  from_m: number;
  to_m: number;
  slope_percent: number;
}

/**
 * Make share between two distances, with its 95 % interval; `usual` is the yardstick's from the same places, whose mean
 * distance is `mean_m`.
 */
export interface BandAnswer {
  from_m: number;
  to_m: number;
  mean_m: number;
  tries: number;
  made: number;
  low: number;
  high: number;
  usual: number;
}

/** Make shares by distance (m), and where they are from. */
export interface PublishedAnswer {
  name: "tour" | "1995";
  source: string;
  shares: Array<[distance_m: number, share: number]>;
}

/** Misses, those short of the hole, and how far beyond the pace wanted they stop along the line (m). */
export interface LeavesAnswer {
  misses: number;
  short: number;
  short_low: number;
  short_high: number;
  beyond_m: number | null;
  beyond_low_m: number | null;
  beyond_high_m: number | null;
}

/** Make share in the week from a Monday. */
export interface WeekAnswer {
  monday: string;
  tries: number;
  made: number;
  low: number;
  high: number;
}

/**
 * Make share in a quarter of a year, from its first day to its last, with its 95 % interval; and what was holed more in a
 * hundred than the yardstick holes from the same places.
 */
export interface SeasonAnswer {
  from_day: string;
  to_day: string;
  tries: number;
  made: number;
  low: number;
  high: number;
  usual: number;
  gained_low: number;
  gained_high: number;
}

/** A bias or spread before the last four weeks, and in them. */
export interface ChangeAnswer {
  skill: "alignment" | "start_line" | "pace" | "reading";
  what: "bias" | "sd";
  before: number;
  now: number;
  beyond_chance: boolean;
}

/** Make share before the last four weeks and in them, and the 95 % interval of the difference. */
export interface MadeChangeAnswer {
  before: number;
  now: number;
  low: number;
  high: number;
}

/** A putt that says nothing of the skills, and why. */
export interface LeftOutAnswer {
  id: string;
  why: string;
}

/** Rounds, and against whom their putts are counted. */
export interface RoundsFields {
  /** rounds; 0 to 2000 */ rounds: Array<RoundFields>;
  /** against: the players that faults and putts are measured by */ against?: "tour" | "amateur";
}

/** A round: its holes in any order. */
export interface RoundFields {
  /** id; 1 to 64 */ id: string;
  /** time: when it was played, as ISO 8601 has it; 10 to 40 */ at: string;
  /** holes; 0 to 99 */ holes: Array<HoleFields>;
}

/** One hole of a round; no putts where the ball was holed from off the green. */
export interface HoleFields {
  /** hole; a number from 1 to 99 */ hole: number;
  /** putts: in their order; 0 to 20 */ putts: Array<RoundPuttFields>;
}

/** One putt of a round: from where, and what came of it. */
export interface RoundPuttFields {
  /** distance: from the ball to the hole; a number from 0.01 to 60 m */ distance_m: number | null;
  /** result */ result: "holed" | "missed";
  /** side: on which the ball missed */ side?: "left" | "right" | null;
  /** length: of a miss */ length?: "short" | "long" | null;
  /** falls; a number from -360 to 360 degrees */ fall_deg?: number | null;
}

/**
 * Each round, in the order given, and all of them together; `source` says what putts are counted against. `changes`
 * are those of the four weeks up to the last round.
 */
export interface RoundsAnswer {
  rounds: Array<RoundAnswer>;
  all: PuttedAnswer;
  changes: Array<RoundChangeAnswer>;
  against: "tour" | "amateur";
  source: string;
}

/** One round. */
export interface RoundAnswer {
  putts: number;
  expected_putts: number;
  gained: number;
  gained_low: number;
  gained_high: number;
  finished: number;
  unfinished: number;
  from_off_the_green: number;
  bands: Array<RoundBandAnswer>;
  leaves: RoundLeavesAnswer;
  id: string;
  holes: Array<HoleAnswer>;
}

/**
 * First putts between two distances: putts gained, the shares of one and of three putts or more, each with its 95 %
 * interval, and the yardstick's shares from the player's own distances. `mean_m` is their mean distance.
 */
export interface RoundBandAnswer {
  from_m: number;
  to_m: number;
  mean_m: number;
  holes: number;
  putts: number;
  expected_putts: number;
  gained: number;
  gained_low: number;
  gained_high: number;
  one_putts: number;
  one_low: number;
  one_high: number;
  one_published: number;
  three_putts: number;
  three_low: number;
  three_high: number;
  three_published: number;
}

/** How misses left the ball: all, and those of which length, side or the high side is known. */
export interface RoundLeavesAnswer {
  misses: number;
  short: number;
  long: number;
  left: number;
  right: number;
  low: number;
  high: number;
}

/** A finished hole on which a putt was needed. */
export interface HoleAnswer {
  hole: number;
  distance_m: number;
  putts: number;
  expected_putts: number;
  gained: number;
}

/** Putts of finished holes: taken, expected, gained with its 95 % interval, and by distance. */
export interface PuttedAnswer {
  putts: number;
  expected_putts: number;
  gained: number;
  gained_low: number;
  gained_high: number;
  finished: number;
  unfinished: number;
  from_off_the_green: number;
  bands: Array<RoundBandAnswer>;
  leaves: RoundLeavesAnswer;
}

/**
 * Putts gained in eighteen holes before the last four weeks and in them, and the 95 % interval of how much more that is:
 * of first putts between two distances, or of all where these are None.
 */
export interface RoundChangeAnswer {
  from_m: number | null;
  to_m: number | null;
  before: number;
  now: number;
  low: number;
  high: number;
  beyond_chance: boolean;
}

/**
 * What the engine will not answer, and why: as data, and in words.
 *
 * Parameters
 * ----------
 * code : short and fixed, for programs: `bad_json`, `unknown_ask`, `bad_field`, `unknown_field`, `runs_away`...
 * message : names the field, the value and what would do, in the units of the request.
 * field : name of the field at fault, as in the request, or None.
 * value : what the field had; how many entries or characters, where they are too few or too many; None where it is no
 * number, truth or short text.
 * low, high : what would do, both included; None where that is no range.
 * unit : of value, low and high, as the table of fields has it.
 */
export interface Refusal {
  code: string;
  message: string;
  field: string | null;
  value: number | boolean | string | null;
  low: number | null;
  high: number | null;
  unit: string | null;
}

/** A number from `low` to `high`, both included. */
export interface NumberTaken { kind: "number" | "integer"; low: number; high: number; unit: string }
/** `low` to `high` characters. */
export interface TextTaken { kind: "text"; low: number; high: number }
export interface FlagTaken { kind: "flag" }
export interface WordTaken { kind: "word"; words: string[] }
/** `low` to `high` entries, each as `entry` has it. */
export interface ListTaken { kind: "list"; low: number; high: number; entry: Taken }
/** An object with the fields of `FIELDS[type]`. */
export interface ObjectTaken { kind: "object"; type: keyof Fields }
export interface EitherTaken { kind: "either"; forms: Taken[] }
/** What a value may be. */
export type Taken = NumberTaken | TextTaken | FlagTaken | WordTaken | ListTaken | ObjectTaken | EitherTaken;

/** What a field is: its name for a person and what that leaves unsaid, and whether a request has to have it. */
export interface Described {
  label: string;
  more: string;
  needed: boolean;
  /** what it is where a request has it not */ default: unknown;
  /** whether it may be null */ nullable: boolean;
}
export type Field = Described & Taken;

/** The fields of each class of request. */
export interface Fields {
  ReadFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; tilt_sd_percent: Described & NumberTaken; stimp_sd_ft: Described & NumberTaken; };
  StationFields: { at_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; };
  PlacedFields: { points: Described & ListTaken; place_sd_m: Described & NumberTaken; ball: Described & ListTaken; hole: Described & ListTaken; };
  PointFields: { x_m: Described & NumberTaken; y_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; sd_percent: Described & NumberTaken; };
  WindowFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; tilt_sd_percent: Described & NumberTaken; stimp_sd_ft: Described & NumberTaken; player: Described & ObjectTaken; player_low: Described & ObjectTaken; player_high: Described & ObjectTaken; };
  PlayerFields: { start_line_sd_deg: Described & NumberTaken; pace_sd_fraction: Described & NumberTaken; slope_sd_percent: Described & NumberTaken; start_line_bias_deg: Described & NumberTaken; pace_bias_fraction: Described & NumberTaken; };
  PaceFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; player: Described & ObjectTaken; };
  RollFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; launch_mps: Described & NumberTaken; aim_deg: Described & NumberTaken; };
  PuttFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; };
  NoFields: {  };
  TempoFields: { forward_s: Described & NumberTaken; ratio: Described & NumberTaken; rest_s: Described & NumberTaken; strokes: Described & NumberTaken; count_in: Described & NumberTaken; };
  StrokeLengthFields: { strokes: Described & ListTaken; launch_mps: Described & NumberTaken; };
  OwnStroke: { backswing_m: Described & NumberTaken; roll_m: Described & NumberTaken; stimp_ft: Described & NumberTaken; };
  FindTempoFields: { taps_s: Described & ListTaken; rates: Described & ListTaken; angles: Described & ListTaken; };
  ArcFields: { lie_deg: Described & NumberTaken; length_m: Described & NumberTaken; above_grip_m: Described & NumberTaken; reach_m: Described & NumberTaken; };
  HeardFields: { bands: Described & ListTaken; rate_hz: Described & NumberTaken; marks_m: Described & ListTaken; stimp_ft: Described & NumberTaken; stimp_sd_ft: Described & NumberTaken; skid: Described & WordTaken; };
  OnBeatFields: { bands: Described & ListTaken; rate_hz: Described & NumberTaken; beats_s: Described & ListTaken; delay_s: Described & NumberTaken; delay_sd_s: Described & NumberTaken; earlier_s: Described & ListTaken; };
  PacesFields: { rolls_m: Described & ListTaken; meant_m: Described & NumberTaken; roll_sd_m: Described & NumberTaken; };
  RollTestFields: { rolls: Described & ListTaken; skid: Described & WordTaken; measure: Described & WordTaken; };
  BallFields: { distance_m: Described & NumberTaken; time_s: Described & NumberTaken; deceleration_mps2: Described & NumberTaken; deceleration_sd_mps2: Described & NumberTaken; way: Described & WordTaken; };
  StimpmeterFields: { out_ft: Described & ListTaken; back_ft: Described & ListTaken; };
  SurveyFields: { points: Described & ListTaken; place_sd_m: Described & NumberTaken; at: Described & ListTaken; height_unit_m: Described & NumberTaken; };
  FindPuttsFields: { survey: Described & ObjectTaken; want: Described & ObjectTaken; hole: Described & ListTaken; };
  MapFields: { points: Described & ListTaken; place_sd_m: Described & NumberTaken; };
  WantFields: { distance_m: Described & ListTaken; slope_percent: Described & ListTaken; break: Described & WordTaken; way: Described & WordTaken; };
  StationsFields: { survey: Described & ObjectTaken; };
  KeptPuttFields: { ball: Described & ListTaken; hole: Described & ListTaken; distance_m: Described & NumberTaken; slopes: Described & ListTaken; };
  KeptSlopeFields: { at_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; sd_percent: Described & NumberTaken; };
  LevelFields: { readings: Described & ListTaken; bias_deg: Described & ListTaken; bias_age_days: Described & NumberTaken; };
  ReadingFields: { beta_deg: Described & NumberTaken; gamma_deg: Described & NumberTaken; turned_deg: Described & NumberTaken; weight_s: Described & NumberTaken; };
  FloorFields: { slope_percent: Described & NumberTaken; slope_sd_percent: Described & NumberTaken; eye_m: Described & NumberTaken; };
  FeelFields: { trials: Described & ListTaken; };
  FeltTrialFields: { felt_percent: Described & NumberTaken; measured_percent: Described & NumberTaken; fall: Described & WordTaken; };
  FeltFields: { trials: Described & ListTaken; felt_percent: Described & NumberTaken; fall: Described & WordTaken; };
  LookFields: { case: Described & NumberTaken; };
  CameraFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; width_px: Described & NumberTaken; height_px: Described & NumberTaken; points_m: Described & ListTaken; ball_px: Described & ListTaken; hole_px: Described & ListTaken; eye_height_m: Described & NumberTaken; pitch_deg: Described & NumberTaken; fov_deg: Described & NumberTaken; roll_deg: Described & NumberTaken; held: Described & ObjectTaken; middle_px: Described & ListTaken; };
  AttitudeFields: { alpha_deg: Described & NumberTaken; beta_deg: Described & NumberTaken; gamma_deg: Described & NumberTaken; screen_deg: Described & NumberTaken; };
  MarkedFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; width_px: Described & NumberTaken; height_px: Described & NumberTaken; points_m: Described & ListTaken; ball: Described & ObjectTaken; hole: Described & ObjectTaken; eye_height_m: Described & NumberTaken; fov_deg: Described & NumberTaken; };
  MarkFields: { at_px: Described & ListTaken; held: Described & ObjectTaken; };
  FollowFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; width_px: Described & NumberTaken; height_px: Described & NumberTaken; points_m: Described & ListTaken; ball: Described & ObjectTaken; hole: Described & ObjectTaken; eye_height_m: Described & NumberTaken; fov_deg: Described & NumberTaken; now: Described & ObjectTaken; };
  LensFields: { width_px: Described & NumberTaken; height_px: Described & NumberTaken; ends_px: Described & ListTaken; length_m: Described & NumberTaken; distance_m: Described & NumberTaken; };
  ViewFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; stand: Described & WordTaken; eye_height_m: Described & NumberTaken; back_m: Described & NumberTaken; width_px: Described & NumberTaken; height_px: Described & NumberTaken; square_m: Described & NumberTaken; };
  ChalkFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; every_m: Described & NumberTaken; };
  RampFields: { launch_mps: Described & NumberTaken; stimp_ft: Described & NumberTaken; trial: Described & ObjectTaken; };
  RampTrialFields: { height_m: Described & NumberTaken; rolled_m: Described & NumberTaken; };
  WatchedFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; frames: Described & ListTaken; width_px: Described & NumberTaken; height_px: Described & NumberTaken; fov_deg: Described & NumberTaken; held: Described & ObjectTaken; pitch_deg: Described & NumberTaken; roll_deg: Described & NumberTaken; eye_height_m: Described & NumberTaken; ball_px: Described & ListTaken; hole_px: Described & ListTaken; distance_sd_m: Described & NumberTaken; tilt_sd_percent: Described & NumberTaken; stimp_ft: Described & NumberTaken; stimp_sd_ft: Described & NumberTaken; points_m: Described & ListTaken; aim_deg: Described & NumberTaken; unit: Described & WordTaken; };
  BlockFields: { strikes: Described & ListTaken; };
  SeenStrike: { start_deg: Described & NumberTaken; start_sd_deg: Described & NumberTaken; launch_mps: Described & NumberTaken; launch_sd_mps: Described & NumberTaken; aim_deg: Described & NumberTaken; meant_mps: Described & NumberTaken; };
  TranslateFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; home_stimp_ft: Described & NumberTaken; };
  TableFields: { stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; distances_m: Described & ListTaken; slopes_percent: Described & ListTaken; };
  DrillsFields: {  };
  PlanFields: { minutes: Described & NumberTaken; place: Described & WordTaken; at_hand: Described & ListTaken; weights: Described & ObjectTaken; };
  WeightFields: { alignment: Described & NumberTaken; start_line: Described & NumberTaken; pace: Described & NumberTaken; reading: Described & NumberTaken; tempo: Described & NumberTaken; };
  GateFields: { gap_m: Described & NumberTaken; at_m: Described & NumberTaken; posts: Described & WordTaken; ball_m: Described & NumberTaken; stimp_ft: Described & NumberTaken; player: Described & ObjectTaken; };
  BallLineFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; off_deg: Described & NumberTaken; player: Described & ObjectTaken; };
  EyesFields: { left_m: Described & NumberTaken; distance_m: Described & NumberTaken; };
  ShimFields: { apart_m: Described & NumberTaken; };
  TournamentFields: { first_tee: Described & TextTaken; days_before: Described & NumberTaken; };
  FindingsFields: { putts: Described & ListTaken; counted: Described & ListTaken; heard: Described & ListTaken; handedness: Described & WordTaken; against: Described & WordTaken; };
  LoggedFields: { distance_m: Described & NumberTaken; slope_percent: Described & NumberTaken; fall_deg: Described & NumberTaken; stations: Described & ListTaken; survey: Described & ObjectTaken; stimp_ft: Described & NumberTaken; past_m: Described & NumberTaken; id: Described & TextTaken; at: Described & TextTaken; aim_deg: Described & NumberTaken; read: Described & WordTaken; result: Described & EitherTaken; side: Described & WordTaken; length: Described & WordTaken; gate: Described & WordTaken; line_error_deg: Described & NumberTaken; felt_percent: Described & NumberTaken; start_deg: Described & NumberTaken; start_sd_deg: Described & NumberTaken; launch_mps: Described & NumberTaken; launch_sd_mps: Described & NumberTaken; finish_sd_m: Described & NumberTaken; tilt_sd_percent: Described & NumberTaken; };
  FinishFields: { x_m: Described & NumberTaken; y_m: Described & NumberTaken; };
  CountedFields: { at: Described & TextTaken; distance_m: Described & NumberTaken; result: Described & WordTaken; length: Described & WordTaken; };
  HeardBlockFields: { at: Described & TextTaken; meant_m: Described & NumberTaken; rolls_m: Described & ListTaken; roll_sd_m: Described & NumberTaken; };
  RoundsFields: { rounds: Described & ListTaken; against: Described & WordTaken; };
  RoundFields: { id: Described & TextTaken; at: Described & TextTaken; holes: Described & ListTaken; };
  HoleFields: { hole: Described & NumberTaken; putts: Described & ListTaken; };
  RoundPuttFields: { distance_m: Described & NumberTaken; result: Described & WordTaken; side: Described & WordTaken; length: Described & WordTaken; fall_deg: Described & NumberTaken; };
}
