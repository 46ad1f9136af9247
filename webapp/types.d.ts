/** The words that the app's modules share. Engine names and units are those of the wire. */

import type { Offline } from './device/files.js';
import type * as Engine from './engine/protocol.js';

export type DistanceUnit = 'ft' | 'm' | 'paces';
export type AimUnit = 'in' | 'cm' | 'cups' | 'balls' | 'degrees';

export interface Settings {
  distance: DistanceUnit;
  aim: AimUnit;
  pace_m: number;
  handed: 'right' | 'left';
  theme: 'light' | 'dark' | 'system';
  stimp_ft: number;
  past_m: number;
  /** The player's; empty until it is given. */
  name: string;
  /** The players that faults and putts are measured by. */
  against: Engine.RoundsAnswer['against'];
}

/** What a number was come to by; one without a source was typed. */
export type Source = 'felt' | 'level' | 'rolls' | 'stimpmeter' | 'kept' | 'surveyed' | 'filmed';

/** A slope, what it was come to by, and how far each of its parts, along and across, may be off. */
export interface Slope {
  slope_percent: number;
  fall_deg: number;
  tilt_source?: Source;
  tilt_sd_percent?: number;
}

export interface Station extends Slope {
  at_m: number;
}

/** A putt has one slope, or stations in its place. */
export interface Putt extends Partial<Slope> {
  distance_m: number;
  stimp_ft: number;
  stimp_source?: Source;
  stimp_sd_ft?: number;
  past_m: number;
  stations?: Station[];
  /** Where it lies on a green walked once; its length and stations follow from that. */
  survey?: Engine.PlacedFields & { ball: OnMap; hole: OnMap };
}

/** A place on a green's map, m: to the right and up. */
export type OnMap = [number, number];
export type Survey = Engine.SurveyAnswer;

export interface Player {
  start_line_sd_deg: number;
  pace_sd_fraction: number;
  slope_sd_percent: number;
  start_line_bias_deg: number;
  pace_bias_fraction: number;
}

