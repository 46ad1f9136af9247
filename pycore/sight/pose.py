"""Where the camera stood that took a picture of a putt, from two touches on it and what is known of the camera."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import asin, atan, cos, radians, sin, sqrt, tan

from pycore.errors import Refusal
from pycore.roots import zero
from pycore.sight.camera import Camera, Pixel
from pycore.sight.vectors import Vector, cross, dot, minus, times, unit

SETTLED = 1e-13  # of a unit vector; how exactly the green's upright is found
MOST_TURNS = 40  # of the search for upright; five are usual
PITCHES = [radians(-60 + 5 * i) for i in range(31)]  # from looking up to looking straight down
FIELDS = [radians(2 * 1.17**i) for i in range(28)]  # from the longest lens to the widest
USUAL_PITCH, USUAL_FIELD = radians(20), radians(65)  # of a phone held upright behind a ball
EXACT = 1e-12  # rad; how exactly pitch and field are found
CLOSED = 1e-6  # of the height in putts; farther off the height was jumped over, not met
AROUND = 0.1  # rad; a camera that is all but known is looked for so far around first

ABOVE = "a mark lies above the green's horizon, where there is no ground"

type Seen = Callable[[float], Sighting | None]


@dataclass(frozen=True)
class Picture:
    """A picture of a putt with two touches on it, and what is known of its camera.

    Parameters
    ----------
    size : width and height, px.
    ball, hole : where they were touched, px.
    length : from ball to hole, m.
    up : straight up in the green's coordinates, one long: 0, 0, 1 where the green is level.
    roll : of the camera, clockwise as its holder sees it, rad.
    height : of the lens above the green, m; None if unknown.
    pitch : of the camera, down from level, rad; None if unknown.
    field : vertical field of view, rad; None if unknown.
    middle : where the optical axis meets the picture, px.
    """

    size: tuple[float, float]
    ball: Pixel
    hole: Pixel
    length: float
    up: Vector
    roll: float
    height: float | None
    pitch: float | None
    field: float | None
    middle: Pixel

    def focal(self, field: float) -> float:
        """Focal length (px) of a lens with that vertical field of view (rad)."""
        return self.size[1] / 2 / tan(field / 2)


@dataclass(frozen=True)
class Sighting:
    """What a camera 1 m above the green would see: how far apart the touches are, the ball and the green's axes, all in
    the camera's coordinates."""

    separation: float
    ball: Vector
    x: Vector
    y: Vector
    z: Vector


def camera(picture: Picture, near: Camera | None = None) -> Camera:
    """The camera that took ``picture``; two of its height, pitch and field have to be known.

    Where all three are, pitch is left out (``doubt.likeliest`` weighs it). Two lenses may see the same from a camera held
    level; the more usual one is taken. ``near`` is a like camera.

    Raises
    ------
    Refusal : ``same_place``, ``above_horizon``, ``hole_nearer`` or ``no_camera``.
    """
    height, pitch, field = picture.height, picture.pitch, picture.field
    if picture.ball == picture.hole:
        raise Refusal("same_place", "ball and hole are marked at the same place")
    if height is not None and field is not None:
        lens, usual = field, pitch_of(picture, near) if near else USUAL_PITCH
        pitch = _sought(picture, height, PITCHES, usual, lambda turn: sighting(picture, turn, lens))
    elif height is not None and pitch is not None:
        turn, usual = pitch, field_of(picture, near) if near else USUAL_FIELD
        field = _sought(picture, height, FIELDS, usual, lambda lens: sighting(picture, turn, lens))
    if pitch is None or field is None:
        raise ValueError("two of height, pitch and field have to be known")
    seen = sighting(picture, pitch, field)
    if seen is None:
        raise Refusal("above_horizon", ABOVE)
    if seen.x[2] <= 0:
        raise Refusal("hole_nearer", "the hole is nearer to the camera than the ball: stand behind the ball")
    scale = picture.length / seen.separation
    place = times(-scale, (dot(seen.ball, seen.x), dot(seen.ball, seen.y), dot(seen.ball, seen.z)))
    right, down, forward = zip(seen.x, seen.y, seen.z, strict=True)
    return Camera(picture.focal(field), picture.middle, place, right, down, forward)


def sighting(picture: Picture, pitch: float, field: float) -> Sighting | None:
    """What the camera sees with that pitch and field (rad); None where a touch is above the green's horizon, or both
    are one."""
    focal = picture.focal(field)
    ball_way, hole_way = _way(picture, picture.ball, focal), _way(picture, picture.hole, focal)
    upright = (-sin(picture.roll) * cos(pitch), -cos(picture.roll) * cos(pitch), -sin(pitch))
    lean_x, lean_y, lean_z = picture.up
    # to begin with, the putt runs as the hole is looked at: a hole uphill may lie over the level horizon
    level = minus(hole_way, times(dot(hole_way, upright), upright))
    x = times(1 / sqrt(dot(level, level)), level) if dot(level, level) else (0.0, 0.0, 0.0)
    z = unit(minus(minus(upright, times(lean_x, x)), times(lean_y, cross(upright, x))))
    for _ in range(MOST_TURNS):
        to_ball, to_hole = -dot(z, ball_way), -dot(z, hole_way)
        if to_ball <= 0 or to_hole <= 0:
            return None
        ball = times(1 / to_ball, ball_way)
        along = minus(times(1 / to_hole, hole_way), ball)
        separation = sqrt(dot(along, along))
        if not separation:
            return None
        x = times(1 / separation, along)
        y = cross(z, x)
        # the camera knows straight up; how the green leans from it shows once the putt's direction does
        leaning = minus(minus(upright, times(lean_x, x)), times(lean_y, y))
        before, z = z, unit(times(1 / lean_z, leaning))
        change = minus(z, before)
        if dot(change, change) < SETTLED**2:
            break
    return Sighting(separation, ball, x, y, z)


def pitch_of(picture: Picture, found: Camera) -> float:
    """How far down from level the camera looks, rad."""
    return -asin(max(-1.0, min(1.0, dot(picture.up, found.forward))))


def field_of(picture: Picture, found: Camera) -> float:
    """Its vertical field of view, rad."""
    return 2 * atan(picture.size[1] / 2 / found.focal)


def _sought(picture: Picture, height: float, places: Sequence[float], usual: float, seen: Seen) -> float:
    """The pitch or field at which the touches are as far apart as ball and hole are: of several the one most ``usual``."""
    wanted = height / picture.length

    def closer(place: float) -> float:
        """Positive where the touches would be too close together; one above the horizon is endlessly far."""
        found = seen(place)
        return (1 / found.separation if found else 0.0) - wanted

    near = [place for place in (usual - AROUND, usual + AROUND) if places[0] < place < places[-1]]
    for some in (near, places):
        values = [closer(place) for place in some]
        zeros = [
            found
            for low, high, at_low, at_high in zip(some, some[1:], values, values[1:], strict=False)
            if (at_low < 0) != (at_high < 0) and abs(closer(found := zero(closer, low, high, at_low, at_high, EXACT))) < CLOSED
        ]
        if zeros:
            return min(zeros, key=lambda found: abs(found - usual))
    raise Refusal("no_camera", "from that height no camera has ball and hole at these two marks that far apart")


def _way(picture: Picture, touch: Pixel, focal: float) -> Vector:
    u, v = picture.middle
    return (touch[0] - u) / focal, (touch[1] - v) / focal, 1.0
