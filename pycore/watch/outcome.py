"""What came of a ball that was watched: in the hole, beside it, or not seen."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, hypot, sqrt

from pycore.constants import BALL_RADIUS, HOLE_RADIUS
from pycore.stats.intervals import median
from pycore.watch.answers import Result
from pycore.watch.ball import Place
from pycore.watch.fit import Fitted
from pycore.watch.scene import BARREL, DISTANCE, NUMBERS, OF_WAY, STEPS, Frame, Scene
from pycore.watch.start import met

RESTS_S = 0.25  # a ball that has not moved for so long rests
RESTS_FRAMES = 4  # and in no fewer of them
STILL_MPS = 0.15  # a ball that is faster than that by its roll does not rest, little though it moves in the picture
OFF_HOLE_S = 0.5  # as long has a ball to lie that met the hole, of which no roll tells
STILL_SHARE, STILL_PX = 0.08, 1.5  # of the ball's width, and px: how far a resting ball's centre strays
EDGE = 1.0  # of the ball's width from the picture's edge: it may have left
VANISHED = 0.2  # m before the hole's edge; a ball that is lost sooner may have gone anywhere
SURE = 2.0  # standard deviations
ROLLS_ON = 3  # frames beyond the hole that make a miss
KEPT = 0.2  # weight of a frame that is heeded
LOST_PX = 40.0  # a frame that is farther than that from the one before is no ball


@dataclass(frozen=True)
class Outcome:
    """The result, and where the ball rests with its spread (m), None where that was not seen."""

    result: Result
    stop: tuple[float, float, float] | None
    why: str = ""


def outcome(scene: Scene, fitted: Fitted, heeded: Sequence[bool]) -> Outcome:
    """What came of it. ``heeded`` is false of frames that may be those of a ball which met the hole."""
    tail = _tail(scene, fitted, heeded)
    if len(tail) < ROLLS_ON:
        return Outcome("unseen", None, "too few frames show the ball")
    known = scene.known
    distance = exp(fitted.numbers[DISTANCE])
    rest = _rest(scene, fitted, heeded, tail)
    if rest:
        (x, y), sd = _spread_of(scene, fitted, median(scene.frames[i].u for i in rest), median(scene.frames[i].v for i in rest))
        stop = (x, y, sd)
        if known.hole is None:
            return Outcome("unseen", stop, "no hole is marked")
        if hypot(x - distance, y) < HOLE_RADIUS / 2 and sd < HOLE_RADIUS:
            return Outcome("unseen", None, "something rests where the hole is")
        return Outcome("missed", stop)
    if known.hole is None:
        return Outcome("unseen", None, "no hole is marked")
    last = scene.frames[tail[-1]]
    (x, _), sd = _spread_of(scene, fitted, last.u, last.v)
    finish = scene.putt(fitted.numbers).finish(fitted.way.roll)
    lately = [_spread_of(scene, fitted, scene.frames[i].u, scene.frames[i].v)[0] for i in tail[-ROLLS_ON:]]
    if all(at[0] > distance + HOLE_RADIUS + SURE * sd for at in lately):
        return Outcome("missed", None, "the ball left the picture beyond the hole")
    if _at_edge(scene, last):
        return Outcome("unseen", None, "the ball left the picture")
    if x < distance - HOLE_RADIUS - VANISHED - SURE * sd:
        return Outcome("unseen", None, "the ball was lost before the hole")
    if finish.offset + SURE * aside_sd(scene, fitted) < HOLE_RADIUS and finish.holed:
        return Outcome("holed", None)
    return Outcome("unseen", None, "the ball was lost at the hole")


def _tail(scene: Scene, fitted: Fitted, heeded: Sequence[bool]) -> list[int]:
    """The frames that show the ball, those after it met the hole as well."""
    kept: list[int] = []
    for i, frame in enumerate(scene.frames):
        if heeded[i]:
            if fitted.weights[i] > KEPT:
                kept.append(i)
        elif kept:
            last = scene.frames[kept[-1]]
            reach = LOST_PX + 10 * (i - kept[-1])
            if hypot(frame.u - last.u, frame.v - last.v) < reach * min(scene.known.size) / 720:
                kept.append(i)
    return kept


def _rest(scene: Scene, fitted: Fitted, heeded: Sequence[bool], tail: Sequence[int]) -> list[int]:
    """The last frames, where the ball rests in them."""
    frames, rest = scene.frames, list[int]()
    u, v = (median(getattr(frames[i], name) for i in tail[-RESTS_FRAMES:]) for name in ("u", "v"))
    for i in reversed(tail):
        frame = frames[i]
        if hypot(frame.u - u, frame.v - v) > STILL_PX + STILL_SHARE * (frame.width or 0.0):
            break
        rest.append(i)
    lay = frames[rest[0]].t - frames[rest[-1]].t if rest else 0.0
    if len(rest) < RESTS_FRAMES or lay < RESTS_S:
        return []
    if not heeded[rest[0]]:
        return rest if lay >= OFF_HOLE_S else []
    since = scene.ball(fitted.numbers, fitted.way).since(frames[rest[0]].t)
    return rest if fitted.way.speed(since) < STILL_MPS else []


def _at_edge(scene: Scene, frame: Frame) -> bool:
    wide, high = scene.known.size
    margin = 4 + EDGE * (frame.width or 0.01 * wide)
    return not (margin < frame.u < wide - margin and margin < frame.v < high - margin)


def _spread_of(scene: Scene, fitted: Fitted, u: float, v: float) -> tuple[Place, float]:
    """The place of a ball that is seen there, and how far that may be off, m."""

    def place(numbers: Sequence[float]) -> Place:
        camera, bend = scene.camera(numbers), numbers[BARREL]
        m, n = (u - camera.middle[0]) / camera.focal, (v - camera.middle[1]) / camera.focal
        straight = 1 / (1 + bend * (m * m + n * n))
        at = met(
            camera,
            camera.middle[0] + (u - camera.middle[0]) * straight,
            camera.middle[1] + (v - camera.middle[1]) * straight,
            BALL_RADIUS,
        )
        return at or (60.0, 0.0)

    here = place(fitted.numbers)
    shifts = []
    for j in range(NUMBERS):
        moved = list(fitted.numbers)
        moved[j] += STEPS[j]
        there = place(moved)
        shifts.append(((there[0] - here[0]) / STEPS[j], (there[1] - here[1]) / STEPS[j]))
    variance = sum(
        fitted.covariance[i][j] * (shifts[i][k] * shifts[j][k]) for i in range(NUMBERS) for j in range(NUMBERS) for k in (0, 1)
    )
    return here, sqrt(max(0.0, variance))


def aside_sd(scene: Scene, fitted: Fitted) -> float:
    """How far (m) the ball's way past the hole's centre may be off."""
    base = scene.putt(fitted.numbers).finish(fitted.way.roll).state.y
    shifts = {}
    for j in (*OF_WAY, DISTANCE):
        moved = list(fitted.numbers)
        moved[j] += STEPS[j]
        shifts[j] = (scene.putt(moved).finish(scene.way(moved).roll).state.y - base) / STEPS[j]
    return sqrt(max(0.0, sum(fitted.covariance[i][j] * shifts[i] * shifts[j] for i in shifts for j in shifts)))
