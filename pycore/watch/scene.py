"""What a film hangs on: the camera, the green and the strike as a list of numbers, each with what is believed beforehand.

The camera is a pinhole with a little barrel or pincushion (Brown's k1), which exposes its rows one after another. The green's
axes are those of the plane through ball and hole; ``pycore.sight.ground`` has what the green rises over it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log, radians
from typing import NamedTuple

from pycore.constants import BALL_RADIUS
from pycore.green.speed import deceleration
from pycore.putt.putt import Putt
from pycore.sight.camera import NEAR, Camera, Pixel
from pycore.sight.ground import Ground
from pycore.watch.ball import Ball, Place, Way

# The numbers, by their place in the list
YAW, PITCH, ROLL, FOCAL, BACK, ASIDE, HEIGHT, BARREL, SHUTTER, DISTANCE, WIDTH = range(11)
AIM, LAUNCH, MOMENT, DRAG, ALONG, ACROSS, SLIP = range(11, 18)
OF_WAY = (AIM, LAUNCH, DRAG, ALONG, ACROSS)  # what the rolling ball's way hangs on
OF_TIME = (*OF_WAY, MOMENT, SLIP, SHUTTER)  # what the ball's place in a frame hangs on
NUMBERS = 18
# Of each: the change that shows what hangs on it; radians, m, s, m/s, and shares
STEPS = (1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-5, 1e-4, 1e-4, 1e-5, 1e-4, 1e-5, 1e-4, 1e-4, 1e-4, 1e-5, 1e-5, 1e-3)

# Standard deviations of what is told, where the question does not say; assumed
PITCH_SD = radians(0.6)  # a phone that stands still, its sensor averaged
ROLL_SD = radians(0.6)
FOCAL_SD = 0.03  # of the focal length: a lens measured once
HEIGHT_SD = 0.03  # m: a tape from the green to the lens
DISTANCE_SD = 0.004  # of the distance: a tape, laid with care
BARREL_SD = 0.03  # k1 of a phone's corrected picture
WIDTH_SD = 0.06  # of the ball's width: where its edge is taken to be
SHUTTER_S, SHUTTER_SD = 0.012, 0.01  # s from a picture's top row to its lowest
SLIP_USUAL, SLIP_SD = 0.5, 0.35  # from rolled by hand to struck without spin
AIM_SD = 0.35  # rad
LAUNCH_SD = 1.0  # of its logarithm
LOOSE = 10.0  # m and s; nothing is believed of it
WILD_SD = 1e-6  # of what is held fast


class Frame(NamedTuple):
    """A moment (s) of the film, where the ball's centre was seen (px), and how wide it was (px) where that is known."""

    t: float
    u: float
    v: float
    width: float | None


class Seen(NamedTuple):
    """Where a place is seen (px), and how wide a ball is there (px)."""

    u: float
    v: float
    width: float


@dataclass(frozen=True)
class Known:
    """What is known before the film is looked at; ``putt`` is the green as it was read, ``distance`` None if unknown.

    ``ball`` and ``hole`` are where ball and hole's centre meet the green (px), ``mark_sd`` how far each may be off,
    ``distance_sd`` a share of the distance.
    """

    size: Pixel
    focal: float
    pitch: float
    roll: float
    height: float | None
    ball: Pixel
    hole: Pixel | None
    mark_sd: float
    ball_sd: float
    distance: float | None
    distance_sd: float
    putt: Putt
    tilt_sd: float
    drag_sd: float

    @property
    def middle(self) -> Pixel:
        """Where the lens looks, px."""
        return self.size[0] / 2, self.size[1] / 2


