"""A survey's endpoints: the map of a green, and the putts on it that practice wants."""

from cmath import phase
from math import degrees, sqrt
from typing import Annotated, Any, TypedDict

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import Doc, Range, outside
from pycore.green import find
from pycore.green import survey_requests as requests
from pycore.units import percent_from_slope, slope_from_percent

STATIONS = 7  # along a putt
STEEPEST = 8.0  # %; the most that a station takes
OnMap = tuple[Annotated[float, Doc("x_m")], Annotated[float, Doc("y_m")]]


class TiltAnswer(TypedDict):
    """Slope, where it falls (clockwise from up the map), and the spread of each part of it."""

    slope_percent: float
    fall_deg: float
    sd_percent: float


class GridAnswer(TiltAnswer):
    """The same at a place of the drawn grid."""

    x_m: float
    y_m: float


class ContourAnswer(TypedDict):
    """Points of one height, m over the map's origin."""

    height_m: float
    points: list[OnMap]


class SurveyAnswer(TypedDict):
    """The green: tilts at the places asked for, height lines, tilts on a grid (whose spreads are for drawing: those of the
    likeliest green alone), over what length it changes, readings that do not fit and are left out, and where one more would
    teach most."""

    at: list[TiltAnswer]
    contours: list[ContourAnswer]
    grid: list[GridAnswer]
    length_m: float
    suspects: list[int]
    next: list[OnMap]


class FoundAnswer(TypedDict):
    """A putt on the map; slope and fall as a read takes them, with the spread of each part."""

    ball: OnMap
    hole: OnMap
    distance_m: float
    slope_percent: float
    fall_deg: float
    sd_percent: float


class FindPuttsAnswer(TypedDict):
    """Putts as wanted, the best known first."""

    putts: list[FoundAnswer]


class StationAnswer(TypedDict):
    """Slope and fall at a place along a putt, as a read takes them."""

    at_m: float
    slope_percent: float
    fall_deg: float


class SurveyStationsAnswer(TypedDict):
    """What a kept putt keeps of the survey: its slopes, and the spread of each part of the one tilt that does as much."""

    distance_m: float
    stations: list[StationAnswer]
    sd_percent: float


class PointAnswer(TypedDict):
    """A reading of the green, as a survey takes it."""

    x_m: float
    y_m: float
    slope_percent: float
    fall_deg: float
    sd_percent: float


class SurveyPointsAnswer(TypedDict):
    """The slopes of a kept putt as readings at their places."""

    points: list[PointAnswer]


def answer_survey_points(fields: requests.KeptPuttFields) -> SurveyPointsAnswer:
    """A kept putt's slopes as readings of the green on which it is placed.

    A slope lies as far along the line on the map as it lay along the putt; the whole putt's in the middle.
    """
    ball, hole = requests.place(fields.ball), requests.place(fields.hole)
    if ball == hole:
        raise Refusal("bad_field", "ball and hole lie at one place; the line between them tells where the slopes fall", "hole")
    points: list[PointAnswer] = []
    for i, each in enumerate(fields.slopes):
        at = fields.distance_m / 2 if each.at_m is None else each.at_m
        if at > fields.distance_m:
            raise outside(f"slopes[{i}].at_m", at, Range(0.0, fields.distance_m, "m"), "not past the hole")
        where = ball + at / fields.distance_m * (hole - ball)
        points.append(
            {
                "x_m": where.real,
                "y_m": where.imag,
                "slope_percent": each.slope_percent,
                "fall_deg": (_clockwise(hole - ball) + each.fall_deg) % 360,
                "sd_percent": max(requests.SUREST, each.sd_percent),
            }
        )
    return {"points": points}


def answer_survey_stations(fields: requests.StationsFields) -> SurveyStationsAnswer:
    """The stations along a putt on a surveyed green."""
    green, length = fields.survey.surface(), fields.survey.distance
    return {
        "distance_m": length,
        "stations": [
            {"at_m": at, "slope_percent": min(slope, STEEPEST), "fall_deg": fall}
            for at, slope, fall in green.stations(length, STATIONS)
        ],
        "sd_percent": percent_from_slope(fields.survey.tilt_sd),
    }