/** The player as the findings have it: the ends are those of each skill's 95 % interval. */
export interface You {
  value: Player;
  low: Player;
  high: Player;
  putts: number;
  /** When it was found. */
  date: string;
  /** Invented putts are among them. */
  sample: boolean;
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

export type EngineState = { kind: 'starting' } | { kind: 'ready' } | { kind: 'restarting' } | { kind: 'failed' };

export type InputField = 'distance_m' | 'slope_percent' | 'fall_deg' | 'stimp_ft' | 'past_m';
export type Sheet = '' | 'slopes' | 'player' | 'costs' | 'doubt' | 'pace' | 'key';

/** What was typed and refused; it stays in its field until it is mended. */
export interface Problem {
  field: string;
  text: string;
  message: string;
}

export type Fall = Engine.FeltTrialFields['fall'];

/** A slope felt or guessed, and what it was. */
export interface Trial extends Engine.FeltTrialFields {
  date: string;
}

/** A rolled ball, on which green and when. */
export interface Rolled extends Engine.BallFields {
  place?: string;
  date?: string;
}

/** What is known of the phone's level, the rolls of a ball, the greens at home, the feet and the eye. */
export interface Calibration {
  phone: { bias_deg: [number, number]; date: string } | null;
  rolls: Rolled[];
  ball: Engine.RollTestFields['skid'];
  home_stimp_ft: number;
  feet: Trial[];
  eye: Trial[];
}

/** What the line's screen keeps: heights of the eye and how far it is behind the ball; the lens of photographs that do not tell
    it and that of the moving picture, and when each was measured, by what; the camera's lean; the trial of a ramp. */
export interface Sighted {
  eye: 'standing' | 'crouching';
  standing_m: number;
  crouching_m: number;
  back_m: number;
  lens_mm: number;
  live_mm: number;
  /** Height of the lens, and the lens itself, of a phone that watches the ball. */
  film_m: number;
  film_mm: number;
  /** Lenses of moving pictures that were measured: of which camera and size of picture, and when. */
  films: { camera: string; mm: number; date: string }[];
  lens_date: string;
  live_date: string;
  thing_m: number;
  away_m: number;
  roll_deg: number;
  height_m: number | null;
  rolled_m: number | null;
  /** Speed of the green that the trial of the ramp rolled on. */
  rolled_stimp_ft: number | null;
}

/** A place in a picture, as shares of its width and height. */
export type Share = [number, number];
/** How the phone is turned, as its browser tells it. */
export type Attitude = Required<Engine.AttitudeFields>;

/** A photograph and what was touched on it: ball and hole, or both ends of what the lens is measured by. */
export interface Photo {
  picture: HTMLCanvasElement;
  /** What the file tells of its lens, as for 35 mm film. */
  lens_mm: number | null;
  /** It was of another shape when it was taken: its middle is not where the lens looked. */
  cropped: boolean;
  /** Taken out of the moving picture, as the phone was turned then. */
  live: boolean;
  attitude: Attitude | null;
  ball: Share | null;
  hole: Share | null;
  end: Share | null;
  other: Share | null;
}
export type Mark = 'ball' | 'hole' | 'end' | 'other';

/** Where something was touched on the moving picture, and how the phone was turned then. */
export interface LiveMark {
  at: Share;
  attitude: Attitude;
}

/** The moving picture; it has no size before its first frame, and no attitude on a phone that does not tell it. */
export interface Live {
  stream: MediaStream;
  width: number;
  height: number;
  attitude: Attitude | null;
  ball: LiveMark | null;
  hole: LiveMark | null;
}

/** What an answer of the engine stands as: with what was asked. */
type Answer<Name extends keyof Engine.Asks> = Engine.Asks[Name]['value'] & { asked: Engine.Asks[Name]['request'] };
/** The engine's answers by the names under which they were asked for (questions.js). */
export interface Answers {
  view: Answer<'view'>;
  chalk: Answer<'chalk'>;
  ramp: Answer<'ramp'>;
  camera: Answer<'camera'>;
  marked: Answer<'marked'>;
  follow: Answer<'follow'>;
  lens: Answer<'lens'>;
  byTilt: Answer<'read'>;
  bySpeed: Answer<'read'>;
  ownFeel: Answer<'feel'>;
  bestPace: Answer<'best_pace'>;
  level: Answer<'level'>;
  floor: Answer<'floor'>;
  rolled: Answer<'roll_test'>;
  stimpmeter: Answer<'stimpmeter'>;
  translated: Answer<'translate'>;
  table: Answer<'table'>;
  feet: Answer<'feel'>;
  eye: Answer<'feel'>;
  felt: Answer<'felt'>;
  asFelt: Answer<'window'>;
  ifSure: Answer<'window'>;
  look: Answer<'look'>;
  plan: Answer<'plan'>;
  tempo: Answer<'tempo'>;
  matchingGate: Answer<'gate'>;
  gate: Answer<'gate'>;
  ballLine: Answer<'ball_line'>;
  eyes: Answer<'eyes'>;
  arc: Answer<'arc'>;
  shim: Answer<'shim'>;
  paces: Answer<'paces'>;
  filmLens: Answer<'lens'>;
  block: Answer<'block'>;
  week: Answer<'week'>;
  rounds: Answer<'rounds'>;
  strokeLength: Answer<'stroke_length'>;
  laid: Answer<'level'>;
  survey: Answer<'survey'>;
  placed: Answer<'survey_stations'>;
  putts: Answer<'find_putts'>;
}

/** What the engine says against a question. */
export type Refusal = Engine.Refusal;

/** The line's screen as it stands; gone with the page. */
export interface LinePage {
  part: 'view' | 'photo' | 'chalk' | 'ramp' | 'send';
  stand: 'ball' | 'low' | 'hole';
  size: { width: number; height: number };
  sound: boolean;
  photo: Photo | null;
  live: Live | null;
  /** The lens is being measured. */
  measuring: boolean;
  photoProblem: string;
  /** A putt that came by a link; null where the link was damaged. */
  sent: { putt: Putt | null; read: Read | null; problem: string } | null;
  told: string;
}

/** What of a picture is looked for near a touch: where it is and how far its rim goes, px. */
export interface Rim {
  u: number;
  v: number;
  width: number;
  height: number;
  /** Set by hand under the magnifier. */
  set?: boolean;
}

/** A putt that was seen: what the engine made of it, on which putt, and the picture as it stood. */
export interface WatchedPutt {
  value: Engine.WatchedAnswer;
  asked: Engine.WatchedFields;
  putt: Putt;
  /** The start line and the launch that were meant. */
  aim_deg: number;
  meant_mps: number;
  still: HTMLCanvasElement | null;
  kept: boolean;
}

/** The watch's screen as it stands; gone with the page. */
export interface WatchPage {
  stream: MediaStream | null;
  width: number;
  height: number;
  attitude: Attitude | null;
  /** Where ball and hole are in the picture, px, and their rims where they were found. */
  ball: Rim | null;
  hole: Rim | null;
  /** The lens is being measured, by a thing whose ends are touched. */
  measuring: boolean;
  end: Rim | null;
  other: Rim | null;
  /** Which mark is under the magnifier. */
  chosen: 'ball' | 'hole' | 'end' | 'other' | null;
  /** Which camera this is, and how large its picture: whose lens is measured once. */
  camera: string;
  phase: 'off' | 'opening' | 'marking' | 'settling' | 'empty' | 'ready' | 'rolling' | 'asking' | 'moved' | 'dark';
  problem: string;
  /** Too few pictures a second come. */
  slow: boolean;
  /** Share of an answer that is worked out. */
  share: number;
  last: WatchedPutt | null;
  count: number;
  silent: boolean;
  /** Pictures are kept with the putts. */
  pictures: boolean;
  told: string;
}

/** A felt slope that the putt in hand was given, with its correction. */
export interface Felt extends Engine.FeltAnswer {
  felt_percent: number;
  fall: Fall;
}

export type Tilt =
  | { kind: 'off' | 'asking' | 'refused' | 'none' }
  /** `alpha_deg`: which way its top points, from some direction or other; null where it does not tell. */
  | { kind: 'live'; seconds: number; alpha_deg: number | null; readings: Omit<Engine.ReadingFields, 'turned_deg'>[] };

/** The positions to hold in a zeroing, what they have shown, and which way the top pointed in each. */
export interface Zero {
  turns: number[];
  readings: Engine.ReadingFields[];
  alphas: (number | null)[];
  /** The phone has been seen to be turned to the next position. */
  there: boolean;
  problem: string;
}

export interface GreenPage {
  part: 'level' | 'speed' | 'compare';
  /** Typed numbers in SI, by field. */
  draft: Record<string, number>;
  tilt: Tilt;
  zero: Zero | null;
  /** Zeroed, and not turned back yet: which way its top pointed in the first position, where the phone knows. */
  back: { alpha_deg: number | null } | null;
  by: 'rolls' | 'stimpmeter';
  way: Engine.BallFields['way'];
  /** Sent here by the read, to which what is taken leads back. */
  sent: boolean;
  /** When the ball left, ms; null while none rolls. */
  rolling: number | null;
}

/** The walked green's screen as it stands; gone with the page. */
export interface WalkPage {
  page: 'map' | 'walk' | 'readings' | 'greens';
  /** The green's id; empty for the one that was changed last. */
  green: string;
  /** The new green, or the reading in hand, as typed: SI by field, and texts. */
  draft: Record<string, number>;
  texts: Record<string, string>;
  tilt: Tilt;
  /** The phone has been lifted since the last reading. */
  lifted: boolean;
  /** Places that were passed over. */
  passed: OnMap[];
  /** The reading that is being mended, by its number. */
  mending: number | null;
  /** The kept putt whose slopes are placed on the map; empty for none. */
  lent: string;
  size: { width: number; height: number };
  /** What of the map is in sight: its middle, and pixels a metre; null for all of it. */
  view: { at: OnMap; scale: number } | null;
  ball: OnMap | null;
  hole: OnMap | null;
  /** What a touch on the map places. */
  placing: 'ball' | 'hole';
  /** What a finger drags. */
  dragged: 'ball' | 'hole' | null;
  finding: boolean;
  want: {
    distance_m: number;
    slope_percent: number;
    break: 'left' | 'right' | 'none' | null;
    way: 'up' | 'down' | 'across' | null;
    here: boolean;
  };
  told: string;
}

export type Drill = Engine.DrillCard;
export type Thing = Drill['needs'][number];
export type Tempo = Engine.TempoAnswer;
/** Once its session runs, a block has its drill with it: words and counts stay while the engine starts. */
export type Block = Engine.PlanBlock & { card?: Drill };
/** Samples of a phone that was swung, as the engine takes them. */
export type Motion = Pick<Engine.FindTempoFields, 'rates' | 'angles'>;
/** `interrupted`: the phone itself stopped the sound, for a call or its lock screen. */
export type SoundState = 'off' | 'playing' | 'interrupted' | 'silent';

export interface TempoSettings {
  forward_s: number;
  ratio: number;
  rest_s: number;
  strokes: number;
  volume: number;
  muted: boolean;
  vibrate: boolean;
  /** What headphones add to the way of the sound. */
  delay_s: number;
}

/** Where a session is: the block, the seconds spent in it, what was counted. */
export interface Run {
  session: string;
  block: number;
  spent_s: number;
  paused: boolean;
  good: number;
  bad: number;
  /** How this block is set up has been seen, and folded away. */
  folded?: boolean;
  /** Its putts that were heard. */
  heard?: Heard;
  /** What the phone saw of this block's putts, and the last of them in words. */
  strikes?: Engine.SeenStrike[];
  said?: string;
}

/** How far putts would have run that were meant to go as far, and the spread that all of them share. */
export type Heard = Pick<Engine.HeardBlockFields, 'meant_m' | 'rolls_m'> & { roll_sd_m: number };

/** What practice keeps. */
export interface Practice {
  minutes: number;
  place: Engine.PlanFields['place'];
  at_hand: Thing[];
  /** How much work each skill needs, as the last findings had it; empty for even. */
  weights: NonNullable<Engine.PlanFields['weights']>;
  blocks: Block[];
  /** What the blocks were planned for; null for a plan that is made anew. */
  planned: Pick<Engine.PlanFields, 'minutes' | 'place' | 'at_hand' | 'weights'> | null;
  run: Run | null;
  spoken: boolean;
  /** Notes at the end of a block. */
  chime: boolean;
  tempo: TempoSettings;
  strokes: Engine.OwnStroke[];
  lie_deg: number;
  length_m: number;
  /** How far above the grip the stroke turns. */
  above_grip_m: number;
  /** The start gate's, where it is not the one that matches the player. */
  gap_m: number | null;
  /** How far inside the ball line the eyes are. */
  eyes_m: number;
  /** Days before a first round, each session of them kept by its id once it is done. */
  week: { first_tee: string; days_before: number; done: string[] };
  /** Pace by ear: what the ball meets, how far it should run, how fast the floor is; null where the paper tells it. */
  ear: { wall_m: number; paper_m: number; meant_m: number; floor_ft: number | null; floor_sd_ft: number };
}

/** The practice screen as it stands; gone with the page. */
export interface PracticePage {
  page: 'session' | 'week' | 'run' | 'done' | 'tempo' | 'find' | 'length' | 'drills' | 'drill' | 'strip' | 'feet' | 'eye';
  drill: string;
  drills: Drill[];
  changing: boolean;
  note: string;
  sound: SoundState;
  hearing: 'off' | 'asking' | 'on';
  floorHeard_ft: number | null;
  /** A plan that came by a link; null where the link was damaged. */
  sentPlan: import('./features/practice/plan-link.js').SentPlan | null | undefined;
  /** What became of the plan that was sent away. */
  given: string;
  /** Listening for strikes on the beat, once it is known how late the beat comes back. */
  onBeat: 'off' | 'asking' | 'delay' | 'on';
  loop: { delay_s: number; delay_sd_s: number } | null;
  /** Off the beat by stroke of the row, s. */
  offs_s: [number, number][];
  beatHeard: Pick<Engine.OnBeatAnswer, 'lean' | 'spread'> | null;
  /** Whether the phone has agreed to keep its screen on. */
  awake: boolean;
  /** Taps of the delay's calibration, seconds after the note. */
  late: number[];
  finding: 'taps' | 'motion' | '';
  taps: number[];
  found: Engine.FindTempoAnswer | null;
  /** Slopes felt, measured and guessed, as typed. */
  draft: Record<string, number>;
  fall: Fall;
  /** The green that the eye guesses. */
  case: number;
  guessed: Trial | null;
}

/** What every entry of the record has; `changed` tells which of two versions is the newer. */
interface EntryHead {
  id: string;
  at: string;
  changed: string;
  place: string;
  text: string;
  /** Invented, to look at. */
  sample?: boolean;
  /** Taken out of sight, and can be brought back. */
  gone?: boolean;
}

/** Words of a day; also the speed of its greens, whose spread is missing where it was told and not measured. */
export interface NoteEntry extends EntryHead {
  kind: 'note';
  weather?: string;
  stimp_ft?: number;
  stimp_sd_ft?: number;
  stimp_source?: Source;
}

/** A block of a session that is over: which drill, and what it was called then. */
export interface DrillEntry extends EntryHead {
  kind: 'drill';
  session: string;
  drill: string;
  name: string;
  spent_s: number;
  good: number;
  bad: number;
  heard?: Heard;
}

export type Side = NonNullable<Engine.LoggedFields['side']>;
export type Leave = NonNullable<Engine.LoggedFields['length']>;
/** Whose aim was played. */
export type Whose = NonNullable<Engine.LoggedFields['read']>;

/** One of which distance and result alone are told has no green. */
export interface PuttEntry extends EntryHead, Partial<Putt> {
  distance_m: number;
  kind: 'putt';
  /** The start line meant; missing where it is not known, as of a read of the player's own that was not told. */
  aim_deg?: number;
  /** Missing where it is not known. */
  read?: Whose;
  /** `missed`: where it stopped is not known but for side and length. */
  result: 'holed' | 'missed' | Point;
  side?: Side;
  length?: Leave;
  gate?: 'left' | 'right' | 'clean';
  line_error_deg?: number;
  felt_percent?: number;
  /** What the phone saw of the strike, each with its spread; and how far the finish that it saw may be off. */
  start_deg?: number;
  start_sd_deg?: number;
  launch_mps?: number;
  launch_sd_mps?: number;
  finish_sd_m?: number;
  /** The way that the phone saw over the line meant: a small JPEG, as text. */
  picture?: string;
}

/** A green walked once: its size, the level read at places on it, and where its hole was by day. */
export interface GreenEntry extends EntryHead {
  kind: 'green';
  name: string;
  breadth_m: number;
  length_m: number;
  /** How many places its walk has. */
  places: number;
  points: Engine.PointFields[];
  holes: Record<string, OnMap>;
}

/** One putt of a round; slope, read and slope felt may come later. */
export interface RoundPutt extends Partial<Slope> {
  distance_m: number | null;
  result: 'holed' | 'missed';
  side?: Side;
  length?: Leave;
  read?: Whose;
  felt_percent?: number;
}

/** A hole of a round: no putts where the ball was holed from off the green, the last of them missed where it was given up. */
export interface RoundHole {
  hole: number;
  putts: RoundPutt[];
}

export interface RoundEntry extends EntryHead {
  kind: 'round';
  name: string;
  /** A competition; else practice. */
  competition?: boolean;
  holes: RoundHole[];
}

/** A putt worth keeping, in the book of its place. */
export interface WorthEntry extends EntryHead, Putt {
  kind: 'worth';
  name: string;
  /** A small JPEG as text. */
  picture?: string;
}

export type Entry = PuttEntry | NoteEntry | DrillEntry | GreenEntry | RoundEntry | WorthEntry;

export interface BookPage {
  /** Whose book is open; null for the place in hand. */
  place: string | null;
  /** The putt that is studied. */
  open: string;
  /** The aim guessed, as typed. */
  guess: string;
  /** Its read, once it is shown. */
  seen: Read | null;
  said: string;
}

/** What taking a file in would do. */
export interface Preview {
  fresh: Entry[];
  newer: Entry[];
  /** Rows of a table that were edited by hand. */
  edited: Entry[];
  before: Entry[];
  bad: string[];
  kept: number;
  /** Whose record it is, where the file says so, and whether that is somebody else; all that it holds, to be looked at. */
  name: string;
  stranger: boolean;
  all: Entry[];
  /** Settings and calibration, where the file has others than the phone; taken only when asked to. */
  phone: Partial<Phone> | null;
}

/** What a file tells of the phone besides its records. */
export type Phone = Pick<State, 'settings' | 'player' | 'calibration' | 'sighted'>;

/** Which entries findings and rounds are asked of. */
export interface Only {
  /** The last so many days; empty for all. */
  since: '' | '7' | '28' | '91';
  /** Days, as 2026-05-03; empty where it is open. */
  from: string;
  to: string;
  place: string;
  how: '' | 'practice' | 'competition';
  /** Distances from and below, m. */
  band: [number, number] | null;
}

export interface RoundsPage {
  page: 'list' | 'card' | 'round';
  /** The round that is looked at, and of it the hole; 0 while none is. */
  open: string;
  hole: number;
  said: string;
}

export interface RecordPage {
  page: 'log' | 'list' | 'file';
  /** How much green the picture of the hole shows to each side, m. */
  reach_m: number;
  /** The putts logged since the page was opened; the last can be taken back and added to. */
  logged: string[];
  /** The day they are logged for, as 2026-05-03; empty for today. */
  day: string;
  editing: string;
  /** What the entry in hand was before, newest first. */
  before: Entry[];
  only: { place: string; day: string; what: '' | 'holed' | 'missed' | 'note' | 'drill' | 'round' | 'worth' | 'gone' };
  /** The first row of the list that is drawn; it follows the scroll. */
  from: number;
  said: string;
  preview: Preview | null;
  sure: boolean;
}

/** How putts are logged, which stays as it was chosen. */
export interface Logging {
  /** Whose aim is played; empty where that is not said. */
  read: '' | Whose;
  by: 'picture' | 'words';
}

/** A hole of the card in hand. `taken`: putts, 0 where it was holed from off the green, null until that is said; `gaveUp`:
    not finished. `told`: how the first miss was left is said, or left out. */
export interface CardHole {
  hole: number;
  distance_m: number | null;
  taken: number | null;
  gaveUp: boolean;
  told: boolean;
  /** What is kept of its putts: how they were left, and what was added. */
  putts: Partial<RoundPutt>[];
}

/** A round that is being entered. */
export interface Card {
  id: string;
  at: string;
  name: string;
  place: string;
  competition: boolean;
  /** Place in the list of the hole in hand. */
  at_hole: number;
  holes: CardHole[];
}

/** A note that is being written, as typed. */
export interface Draft {
  text: string;
  weather: string;
  speed: string;
}

/** Of the state what is kept, as it is read back at the start. */
export type Kept = Pick<
  State,
  | 'settings'
  | 'putt'
  | 'player'
  | 'read'
  | 'window'
  | 'cautioned'
  | 'calibration'
  | 'sighted'
  | 'felt'
  | 'you'
  | 'practice'
  | 'place'
  | 'draft'
  | 'logging'
  | 'card'
  | 'unkept'
>;

export interface State {
  practice: Practice;
  practicePage: PracticePage;
  calibration: Calibration;
  greenPage: GreenPage;
  walkPage: WalkPage;
  sighted: Sighted;
  linePage: LinePage;
  watchPage: WatchPage;
  felt: Felt | null;
  answers: Partial<Answers>;
  refusals: Partial<Record<keyof Answers, Refusal>>;
  /** How it was before what was kept last, on which screen; and the entry that came or went. */
  undo: { screen: string; words: string; before: Partial<State>; entry?: string } | null;
  screen: string;
  sheet: Sheet;
  settings: Settings;
  putt: Putt;
  player: Player;
  you: You | null;
  /** With how far its aim may be off, two times in three; null within: not known. */
  read: (Answered<Read> & { off?: Pick<Read, 'aim_sd_deg' | 'aim_offset_sd_m'> }) | null;
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
  /** Where the player is: of what is logged and measured there. */
  place: string;
  /** Newest first; null until it is read. */
  entries: Entry[] | null;
  /** Another player's record that is looked at in place of the phone's own; nothing of either is changed meanwhile. */
  looking: { name: string } | null;
  /** The phone's own entries while another's are looked at. */
  own: Entry[] | null;
  /** What is over but not in the database yet. */
  unkept: Entry[];
  /** When the record was last exported. */
  exported: string;
  /** Why something could not be kept. */
  trouble: string;
  /** What was kept and does not fit, by its place. */
  aside: { what: string; value: unknown }[];
  /** Entries on the phone that do not fit; they stay where they are, and go out with an export. */
  damaged: string[];
  /** Why what is kept has not been read yet. */
  unopened: string;
  recordPage: RecordPage;
  roundsPage: RoundsPage;
  bookPage: BookPage;
  only: Only;
  draft: Draft;
  logging: Logging;
  /** The round that is being entered; null while none is. */
  card: Card | null;
  /** `given`: what became of the report. */
  findings: {
    entries: PuttEntry[];
    handed: Settings['handed'];
    against: Settings['against'];
    only: Only;
    value: Engine.FindingsAnswer;
    given: string;
  } | null;
  /** Why there are no findings of the newest entries. */
  unfound: { entries: Entry[] | null; why: string } | null;
  /** How much of the findings is worked out; null while none are. */
  share: number | null;
  /** What is kept here was written by a newer app; nothing is kept over it. */
  keptByNewer: boolean;
  engine: EngineState;
  /** The engine died and came back; said until the next putt. */
  restarted: boolean;
  cautioned: boolean;
  /** What the version that waits brings, as far as it has said so; null while none waits. */
  news: string[] | null;
  /** Whether the app's own files are all on this phone. */
  offline: Offline;
  /** Whether the browser has promised to keep what is here; null where it has not been asked. */
  stays: boolean | null;
  canInstall: boolean;
}
