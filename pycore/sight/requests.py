"""What may be asked about the line where the eye has it: the fields, and what each takes."""

from dataclasses import dataclass, replace
from math import radians
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range
from pycore.green.surface import Station, Surface
from pycore.putt.requests import PuttFields, ShapeFields
from pycore.quantities import Launch, Stimp
from pycore.sight.attitude import Attitude, moved
from pycore.sight.camera import Pixel
from pycore.sight.ground import Ground
from pycore.sight.pose import Picture

NARROWEST, WIDEST = 2.0, 150.0  # degrees; vertical fields of view that lenses have
SHORTEST_ROLL = 0.1  # m; less tells nothing of a ramp
TURN = Range(-360.0, 360.0, "degrees")
Width = Annotated[float, Range(1.0, 20_000.0, "px"), Doc("width", "of the picture")]
Height = Annotated[float, Range(1.0, 20_000.0, "px"), Doc("height", "of the picture")]
Touch = Annotated[
    tuple[Annotated[float, Range(-20_000.0, 40_000.0, "px")], ...],
    Length(2, 2),
    Doc("touch", "right of the picture's left edge, down from its top"),
]
OnGreen = Annotated[tuple[Annotated[float, Range(-60.0, 60.0, "m")], ...], Length(2, 2), Doc("place", "x, y on the green")]
Eye = Annotated[float, Range(0.2, 3.0, "m"), Doc("eye height", "of the lens or the eye over the green")]
FieldOfView = Annotated[float, Range(NARROWEST, WIDEST, "degrees"), Doc("field of view", "of the lens, from top to bottom")]


@dataclass(frozen=True, kw_only=True)
class AttitudeFields:
    """How the phone was held, as its browser tells it, and how far the screen had turned its picture."""

    alpha_deg: Annotated[float, TURN, Doc("alpha", "about the phone's z")] = 0.0
    beta_deg: Annotated[float, TURN, Doc("beta", "about the phone's x")]
    gamma_deg: Annotated[float, TURN, Doc("gamma", "about the phone's y")]
    screen_deg: Annotated[float, TURN, Doc("screen", "how far it had turned its picture")] = 0.0

    def attitude(self) -> Attitude:
        """The same in the engine's terms."""
        return Attitude(radians(self.alpha_deg), radians(self.beta_deg), radians(self.gamma_deg), radians(self.screen_deg))


AttitudeAsTold = Annotated[AttitudeFields, Doc("attitude", "how the phone was held")]


@dataclass(frozen=True, kw_only=True)
class PictureFields(ShapeFields):
    """A picture of a putt and what to draw into it; the green is level where no slope is told."""

    width_px: Width
    height_px: Height
    points_m: Annotated[tuple[OnGreen, ...], Length(1, 1000), Doc("points", "places on the green to find in the picture")]

    def ground(self) -> Ground:
        """The green in the picture."""
        told = (
            self.survey is not None or self.stations is not None or self.slope_percent is not None or self.fall_deg is not None
        )
        return Ground(self.surface() if told else Surface(Station(0.0, 0.0, 0.0)), self.distance)


@dataclass(frozen=True, kw_only=True)
class CameraFields(PictureFields):
    """A picture with ball and hole touched on it, and what is known of its camera.

    Pitch is down from level and roll clockwise as the camera's holder sees it; how the phone was held tells both. The middle
    is where the lens looked: a picture that was cropped has it elsewhere than in its own middle.
    """

    ball_px: Annotated[Touch, Doc("ball", "where it was touched")]
    hole_px: Annotated[Touch, Doc("hole", "where it was touched")]
    eye_height_m: Eye | None = None
    pitch_deg: Annotated[float, Range(-60.0, 90.0, "degrees"), Doc("pitch", "of the camera, down from level")] | None = None
    fov_deg: FieldOfView | None = None
    roll_deg: Annotated[float, Range(-180.0, 180.0, "degrees"), Doc("roll", "of the camera, clockwise")] | None = None
    held: AttitudeAsTold | None = None
    middle_px: Annotated[Touch, Doc("middle", "where the lens looked")] | None = None

    def picture(self) -> Picture:
        """The picture in the engine's terms; refuses where too little is known of the camera."""
        attitude = None if self.held is None else self.held.attitude()
        pitch, roll = (attitude.pitch, attitude.roll) if attitude else (None, 0.0)
        pitch = pitch if self.pitch_deg is None else radians(self.pitch_deg)
        roll = roll if self.roll_deg is None else radians(self.roll_deg)
        known = {"eye_height_m": self.eye_height_m, "pitch_deg": pitch, "fov_deg": self.fov_deg}
        missing = [name for name, value in known.items() if value is None]
        if len(missing) > 1:
            raise Refusal("missing_field", f"give one of {' and '.join(missing)} too: two of {', '.join(known)}", missing[0])
        return Picture(
            (self.width_px, self.height_px),
            pixel(self.ball_px),
            pixel(self.hole_px),
            self.distance,
            self.ground().up,
            roll,
            self.eye_height_m,
            pitch,
            None if self.fov_deg is None else radians(self.fov_deg),
            (self.width_px / 2, self.height_px / 2) if self.middle_px is None else pixel(self.middle_px),
        )


