"""What may be asked about a film of a putt: the fields, and what each takes."""

from dataclasses import dataclass
from math import hypot, radians, tan
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range, missing, outside
from pycore.green.surface import Green, Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.requests import SD, ShapeFields
from pycore.quantities import Stimp
from pycore.sight.camera import Pixel
from pycore.sight.requests import AttitudeAsTold, FieldOfView, Height, OnGreen, Touch, Width, pixel
from pycore.units import slope_from_percent
from pycore.watch.scene import DISTANCE_SD, Frame, Known

MOST_FRAMES = 5000  # 20 s at 240 a second
MOST_STRIKES = 500
PIXELS = Range(-20_000.0, 40_000.0, "px")
WIDTHS = Range(0.0, 4000.0, "px")
MARK_SD = 0.8 / 720  # of the picture's shorter side: a mark set under the magnifier, each way; assumed
FOUND_SD = 40.0 / 720  # of a ball that is not marked: its first frames tell where it lay
USUAL_STIMP, USUAL_STIMP_SD = 10.0, 2.5  # ft; of a green of which nothing is told; common practice
READ_STIMP_SD, READ_TILT_SD = 1.0, 0.005  # ft and rise over run; of a green as it is read; assumed
USUAL_TILT_SD = 0.02  # of a green of which nothing is told
USUAL_DISTANCE = 3.0  # m

Lens = Annotated[float, Range(0.03, 3.0, "m"), Doc("lens height", "over the green under the phone")]
Seen = Annotated[
    tuple[Annotated[float, Range(-20_000.0, 1e10)] | None, ...],
    Length(4, 4),
    Doc("frame", "t_s, u_px and v_px of the ball's centre, its width_px or null"),
]


