"""What may be asked about sounds: the fields, and what each takes."""

from dataclasses import dataclass
from itertools import pairwise
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range

DELAY_S = -0.1, 0.8  # s; no headphones are later; less than none where a phone overrates its own way out; assumed
OFF = "how far off the beat, s; late is positive"
BANDS = 3  # below 800 Hz, to 3 kHz, above
LONGEST_S = 120.0  # s that are heard in one question
MOST_SAMPLES = 240_000  # of a band: ``LONGEST_S`` at the highest rate
Level = Annotated[float, Range(0.0, 1.0)]
Band = Annotated[tuple[Level, ...], Length(1, MOST_SAMPLES)]
FLOOR = "feet on the Stimpmeter; a bare floor has many"
MARK = "how far the ball rolls until it meets this: from its front to a wall, from under it to the edge of a sheet"


@dataclass(frozen=True, kw_only=True)
class SoundFields:
    """Levels of the sound.

    ``bands`` are the largest amplitudes in each ``1 / rate_hz``, linear, 1 the loudest there is: below 800 Hz, to 3 kHz, above.
    """

    bands: Annotated[tuple[Band, ...], Length(BANDS, BANDS), Doc("bands", "levels below 800 Hz, to 3 kHz, above")]
    rate_hz: Annotated[float, Range(500.0, 2000.0, "a second"), Doc("rate", "levels a second in each band")] = 1000.0

    def __post_init__(self) -> None:
        first, *others = self.bands
        for i, band in enumerate(others, 1):
            if len(band) != len(first):
                field = f"bands[{i}]"
                raise Refusal(
                    "bad_field", f"{field} has {len(band)} levels, bands[0] has {len(first)}; all bands take as many", field
                )
        length = len(first) / self.rate_hz
        if length > LONGEST_S * (1 + 1e-9):
            message = f"bands hold {length:.0f} s; up to {LONGEST_S:g} s at a time will do"
            raise Refusal("too_long", message, "bands", length, None, LONGEST_S, "s")


@dataclass(frozen=True, kw_only=True)
class HeardFields(SoundFields):
    """The sound, and what stood in the ball's way."""

    marks_m: Annotated[
        tuple[Annotated[float, Range(0.3, 20.0, "m"), Doc("mark", MARK)], ...], Length(1, 3), Doc("marks", "nearest first")
    ]
    stimp_ft: (
        Annotated[float, Range(3.0, 60.0, "ft"), Doc("floor speed", "feet on the Stimpmeter; a bare floor has many")] | None
    ) = None
    stimp_sd_ft: Annotated[float, Range(0.0, 20.0, "ft"), Doc("spread of the speed")] = 0.0
    skid: Annotated[Literal["rolled", "putted"], Doc("skid", "a putted ball skids before it rolls")] = "rolled"

    def __post_init__(self) -> None:
        super().__post_init__()
        for i, (near, far) in enumerate(pairwise(self.marks_m), 1):
            if far <= near:
                field = f"marks_m[{i}]"
                raise Refusal("bad_field", f"{field} is {far:g} m, not beyond the one before it; nearest first", field, far)
        if self.stimp_ft is None and len(self.marks_m) == 1:
            message = "stimp_ft is null; with one mark the floor's speed is needed, or a second mark in the ball's way"
            raise Refusal("no_speed", message, "stimp_ft")


@dataclass(frozen=True, kw_only=True)
class OnBeatFields(SoundFields):
    """The sound while a tempo played, and when its notes left the app, on the clock of the sound's first level.

    Without ``delay_s`` the notes themselves are listened for, as an earpiece held to the microphone gives them.
    """

    beats_s: Annotated[tuple[Annotated[float, Range(-10.0, LONGEST_S, "s")], ...], Length(1, 2000), Doc("beats")]
    delay_s: Annotated[float, Range(*DELAY_S, "s"), Doc("delay", "from a note's leaving to its being heard here")] | None = None
    delay_sd_s: Annotated[float, Range(0.0, 0.8, "s"), Doc("spread of the delay")] = 0.0
    earlier_s: Annotated[tuple[Annotated[float, Range(-1.0, 1.0, "s")], ...], Length(0, 2000), Doc("strikes before", OFF)] = ()


@dataclass(frozen=True, kw_only=True)
class PacesFields:
    """How far putts would have run, and how far they were meant to."""

    rolls_m: Annotated[tuple[Annotated[float, Range(0.0, 60.0, "m")], ...], Length(0, 2000), Doc("rolls", "heard")]
    meant_m: Annotated[float, Range(0.3, 40.0, "m"), Doc("meant", "how far the ball should run")]
    roll_sd_m: Annotated[float, Range(0.0, 60.0, "m"), Doc("spread of a roll", "which all share: the floor's speed")] = 0.0
