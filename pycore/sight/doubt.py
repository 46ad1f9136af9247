"""What was told and touched may be off: which camera is likeliest then, and how far off a line in its picture may be."""

from collections.abc import Sequence
from dataclasses import replace
from math import inf, radians, sqrt

from pycore.errors import Refusal
from pycore.sight.camera import Camera, Pixel
from pycore.sight.pose import ABOVE, Picture, camera, sighting
from pycore.sight.vectors import Vector

# Standard deviations
TOUCH = 5.0  # px; of a finger, each way
STATURE = 0.1  # m; of an eye height
TURN = radians(1.0)  # of a pitch that a phone tells

WITHIN = 2.0  # deviations; of pictures as badly known as that, 19 in 20 lie within (tests/pycore/sight/test_doubt.py)
WILD = 3.0  # deviations; what lies farther apart was not measured badly: something told is wrong
LOOKS = 20  # points of a line at which its error is looked at


def likeliest(picture: Picture, near: Camera | None = None, share: float | None = None) -> Camera:
    """The camera that took ``picture``, its touches taken as they are. ``near`` is a like camera.

    The touches make a height of the told pitch; that height has its ``share`` beside the one told, by default its ``weight``.

    Raises
    ------
    Refusal : as ``camera`` does.
    """
    by_pitch = _height(picture)
    if by_pitch is None and picture.pitch is not None and picture.field is not None:
        steepest = replace(picture, pitch=picture.pitch + WILD * TURN)  # that a phone may have been off
        if _height(steepest) is None:
            raise Refusal("above_horizon", ABOVE)
    if picture.height is not None and by_pitch is not None:
        share = weight(picture) if share is None else share
        picture = replace(picture, height=picture.height + share * (by_pitch - picture.height), pitch=None)
    return camera(picture, near)


def weight(picture: Picture) -> float:
    """Of the height that the told pitch makes, beside the one told: the surer, the more, and both together weigh 1.

    0 where not all is told, or where they lie so far apart that they cannot both be true.
    """
    by_pitch = _height(picture)
    if picture.height is None or by_pitch is None or picture.pitch is None:
        return 0.0
    others = [_height(other) for other in (replace(picture, pitch=picture.pitch + TURN), *_touched(picture))]
    off = sum(inf if other is None else (other - by_pitch) ** 2 for other in others)
    variance, difference = STATURE**2 + off, by_pitch - picture.height
    return STATURE**2 / variance if difference * difference <= WILD**2 * variance else 0.0


def error(picture: Picture, found: Camera, points: Sequence[Vector]) -> float | None:
    """How far (px) a line through ``points`` may be off in 19 pictures of 20.

    Errors that have nothing to do with each other add in squares. None where a deviation leaves no camera, or one that has
    a point behind it, or where no point is in front of the camera.
    """
    share = weight(picture)
    looked = [point for point in points[:: max(1, len(points) // LOOKS)] if found.pixel(point)]
    if not looked:
        return None
    ways = [[moved] for moved in _touched(picture)]
    if picture.height is not None:
        ways.append([replace(picture, height=picture.height + by) for by in (STATURE, -STATURE)])
    if picture.pitch is not None:
        ways.append([replace(picture, pitch=picture.pitch + by) for by in (TURN, -TURN)])
    try:
        shifts = [[_shifts(found, likeliest(other, found, share), looked) for other in others] for others in ways]
    except Refusal:
        return None
    worst = [[max(at) for at in zip(*each, strict=True)] for each in shifts]
    off = WITHIN * max(sqrt(sum(each * each for each in at)) for at in zip(*worst, strict=True))
    return off if off < inf else None


def _height(picture: Picture) -> float | None:
    """How high over the green the camera is by its pitch and field; None where a touch is above the horizon."""
    seen = sighting(picture, picture.pitch, picture.field) if picture.pitch is not None and picture.field is not None else None
    return picture.length / seen.separation if seen else None


def _touched(picture: Picture) -> list[Picture]:
    """The picture with one touch off, each way."""
    offs = (TOUCH, 0.0), (0.0, TOUCH)
    return [
        *(replace(picture, ball=_off(picture.ball, by)) for by in offs),
        *(replace(picture, hole=_off(picture.hole, by)) for by in offs),
    ]


def _off(touch: Pixel, by: Pixel) -> Pixel:
    return touch[0] + by[0], touch[1] + by[1]


def _shifts(found: Camera, other: Camera, points: Sequence[Vector]) -> list[float]:
    """How far (px) the other camera has each point from where this one has it; endlessly, where it has it not at all."""
    pixels = [(found.pixel(point), other.pixel(point)) for point in points]
    return [sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2) if a and b else inf for a, b in pixels]
