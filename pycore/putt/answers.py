"""What is answered about a putt: plain JSON values."""

from typing import Annotated, Literal, TypedDict

from pycore.fields import Doc
from pycore.putt.sensitivity import Change

Moment = tuple[
    Annotated[float, Doc("t_s")], Annotated[float, Doc("x_m")], Annotated[float, Doc("y_m")], Annotated[float, Doc("speed_mps")]
]
Path = list[Moment]
Starts = tuple[Annotated[float, Doc("launch_mps")], Annotated[float, Doc("right_deg")], Annotated[float, Doc("left_deg")]]


class Point(TypedDict):
    """A place, m."""

    x_m: float
    y_m: float


class ReadAnswer(TypedDict):
    """Aim, pace and shape; the spreads are None where no doubt was given, or where so doubtful a green has no read."""

    aim_deg: float
    aim_offset_m: float
    launch_mps: float
    aim_sd_deg: float | None
    aim_offset_sd_m: float | None
    launch_sd_fraction: float | None
    entry_mps: float
    entry_deg: float
    time_s: float
    apex: Point
    plays_like_m: float
    path: Path


class WindowAnswer(TypedDict):
    """The starts and paces that hole; tolerances are None where the chosen pace is too firm for any start.

    ``make_interval`` holds the share as surely as the ends of the player's skills do; None where they are not given.
    """

    edge: list[Starts]
    launch_min_mps: float
    launch_max_mps: float
    aim_tolerance_deg: tuple[Annotated[float, Doc("right")], Annotated[float, Doc("left")]] | None
    pace_tolerance_fraction: tuple[Annotated[float, Doc("short")], Annotated[float, Doc("long")]] | None
    high_line: Path
    low_line: Path
    make_probability: float
    make_interval: tuple[Annotated[float, Doc("low")], Annotated[float, Doc("high")]] | None


Paced = tuple[
    Annotated[float, Doc("past_m")], Annotated[float, Doc("expected_putts")], Annotated[float, Doc("make_probability")]
]


class PaceAnswer(TypedDict):
    """The pace that costs least, and what the paces about it cost."""

    past_m: float
    expected_putts: float
    make_probability: float
    three_putt_probability: float
    curve: list[Paced]


class RollAnswer(TypedDict):
    """Where a strike goes; a ball that runs away has no stop, and its path ends far off."""

    stop: Point | None
    runs_away: bool
    time_s: float
    path: Path
    holed: bool


class SensitivityRow(TypedDict):
    """One error, and where the ball then rests, from the hole's centre; None if it runs away."""

    change: Change
    finish: Point | None
    holed: bool
    miss_m: float


class SensitivityAnswer(TypedDict):
    """What each error costs."""

    rows: list[SensitivityRow]


class Preset(TypedDict):
    """A player to compare with."""

    name: Literal["tour", "amateur"]
    source: str
    start_line_sd_deg: float
    pace_sd_fraction: float
    slope_sd_percent: float


class PresetsAnswer(TypedDict):
    """The players that come with the engine."""

    players: list[Preset]
