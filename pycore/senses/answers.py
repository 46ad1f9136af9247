"""What is answered of the senses: plain JSON values."""

from typing import Annotated, Literal, TypedDict

from pycore.fields import Doc
from pycore.senses import feel as feet

Kind = Literal["left", "right", "toes", "heels", "small", "large"]
Curve = list[tuple[Annotated[float, Doc("right")], Annotated[float, Doc("down")]]]


class Check(TypedDict):
    """How many positions were held, and by how much they disagree, None where they cannot."""

    positions: int
    apart_percent: float | None


class LevelAnswer(TypedDict):
    """Slope and fall line, from the phone's top in its first position; ``zeroed`` says whether the bias is known."""

    slope_percent: float
    fall_deg: float
    bias_deg: tuple[Annotated[float, Doc("about_x")], Annotated[float, Doc("about_y")]]
    slope_sd_percent: float
    check: Check
    zeroed: bool


class FloorAnswer(TypedDict):
    """How far the floor's tilt moves the eye line, and whether that is little enough for mirror and laser."""

    shift_m: float
    shift_sd_m: float
    verdict: Literal["level", "unsure", "tilted"]


class EstimateAnswer(TypedDict):
    """A value with its 95 % interval, per cent of slope."""

    value: float
    low: float
    high: float


class GroupAnswer(TypedDict):
    """Trials of one kind; ``bias`` is felt less measured, ``more`` the trials that are still needed."""

    kind: Kind
    trials: int
    bias: EstimateAnswer | None
    spread: EstimateAnswer | None
    more: int


class SidesAnswer(TypedDict):
    """One way of falling against its opposite."""

    one: feet.Fall
    other: feet.Fall
    difference: EstimateAnswer | None
    differs: bool
    more: int


class CurveAnswer(TypedDict):
    """What is likely where a slope is felt: felt, likely, and how surely, per cent."""

    fall: feet.Fall
    points: list[tuple[Annotated[float, Doc("felt")], Annotated[float, Doc("likely")], Annotated[float, Doc("sd")]]]


class FeelAnswer(TypedDict):
    """What the trials say; ``sd_percent`` is how far a slope that is felt and not corrected is off, None without trials."""

    sd_percent: float | None
    groups: list[GroupAnswer]
    sides: list[SidesAnswer]
    curves: list[CurveAnswer]


class FeltAnswer(TypedDict):
    """A felt slope, corrected, with the trials of its kind that the correction stands on."""

    slope_percent: float
    slope_sd_percent: float
    correction_percent: float
    trials: int


class LookAnswer(TypedDict):
    """A green to guess from: points right of the line and down from the horizon; and what it is."""

    slope_percent: float
    fall: feet.Fall
    grid: list[Curve]
    ball: Curve
    hole: Curve
    flag: Curve
