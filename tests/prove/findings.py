"""Findings on records of 150 putts of invented players whose strokes are NumPy's: does an interval hold the truth, is the
fault named first, is nobody accused? Spreads are those of the tour: 0.9 degrees of stroke, 0.45 of alignment, 6.5 % of pace,
10 % of reading."""

import json
from collections.abc import Callable
from typing import Any

import numpy as np

from prove import Proof, Row
from pycore.api import answer
from tests.pycore.record.conftest import PAST_M, Greens, roll, shoot

SHORT, SHORT_PUTTS = 1, 20
PUTTS = 150
FOOT = 0.3048
COVERED, NAMED, FAIR = 85.0, 80.0, 90.0  # of 100 intervals, faults, players without one
FEW, ALL_COVERED = 10, 75.0  # records of a world too few for its own bounds; the least for all worlds together
STROKE_DEG, ALIGNMENT_DEG, PACE, READING = 0.9, 0.45, 0.065, 0.10

# what a world changes: the player's biases, whose read is logged, how the green was logged, how finishes were
WORLDS: dict[str, dict[str, Any]] = {
    "app's aim, 20 % under-read": {"reading": -0.2, "fault": "reading"},
    "slopes logged 20 % low": {"scale": 0.8, "plays": "app", "fault": "reading"},
    "slopes off 12 %, falls 7 degrees": {"slope_sd": 0.12, "fall_sd": 7.0, "plays": "app"},
    "slopes off 30 %, falls 15 degrees": {"slope_sd": 0.30, "fall_sd": 15.0, "plays": "app"},
    "slopes by the level, each part off 0.27 %": {"level_sd": 0.27, "plays": "app"},
    "felt slope logged, 20 % under-read": {"reading": -0.2, "felt": True, "fault": "reading"},
    "own read logged, 20 % under-read": {"reading": -0.2, "read": "own", "fault": "reading"},
    "no fault": {},
    "no fault, own read": {"read": "own"},
    "start -0.6 degrees": {"start": -0.6, "fault": "start_line"},
    "pace -8 %": {"pace": -0.08, "fault": "pace"},
    "alignment +0.5 degrees": {"alignment": 0.5, "fault": "start_line"},
    "alignment +0.5 degrees, line logged": {"alignment": 0.5, "line": True, "fault": "alignment"},
    "only misses logged": {"misses_only": True},
    "finishes to half a foot": {"finish_m": FOOT / 2},
    "distances to a foot": {"distance_m": FOOT},
    "heavy tails": {"tails": True},
}


def prove(cases: int = 40) -> Proof:
    putts = PUTTS if cases >= FEW else SHORT_PUTTS
    rows: list[Row] = []
    covered: list[bool] = []
    for i, (name, world) in enumerate(WORLDS.items()):
        rng = np.random.default_rng(20261127)
        held: dict[str, list[bool]] = {}
        named, accused = 0, 0
        for case, record in enumerate(_records(rng, cases, putts, **world)):
            said = json.loads(answer(json.dumps({"ask": "findings", "putts": record})))["value"]
            for what, truth in _truth(**world).items():
                skill, of = what.split()
                low, high = said["skills"][skill][f"{of}_low"], said["skills"][skill][f"{of}_high"]
                held.setdefault(what, []).append(low is None or low <= truth <= high)
            out = [cost for cost in said["costs"] if cost["lean"] or cost["low"] > 0]
            named += bool(out) and out[0]["skill"] == world.get("fault")
            accused += bool(out)
            yield (i + (case + 1) / cases) / len(WORLDS)
        few = cases < FEW
        covered += [each for of_one in held.values() for each in of_one]
        for what, each in held.items():
            rows.append(Row(f"{name}: {what}", 100 * float(np.mean(each)), low=0 if few else COVERED, unit="%"))
        if "fault" in world:
            rows.append(Row(f"{name}: named first", 100 * named / cases, low=0 if few else NAMED, unit="%"))
        else:
            rows.append(Row(f"{name}: accused", 100 * accused / cases, high=100 if few else 100 - FAIR, unit="%"))
    return [*rows, Row("all worlds: covered", 100 * float(np.mean(covered)), low=ALL_COVERED, unit="%")]