class Scene:
    """A film's frames and what is known of it, to be predicted from a list of numbers."""

    def __init__(self, known: Known, frames: Sequence[Frame]) -> None:
        self.known = known
        self.frames = frames
        self.rows = [frame.v / known.size[1] for frame in frames]
        self.ground = Ground(known.putt.surface, known.putt.distance)

    def putt(self, numbers: Sequence[float]) -> Putt:
        """The putt on the green that the numbers make."""
        read = self.known.putt
        surface = read.surface.tilted(complex(numbers[ALONG], numbers[ACROSS]))
        stimp_ft = deceleration(1.0) / exp(numbers[DRAG])
        return Putt(exp(numbers[DISTANCE]), surface, stimp_ft, 0.0, COARSE)

    def camera(self, numbers: Sequence[float]) -> Camera:
        """The camera, without what its lens bends."""
        n = numbers
        tilted = Ground(self.known.putt.surface.tilted(complex(n[ALONG], n[ACROSS])), self.known.putt.distance)
        place = (n[BACK], n[ASIDE], n[HEIGHT])
        return Camera.held(exp(n[FOCAL]), self.known.middle, place, tilted.up, n[YAW], n[PITCH], n[ROLL])

    def way(self, numbers: Sequence[float]) -> Way:
        """The rolling ball's way."""
        return Way(self.putt(numbers), exp(numbers[LAUNCH]), numbers[AIM])

    def ball(self, numbers: Sequence[float], way: Way) -> Ball:
        """The struck ball on its way."""
        return Ball(way, numbers[MOMENT], numbers[SLIP])

    def places(self, numbers: Sequence[float], way: Way) -> list[Place]:
        """Where the ball is in each frame, when its row is exposed."""
        ball, shutter = self.ball(numbers, way), numbers[SHUTTER]
        return [way.at(ball.since(frame.t + shutter * row)) for frame, row in zip(self.frames, self.rows, strict=True)]

    def rises(self, places: Sequence[Place]) -> list[float]:
        """How high (m) over the plane the ball's centre is at each place."""
        if self.known.putt.surface.is_plane:
            return [BALL_RADIUS] * len(places)
        return [BALL_RADIUS + self.ground.rise(x, y) for x, y in places]

    def seen(self, numbers: Sequence[float], places: Sequence[Place], heights: Sequence[float]) -> list[Seen]:
        """Where places (m) so high over the plane (m) are seen."""
        camera, bend, wide = self.camera(numbers), numbers[BARREL], 2 * BALL_RADIUS * exp(numbers[WIDTH])
        focal, (cu, cv), (px, py, pz) = camera.focal, camera.middle, camera.place
        (rx, ry, rz), (dx, dy, dz), (fx, fy, fz) = camera.right, camera.down, camera.forward
        found = []
        for (x, y), z in zip(places, heights, strict=True):
            a, b, c = x - px, y - py, z - pz
            near = 1 / max(NEAR, fx * a + fy * b + fz * c)
            m, n = (rx * a + ry * b + rz * c) * near, (dx * a + dy * b + dz * c) * near
            scale = focal * (1 + bend * (m * m + n * n))
            found.append(Seen(cu + scale * m, cv + scale * n, focal * wide * near))
        return found

    def marks(self, numbers: Sequence[float]) -> list[Seen]:
        """Where ball and hole meet the green, as far as they are marked."""
        places = [(0.0, 0.0), (exp(numbers[DISTANCE]), 0.0)]
        return self.seen(numbers, places[: 2 if self.known.hole else 1], [0.0, 0.0][: 2 if self.known.hole else 1])

    def beliefs(self, start: Sequence[float]) -> list[tuple[float, float]]:
        """Mean and standard deviation of each number before the film is looked at; where nothing is known, about ``start``."""
        known = self.known
        height = (start[HEIGHT], 0.5 * start[HEIGHT]) if known.height is None else (known.height, HEIGHT_SD)
        distance = (start[DISTANCE], 0.5) if known.distance is None else (log(known.distance), known.distance_sd)
        free = known.hole is not None
        return [
            (start[YAW], 0.5),
            (known.pitch, PITCH_SD),
            (known.roll, ROLL_SD),
            (log(known.focal), FOCAL_SD),
            (start[BACK], LOOSE),
            (start[ASIDE], LOOSE),
            height,
            (0.0, BARREL_SD),
            (SHUTTER_S, SHUTTER_SD),
            distance if free else (start[DISTANCE], WILD_SD),
            (0.0, WIDTH_SD),
            (0.0, AIM_SD if free else WILD_SD),
            (start[LAUNCH], LAUNCH_SD),
            (start[MOMENT], LOOSE),
            (log(known.putt.drag), known.drag_sd),
            (0.0, known.tilt_sd),
            (0.0, known.tilt_sd),
            (SLIP_USUAL, SLIP_SD),
        ]


COARSE = 1e-4  # m and m/s a step, of a ball on a bent green: well under what a picture shows
