"""What may be asked about practice: the fields, and what each takes."""

from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Annotated, Literal

from pycore.constants import BALL_RADIUS
from pycore.drills import week
from pycore.drills.drill import Place, Thing
from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range
from pycore.putt.requests import PlayerFields, PuttFields
from pycore.quantities import Distance, Stimp

WIDEST_GAP = 0.4  # m
NEED = Range(0.0, 100.0)  # how much work a skill needs, beside the others
Player = Annotated[PlayerFields, Doc("player", "who strikes it; the tour preset if left out")]


@dataclass(frozen=True, kw_only=True)
class DrillsFields:
    """The whole catalogue."""


@dataclass(frozen=True, kw_only=True)
class WeightFields:
    """How much work each skill needs, on any scale."""

    alignment: Annotated[float, NEED, Doc("alignment")] = 1.0
    start_line: Annotated[float, NEED, Doc("start line")] = 1.0
    pace: Annotated[float, NEED, Doc("pace")] = 1.0
    reading: Annotated[float, NEED, Doc("reading")] = 1.0
    tempo: Annotated[float, NEED, Doc("tempo")] = 1.0


@dataclass(frozen=True, kw_only=True)
class PlanFields:
    """How long, where, with what; without weights, all skills alike."""

    minutes: Annotated[int, Range(10, 60, "minutes"), Doc("time")]
    place: Annotated[Place, Doc("place")]
    at_hand: Annotated[tuple[Thing, ...], Length(0, 8), Doc("at hand", "what there is to practise with")] = ()
    weights: Annotated[WeightFields, Doc("weights", "how much work each skill needs")] = field(default_factory=WeightFields)


@dataclass(frozen=True, kw_only=True)
class GateFields:
    """A gate: clear width, way from the ball, and what its posts are."""

    gap_m: Annotated[float, Range(0.04, WIDEST_GAP, "m"), Doc("gap", "clear width between the posts")]
    at_m: Annotated[float, Range(0.1, 2.0, "m"), Doc("way", "from the ball to the gate")]
    posts: Annotated[Literal["tees", "balls"], Doc("posts", "what the gate is made of")] = "tees"
    ball_m: Annotated[float, Range(0.04, 0.05, "m"), Doc("ball", "its diameter")] = 2 * BALL_RADIUS
    stimp_ft: Stimp = 10.0
    player: Player | None = None


@dataclass(frozen=True, kw_only=True)
class BallLineFields(PuttFields):
    """The putt in hand, and how far off the line on the ball is laid."""

    off_deg: Annotated[float, Range(0.1, 5.0, "degrees"), Doc("off", "how far the line on the ball is turned")] = 1.0
    player: Player | None = None


@dataclass(frozen=True, kw_only=True)
class TournamentFields:
    """The day of the first round, and how many days there are before it."""

    first_tee: Annotated[str, Length(10, 40), Doc("first tee", "a day, or a day and time, as 2026-05-07T08:10")]
    days_before: Annotated[int, Range(0, week.LONGEST, "days"), Doc("days before")]

    def day(self) -> date:
        """The day alone."""
        try:
            return datetime.fromisoformat(self.first_tee).date()
        except ValueError:
            message = f'first_tee is "{self.first_tee}"; it takes a day and time as 2026-05-07T08:10'
            raise Refusal("bad_field", message, "first_tee") from None


@dataclass(frozen=True, kw_only=True)
class ShimFields:
    """How far apart the feet stand, from middle to middle."""

    apart_m: Annotated[float, Range(0.1, 1.0, "m"), Doc("feet apart", "from middle to middle")] = 0.3


@dataclass(frozen=True, kw_only=True)
class EyesFields:
    """How far left of the ball line the eyes are, seen from behind the ball; right is negative."""

    left_m: Annotated[float, Range(-0.2, 0.2, "m"), Doc("eyes", "how far left of the ball line")]
    distance_m: Distance