def _truth(start: float = 0.0, alignment: float = 0.0, pace: float = 0.0, line: bool = False, **_: Any) -> dict[str, float]:
    both = (start, STROKE_DEG) if line else (start + alignment, np.hypot(STROKE_DEG, ALIGNMENT_DEG))
    return {"start_line bias": both[0], "start_line sd": both[1], "pace bias": pace, "pace sd": PACE}


def _records(
    rng: np.random.Generator,
    cases: int,
    putts: int,
    start: float = 0.0,
    alignment: float = 0.0,
    pace: float = 0.0,
    reading: float = 0.0,
    scale: float = 1.0,
    slope_sd: float = 0.0,
    fall_sd: float = 0.0,
    level_sd: float = 0.0,
    plays: str = "own",
    read: str = "app",
    felt: bool = False,
    line: bool = False,
    misses_only: bool = False,
    finish_m: float = 0.0,
    distance_m: float = 0.0,
    tails: bool = False,
    fault: str = "",
) -> list[list[dict[str, Any]]]:
    each = putts * (4 if misses_only else 1)
    n = cases * each
    draw: Callable[[], Any] = (lambda: rng.standard_t(3, n) / np.sqrt(3)) if tails else (lambda: rng.standard_normal(n))
    stimp_ft = rng.choice([9.0, 10.0, 11.0], n)
    greens = Greens(rng.uniform(3, 20, n) * FOOT, stimp_ft, rng.uniform(0.5, 3, n), rng.uniform(0, 360, n))
    slope = np.clip(scale * greens.slope_percent * (1 + slope_sd * rng.standard_normal(n)), 0, 6)
    fall = greens.fall_deg + fall_sd * rng.standard_normal(n)
    if level_sd:
        tilt = slope * np.exp(1j * np.radians(fall)) + level_sd * (rng.standard_normal(n) + 1j * rng.standard_normal(n))
        slope, fall = np.abs(tilt), np.degrees(np.angle(tilt))
    logged = Greens(greens.distance_m, stimp_ft, slope, fall)
    launch, needed = shoot(logged, PAST_M)
    # who plays the app's aim plays its numbers, right or wrong; who plays his own reads the green itself, well or badly
    lines = np.radians(alignment + ALIGNMENT_DEG * draw())
    seen = reading + READING * draw()
    meant = needed * (1 + seen) if plays == "own" else needed
    direction = meant + lines + np.radians(start + STROKE_DEG * draw())
    struck = roll(greens, launch * np.sqrt(np.maximum(0.05, 1 + pace + PACE * draw())), direction)
    stops = struck.stop - greens.distance_m
    if finish_m:
        stops = finish_m * (np.round(stops.real / finish_m) + 1j * np.round(stops.imag / finish_m))
    distances = distance_m * np.round(greens.distance_m / distance_m) if distance_m else greens.distance_m
    kept = struck.still & ~(struck.holed & misses_only) & (np.abs(stops) < 29)

    def putt(k: int, i: int) -> dict[str, Any]:
        return {
            "id": str(i),
            "at": f"2026-05-{1 + k // 10:02}T10:{k % 10:02}:00Z",
            "distance_m": float(distances[i]),
            "stimp_ft": float(logged.stimp_ft[i]),
            "slope_percent": float(logged.slope_percent[i]),
            "fall_deg": float(logged.fall_deg[i] % 360),
            "past_m": PAST_M,
            "read": read,
            "aim_deg": float(np.degrees((meant if read == "own" else needed)[i])),
            "result": "holed" if struck.holed[i] else {"x_m": float(stops[i].real), "y_m": float(stops[i].imag)},
            **({"tilt_sd_percent": level_sd} if level_sd else {}),
            **({"felt_percent": float(np.clip(logged.slope_percent[i] * (1 + seen[i]), 0, 8))} if felt else {}),
            **({"line_error_deg": float(np.degrees(lines[i]))} if line else {}),
        }

    starts = range(0, n, each)
    return [[putt(k, i) for k, i in enumerate((np.flatnonzero(kept[at : at + each]) + at)[:putts])] for at in starts]
