"""Filmed putts of 4 to 25 ft: how far start and launch are off, whether intervals hold, whether holed is told from missed."""

from collections import defaultdict

import numpy as np

from prove import Proof, Row
from pycore.errors import Refusal
from pycore.fields import parse
from pycore.watch.endpoints import answer_watched
from pycore.watch.requests import WatchedFields
from tests.struck_balls import FOOT, Film, film

SHORT = 8
ENOUGH = 100  # films; what an interval holds on fewer is chance
WITHIN = 1.96  # standard deviations; 95 % of a normal spread
VALUES = ("start_deg", "launch_mps", "deceleration_mps2", "across_percent", "stimp_ft")
LOW_EVERY = 6  # one film in so many is taken from lower and farther than a phone should stand


def prove(cases: int = 3000) -> Proof:
    chance = np.random.default_rng(20261127)
    off, sds = defaultdict(list), defaultdict(list)
    results, untold, refused, low_start = [], 0, 0, []
    for case in range(cases):
        low = case % LOW_EVERY == LOW_EVERY - 1
        shot = film(chance, low)
        try:
            seen = _asked(shot.request)
        except Refusal:
            refused += 1
            continue
        yield (case + 1) / cases
        results.append((seen["result"], shot.result))
        untold += seen["start_deg"] is None or seen["launch_mps"] is None
        for value, truth in zip(VALUES, _truth(shot), strict=True):
            if seen[value] is None:
                continue
            name, _, unit = value.rpartition("_")
            sd = seen[f"{name}_sd_{unit}"]
            scale = 100 / truth if value == "launch_mps" else 1.0
            groups = ["lower and farther"] if low else ["all", *_groups(shot)]
            for group in groups:
                off[value, group].append(scale * (seen[value] - truth))
                sds[value, group].append(scale * sd)
        if low and seen["start_deg"] is not None:
            low_start.append(seen["start_sd_deg"])
    return [*_rows(off, sds), *_verdicts(results), Row("start or launch not told", untold), Row("refused", refused, high=0)]


def _asked(request: dict) -> dict:
    work = answer_watched(parse(WatchedFields, request))
    while True:
        try:
            next(work)
        except StopIteration as done:
            return done.value


def _truth(shot: Film) -> tuple[float, ...]:
    return shot.start_deg, shot.launch, shot.deceleration, shot.across_percent, shot.stimp_ft


def _groups(shot: Film) -> list[str]:
    height, distance = shot.told["height"], shot.told["distance"]
    return [
        "lens under 0.7 m" if height < 0.7 else "lens over 1.2 m" if height > 1.2 else "lens between",
        "to 10 ft" if distance < 10 * FOOT else "over 18 ft" if distance > 18 * FOOT else "10 to 18 ft",
    ]


def _rows(off: dict, sds: dict) -> list[Row]:
    limits = {"start_deg": 0.15, "launch_mps": 2.0}
    units = {"start_deg": "degrees", "launch_mps": "%", "deceleration_mps2": "m/s2", "across_percent": "%", "stimp_ft": "ft"}
    rows = []
    for (value, group), errors in off.items():
        size, enough = np.array(errors), len(errors) >= ENOUGH
        # of few films one alone that is off by three deviations makes the rms
        high = (1 if enough else 2) * limits.get(value, np.inf) if group == "all" else np.inf
        what = f"{value.rpartition('_')[0]}, {group}"
        rows.append(Row(f"{what}, rms error", float(np.sqrt(np.mean(size**2))), high=high, unit=units[value]))
        held = 100 * float(np.mean(np.abs(size) < WITHIN * np.array(sds[value, group])))
        low, high = (90, 98) if enough else (-np.inf, np.inf)
        rows.append(Row(f"{what}, 95 % intervals hold", held, low, high, "%"))
    return rows


def _verdicts(results: list[tuple[str, str]]) -> list[Row]:
    wrong = sum(said not in (true, "unseen") for said, true in results)
    silent = sum(said == "unseen" for said, _ in results)
    return [
        Row("holed called missed or the other way", 100 * wrong / len(results), high=1, unit="%"),
        Row("end not seen", 100 * silent / len(results), unit="%"),
    ]
