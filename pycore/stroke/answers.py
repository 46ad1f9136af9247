"""What is answered about a stroke: plain JSON values."""

from typing import Annotated, Literal, TypedDict

from pycore.fields import Doc
from pycore.stroke.strokes import Reason
from pycore.stroke.tempo import Kind


class TempoEvent(TypedDict):
    """One moment, seconds from the first beat; strokes count from 1, the count-in is 0."""

    at_s: float
    kind: Kind
    stroke: int


class TempoAnswer(TypedDict):
    """A row of strokes; ``curve`` is the head's place over one cycle: -1 at the top, 0 at the ball, 1 at the finish."""

    cycle_s: float
    lead_s: float
    total_s: float
    back_s: float
    forward_s: float
    interpolated: bool
    events: list[TempoEvent]
    curve: list[tuple[Annotated[float, Doc("t_s")], Annotated[float, Doc("place")]]]


class StrokeLengthAnswer(TypedDict):
    """How far back for the launch, from the line through the strokes; ``within`` is whether they reach so far."""

    backswing_m: float
    residual_m: float
    within: bool


class FoundStroke(TypedDict):
    """A stroke that was made out; the top lies in the middle of a pause. Taps tell no pause or press."""

    at_s: float
    back_s: float
    forward_s: float
    ratio: float
    pause_s: float
    press_deg: float


class UnusedPart(TypedDict):
    """What was not used, and why."""

    from_s: float
    to_s: float
    reason: Reason


class FindTempoAnswer(TypedDict):
    """The middle of the strokes and their spread (SD; None for a single one).

    ``ratio_low`` and ``ratio_high`` hold the player's ratio 19 times in 20, with what the method does not know of a stroke's
    shape; None for a single stroke.
    """

    by: Literal["taps", "motion"]
    strokes: list[FoundStroke]
    unused: list[UnusedPart]
    ratio: float
    back_s: float
    forward_s: float
    ratio_low: float | None
    ratio_high: float | None
    ratio_sd: float | None
    back_sd_s: float | None
    forward_sd_s: float | None


class ArcPlace(TypedDict):
    """The head along the line from the ball, back and through alike."""

    along_m: float
    inside_m: float
    rise_m: float
    turn_deg: float


class ArcAnswer(TypedDict):
    """The head's way on the floor."""

    radius_m: float
    points: list[ArcPlace]