@dataclass(frozen=True, kw_only=True)
class WatchedFields(ShapeFields):
    """Where a ball was seen in a film of a putt, and what is known of camera, marks and green.

    Pitch and roll are told, or how the phone was held. Without the hole there is no line, without its distance the lens's
    height or the ball's width is the ruler. The green's shape may be left out, and then is taken for level, more or less.
    The words tell the start from the line meant, where there is one.
    """

    frames: Annotated[tuple[Seen, ...], Length(1, MOST_FRAMES), Doc("frames", "in the order of their times")]
    width_px: Width
    height_px: Height
    fov_deg: FieldOfView
    held: AttitudeAsTold | None = None
    pitch_deg: Annotated[float, Range(-60.0, 90.0, "degrees"), Doc("pitch", "of the camera, down from level")] | None = None
    roll_deg: Annotated[float, Range(-180.0, 180.0, "degrees"), Doc("roll", "of the camera, clockwise")] | None = None
    eye_height_m: Lens | None = None
    ball_px: Annotated[Touch, Doc("ball", "where it meets the green")] | None = None
    hole_px: Annotated[Touch, Doc("hole", "its centre, where it meets the green")] | None = None
    distance_sd_m: (
        Annotated[float, Range(0.0, 3.0, "m"), Doc("doubt of the distance", f"{SD}; a tape's if left out")] | None
    ) = None
    tilt_sd_percent: (
        Annotated[float, Range(0.0, 4.0, "%"), Doc("doubt of the tilt", f"{SD} of each part, along and across")] | None
    ) = None
    stimp_ft: Stimp | None = None
    stimp_sd_ft: Annotated[float, Range(0.0, 3.0, "ft"), Doc("doubt of the speed", SD)] | None = None
    points_m: Annotated[tuple[OnGreen, ...], Length(0, 1000), Doc("points", "places on the green to find in the picture")] = ()
    aim_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("aim", "start line meant, left of the hole")] | None = None
    unit: Annotated[Literal["ft", "m"], Doc("unit", "of the words")] = "ft"

    @property
    def told_tilt(self) -> bool:
        """Whether the green's shape is told."""
        return any(each is not None for each in (self.survey, self.stations, self.slope_percent, self.fall_deg))

    def seen(self) -> list[Frame]:
        """The frames, times counted from the first; refuses what is no frame."""
        frames: list[Frame] = []
        for i, (t, u, v, width) in enumerate(self.frames):
            if t is None or u is None or v is None:
                field = f"frames[{i}]"
                raise Refusal("bad_field", f"{field} has null for a time or a place; it takes numbers: leave it out", field)
            for value, limit, what in ((u, PIXELS, 1), (v, PIXELS, 2), (width, WIDTHS, 3)):
                if value is not None and not limit.low <= value <= limit.high:
                    raise outside(f"frames[{i}][{what}]", value, limit, "pixels of the picture")
            frames.append(Frame(t, u, v, width))
            if i and t <= frames[-2].t:
                field = f"frames[{i}][0]"
                raise Refusal("bad_field", f"{field} is {t:g}; times rise from frame to frame", field, t)
        first = frames[0].t
        return [frame._replace(t=frame.t - first) for frame in frames]

    def known(self) -> Known:
        """What is known of the scene; refuses where too little is."""
        attitude = None if self.held is None else self.held.attitude()
        if attitude is None and self.pitch_deg is None:
            raise missing("pitch_deg", Annotated[float, Range(-60.0, 90.0, "degrees")])
        pitch = radians(self.pitch_deg) if self.pitch_deg is not None else attitude.pitch if attitude else 0.0
        roll = radians(self.roll_deg) if self.roll_deg is not None else attitude.roll if attitude else 0.0
        size = self.width_px, self.height_px
        distance = self.survey.distance if self.survey is not None else self.distance_m
        stimp_ft = USUAL_STIMP if self.stimp_ft is None else self.stimp_ft
        stimp_sd = self.stimp_sd_ft
        if stimp_sd is None:
            stimp_sd = USUAL_STIMP_SD if self.stimp_ft is None else READ_STIMP_SD
        tilt_sd = USUAL_TILT_SD
        if self.told_tilt:
            tilt_sd = READ_TILT_SD if self.tilt_sd_percent is None else slope_from_percent(self.tilt_sd_percent)
        first = self.seen()[0]
        short = min(size)
        return Known(
            size,
            self.height_px / 2 / tan(radians(self.fov_deg) / 2),
            pitch,
            roll,
            self.eye_height_m,
            (first.u, first.v) if self.ball_px is None else pixel(self.ball_px),
            None if self.hole_px is None else pixel(self.hole_px),
            MARK_SD * short,
            (FOUND_SD if self.ball_px is None else MARK_SD) * short,
            distance,
            hypot(DISTANCE_SD, (self.distance_sd_m or 0.0) / (distance or USUAL_DISTANCE)),
            Putt(distance or USUAL_DISTANCE, self._shape(), stimp_ft),
            hypot(tilt_sd, LEAST_TILT_SD),
            hypot(stimp_sd / stimp_ft, LEAST_DRAG_SD),
        )

    def _shape(self) -> Green:
        if not self.told_tilt:
            return Surface(Station(0.0, 0.0, 0.0))
        return self.surface()

    def places(self) -> list[Pixel]:
        """Places on the green to find in the picture."""
        return [(point[0], point[1]) for point in self.points_m]


@dataclass(frozen=True, kw_only=True)
class SeenStrike:
    """A strike as ``watched`` tells it, and what was meant; null where it was not seen."""

    start_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("start", "left of the hole")] | None = None
    start_sd_deg: Annotated[float, Range(0.0, 20.0, "degrees"), Doc("doubt of the start", SD)] | None = None
    launch_mps: Annotated[float, Range(0.05, 20.0, "m/s"), Doc("launch")] | None = None
    launch_sd_mps: Annotated[float, Range(0.0, 5.0, "m/s"), Doc("doubt of the launch", SD)] | None = None
    aim_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("aim", "start line meant, left of the hole")]
    meant_mps: Annotated[float, Range(0.05, 20.0, "m/s"), Doc("launch meant")]


@dataclass(frozen=True, kw_only=True)
class BlockFields:
    """The watched strikes of one block of practice."""

    strikes: Annotated[tuple[SeenStrike, ...], Length(0, MOST_STRIKES), Doc("strikes")]


LEAST_TILT_SD, LEAST_DRAG_SD = 0.0005, 0.005  # of greens that are told as if they were known exactly
