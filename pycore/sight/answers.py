"""What is answered about the line where the eye has it: plain JSON values."""

from typing import Annotated, TypedDict

from pycore.fields import Doc

Right = Annotated[float, Doc("right_px")]
Down = Annotated[float, Doc("down_px")]
Pixel = tuple[Right, Down]
Rolled = list[tuple[Annotated[float, Doc("t_s")], Right, Down, Annotated[float, Doc("radius_px")]]]


class CameraAnswer(TypedDict):
    """The points in the picture, None where one is not before the lens; how far they may be off, None if anywhere.

    ``error_m`` is what ``error_px`` covers across the view at the hole.
    ``told_pitch_deg`` is the pitch that was told; far from the one found, it speaks against what else was told.
    ``height_sd_m`` and ``pitch_sd_deg`` are the deviations that a told height and pitch are taken to have.
    """

    points_px: list[Pixel | None]
    error_px: float | None
    error_m: float | None
    eye_height_m: float
    pitch_deg: float
    told_pitch_deg: float | None
    height_sd_m: float
    pitch_sd_deg: float
    roll_deg: float
    fov_deg: float


class FollowAnswer(TypedDict):
    """The points in the picture as the phone is held now, None where one is not before the lens."""

    points_px: list[Pixel | None]


class LensAnswer(TypedDict):
    """Vertical field of view, how far a finger may put it off, and the focal length as for 35 mm film."""

    fov_deg: float
    error_deg: float
    lens_mm: float


class ViewAnswer(TypedDict):
    """The putt in perspective, px; ``lines`` go to the ball's rest or to where it drops, None if the hole takes none."""

    horizon_px: float
    turf: list[Pixel]
    grid: list[list[Pixel]]
    grid_m: float
    falls: list[list[Pixel]]
    hole: list[Pixel]
    flag: list[Pixel]
    spot: Pixel | None
    apex: Pixel | None
    time_s: float
    chosen: Rolled
    high: Rolled | None
    low: Rolled | None


class ChalkRow(TypedDict):
    """A place along the line, and how far left of it the three lines are; None where the ball does not come so far."""

    at_m: float
    chosen_m: float | None
    high_m: float | None
    low_m: float | None


class ChalkAnswer(TypedDict):
    """Where to put the dots."""

    rows: list[ChalkRow]


class RampAnswer(TypedDict):
    """How high on the ramp the ball is let go, and the share of its energy that the ramp leaves it."""

    height_m: float
    kept_fraction: float
