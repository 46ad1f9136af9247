"""What may be asked about a stroke: the fields, and what each takes."""

from dataclasses import dataclass
from itertools import pairwise
from typing import Annotated

from pycore.errors import Refusal
from pycore.fields import Length, Range
from pycore.stroke.pendulum import Swing
from pycore.stroke.tempo import Tempo

Seconds = Annotated[float, Range(0.0, 100_000.0, "s")]
Turn = Annotated[float, Range(-100_000.0, 100_000.0)]
Sample = Annotated[tuple[Turn, ...], Length(4, 4)]
Samples = Annotated[tuple[Sample, ...], Length(40, 6_000)]


@dataclass(frozen=True, kw_only=True)
class TempoFields:
    """A row of strokes in time."""

    forward_s: Annotated[float, Range(0.15, 0.6, "s")]
    ratio: Annotated[float, Range(1.0, 4.0)] = 2.0
    rest_s: Annotated[float, Range(0.5, 10.0, "s")] = 2.4
    strokes: Annotated[int, Range(1, 600)] = 20
    count_in: Annotated[int, Range(0, 8)] = 4

    def tempo(self) -> Tempo:
        """The row in the engine's terms."""
        return Tempo(Swing(self.ratio * self.forward_s, self.forward_s), self.rest_s, self.strokes, self.count_in)


@dataclass(frozen=True, kw_only=True)
class OwnStroke:
    """One of the player's strokes on a level place: how far back, how far the ball rolled, how fast the green was."""

    backswing_m: Annotated[float, Range(0.02, 1.0, "m")]
    roll_m: Annotated[float, Range(0.1, 40.0, "m")]
    stimp_ft: Annotated[float, Range(5.0, 15.0, "ft")]


@dataclass(frozen=True, kw_only=True)
class StrokeLengthFields:
    """The player's own strokes, and the launch speed of the putt in hand (a read tells it)."""

    strokes: Annotated[tuple[OwnStroke, ...], Length(0, 200)]
    launch_mps: Annotated[float, Range(0.05, 15.0, "m/s")]


@dataclass(frozen=True, kw_only=True)
class FindTempoFields:
    """Taps at start, top and impact of each stroke; or samples of a phone that was swung.

    ``rates`` are t_s and degrees a second about the phone's x, y and z; ``angles`` are t_s, alpha, beta and gamma.
    """

    taps_s: Annotated[tuple[Seconds, ...], Length(3, 600)] | None = None
    rates: Samples | None = None
    angles: Samples | None = None

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

    lie_deg: Annotated[float, Range(55.0, 90.0, "degrees")]
    length_m: Annotated[float, Range(0.45, 1.3, "m")]
    above_grip_m: Annotated[float, Range(0.0, 1.0, "m")] = 0.45
    reach_m: Annotated[float, Range(0.05, 0.4, "m")] = 0.3
