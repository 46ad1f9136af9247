"""What may be asked about a putt: the fields, and what each takes."""

from dataclasses import dataclass, replace
from math import hypot, radians
from typing import Annotated

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range, missing, outside
from pycore.green.surface import Green, Station, Surface
from pycore.green.survey_requests import PlacedFields
from pycore.putt.chance import TOUR, Player
from pycore.putt.doubt import Doubt
from pycore.putt.putt import Putt
from pycore.quantities import Distance, Fall, Launch, Past, Slope, Stimp
from pycore.units import slope_from_percent

SD = "standard deviation"
NO_SPREAD = 1e-9  # of the roll; a thirty metre putt is off by less than a micrometre
TiltSd = Annotated[float, Range(0.0, 4.0, "%")]
LEAST_APART = 0.01  # m; two stations nearer to each other are one


@dataclass(frozen=True, kw_only=True)
class StationFields:
    """The green's tilt at one place along the line."""

    at_m: Annotated[float, Range(0.0, 30.0, "m"), Doc("place", "from the ball along the line to the hole")]
    slope_percent: Slope
    fall_deg: Fall


Stations = Annotated[tuple[StationFields, ...], Length(1, 12), Doc("stations", "slopes at places along the line, in its order")]


Survey = Annotated[PlacedFields, Doc("survey", "a green walked once, and where on it ball and hole lie")]


@dataclass(frozen=True, kw_only=True)
class ShapeFields:
    """The shape of a putt's green: one slope and fall line, or stations, or a survey."""

    distance_m: Distance | None = None
    slope_percent: Slope | None = None
    fall_deg: Fall | None = None
    stations: Stations | None = None
    survey: Survey | None = None

    @property
    def distance(self) -> float:
        """From ball to hole, m, told or on the survey's map."""
        if self.survey is not None:
            return self.survey.distance
        if self.distance_m is None:
            raise missing("distance_m", Distance)
        return self.distance_m

    def surface(self) -> Green:
        """The green's shape; refuses fields that contradict each other."""
        if self.survey is not None:
            for name in ("distance_m", "slope_percent", "fall_deg", "stations"):
                if getattr(self, name) is not None:
                    raise Refusal("bad_field", f"survey comes in place of {name}, not beside it", "survey")
            return self.survey.surface()
        if self.stations is None:
            if self.slope_percent is None or self.fall_deg is None:
                name = "slope_percent" if self.slope_percent is None else "fall_deg"
                raise Refusal("missing_field", f"{name} is missing; give slope_percent and fall_deg, or stations", name)
            return Surface(Station.measured(0.0, self.slope_percent, self.fall_deg))
        if self.slope_percent is not None or self.fall_deg is not None:
            raise Refusal("bad_field", "stations come in place of slope_percent and fall_deg, not beside them", "stations")
        least = 0.0
        for i, station in enumerate(self.stations):
            if not least <= station.at_m <= self.distance:
                limit = Range(least, self.distance, "m")
                raise outside(f"stations[{i}].at_m", station.at_m, limit, "past the station before it, and not past the hole")
            least = station.at_m + LEAST_APART
        return Surface(*(Station.measured(s.at_m, s.slope_percent, s.fall_deg) for s in self.stations))


@dataclass(frozen=True, kw_only=True)
class GreenFields(ShapeFields):
    """A putt's green: its shape and its speed."""

    stimp_ft: Stimp


@dataclass(frozen=True, kw_only=True)
class PuttFields(GreenFields):
    """A putt: where, what green, what pace."""

    past_m: Past

    def putt(self) -> Putt:
        """The putt in the engine's terms."""
        return Putt(self.distance, self.surface(), self.stimp_ft, self.past_m)


@dataclass(frozen=True, kw_only=True)
class ReadFields(PuttFields):
    """A putt, and how far its green may be off."""

    tilt_sd_percent: Annotated[TiltSd, Doc("doubt of the tilt", f"{SD} of each part, along and across")] | None = None
    stimp_sd_ft: Annotated[float, Range(0.0, 2.0, "ft"), Doc("doubt of the speed", SD)] | None = None

    @property
    def doubted(self) -> bool:
        """Whether any doubt is given."""
        return self.tilt_sd_percent is not None or self.stimp_sd_ft is not None

    def doubt(self, slope_sd: float = 0.0) -> Doubt:
        """The doubt of the green, the tilt misread by ``slope_sd`` (rise over run) where it tells no doubt of its own."""
        tilt = slope_sd if self.tilt_sd_percent is None else slope_from_percent(self.tilt_sd_percent)
        return Doubt(tilt, self.stimp_sd_ft or 0.0)


@dataclass(frozen=True, kw_only=True)
class PlayerFields:
    """A player's spread and bias; the start line is biased to the left where positive."""

    start_line_sd_deg: Annotated[float, Range(0.0, 20.0, "degrees"), Doc("start line spread", SD)]
    pace_sd_fraction: Annotated[float, Range(0.0, 0.5, "of the roll"), Doc("pace spread", SD)]
    slope_sd_percent: Annotated[float, Range(0.0, 4.0, "%"), Doc("slope spread", f"{SD} of how slopes are read")] = 0.0
    start_line_bias_deg: Annotated[float, Range(-20.0, 20.0, "degrees"), Doc("start line bias", "left is positive")] = 0.0
    pace_bias_fraction: Annotated[float, Range(-0.5, 0.5, "of the roll"), Doc("pace bias", "long is positive")] = 0.0

    def player(self) -> Player:
        """The player in the engine's terms."""
        return Player(
            radians(self.start_line_sd_deg),
            self.pace_sd_fraction if self.pace_sd_fraction > NO_SPREAD else 0.0,
            slope_from_percent(self.slope_sd_percent),
            radians(self.start_line_bias_deg),
            self.pace_bias_fraction,
        )


@dataclass(frozen=True, kw_only=True)
class WindowFields(ReadFields):
    """A putt and who strikes it; without a player, the tour preset. A doubt of the tilt stands in place of the player's, and
    so does what a survey leaves open.

    A player who is known from a record comes with the ends of each skill's interval.
    """

    player: Annotated[PlayerFields, Doc("player", "who strikes it; the tour preset if left out")] | None = None
    player_low: Annotated[PlayerFields, Doc("least", "the lower ends of the player's intervals")] | None = None
    player_high: Annotated[PlayerFields, Doc("most", "the upper ends of the player's intervals")] | None = None

    def doubt(self, slope_sd: float = 0.0) -> Doubt:
        """The doubt of the green; of one walked once, what the walk leaves open and what is told besides."""
        if self.survey is None:
            return super().doubt(slope_sd)
        told = super().doubt()
        return replace(told, tilt=hypot(told.tilt, self.survey.tilt_sd))


@dataclass(frozen=True, kw_only=True)
class PaceFields(GreenFields):
    """A putt without its pace, and who strikes it; without a player, the tour preset. What a survey leaves open stands in
    place of how the player reads slopes."""

    player: Annotated[PlayerFields, Doc("player", "who strikes it; the tour preset if left out")] | None = None

    def striker(self) -> Player:
        """Who strikes it, reading the green as surely as it is known."""
        player = self.player.player() if self.player else TOUR
        return player if self.survey is None else replace(player, slope_sd=self.survey.tilt_sd)


@dataclass(frozen=True, kw_only=True)
class RollFields(GreenFields):
    """A green and a strike."""

    launch_mps: Launch
    aim_deg: Annotated[float, Range(-180.0, 180.0, "degrees"), Doc("aim", "start line, left of the line to the hole")]


@dataclass(frozen=True, kw_only=True)
class NoFields:
    """A question without fields."""
