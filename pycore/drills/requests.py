"""What may be asked about practice: the fields, and what each takes."""

from dataclasses import dataclass, field
from typing import Annotated, Literal

from pycore.drills.drill import Place, Thing
from pycore.fields import Length, Range
from pycore.putt.requests import PlayerFields, PuttFields, Stimp

Weight = Annotated[float, Range(0.0, 100.0)]


@dataclass(frozen=True, kw_only=True)
class DrillsFields:
    """The whole catalogue."""


@dataclass(frozen=True, kw_only=True)
class WeightFields:
    """How much work each skill needs, on any scale."""

    alignment: Weight = 1.0
    start_line: Weight = 1.0
    pace: Weight = 1.0
    reading: Weight = 1.0
    tempo: Weight = 1.0


@dataclass(frozen=True, kw_only=True)
class PlanFields:
    """How long, where, with what; without weights, all skills alike."""

    minutes: Annotated[int, Range(10, 60, "minutes")]
    place: Place
    at_hand: Annotated[tuple[Thing, ...], Length(0, 8)] = ()
    weights: WeightFields = field(default_factory=WeightFields)


@dataclass(frozen=True, kw_only=True)
class GateFields:
    """A gate: clear width, way from the ball, and what its posts are."""

    gap_m: Annotated[float, Range(0.04, 0.4, "m")]
    at_m: Annotated[float, Range(0.1, 2.0, "m")]
    posts: Literal["tees", "balls"] = "tees"
    ball_m: Annotated[float, Range(0.04, 0.05, "m")] = 0.04267
    stimp_ft: Stimp = 10.0
    player: PlayerFields | None = None


@dataclass(frozen=True, kw_only=True)
class BallLineFields(PuttFields):
    """The putt in hand, and how far off the line on the ball is laid."""

    off_deg: Annotated[float, Range(0.1, 5.0, "degrees")] = 1.0
    player: PlayerFields | None = None


@dataclass(frozen=True, kw_only=True)
class EyesFields:
    """How far left of the ball line the eyes are, seen from behind the ball; right is negative."""

    left_m: Annotated[float, Range(-0.2, 0.2, "m")]
    distance_m: Annotated[float, Range(0.3, 30.0, "m")]