def answer_survey(fields: requests.SurveyFields) -> SurveyAnswer:
    """The map of a green from readings of its level."""
    green = fields.walked()
    doubt = green.doubt
    return {
        "at": [_tilt(tilt.downhill, tilt.spread) for tilt in (green.survey.tilt(requests.place(place)) for place in fields.at)],
        "contours": [
            {"height_m": height, "points": [(round(x, 6), round(y, 6)) for x, y in points]}
            for height, points in green.contours(fields.height_unit_m)
        ],
        "grid": [
            {
                "x_m": place.real,
                "y_m": place.imag,
                **_tilt(
                    complex(*green.relief.at(place.real, place.imag)[1:]),
                    sqrt((doubt[2 * i][2 * i] + doubt[2 * i + 1][2 * i + 1]) / 2),
                ),
            }
            for i, place in enumerate(green.drawn)
        ],
        "length_m": green.survey.length,
        "suspects": list(green.survey.suspects),
        "next": [_on_map(place) for place in green.next],
    }


def answer_find_putts(fields: requests.FindPuttsFields) -> FindPuttsAnswer:
    """Where on a surveyed green a putt as wanted is."""
    want = fields.want
    for name, (low, high) in (("distance_m", want.distance_m), ("slope_percent", want.slope_percent)):
        if low > high:
            raise Refusal("bad_field", f"want.{name} is {low:g} to {high:g}; the smaller comes first", f"want.{name}")
    wanted = find.Want(
        (want.distance_m[0], want.distance_m[1]),
        (slope_from_percent(want.slope_percent[0]), slope_from_percent(want.slope_percent[1])),
        want.break_,
        want.way,
    )
    found = find.find(fields.survey.walked(), wanted, requests.place(fields.hole) if fields.hole else None)
    return {
        "putts": [
            {
                "ball": _on_map(each.ball),
                "hole": _on_map(each.hole),
                "distance_m": abs(each.hole - each.ball),
                "slope_percent": each.slope_percent,
                "fall_deg": each.fall_deg,
                "sd_percent": percent_from_slope(each.sd),
            }
            for each in found
        ]
    }


def _tilt(downhill: complex, sd: float) -> TiltAnswer:
    return {
        "slope_percent": percent_from_slope(abs(downhill)),
        "fall_deg": _clockwise(downhill),
        "sd_percent": percent_from_slope(sd),
    }


def _clockwise(way: complex) -> float:
    """Degrees from up the map, 0 to 360."""
    return (90 - degrees(phase(way))) % 360


def _on_map(place: complex) -> OnMap:
    return place.real, place.imag


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "survey": Endpoint(requests.SurveyFields, answer_survey),
    "find_putts": Endpoint(requests.FindPuttsFields, answer_find_putts),
    "survey_stations": Endpoint(requests.StationsFields, answer_survey_stations),
    "survey_points": Endpoint(requests.KeptPuttFields, answer_survey_points),
}

POINTS = [
    {"x_m": x, "y_m": y, "slope_percent": 2 + 0.1 * x - 0.1 * y, "fall_deg": 180 + 5 * x, "sd_percent": 0.12}
    for x in (0, 3, 6, 9)
    for y in (0, 3, 6, 9)
]
EXAMPLES: list[dict[str, Any]] = [
    {"ask": "survey", "points": POINTS, "place_sd_m": 0.25, "at": [[4.5, 4.5]]},
    {
        "ask": "find_putts",
        "survey": {"points": POINTS, "place_sd_m": 0.25},
        "want": {"distance_m": [2, 4], "slope_percent": [1, 3], "break": "left", "way": None},
        "hole": None,
    },
    {"ask": "survey_stations", "survey": {"points": POINTS, "ball": [2, 2], "hole": [5, 4]}},
    {
        "ask": "survey_points",
        "ball": [2, 2],
        "hole": [5, 4],
        "distance_m": 3.6,
        "slopes": [{"at_m": 0, "slope_percent": 2, "fall_deg": 90}, {"slope_percent": 1, "fall_deg": 0, "sd_percent": 0.2}],
    },
]
