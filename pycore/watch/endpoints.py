"""The endpoints of films: watched, block."""

from collections.abc import Generator, Sequence
from itertools import pairwise
from math import degrees, exp, hypot, sqrt
from typing import Any

from pycore.constants import GRAVITY, HOLE_RADIUS, ROLLING
from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.green.speed import deceleration
from pycore.sight.camera import rounded
from pycore.stats.intervals import Estimate
from pycore.units import percent_from_slope
from pycore.watch import answers, block, requests
from pycore.watch.examples import EXAMPLES
from pycore.watch.fit import STAGES, Fit, Fitted
from pycore.watch.outcome import KEPT, SURE, aside_sd, outcome
from pycore.watch.scene import ACROSS, AIM, ALONG, DISTANCE, DRAG, LAUNCH, MOMENT, Frame, Scene
from pycore.watch.start import Lost, first
from pycore.watch.words import words

ENOUGH = 8  # frames of a rolling ball
MOST = 150  # frames that are fitted
LEAST_M = 0.2  # m; who sees less of a roll has seen none
BY_THE_HOLE = 0.01  # m from its edge; a ball that passes nearer may have met it
# The largest standard deviations with which a value is told
START_SD, LAUNCH_SD, SLOWING_SD, ACROSS_SD, STIMP_SD = 1.5, 0.1, 0.25, 2.0, 3.0  # degrees, of launch, m/s2, %, ft


def answer_watched(fields: requests.WatchedFields) -> Generator[float, None, answers.WatchedAnswer]:
    """How a putt was struck and how it ran."""
    known = fields.known()
    frames = _thinned(fields.seen())
    scene = Scene(known, frames)
    try:
        start = first(scene)
    except Lost:
        return _nothing(fields, "no rolling ball is in these frames")
    except Refusal as refusal:
        raise refusal.about("hole_px") from None
    heeded = [True] * len(frames)
    work = Fit(scene, start, heeded)
    if known.hole is not None:
        work.heeded = heeded = _before_hole(scene, start)
    fitted = yield from _shared(work.run(), 0.0, 0.7)
    if known.hole is not None:
        # the first guess may have stopped short of a hole whose rim turned the ball
        again = _before_hole(scene, fitted.numbers)
        if not all(again) and _clear_of_hole(scene, fitted):
            again = [True] * len(frames)
        if again != heeded:
            work.heeded = heeded = again
            fitted = yield from _shared(work.run(STAGES[1:]), 0.7, 0.95)
    return _answer(fields, scene, fitted, heeded)


def _shared(work: Generator[float, None, Fitted], low: float, high: float) -> Generator[float, None, Fitted]:
    while True:
        try:
            yield low + (high - low) * next(work)
        except StopIteration as done:
            result: Fitted = done.value
            return result


