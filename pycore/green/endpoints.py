"""The green's endpoints: its speed from rolls, and from a Stimpmeter."""

from collections.abc import Callable
from dataclasses import dataclass
from math import hypot
from typing import Annotated, Any, Literal, TypedDict

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range
from pycore.green import roll_test, survey_endpoints
from pycore.units import FOOT, percent_from_slope

SLOWEST, FASTEST = 3.0, 20.0  # ft; outside, something was measured wrongly
OffBar = Annotated[float, Range(2.0, 40.0, "ft"), Doc("length", "of a roll off the Stimpmeter")]


@dataclass(frozen=True, kw_only=True)
class BallFields:
    """A ball rolled along the line: how far from where it was let go to where it stopped, and how long that took.

    Of a ball that was watched, how it slowed along the line, with its spread, in place of both.
    """

    distance_m: (
        Annotated[float, Range(1.0, 15.0, "m"), Doc("distance", "from where it was let go to where it stopped")] | None
    ) = None
    time_s: Annotated[float, Range(1.0, 15.0, "s"), Doc("time", "until it stopped")] | None = None
    deceleration_mps2: (
        Annotated[float, Range(-2.0, 4.0, "m/s2"), Doc("slowing", "along the line, as it was watched")] | None
    ) = None
    deceleration_sd_mps2: (
        Annotated[float, Range(0.0001, 1.0, "m/s2"), Doc("spread of the slowing", "standard deviation")] | None
    ) = None
    way: Annotated[Literal["out", "back"], Doc("way")]

    def slowing(self, i: int, putted: bool) -> roll_test.Slowing:
        """How it slowed; refuses a roll of which too little or too much is told."""
        if self.deceleration_mps2 is not None and self.deceleration_sd_mps2 is not None:
            if self.time_s is not None:
                field = f"rolls[{i}].time_s"
                raise Refusal("bad_field", f"{field} goes with no deceleration_mps2; leave out one of them", field, self.time_s)
            return roll_test.Slowing(self.deceleration_mps2, self.deceleration_sd_mps2, self.way == "out")
        watched = self.deceleration_mps2 is not None or self.deceleration_sd_mps2 is not None
        names = ("deceleration_mps2", "deceleration_sd_mps2") if watched else ("distance_m", "time_s")
        for name in names:
            if getattr(self, name) is None:
                field = f"rolls[{i}].{name}"
                raise Refusal("missing_field", f"{field} is missing; a roll takes {' and '.join(names)}", field)
        assert self.distance_m is not None
        assert self.time_s is not None
        return roll_test.slowing(roll_test.Roll(self.distance_m, self.time_s, self.way == "out"), putted)


@dataclass(frozen=True, kw_only=True)
class RollTestFields:
    """Rolls out and back along one line; rolled by hand, or putted, which skids first; taped or paced."""

    rolls: Annotated[tuple[BallFields, ...], Length(2, 40), Doc("rolls")]
    skid: Annotated[Literal["rolled", "putted"], Doc("skid", "a putted ball skids before it rolls")]
    measure: Annotated[Literal["tape", "paces"], Doc("measure", "what the distances were measured with")] = "tape"


@dataclass(frozen=True, kw_only=True)
class StimpmeterFields:
    """Lengths off the Stimpmeter, out and back along one line."""

    out_ft: Annotated[tuple[OffBar, ...], Length(1, 10), Doc("out")]
    back_ft: Annotated[tuple[OffBar, ...], Length(1, 10), Doc("back")]


class SpeedAnswer(TypedDict):
    """Green speed, and slope along the line, positive where it falls on the way out."""

    stimp_ft: float
    stimp_sd_ft: float
    slope_percent: float
    slope_sd_percent: float


class RollTestAnswer(SpeedAnswer):
    """With the rolls that look wrong, by their place in the request; two where nothing tells which of them it is."""

    suspects: list[int]


class StimpmeterAnswer(SpeedAnswer):
    """With the ways whose balls lie more than 8 in apart: the booklet has them rolled again."""

    again: list[Literal["out", "back"]]


def answer_roll_test(fields: RollTestFields) -> RollTestAnswer:
    """Green speed without a Stimpmeter."""
    for way, other in (("out", "back"), ("back", "out")):
        if all(roll.way != way for roll in fields.rolls):
            raise Refusal(
                "one_way",
                f"every roll goes {other}: a roll {way} along the same line tells slope from speed",
                "rolls",
            )
    slowings = [roll.slowing(i, fields.skid == "putted") for i, roll in enumerate(fields.rolls)]
    by_hand = any(roll.deceleration_mps2 is None for roll in fields.rolls)
    shared = hypot(roll_test.CROSS, roll_test.STRIDE if fields.measure == "paces" else 0.0) if by_hand else 0.0
    return {**_answer(lambda: roll_test.speed(slowings, shared), "rolls"), "suspects": roll_test.suspects(slowings)}


def answer_stimpmeter(fields: StimpmeterFields) -> StimpmeterAnswer:
    """Green speed from a Stimpmeter on a slope."""
    out, back = ([each * FOOT for each in way] for way in (fields.out_ft, fields.back_ft))
    ways: list[tuple[Literal["out", "back"], list[float]]] = [("out", out), ("back", back)]
    return {
        **_answer(lambda: roll_test.stimpmeter(out, back), "out_ft"),
        "again": [way for way, lengths in ways if roll_test.too_far_apart(lengths)],
    }


def _answer(measure: Callable[[], roll_test.Speed], field: str) -> SpeedAnswer:
    try:
        found = measure()
    except Refusal as refusal:
        raise refusal.about(field) from None
    if not SLOWEST <= found.stimp_ft <= FASTEST:
        raise Refusal(
            "no_green",
            f"this makes {found.stimp_ft:.1f} ft on the Stimpmeter; greens have {SLOWEST:g} to {FASTEST:g}: "
            "look for a wrong distance or time",
            field,
            found.stimp_ft,
            SLOWEST,
            FASTEST,
            "ft",
        )
    return {
        "stimp_ft": found.stimp_ft,
        "stimp_sd_ft": found.stimp_sd_ft,
        "slope_percent": percent_from_slope(found.slope),
        "slope_sd_percent": percent_from_slope(found.slope_sd),
    }


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "roll_test": Endpoint(RollTestFields, answer_roll_test),
    "stimpmeter": Endpoint(StimpmeterFields, answer_stimpmeter),
    **survey_endpoints.ENDPOINTS,
}

_ROLLS = [
    {"distance_m": 6.1, "time_s": 4.7, "way": "out"},
    {"distance_m": 5.6, "time_s": 4.2, "way": "back"},
    {"distance_m": 6.0, "time_s": 4.6, "way": "out"},
]
EXAMPLES: list[dict[str, Any]] = [
    {"ask": "roll_test", "rolls": _ROLLS, "skid": "rolled"},
    {"ask": "roll_test", "rolls": _ROLLS, "skid": "putted"},
    {
        "ask": "roll_test",
        "rolls": [
            {"deceleration_mps2": 0.42, "deceleration_sd_mps2": 0.02, "way": "out"},
            {"deceleration_mps2": 0.7, "deceleration_sd_mps2": 0.02, "way": "back"},
        ],
        "skid": "rolled",
    },
    {"ask": "stimpmeter", "out_ft": [13.2, 13.6, 13.5], "back_ft": [8.0, 7.9, 8.1]},
    *survey_endpoints.EXAMPLES,
]
