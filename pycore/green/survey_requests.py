"""What may be asked of a survey: the fields, and what each takes."""

from cmath import rect
from dataclasses import dataclass
from functools import lru_cache
from math import radians
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range, outside
from pycore.green.surveyed import Surveyed
from pycore.green.walked import EDGE, Walked, walked
from pycore.quantities import Distance, Fall, Slope
from pycore.stats.process import Reading
from pycore.units import slope_from_percent

FEWEST, MOST = 3, 120
SUREST = 0.01  # %; no level tells more
Coordinate = Annotated[float, Range(-100.0, 100.0, "m")]
OnMap = Annotated[tuple[Coordinate, ...], Length(2, 2)]
KEPT_SD_PERCENT = 0.3  # assumed: a level's, or a good eye's, read at about its place
SHORTEST, FARTHEST = 0.3, 30.0  # m; of a putt


@dataclass(frozen=True, kw_only=True)
class PointFields:
    """The level read at a place of the map."""

    x_m: Annotated[Coordinate, Doc("place", "to the right on the map")]
    y_m: Annotated[Coordinate, Doc("place", "up the map")]
    slope_percent: Annotated[float, Range(0.0, 20.0, "%"), Doc("slope", "rise over run, down the fall line")]
    fall_deg: Annotated[float, Range(-360.0, 360.0, "degrees"), Doc("falls", "clockwise from up the map")]
    sd_percent: Annotated[float, Range(SUREST, 5.0, "%"), Doc("spread", "standard deviation of each part of the slope")]


@dataclass(frozen=True, kw_only=True)
class MapFields:
    """A green walked once: its readings."""

    points: Annotated[tuple[PointFields, ...], Length(FEWEST, MOST), Doc("readings", "of the level, at places on the map")]
    place_sd_m: Annotated[float, Range(0.0, 2.0, "m"), Doc("spread of a place", "standard deviation of each coordinate")] = 0.25

    def walked(self) -> Walked:
        """The green that they make; the same readings are worked out once."""
        return _walked(self.points, self.place_sd_m)


@dataclass(frozen=True, kw_only=True)
class SurveyFields(MapFields):
    """The readings, and places where the slope is asked for."""

    at: Annotated[tuple[OnMap, ...], Length(0, 400), Doc("places")] = ()
    height_unit_m: Annotated[float, Range(0.001, 1.0, "m"), Doc("unit of height", "lines lie whole ones apart")] = 0.01


@dataclass(frozen=True, kw_only=True)
class PlacedFields(MapFields):
    """The readings, and where ball and hole lie on the map."""

    ball: Annotated[OnMap, Doc("ball", "its place on the map")]
    hole: Annotated[OnMap, Doc("hole", "its place on the map")]

    @property
    def line(self) -> complex:
        """From ball to hole on the map, m."""
        return place(self.hole) - place(self.ball)

    @property
    def distance(self) -> float:
        """From ball to hole, m."""
        length = abs(self.line)
        if not SHORTEST <= length <= FARTHEST:
            why = "ball and hole lie too near to each other or too far apart"
            raise outside("survey.hole", length, Range(SHORTEST, FARTHEST, "m from the ball"), why)
        return length

    def surface(self) -> Surveyed:
        """The green as the putt sees it; refuses a ball or a hole off the surveyed part."""
        length, green = self.distance, self.walked()
        for name, at in (("ball", self.ball), ("hole", self.hole)):
            if (off := green.outside(place(at))) > EDGE:
                raise Refusal(
                    "off_survey",
                    f"the {name} lies {off:.1f} m outside the outermost readings; up to {EDGE:g} m will do: "
                    "take a reading beyond it, or measure this putt by itself",
                    f"survey.{name}",
                    off,
                    0.0,
                    EDGE,
                    "m",
                )
        return Surveyed(green.relief, place(self.ball), self.line / length)

    @property
    def tilt_sd(self) -> float:
        """Spread of each part of the putt's one tilt, as the survey leaves it open, rise over run."""
        return self.walked().mean_sd(place(self.ball), place(self.hole))


@dataclass(frozen=True, kw_only=True)
class StationsFields:
    """A surveyed green, and ball and hole on it."""

    survey: Annotated[PlacedFields, Doc("survey", "the green's readings, and where ball and hole lie")]


@dataclass(frozen=True, kw_only=True)
class KeptSlopeFields:
    """A slope that was kept with a putt: at one place of its line, or the whole putt's."""

    at_m: Annotated[float, Range(0.0, 30.0, "m"), Doc("place", "from the ball; the whole putt's if left out")] | None = None
    slope_percent: Slope
    fall_deg: Fall
    sd_percent: Annotated[
        float, Range(0.0, 4.0, "%"), Doc("spread", "standard deviation of each part; assumed where it is not known")
    ] = KEPT_SD_PERCENT


@dataclass(frozen=True, kw_only=True)
class KeptPuttFields:
    """A putt whose slopes were kept, and where on the map it lay."""

    ball: Annotated[OnMap, Doc("ball", "its place on the map")]
    hole: Annotated[OnMap, Doc("hole", "its place on the map")]
    distance_m: Distance
    slopes: Annotated[tuple[KeptSlopeFields, ...], Length(1, 12), Doc("slopes", "as the putt has them")]


Side = Annotated[Literal["left", "right", "none"], Doc("break", "the side to which the ball curves")]
Way = Annotated[
    Literal["up", "down", "across"], Doc("way", "within 45 degrees of straight up or down the fall; across is the rest")
]


@dataclass(frozen=True, kw_only=True)
class WantFields:
    """The putt that is wanted."""

    distance_m: Annotated[tuple[Distance, ...], Length(2, 2), Doc("distance", "shortest and longest")]
    slope_percent: Annotated[tuple[Slope, ...], Length(2, 2), Doc("slope", "flattest and steepest")]
    break_: Side | None = None
    way: Way | None = None


@dataclass(frozen=True, kw_only=True)
class FindPuttsFields:
    """A surveyed green, the putt that is wanted on it, and the hole if there is one."""

    survey: Annotated[MapFields, Doc("survey", "the green's readings")]
    want: Annotated[WantFields, Doc("wanted", "what the putt has to be")]
    hole: Annotated[OnMap, Doc("hole", "its place on the map")] | None = None


def place(at: tuple[float, ...]) -> complex:
    """A place of the map."""
    return complex(at[0], at[1])


@lru_cache(maxsize=4)
def _walked(points: tuple[PointFields, ...], place_sd: float) -> Walked:
    readings = [
        Reading(
            complex(each.x_m, each.y_m),
            rect(slope_from_percent(each.slope_percent), radians(90 - each.fall_deg)),
            slope_from_percent(each.sd_percent),
        )
        for each in points
    ]
    return walked(readings, place_sd)
