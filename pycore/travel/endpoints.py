"""The endpoints of a green of another speed: translate, table."""

from dataclasses import dataclass, replace
from math import degrees, tan
from typing import Annotated, Any, TypedDict

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import Doc, Length
from pycore.putt.answers import Path
from pycore.putt.putt import Putt
from pycore.putt.requests import PuttFields
from pycore.putt.shape import path
from pycore.putt.solve import Read, solve
from pycore.quantities import Distance, Past, Slope, Stimp
from pycore.travel.translate import cell, likeness
from pycore.units import percent_from_slope, slope_from_percent


@dataclass(frozen=True, kw_only=True)
class TranslateFields(PuttFields):
    """A putt on today's green, and the speed of the green at home."""

    home_stimp_ft: Annotated[Stimp, Doc("green speed at home", "feet on the Stimpmeter")]


@dataclass(frozen=True, kw_only=True)
class TableFields:
    """Distances and slopes on a green of one speed."""

    stimp_ft: Stimp
    past_m: Past
    distances_m: Annotated[tuple[Distance, ...], Length(1, 12), Doc("distances")]
    slopes_percent: Annotated[tuple[Slope, ...], Length(1, 8), Doc("slopes")]


class GreenAnswer(TypedDict):
    """The putt on one of the greens; path as in a read."""

    stimp_ft: float
    aim_deg: float
    aim_offset_m: float
    launch_mps: float
    plays_like_m: float
    path: Path


class TranslateAnswer(TypedDict):
    """Both greens; home is None where there is no such putt. ``breaks_like_percent`` is the slope at the hole that
    breaks as much at home, None for a straight putt."""

    today: GreenAnswer
    home: GreenAnswer | None
    slope_percent: float
    breaks_like_percent: float | None


class TableCell(TypedDict):
    """Aim across the slope and pace straight up and down it; None where no ball stops."""

    aim_deg: float | None
    aim_offset_m: float | None
    up_m: float | None
    down_m: float | None


class TableAnswer(TypedDict):
    """A row for each distance, a cell for each slope."""

    rows: list[list[TableCell]]


def answer_translate(fields: TranslateFields) -> TranslateAnswer:
    """The same putt on today's green and at home."""
    today = fields.putt()
    home = replace(today, stimp_ft=fields.home_stimp_ft)
    found, at_home = solve(today), solve(home)
    if found is None:
        raise Refusal("runs_away", "there is no such putt on today's green: no ball stops at this pace", "past_m")
    times = likeness(found, home)
    slope = percent_from_slope(abs(today.downhill))
    return {
        "today": _green(today, found),
        "home": _green(home, at_home) if at_home else None,
        "slope_percent": slope,
        "breaks_like_percent": times and times * slope,
    }


def answer_table(fields: TableFields) -> TableAnswer:
    """What to expect of a green, by distance and slope."""
    return {"rows": [[_cell(distance, slope, fields) for slope in fields.slopes_percent] for distance in fields.distances_m]}


def _cell(distance: float, slope_percent: float, fields: TableFields) -> TableCell:
    found = cell(distance, slope_from_percent(slope_percent), fields.stimp_ft, fields.past_m)
    return {
        "aim_deg": None if found.aim is None else degrees(found.aim),
        "aim_offset_m": None if found.aim is None else distance * tan(found.aim),
        "up_m": found.up,
        "down_m": found.down,
    }


def _green(putt: Putt, found: Read) -> GreenAnswer:
    return {
        "stimp_ft": putt.stimp_ft,
        "aim_deg": degrees(found.aim),
        "aim_offset_m": putt.distance * tan(found.aim),
        "launch_mps": found.launch,
        "plays_like_m": putt.plays_like(found.launch),
        "path": path(found.roll),
    }


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "translate": Endpoint(TranslateFields, answer_translate),
    "table": Endpoint(TableFields, answer_table),
}

EXAMPLES: list[dict[str, Any]] = [
    {
        "ask": "translate",
        "distance_m": 3.0,
        "stimp_ft": 12.5,
        "slope_percent": 2,
        "fall_deg": 90,
        "past_m": 0.3,
        "home_stimp_ft": 9,
    },
    {"ask": "table", "stimp_ft": 11, "past_m": 0.3, "distances_m": [1.5, 3], "slopes_percent": [1, 2]},
]
