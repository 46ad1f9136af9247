"""What may be asked about the line where the eye has it: the fields, and what each takes."""

from dataclasses import dataclass
from math import radians
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Length, Range
from pycore.green.surface import Station, Surface
from pycore.putt.requests import Distance, Fall, PuttFields, Slope, Stimp
from pycore.sight.pose import Picture
from pycore.sight.vectors import Vector, cross, unit

Pixels = Annotated[float, Range(1.0, 20_000.0, "px")]
Touch = Annotated[tuple[Annotated[float, Range(-20_000.0, 40_000.0, "px")], ...], Length(2, 2)]
OnGreen = Annotated[tuple[Annotated[float, Range(-60.0, 60.0, "m")], ...], Length(2, 2)]
Eye = Annotated[float, Range(0.2, 3.0, "m")]


@dataclass(frozen=True, kw_only=True)
class CameraFields:
    """A picture of a putt with ball and hole touched on it, what is known of its camera, and what to draw into it.

    Pitch is down from level and roll clockwise as the camera's holder sees it; slope and fall are the green's tilt.
    """

    width_px: Pixels
    height_px: Pixels
    ball_px: Touch
    hole_px: Touch
    distance_m: Distance
    points_m: Annotated[tuple[OnGreen, ...], Length(1, 1000)]
    eye_height_m: Eye | None = None
    pitch_deg: Annotated[float, Range(-60.0, 90.0, "degrees")] | None = None
    fov_deg: Annotated[float, Range(2.0, 150.0, "degrees")] | None = None
    roll_deg: Annotated[float, Range(-180.0, 180.0, "degrees")] = 0.0
    slope_percent: Slope = 0.0
    fall_deg: Fall = 0.0

    def picture(self) -> Picture:
        """The picture in the engine's terms; refuses where too little is known of the camera."""
        known = {"eye_height_m": self.eye_height_m, "pitch_deg": self.pitch_deg, "fov_deg": self.fov_deg}
        missing = [name for name, value in known.items() if value is None]
        if len(missing) > 1:
            raise Refusal("missing_field", f"give one of {' and '.join(missing)} too: two of {', '.join(known)}", missing[0])
        return Picture(
            (self.width_px, self.height_px),
            (self.ball_px[0], self.ball_px[1]),
            (self.hole_px[0], self.hole_px[1]),
            self.distance_m,
            self._up(),
            radians(self.roll_deg),
            self.eye_height_m,
            None if self.pitch_deg is None else radians(self.pitch_deg),
            None if self.fov_deg is None else radians(self.fov_deg),
        )

    def _up(self) -> Vector:
        """Straight up, along the green's own axes."""
        gx, gy = Surface(Station.measured(0.0, self.slope_percent, self.fall_deg)).downhill(0.0, 0.0)
        along, out = unit((1.0, 0.0, -gx)), unit((gx, gy, 1.0))
        return along[2], cross(out, along)[2], out[2]


@dataclass(frozen=True, kw_only=True)
class ViewFields(PuttFields):
    """A putt, from where it is looked at, and how large the picture is."""

    stand: Literal["ball", "low", "hole"]
    eye_height_m: Eye
    back_m: Annotated[float, Range(0.3, 10.0, "m")]
    width_px: Pixels
    height_px: Pixels


@dataclass(frozen=True, kw_only=True)
class ChalkFields(PuttFields):
    """A putt, and how far apart the dots are."""

    every_m: Annotated[float, Range(0.1, 2.0, "m")]


@dataclass(frozen=True, kw_only=True)
class TrialFields:
    """How far a ball rolled on the level that was let go at a height of the ramp."""

    height_m: Annotated[float, Range(0.02, 1.5, "m")]
    rolled_m: Annotated[float, Range(0.1, 30.0, "m")]


@dataclass(frozen=True, kw_only=True)
class RampFields:
    """The speed that the ball has to leave with, and what the ramp was tried with; without a trial it loses nothing."""

    launch_mps: Annotated[float, Range(0.05, 15.0, "m/s")]
    stimp_ft: Stimp
    trial: TrialFields | None = None
