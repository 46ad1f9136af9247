"""Twenty putts by a player who starts 0.5 degrees to the left, noted by hand or watched: SciPy rolls them on greens that were
read somewhat wrong. The interval of the start line's lean is told by both; the watched one should be half as wide or less."""

import json
import math
from typing import Any

import numpy as np

from prove import Proof, Row
from pycore.api import answer
from tests.struck_balls import FOOT, Rolled, Strike

SHORT = 1
PUTTS, LEAN_DEG, SPREAD_DEG, PACE = 20, 0.5, 0.9, 0.065
TILT_SD, FINISH_SD = 0.005, 0.15  # rise over run, of a read; m, of a finish by eye
START_SD, LAUNCH_SD = 0.1, 0.012  # degrees, and of the launch: what a watched putt has
ENOUGH = 20


def prove(cases: int = 100) -> Proof:
    chance = np.random.default_rng(20261127)
    held: dict[str, list[bool]] = {"noted": [], "watched": []}
    widths: dict[str, list[float]] = {"noted": [], "watched": []}
    told: dict[str, int] = {"noted": 0, "watched": 0}
    for case in range(cases):
        putts = [_putt(chance, i) for i in range(PUTTS)]
        for how in held:
            record = [{**noted, **(seen if how == "watched" else {})} for noted, seen in putts]
            low, high = _lean(record)
            held[how].append(low <= LEAN_DEG <= high)
            widths[how].append(high - low)
            told[how] += low > 0
        yield (case + 1) / cases
    enough = cases >= ENOUGH
    ratio = float(np.median(widths["watched"]) / np.median(widths["noted"]))
    return [
        Row("width of the interval, watched by noted", ratio, high=0.5 if enough else math.inf),
        Row("watched, 95 % intervals hold", 100 * float(np.mean(held["watched"])), low=90 if enough else 0, unit="%"),
        Row("noted, 95 % intervals hold", 100 * float(np.mean(held["noted"])), unit="%"),
        Row("lean told, watched", 100 * told["watched"] / cases, unit="%"),
        Row("lean told, noted", 100 * told["noted"] / cases, unit="%"),
    ]


def _lean(record: list[dict[str, Any]]) -> tuple[float, float]:
    said = json.loads(answer(json.dumps({"ask": "findings", "putts": record})))
    skill = said["value"]["skills"]["start_line"]
    return skill["bias_low"], skill["bias_high"]


def _putt(chance: np.random.Generator, number: int) -> tuple[dict[str, Any], dict[str, float]]:
    """A putt as it is noted, and what the phone adds."""
    distance, stimp_ft = chance.uniform(8, 18) * FOOT, 10.0
    slope, fall = chance.uniform(0, 0.02), chance.uniform(0, 2 * math.pi)
    downhill = np.array([slope * math.cos(fall), slope * math.sin(fall)])
    read = downhill + chance.normal(0, TILT_SD, 2)
    putt = {
        "distance_m": distance,
        "stimp_ft": stimp_ft,
        "slope_percent": 100 * float(np.hypot(*read)),
        "fall_deg": -math.degrees(math.atan2(read[1], read[0])),
        "past_m": FOOT,
    }
    aim = json.loads(answer(json.dumps({"ask": "read", **putt})))["value"]
    start = aim["aim_deg"] + LEAN_DEG + chance.normal(0, SPREAD_DEG)
    launch = aim["launch_mps"] * math.sqrt(1 + chance.normal(0, PACE))
    rolled = Rolled(Strike(distance, (downhill[0], downhill[1]), stimp_ft, launch, math.radians(start)))
    x, y = rolled.rest[0] - distance + chance.normal(0, FINISH_SD), rolled.rest[1] + chance.normal(0, FINISH_SD)
    if math.hypot(x, y) < 0.06:
        x += 0.1
    noted = {
        "id": str(number),
        "at": f"2026-05-{number + 1:02d}",
        **putt,
        "aim_deg": aim["aim_deg"],
        "read": "app",
        "result": "holed" if rolled.holed else {"x_m": float(x), "y_m": float(y)},
    }
    seen = {
        "start_deg": start + chance.normal(0, START_SD),
        "start_sd_deg": START_SD,
        "launch_mps": launch * (1 + chance.normal(0, LAUNCH_SD)),
        "launch_sd_mps": LAUNCH_SD * launch,
    }
    return noted, seen
