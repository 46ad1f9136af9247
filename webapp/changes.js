/** What each version brought, in the words of those who use it, the newest first. pyproject.toml counts the versions. */
export const CHANGES = [
  {
    version: '0.2.0',
    date: '2026-11-26',
    what: [
      'A round is entered afterwards in a minute, and says what was gained and lost on its greens.',
      'A slope that was measured counts as surely as it was measured when misses are weighed.',
      'Finishes told to half a foot no longer make your start line look steadier than it is.',
      'A logged putt says whose aim it was; a miss may be side and length alone; another day can be logged.',
      'A place has its book: speeds by day, notes, and putts worth keeping, to be studied with the break hidden.',
      'Another player’s file opens beside yours, read only.',
      'Findings and rounds are asked for by days, place and distance.',
      'The screens follow your work: Read, Line, Green, Practice, Record. Settings have a mark of their own.',
      'A green that bends both ways gets its read.',
      'A practice green is walked once, phone in hand: its map is drawn, and ball and hole on it are read with their doubt.',
      'A phone propped behind the ball watches it: where it started, how hard, whether it dropped, putt after putt.',
      'The phone hears a putt strike a wall and says how far it would have run; such putts count in the findings as pace.',
      'With headphones on it says how far off the beat each strike was.',
      'A session’s plan goes to another phone as a link.',
      'What does not fit is said in your own units.',
      'A plan always belongs to the minutes shown above it.',
      'Your tempo is found in smooth strokes, with a pause, a press or a waggle too, and says between what it lies.',
      'Settings, calibration and the session are kept in the database as they change.',
      'The app starts sooner.',
      'Settings says whether all of the app is on the phone; what is damaged there is found and fetched again.',
    ],
  },
  {
    version: '0.1.0',
    date: '2026-11-25',
    what: ['Reads, the line on the green and on a photograph, practice, notes and what costs you most.'],
  },
];

export const VERSION = CHANGES[0]?.version ?? '';

/** What is new in a list of changes to one who has a version of it. @param {typeof CHANGES} changes @param {string} version */
export function since(changes, version) {
  const own = changes.findIndex((each) => each.version === version);
  return changes.slice(0, own < 0 ? 1 : own).flatMap(({ what }) => what);
}