def _thinned(frames: list[Frame]) -> list[Frame]:
    step = -(-len(frames) // MOST)
    return frames[::step]


def _before_hole(scene: Scene, numbers: Sequence[float]) -> list[bool]:
    """Of each frame, whether the ball cannot have met the hole before it."""
    rim = exp(numbers[DISTANCE]) - HOLE_RADIUS
    before = [x < rim for x, _ in scene.places(numbers, scene.way(numbers))]
    return before if sum(before) >= ENOUGH else [True] * len(before)


def _clear_of_hole(scene: Scene, fitted: Fitted) -> bool:
    """Whether the ball passed the hole, or stopped, too far from it to have met it."""
    offset = scene.putt(fitted.numbers).finish(fitted.way.roll).offset
    return offset > HOLE_RADIUS + BY_THE_HOLE + SURE * aside_sd(scene, fitted)


def _nothing(fields: requests.WatchedFields, why: str) -> answers.WatchedAnswer:
    names = ("start_deg", "launch_mps", "deceleration_mps2", "across_percent", "stimp_ft", "stop")
    return {
        "start_deg": None,
        "start_sd_deg": None,
        "launch_mps": None,
        "launch_sd_mps": None,
        "moment_s": None,
        "deceleration_mps2": None,
        "deceleration_sd_mps2": None,
        "across_percent": None,
        "across_sd_percent": None,
        "stimp_ft": None,
        "stimp_sd_ft": None,
        "result": "unseen",
        "stop": None,
        "seen_m": 0.0,
        "used": 0,
        "path": [],
        "path_px": [],
        "points_px": [None] * len(fields.points_m),
        "untold": [{"field": name, "why": why} for name in names],
        "words": f"Not seen: {why}.",
    }


def _answer(fields: requests.WatchedFields, scene: Scene, fitted: Fitted, heeded: Sequence[bool]) -> answers.WatchedAnswer:
    n, cov = fitted.numbers, fitted.covariance
    kept = [i for i, weight in enumerate(fitted.weights) if weight > KEPT]
    rolling = [i for i in kept if fitted.places[i] != (0.0, 0.0)]
    if len(rolling) < ENOUGH:
        return _nothing(fields, "too few frames show the ball rolling")
    seen = [fitted.places[i] for i in rolling]
    seen_m = sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(seen))
    if seen_m < LEAST_M:
        return _nothing(fields, "the ball is not seen to roll")
    came = outcome(scene, fitted, heeded)
    line = scene.known.hole is not None
    untold: list[answers.Untold] = []

    def told(field: str, value: float, sd: float, most: float, why: str) -> tuple[float | None, float | None]:
        if sd <= most:
            return value, sd
        untold.append({"field": field, "why": why})
        return None, None

    if line:
        start = told(
            "start_deg",
            degrees(n[AIM]),
            degrees(sqrt(cov[AIM][AIM])),
            START_SD,
            "the marks and the way seen leave too much open",
        )
    else:
        untold.append({"field": "start_deg", "why": "no hole is marked, so there is no line"})
        start = None, None
    v = exp(n[LAUNCH])
    launch_sd = sqrt(cov[LAUNCH][LAUNCH])
    launch = told("launch_mps", v, v * launch_sd, LAUNCH_SD * v, "too little of the way was seen")
    slowing = told("deceleration_mps2", *_slowing(scene, fitted, seen), SLOWING_SD, "too little of the way was seen")
    across = told("across_percent", *_across(scene, fitted, seen), ACROSS_SD, "too little of the way was seen")
    stimp: tuple[float | None, float | None] = None, None
    if fields.told_tilt:
        stimp = told("stimp_ft", *_stimp(scene, fitted), STIMP_SD, "too little of the way was seen")
    else:
        untold.append({"field": "stimp_ft", "why": "the tilt along the line is not known"})
    if came.stop is None:
        untold.append({"field": "stop", "why": "it dropped" if came.result == "holed" else came.why})
    heights = scene.rises(seen)
    camera = scene.camera(n)
    points = fields.places()
    found = scene.seen(n, points, [height - scene.rises([(0.0, 0.0)])[0] for height in scene.rises(points)])
    return {
        "start_deg": start[0],
        "start_sd_deg": start[1],
        "launch_mps": launch[0],
        "launch_sd_mps": launch[1],
        "moment_s": n[MOMENT],
        "deceleration_mps2": slowing[0],
        "deceleration_sd_mps2": slowing[1],
        "across_percent": across[0],
        "across_sd_percent": across[1],
        "stimp_ft": stimp[0],
        "stimp_sd_ft": stimp[1],
        "result": came.result,
        "stop": None if came.stop is None else {"x_m": came.stop[0], "y_m": came.stop[1], "sd_m": came.stop[2]},
        "seen_m": seen_m,
        "used": len(kept),
        "path": [(scene.frames[i].t, round(x, 4), round(y, 4)) for i, (x, y) in zip(rolling, seen, strict=True)],
        "path_px": [rounded((at.u, at.v)) for at in scene.seen(n, seen, heights)],
        "points_px": [
            rounded((at.u, at.v)) if camera.pixel((*point, 0.0)) else None for at, point in zip(found, points, strict=True)
        ],
        "untold": untold,
        "words": words(None if start[0] is None else start[0] - (fields.aim_deg or 0.0), came, exp(n[DISTANCE]), fields.unit),
    }


