"""The endpoints of the line where the eye has it: view, chalk, ramp, and those of a picture."""

from collections.abc import Iterable
from math import tan
from typing import Any

from pycore.constants import BALL_RADIUS
from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import Range, outside
from pycore.putt.requests import PuttFields
from pycore.putt.shape import apex, path
from pycore.sight import answers, chalk, picture, ramp, requests
from pycore.sight.camera import DIGITS, Pixel, rounded
from pycore.sight.lines import Lines, lines
from pycore.sight.view import View, view


def answer_view(fields: requests.ViewFields) -> answers.ViewAnswer:
    """A putt in perspective."""
    three = _lines(fields)
    read, putt = three.read, three.putt
    chosen = path(read.roll)
    high, low = (path(roll, putt.finish(roll).s) if roll else None for roll in (three.high, three.low))
    spot = putt.distance, putt.distance * tan(read.aim)
    into = [point for point in chosen if point[0] <= read.hole.t]
    places = [(x, y) for _, x, y, _ in [*into, *(high or []), *(low or [])]]
    size = fields.width_px, fields.height_px
    seen = view(putt, size, fields.stand, fields.eye_height_m, fields.back_m, [(putt.distance, 0.0), spot, *places])
    side, grid = seen.grid(fields.square_m)
    return {
        "horizon_px": seen.horizon,
        "turf": _drawn([seen.turf(fields.square_m)])[0],
        "grid": _drawn(grid),
        "grid_m": side,
        "falls": _drawn(seen.falls(fields.square_m)),
        "hole": seen.hole(),
        "flag": seen.flag(),
        "spot": seen.pixel(*spot),
        "apex": seen.pixel(*apex(three.putt, three.read)),
        "time_s": read.hole.t,
        "chosen": _rolled(seen, chosen),
        "high": high and _rolled(seen, high),
        "low": low and _rolled(seen, low),
    }


def answer_chalk(fields: requests.ChalkFields) -> answers.ChalkAnswer:
    """Where to put dots of chalk along the three lines."""
    three = _lines(fields)
    at = chalk.places(fields.distance, fields.every_m)
    chosen, high, low = (
        chalk.beside(three.putt, roll, at) if roll else [None] * len(at) for roll in (three.read.roll, three.high, three.low)
    )
    return {
        "rows": [
            {"at_m": place, "chosen_m": here, "high_m": above, "low_m": below}
            for place, here, above, below in zip(at, chosen, high, low, strict=True)
        ]
    }


def answer_ramp(fields: requests.RampFields) -> answers.RampAnswer:
    """How high to let a ball go."""
    kept = 1.0
    if fields.trial:
        kept = ramp.kept(fields.trial.height_m, fields.trial.rolled_m, fields.stimp_ft)
        if kept > 1:
            limit = Range(requests.SHORTEST_ROLL, fields.trial.rolled_m / kept, "m")
            why = f"from {fields.trial.height_m:g} m a ball rolls no farther on a level green of {fields.stimp_ft:g} ft"
            raise outside("trial.rolled_m", fields.trial.rolled_m, limit, why)
    return {"height_m": ramp.height(fields.launch_mps, kept), "kept_fraction": kept}


def _lines(fields: PuttFields) -> Lines:
    found = lines(fields.putt())
    if found is None:
        raise Refusal("runs_away", "there is no such putt on this green: no ball stops at this pace", "past_m")
    return found


def _rolled(seen: View, line: Iterable[tuple[float, float, float, float]]) -> answers.Rolled:
    """A ball's path as it is seen, as far as it stays before the eye."""
    rolled = []
    for t, x, y, _ in line:
        pixel = seen.pixel(x, y)
        if pixel:
            rolled.append((t, *rounded(pixel), round(BALL_RADIUS * seen.scale(x, y), DIGITS)))
    return rolled


def _drawn(strokes: Iterable[list[Pixel]]) -> list[list[Pixel]]:
    return [[*map(rounded, stroke)] for stroke in strokes]


ENDPOINTS: dict[str, Endpoint[Any, Any]] = {
    **picture.ENDPOINTS,
    "view": Endpoint(requests.ViewFields, answer_view),
    "chalk": Endpoint(requests.ChalkFields, answer_chalk),
    "ramp": Endpoint(requests.RampFields, answer_ramp),
}

_PUTT = {"distance_m": 2.5, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}
EXAMPLES: list[dict[str, Any]] = [
    *picture.EXAMPLES,
    {"ask": "view", **_PUTT, "stand": "ball", "eye_height_m": 1.6, "back_m": 2, "width_px": 390, "height_px": 500},
    {"ask": "chalk", **_PUTT, "every_m": 0.3048},
    {"ask": "ramp", "launch_mps": 2, "stimp_ft": 10, "trial": {"height_m": 0.3, "rolled_m": 3.5}},
]
