"""A first guess at a film: where the camera stood, by the marks, and how the ball ran, by a parabola through three frames."""

from collections.abc import Sequence
from math import atan2, exp, hypot, log, sqrt

from pycore.constants import BALL_RADIUS
from pycore.sight.camera import Camera
from pycore.sight.doubt import likeliest
from pycore.sight.pose import Picture, pitch_of
from pycore.sight.vectors import dot, minus, times
from pycore.stats.intervals import median
from pycore.watch.ball import Place
from pycore.watch.scene import (
    ACROSS,
    AIM,
    ALONG,
    ASIDE,
    BACK,
    BARREL,
    DISTANCE,
    DRAG,
    FOCAL,
    HEIGHT,
    LAUNCH,
    MOMENT,
    NUMBERS,
    PITCH,
    ROLL,
    SHUTTER,
    SHUTTER_S,
    SLIP,
    SLIP_USUAL,
    YAW,
    Known,
    Scene,
)

FAR = 60.0  # m; what is seen farther off, or over the horizon, is no ball
LOOKED = 60  # frames that a guess is held against
SOONEST, LATEST = 0.1, 2.5  # m/s2; how a ball on a green slows, downhill and uphill
SLOWEST, FASTEST = 0.2, 8.0  # m/s
WRONG_PX = 12.0  # a frame farther off than that counts no more
USUAL_HEIGHT = 1.0  # m
MOVING = 0.15  # m; a ball that is so far has begun to roll


class Lost(Exception):  # noqa: N818 - no fault: the film shows no ball that rolls
    """No roll is in these frames."""


def first(scene: Scene) -> list[float]:
    """Numbers to begin with. Raises ``Lost``, and the refusals of ``pycore.sight.pose.camera``."""
    known = scene.known
    numbers = [0.0] * NUMBERS
    numbers[FOCAL], numbers[PITCH], numbers[ROLL] = log(known.focal), known.pitch, known.roll
    numbers[BARREL], numbers[SHUTTER], numbers[SLIP] = 0.0, SHUTTER_S, SLIP_USUAL
    numbers[DRAG] = log(known.putt.drag)
    numbers[ALONG] = numbers[ACROSS] = 0.0
    numbers[HEIGHT] = _height(scene) if known.height is None else known.height
    numbers[DISTANCE] = log(known.putt.distance)
    if known.hole is not None and known.distance is not None:
        _by_marks(known, numbers)
    else:
        _by_height(scene, numbers)
    _roll(scene, numbers)
    return numbers


def _height(scene: Scene) -> float:
    """Of the lens over the green, by the ball's width in the first frames and the pitch."""
    known = scene.known
    wide = [frame for frame in scene.frames[:15] if frame.width]
    if not wide:
        return USUAL_HEIGHT
    across = median(frame.width or 0.0 for frame in wide)
    camera = Camera.held(known.focal, known.middle, (0.0, 0.0, 0.0), (0.0, 0.0, 1.0), 0.0, known.pitch, known.roll)
    depth = known.focal * 2 * BALL_RADIUS / across
    return max(0.1, -_ray(camera, median(f.u for f in wide), median(f.v for f in wide))[2] * depth)


def _by_marks(known: Known, numbers: list[float]) -> None:
    assert known.hole
    assert known.distance
    scene = Scene(known, ())
    field = 2 * atan2(known.size[1] / 2, known.focal)
    height, pitch = known.height, known.pitch
    picture = Picture(
        known.size, known.ball, known.hole, known.distance, scene.ground.up, known.roll, height, pitch, field, known.middle
    )
    found = likeliest(picture)
    numbers[PITCH] = pitch_of(picture, found)
    numbers[BACK], numbers[ASIDE], numbers[HEIGHT] = found.place
    numbers[YAW] = atan2(found.forward[1], found.forward[0])


def _by_height(scene: Scene, numbers: list[float]) -> None:
    """Where the lens stands by its height; the line goes to the hole, or the way that the ball goes."""
    known = scene.known
    ball = met(scene.camera(numbers), *known.ball, 0.0)
    if ball is None:
        raise Lost
    if known.hole is not None:
        far = met(scene.camera(numbers), *known.hole, 0.0)
    else:
        camera = scene.camera(numbers)
        ways = [at for frame in scene.frames if (at := met(camera, frame.u, frame.v, BALL_RADIUS))]
        beyond = [at for at in ways if hypot(at[0] - ball[0], at[1] - ball[1]) > 2 * MOVING]
        far = (median(x for x, _ in beyond), median(y for _, y in beyond)) if beyond else None
    if far is None:
        raise Lost
    along, left = far[0] - ball[0], far[1] - ball[1]
    turn, length = atan2(left, along), hypot(along, left)
    numbers[YAW] -= turn
    c, s = along / length, left / length
    numbers[BACK], numbers[ASIDE] = -(c * ball[0] + s * ball[1]), s * ball[0] - c * ball[1]
    if known.hole is not None:
        numbers[DISTANCE] = log(length)