def _slowing(scene: Scene, fitted: Fitted, seen: Sequence[tuple[float, float]]) -> tuple[float, float]:
    """How the ball slows along the line, m/s2, and its spread, what was believed beforehand left out."""
    n, cov = fitted.numbers, fitted.covariance
    pull = ROLLING * GRAVITY
    drag, tilt = exp(n[DRAG]), _tilt(scene, fitted, seen).real
    variance = drag**2 * cov[DRAG][DRAG] - 2 * drag * pull * cov[DRAG][ALONG] + pull**2 * cov[ALONG][ALONG]
    known = scene.known
    believed = known.putt.drag - pull * (tilt - n[ALONG])
    before = (known.putt.drag * known.drag_sd) ** 2 + (pull * known.tilt_sd) ** 2
    return _apart(drag - pull * tilt, variance, believed, before)


def _across(scene: Scene, fitted: Fitted, seen: Sequence[tuple[float, float]]) -> tuple[float, float]:
    tilt = _tilt(scene, fitted, seen).imag
    value, sd = _apart(tilt, fitted.covariance[ACROSS][ACROSS], tilt - fitted.numbers[ACROSS], scene.known.tilt_sd**2)
    return percent_from_slope(value), percent_from_slope(sd)


def _stimp(scene: Scene, fitted: Fitted) -> tuple[float, float]:
    drag = exp(fitted.numbers[DRAG])
    believed = scene.known.putt.drag
    value, sd = _apart(drag, drag**2 * fitted.covariance[DRAG][DRAG], believed, (believed * scene.known.drag_sd) ** 2)
    if value <= 0:
        return 0.0, float("inf")
    stimp_ft = deceleration(1.0) / value
    return stimp_ft, stimp_ft * sd / value


def _tilt(scene: Scene, fitted: Fitted, seen: Sequence[tuple[float, float]]) -> complex:
    """The mean downhill vector of the way that was seen."""
    surface = scene.putt(fitted.numbers).surface
    return sum(complex(*surface.downhill(x, y)) for x, y in seen) / len(seen)


def _apart(value: float, variance: float, believed: float, before: float) -> tuple[float, float]:
    """What a film alone says of a value: what was believed of it beforehand is taken out again."""
    information = 1 / variance - 1 / before
    if information <= 0:
        return value, float("inf")
    return (value / variance - believed / before) / information, sqrt(1 / information)


def answer_block(fields: requests.BlockFields) -> answers.BlockAnswer:
    """How the strikes of a block lean and scatter."""
    starts = [
        (each.start_deg - each.aim_deg, each.start_sd_deg)
        for each in fields.strikes
        if each.start_deg is not None and each.start_sd_deg is not None
    ]
    # a roll is as long as the square of its launch
    paces = [
        ((each.launch_mps / each.meant_mps) ** 2 - 1, 2 * each.launch_sd_mps / each.meant_mps)
        for each in fields.strikes
        if each.launch_mps is not None and each.launch_sd_mps is not None
    ]
    return {"start": _row(starts, block.START_WITHIN_DEG), "pace": _row(paces, block.PACE_WITHIN)}


def _row(seen: Sequence[tuple[float, float]], within: float) -> answers.RowAnswer | None:
    found = block.row([error for error, _ in seen], [sd for _, sd in seen], within)
    if found is None:
        return None
    return {"strikes": len(seen), "lean": _settled(found.lean), "spread": _settled(found.scatter), "more": found.more}


def _settled(found: Estimate) -> answers.SettledAnswer:
    return {"value": found.value, "low": found.low, "high": found.high}


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    "watched": Endpoint(requests.WatchedFields, answer_watched),
    "block": Endpoint(requests.BlockFields, answer_block),
}


__all__ = ["ENDPOINTS", "EXAMPLES"]