@dataclass(frozen=True, kw_only=True)
class MarkFields:
    """Where something was touched on the moving picture, and how the phone was held at that moment."""

    at_px: Touch
    held: AttitudeAsTold


@dataclass(frozen=True, kw_only=True)
class MarkedFields(PictureFields):
    """The moving picture with ball and hole touched on it."""

    ball: Annotated[MarkFields, Doc("ball", "where it was touched")]
    hole: Annotated[MarkFields, Doc("hole", "where it was touched")]
    eye_height_m: Eye
    fov_deg: FieldOfView

    def picture(self) -> Picture:
        """The picture as the phone was held when the hole was touched."""
        then, field = self.hole.held.attitude(), radians(self.fov_deg)
        size, middle = (self.width_px, self.height_px), (self.width_px / 2, self.height_px / 2)
        hole, up = pixel(self.hole.at_px), self.ground().up
        known = Picture(size, hole, hole, self.distance, up, then.roll, self.eye_height_m, then.pitch, field, middle)
        ball = moved(pixel(self.ball.at_px), known.focal(field), middle, self.ball.held.attitude(), then)
        if ball is None:
            raise Refusal("no_camera", "ball and hole lie so far apart that no picture has both: stand behind the ball", "hole")
        return replace(known, ball=ball)


@dataclass(frozen=True, kw_only=True)
class FollowFields(MarkedFields):
    """The same, and how the phone is held now."""

    now: AttitudeAsTold


@dataclass(frozen=True, kw_only=True)
class LensFields:
    """A picture with both ends touched of something of known length, square to the lens and so far off."""

    width_px: Width
    height_px: Height
    ends_px: Annotated[tuple[Touch, ...], Length(2, 2), Doc("ends", "of the known length, where they were touched")]
    length_m: Annotated[float, Range(0.1, 5.0, "m"), Doc("length", "from end to end")]
    distance_m: Annotated[float, Range(0.2, 20.0, "m"), Doc("distance", "from the lens to it")]


@dataclass(frozen=True, kw_only=True)
class ViewFields(PuttFields):
    """A putt, from where it is looked at, and how large the picture is."""

    stand: Annotated[Literal["ball", "low", "hole"], Doc("stand", "behind the ball, on the low side, or behind the hole")]
    eye_height_m: Eye
    back_m: Annotated[float, Range(0.3, 10.0, "m"), Doc("back", "from the eye to what it stands behind")]
    width_px: Width
    height_px: Height
    square_m: Annotated[float, Range(0.2, 1.0, "m"), Doc("square", "side of the least square of the grid")] = 0.5


@dataclass(frozen=True, kw_only=True)
class ChalkFields(PuttFields):
    """A putt, and how far apart the dots are."""

    every_m: Annotated[float, Range(0.1, 2.0, "m"), Doc("every", "from dot to dot")]


@dataclass(frozen=True, kw_only=True)
class RampTrialFields:
    """How far a ball rolled on the level that was let go at a height of the ramp."""

    height_m: Annotated[float, Range(0.02, 1.5, "m"), Doc("height", "on the ramp, where the ball was let go")]
    rolled_m: Annotated[float, Range(SHORTEST_ROLL, 30.0, "m"), Doc("rolled", "how far it then rolled on the level")]


@dataclass(frozen=True, kw_only=True)
class RampFields:
    """The speed that the ball has to leave with, and what the ramp was tried with; without a trial it loses nothing."""

    launch_mps: Launch
    stimp_ft: Stimp
    trial: Annotated[RampTrialFields, Doc("trial")] | None = None


def pixel(touch: tuple[float, ...]) -> Pixel:
    """A touch as a place in the picture."""
    return touch[0], touch[1]
