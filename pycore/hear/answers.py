"""What is answered about sounds: plain JSON values."""

from typing import TypedDict

from pycore.hear.putts import Part, Reason


class HeardStroke(TypedDict):
    """A putt that was heard: the strike, the marks it met, and how far it would have run on this floor."""

    impact_s: float
    arrivals_s: list[float]
    marks: list[int]
    launch_mps: float
    launch_sd_mps: float
    roll_m: float
    roll_sd_m: float


class HeardSound(TypedDict):
    """A short sound, and what it is taken for."""

    at_s: float
    part: Part


class LeftOut(TypedDict):
    """A sound that belongs to no stroke, and why."""

    at_s: float
    reason: Reason


class HeardAnswer(TypedDict):
    """Seconds count from the first sample; ``marks`` has for each arrival its place in ``marks_m``.

    ``stimp_ft`` is what the sounds alone say of the floor; None where no putt met two marks.
    """

    strokes: list[HeardStroke]
    stimp_ft: float | None
    stimp_sd_ft: float | None
    heard: list[HeardSound]
    left_out: list[LeftOut]


class Held(TypedDict):
    """A value with its 95 % interval."""

    value: float
    low: float
    high: float


class PacesAnswer(TypedDict):
    """Errors of the rolls, as fractions of what was meant, long positive; lean and spread of two or more of them."""

    errors: list[float]
    lean: Held | None
    spread: Held | None


class Strike(TypedDict):
    """A strike near a beat: the beat's place in ``beats_s``, when it was, and how far off the beat, late positive."""

    beat: int
    at_s: float
    off_s: float


class OnBeatAnswer(TypedDict):
    """The delay as it was given, or as ``heard`` notes tell it; None where too few were heard. ``lean`` and ``spread`` are of
    all strikes, those before among them; None for fewer than two."""

    delay_s: float | None
    delay_sd_s: float | None
    heard: int
    strikes: list[Strike]
    lean: Held | None
    spread: Held | None