def _roll(scene: Scene, numbers: list[float]) -> None:
    """Strike, slowing and direction."""
    camera, known = scene.camera(numbers), scene.known
    found = [(frame, at) for frame in scene.frames if (at := met(camera, frame.u, frame.v, BALL_RADIUS)) and hypot(*at) < FAR]
    # what comes after the hole is another roll
    end = exp(numbers[DISTANCE]) - 2 * BALL_RADIUS if known.hole is not None else FAR
    before = [(frame, at) for frame, at in found if at[0] < end]
    if len(before) >= len(found) / 4:
        found = before
    if len(found) < 4:
        raise Lost
    found = found[:: max(1, len(found) // LOOKED)]
    scales = [known.focal / max(0.1, camera.depth((*at, BALL_RADIUS))) for _, at in found]
    downs = [abs(scale * dot((1.0, 0.0, 0.0), camera.down)) + 0.2 * scale for scale in scales]
    times_ = [frame.t for frame, _ in found]
    ways = [at[0] for _, at in found]
    best: tuple[float, float, float, float] | None = None
    for i, j, k in _triples(ways):
        guess = _parabola(times_[i], times_[j], times_[k], ways[i], ways[j], ways[k])
        if guess is None:
            continue
        off = sum(min(WRONG_PX, abs(_gone(*guess, t) - x) * down) for t, x, down in zip(times_, ways, downs, strict=True))
        if best is None or off < best[0]:
            best = (off, *guess)
    if best is None:
        raise Lost
    _, moment, launch, slowing = best
    numbers[MOMENT], numbers[LAUNCH] = moment, log(launch)
    slants = [
        at[1] / at[0]
        for (frame, at), down in zip(found, downs, strict=True)
        if at[0] > MOVING and abs(_gone(moment, launch, slowing, frame.t) - at[0]) * down < 2 * WRONG_PX
    ]
    if not slants:
        raise Lost
    numbers[AIM] = median(slants[: max(3, len(slants) // 3)]) if known.hole is not None else 0.0


def _triples(ways: Sequence[float]) -> list[tuple[int, int, int]]:
    """Frames to lay a parabola through: early, later and late ones of those that roll."""
    rolling = [i for i, x in enumerate(ways) if x > MOVING / 2]
    if len(rolling) < 3:
        return []
    shares = (0.0, 0.04, 0.1, 0.2, 0.33, 0.5, 0.67, 0.8, 0.9, 1.0)
    picks = sorted({rolling[round(share * (len(rolling) - 1))] for share in shares})
    return [(i, j, k) for a, i in enumerate(picks) for b, j in enumerate(picks[a + 1 :], a + 1) for k in picks[b + 1 :]]


def _parabola(t0: float, t1: float, t2: float, x0: float, x1: float, x2: float) -> tuple[float, float, float] | None:
    """Moment, launch and slowing of the roll from 0 that is at three places at three times; None where none is."""
    one, two = (x1 - x0) / (t1 - t0), (x2 - x1) / (t2 - t1)
    slowing = -2 * (two - one) / (t2 - t0)
    slowing = min(LATEST, max(SOONEST, slowing))
    speed = one + slowing * (t1 - t0) / 2  # at t0
    launch = sqrt(max(0.0, speed * speed + 2 * slowing * x0))
    if speed <= 0 or not SLOWEST < launch < FASTEST:
        return None
    return t0 - (launch - speed) / slowing, launch, slowing


def _gone(moment: float, launch: float, slowing: float, t: float) -> float:
    """How far that roll is."""
    gone = min(max(0.0, t - moment), launch / slowing)
    return gone * (launch - slowing * gone / 2)


def _ray(camera: Camera, u: float, v: float) -> tuple[float, float, float]:
    m, n = (u - camera.middle[0]) / camera.focal, (v - camera.middle[1]) / camera.focal
    return minus(camera.forward, minus(times(-m, camera.right), times(n, camera.down)))


def met(camera: Camera, u: float, v: float, height: float) -> Place | None:
    """The place so high over the plane that is seen there; None over the horizon."""
    x, y, z = _ray(camera, u, v)
    if z >= 0:
        return None
    far = (camera.place[2] - height) / -z
    return (camera.place[0] + far * x, camera.place[1] + far * y) if far > 0 else None
