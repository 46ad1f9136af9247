"""What may be asked about a stroke: the fields, and what each takes."""

from dataclasses import dataclass
from itertools import pairwise
from typing import Annotated

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range
from pycore.quantities import Launch, Stimp
from pycore.stroke.pendulum import Swing
from pycore.stroke.tempo import PENDULUM_RATIO, Tempo

FLATTEST_LIE_DEG = 55.0  # degrees; no putter lies flatter; assumed
STEEPEST_LIE_DEG = 80.0  # degrees; Equipment Rules (R&A/USGA): the shaft is at least 10 degrees from the vertical
LIE = "of the shaft from the floor; the Equipment Rules want it at least 10 degrees off the vertical"
Seconds = Annotated[float, Range(0.0, 100_000.0, "s")]
Turn = Annotated[float, Range(-100_000.0, 100_000.0)]
Sample = Annotated[tuple[Turn, ...], Length(4, 4)]
SAMPLES = Length(40, 6_000)


@dataclass(frozen=True, kw_only=True)
class TempoFields:
    """A row of strokes in time."""

    forward_s: Annotated[float, Range(0.15, 0.6, "s"), Doc("forward swing", "from the top to the ball")]
    ratio: Annotated[float, Range(1.0, 4.0), Doc("ratio", "of the backswing's time to the forward swing's")] = PENDULUM_RATIO
    rest_s: Annotated[float, Range(0.5, 10.0, "s"), Doc("rest", "between two strokes")] = 2.4
    strokes: Annotated[int, Range(1, 600), Doc("strokes")] = 20
    count_in: Annotated[int, Range(0, 8), Doc("count-in", "beats before the first stroke")] = 4

    def tempo(self) -> Tempo:
        """The row in the engine's terms."""
        return Tempo(Swing(self.ratio * self.forward_s, self.forward_s), self.rest_s, self.strokes, self.count_in)


@dataclass(frozen=True, kw_only=True)
class OwnStroke:
    """One of the player's strokes on a level place: how far back, how far the ball rolled, how fast the green was."""

    backswing_m: Annotated[float, Range(0.02, 1.0, "m"), Doc("backswing", "how far back the head went")]
    roll_m: Annotated[float, Range(0.1, 40.0, "m"), Doc("roll", "how far the ball rolled on the level")]
    stimp_ft: Stimp


@dataclass(frozen=True, kw_only=True)
class StrokeLengthFields:
    """The player's own strokes, and the launch speed of the putt in hand (a read tells it)."""

    strokes: Annotated[tuple[OwnStroke, ...], Length(0, 200), Doc("strokes", "the player's own")]
    launch_mps: Launch


@dataclass(frozen=True, kw_only=True)
class FindTempoFields:
    """Taps at start, top and impact of each stroke; or samples of a phone that was swung.

    ``rates`` are t_s and degrees a second about the phone's x, y and z; ``angles`` are t_s, alpha, beta and gamma.
    """

    taps_s: Annotated[tuple[Seconds, ...], Length(3, 600), Doc("taps", "at start, top and impact")] | None = None
    rates: Annotated[tuple[Sample, ...], SAMPLES, Doc("rates", "s, then degrees a second about x, y, z")] | None = None
    angles: Annotated[tuple[Sample, ...], SAMPLES, Doc("angles", "s, then alpha, beta, gamma in degrees")] | None = None

    def __post_init__(self) -> None:
        given = [name for name in ("taps_s", "rates", "angles") if getattr(self, name) is not None]
        if len(given) != 1:
            name = given[1] if given else "taps_s"
            raise Refusal("bad_field", "give one of taps_s, rates and angles", name)
        name = given[0]
        times = self.taps_s if self.taps_s is not None else [sample[0] for sample in getattr(self, name)]
        for i, (before, after) in enumerate(pairwise(times), 1):
            if after <= before:
                raise Refusal("bad_field", f"{name}[{i}] is at {after:g} s, not after the one before it", f"{name}[{i}]")


@dataclass(frozen=True, kw_only=True)
class ArcFields:
    """A putter, and how far above its grip the stroke turns; that is an assumption until it is measured."""

    lie_deg: Annotated[float, Range(FLATTEST_LIE_DEG, STEEPEST_LIE_DEG, "degrees"), Doc("lie", LIE)]
    length_m: Annotated[float, Range(0.45, 1.3, "m"), Doc("length", "of the putter")]
    above_grip_m: Annotated[float, Range(0.0, 1.0, "m"), Doc("above grip", "from the grip's end to where it turns")] = 0.45
    reach_m: Annotated[float, Range(0.05, 0.4, "m"), Doc("reach", "of the head, back and through")] = 0.3
