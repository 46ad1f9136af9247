"""What is answered about practice: plain JSON values."""

from typing import TypedDict

from pycore.drills.drill import Picture, Place, Role, Skill, Thing


class DrillCard(TypedDict):
    """One drill."""

    id: str
    name: str
    skill: Skill
    role: Role
    why: str
    needs: list[Thing]
    bring: str
    places: list[Place]
    least: int
    most: int
    picture: Picture
    setup: list[str]
    cues: list[str]
    good: str
    bad: str
    cautions: list[str]
    watched: bool


class DrillsAnswer(TypedDict):
    """All drills."""

    drills: list[DrillCard]


class PlanBlock(TypedDict):
    """One block; ``instead`` are the ids that could take its place."""

    drill: str
    minutes: int
    why: str
    instead: list[str]


class PlanAnswer(TypedDict):
    """A session."""

    blocks: list[PlanBlock]


class GateAnswer(TypedDict):
    """Starts that pass, to either side; of holed level 8 ft putts, the share that pass; the gap for two in three."""

    passes_deg: float
    share_of_holed: float | None
    matching_gap_m: float


class BallLineAnswer(TypedDict):
    """Where a line that is off points, and how often the putt drops with it straight, off to the left and to the right."""

    at_foot_m: float
    at_hole_m: float
    make: float
    make_left: float
    make_right: float


class SkillWeights(TypedDict):
    """How much work each skill needs, as a plan takes it."""

    alignment: float
    start_line: float
    pace: float
    reading: float
    tempo: float


class TournamentSession(TypedDict):
    """A session of a day; ``id`` is its own within the week."""

    id: str
    name: str
    place: Place
    minutes: int
    weights: SkillWeights
    why: str


class TournamentDay(TypedDict):
    """A day, how many there are until the first round, and its sessions."""

    day: str
    left: int
    sessions: list[TournamentSession]


class TournamentAnswer(TypedDict):
    """The days until the first round."""

    days: list[TournamentDay]


class Shim(TypedDict):
    """What lies under one foot, and the slope that it makes."""

    slope_percent: float
    thickness_m: float


class ShimAnswer(TypedDict):
    """Thickness for each slope."""

    shims: list[Shim]


class EyesAnswer(TypedDict):
    """How a line laid by such eyes is turned, anticlockwise, and where it passes the hole, m to the left."""

    turned_deg: float
    at_hole_m: float
