"""What is answered about a record: plain JSON values."""

from typing import Annotated, Literal, TypedDict

from pycore.fields import Doc
from pycore.record.fixed_set import Name
from pycore.record.tally import What


class SkillAnswer(TypedDict):
    """Bias and spread of a skill, each with its 95 % interval; None where the putts say nothing of it.

    Start line and alignment in degrees, left positive; pace as a fraction of the roll's length; reading as aim meant over
    aim needed, minus one.
    """

    bias: float | None
    bias_low: float | None
    bias_high: float | None
    sd: float | None
    sd_low: float | None
    sd_high: float | None
    unit: Literal["degrees", "of the roll", "of the break"]
    n: int
    words: str


class SkillsAnswer(TypedDict):
    """The four skills."""

    alignment: SkillAnswer
    start_line: SkillAnswer
    pace: SkillAnswer
    reading: SkillAnswer


class CostAnswer(TypedDict):
    """Putts that a skill costs in a hundred of a fixed set, against the yardstick's, in intervals as wide as three at once ask
    for; ``lean`` says that its bias is beyond chance. Leans come first, then spreads."""

    skill: Name
    putts_per_100: float
    low: float
    high: float
    lean: bool


class CostSetAnswer(TypedDict):
    """The lengths and the slope of the fixed set."""

    from_m: float
    to_m: float
    slope_percent: float


class BandAnswer(TypedDict):
    """Make share between two distances, with its 95 % interval; ``usual`` is the yardstick's from the same places, whose mean
    distance is ``mean_m``."""

    from_m: float
    to_m: float
    mean_m: float
    tries: int
    made: int
    low: float
    high: float
    usual: float


class PublishedAnswer(TypedDict):
    """Make shares by distance (m), and where they are from."""

    name: Literal["tour", "1995"]
    source: str
    shares: list[tuple[Annotated[float, Doc("distance_m")], Annotated[float, Doc("share")]]]


class WeekAnswer(TypedDict):
    """Make share in the week from a Monday."""

    monday: str
    tries: int
    made: int
    low: float
    high: float


class SeasonAnswer(TypedDict):
    """Make share in a quarter of a year, from its first day to its last, with its 95 % interval; and what was holed more in a
    hundred than the yardstick holes from the same places."""

    from_day: str
    to_day: str
    tries: int
    made: int
    low: float
    high: float
    usual: float
    gained_low: float
    gained_high: float


class LeavesAnswer(TypedDict):
    """Misses, those short of the hole, and how far beyond the pace wanted they stop along the line (m)."""

    misses: int
    short: int
    short_low: float
    short_high: float
    beyond_m: float | None
    beyond_low_m: float | None
    beyond_high_m: float | None


class ChangeAnswer(TypedDict):
    """A bias or spread before the last four weeks, and in them."""

    skill: Name
    what: What
    before: float
    now: float
    beyond_chance: bool


class MadeChangeAnswer(TypedDict):
    """Make share before the last four weeks and in them, and the 95 % interval of the difference."""

    before: float
    now: float
    low: float
    high: float


class LeftOutAnswer(TypedDict):
    """A putt that says nothing of the skills, and why."""

    id: str
    why: str


class FindingsAnswer(TypedDict):
    """The honest answer. ``skills`` and ``costs`` rest on the newest ``used`` putts, all else on every putt.

    ``strikes`` are the misses among them: start error (degrees, left positive) and error of roll (fraction). ``opening``
    is what a level putt of ``opening_m`` takes: error of roll, and the starts (degrees) that hole, right and left.
    ``caution`` says why such a record tells nothing of the skills, where it does not.
    """

    used: int
    caution: str | None
    skills: SkillsAnswer
    costs: list[CostAnswer]
    cost_set: CostSetAnswer
    make: list[BandAnswer]
    published: list[PublishedAnswer]
    leaves: LeavesAnswer
    weeks: list[WeekAnswer]
    seasons: list[SeasonAnswer]
    changes: list[ChangeAnswer]
    made_change: MadeChangeAnswer | None
    strikes: list[tuple[Annotated[float, Doc("start_error_deg")], Annotated[float, Doc("roll_error")]]]
    opening: list[
        tuple[Annotated[float, Doc("roll_error")], Annotated[float, Doc("right_deg")], Annotated[float, Doc("left_deg")]]
    ]
    opening_m: float
    left_out: list[LeftOutAnswer]


class RoundBandAnswer(TypedDict):
    """First putts between two distances: putts gained, the shares of one and of three putts or more, each with its 95 %
    interval, and the yardstick's shares from the player's own distances. ``mean_m`` is their mean distance."""

    from_m: float
    to_m: float
    mean_m: float
    holes: int
    putts: int
    expected_putts: float
    gained: float
    gained_low: float
    gained_high: float
    one_putts: int
    one_low: float
    one_high: float
    one_published: float
    three_putts: int
    three_low: float
    three_high: float
    three_published: float


class RoundLeavesAnswer(TypedDict):
    """How misses left the ball: all, and those of which length, side or the high side is known."""

    misses: int
    short: int
    long: int
    left: int
    right: int
    low: int
    high: int


class HoleAnswer(TypedDict):
    """A finished hole on which a putt was needed."""

    hole: int
    distance_m: float
    putts: int
    expected_putts: float
    gained: float


class PuttedAnswer(TypedDict):
    """Putts of finished holes: taken, expected, gained with its 95 % interval, and by distance."""

    putts: int
    expected_putts: float
    gained: float
    gained_low: float
    gained_high: float
    finished: int
    unfinished: int
    from_off_the_green: int
    bands: list[RoundBandAnswer]
    leaves: RoundLeavesAnswer


class RoundAnswer(PuttedAnswer):
    """One round."""

    id: str
    holes: list[HoleAnswer]


class RoundChangeAnswer(TypedDict):
    """Putts gained in eighteen holes before the last four weeks and in them, and the 95 % interval of how much more that is:
    of first putts between two distances, or of all where these are None."""

    from_m: float | None
    to_m: float | None
    before: float
    now: float
    low: float
    high: float
    beyond_chance: bool


class RoundsAnswer(TypedDict):
    """Each round, in the order given, and all of them together; ``source`` says what putts are counted against. ``changes``
    are those of the four weeks up to the last round."""

    rounds: list[RoundAnswer]
    all: PuttedAnswer
    changes: list[RoundChangeAnswer]
    against: Literal["tour", "amateur"]
    source: str
