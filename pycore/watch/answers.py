"""What is answered about a film of a putt: plain JSON values."""

from typing import Annotated, Literal, TypedDict

from pycore.fields import Doc
from pycore.sight.answers import Pixel

Result = Literal["holed", "missed", "unseen"]
OnWay = tuple[Annotated[float, Doc("t_s")], Annotated[float, Doc("x_m")], Annotated[float, Doc("y_m")]]


class Stop(TypedDict):
    """Where the ball came to rest, from where it lay, and how far that may be off (standard deviation)."""

    x_m: float
    y_m: float
    sd_m: float


class Untold(TypedDict):
    """What is None in the answer, and why."""

    field: str
    why: str


class WatchedAnswer(TypedDict):
    """How the ball was struck and how it ran, with standard deviations; what was not seen well enough is None.

    ``start_deg`` is left of the ball-to-hole line, ``deceleration_mps2`` what friction less the pull of the tilt takes along
    that line, ``across_percent`` how steeply the green falls to the left of it. ``seen_m`` is how much of the way was seen,
    ``used`` in how many frames. The paths are those of the ball as far as it was seen, on the green and in the picture.
    """

    start_deg: float | None
    start_sd_deg: float | None
    launch_mps: float | None
    launch_sd_mps: float | None
    moment_s: float | None
    deceleration_mps2: float | None
    deceleration_sd_mps2: float | None
    across_percent: float | None
    across_sd_percent: float | None
    stimp_ft: float | None
    stimp_sd_ft: float | None
    result: Result
    stop: Stop | None
    seen_m: float
    used: int
    path: list[OnWay]
    path_px: list[Pixel]
    points_px: list[Pixel | None]
    untold: list[Untold]
    words: str


class SettledAnswer(TypedDict):
    """A value with its 95 % interval."""

    value: float
    low: float
    high: float


class RowAnswer(TypedDict):
    """How a row of strikes leans and scatters; ``more`` is how many of them are still wanted until the lean is settled."""

    strikes: int
    lean: SettledAnswer
    spread: SettledAnswer
    more: int


class BlockAnswer(TypedDict):
    """Starts in degrees, left of the line meant; pace as a share of the roll's length, long positive. Of two or more."""

    start: RowAnswer | None
    pace: RowAnswer | None
