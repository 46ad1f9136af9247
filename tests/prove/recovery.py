"""The promise of the findings: what was behind invented players of 150 putts each that NumPy struck is found again. A third of
them never log the ball's line, a third always, a third every fourth time; all log their own reads."""

from collections.abc import Generator, Mapping, Sequence
from typing import Any

import numpy as np

from prove import Proof, Row
from pycore.fields import parse
from pycore.record.cost import Cost, costs
from pycore.record.findings import lines_suffice, skills
from pycore.record.logged import Evidence, evidence
from pycore.record.player import Skill
from pycore.record.requests import FindingsFields
from tests.pycore.record.conftest import PAST_M, Greens, putts_of, record, roll, shoot

SHORT = 30
FOOT = 0.3048
COVERED = (90.0, 98.0)  # of a hundred 95 % intervals
FAIR = 100  # intervals of a kind that are enough for a bound of their own
WIDER = 3.0  # points that the bounds of all are wider where players are few
NAMED_FIRST = 80.0  # of a hundred players whose costs differ
DIFFERS = 3.0  # putts in a hundred
SET_M, SET_FALLS_DEG = [feet * FOOT for feet in (3, 5, 8, 12, 20, 30, 45, 60)], (45.0, 135.0)  # the other half mirrors these
SPAN_DEG, SPAN_LENGTH = np.arange(-7, 7.01, 0.2), np.arange(-0.5, 0.5001, 0.025)

type Truth = Mapping[str, tuple[float, float]]


def prove(cases: int = 300) -> Proof:
    invented = record(cases)
    cost_of = _true_costs()
    covered: dict[str, list[bool]] = {}
    costs_covered: list[bool] = []
    all_covered: list[bool] = []
    first: list[bool] = []
    for player in range(cases):
        known, said = found(invented, player)
        true = truth(invented, player)
        for name, (bias, sd) in true.items():
            if name in known:
                skill = known[name]
                covered.setdefault(f"{name} bias", []).append(skill.bias.low <= bias <= skill.bias.high)
                covered.setdefault(f"{name} sd", []).append(skill.sd.low <= sd <= skill.sd.high)
        cost = {name: cost_of(true, name) for name in true}
        covers = [said[name].putts.low <= cost[name] <= said[name].putts.high for name in cost if name in said]
        costs_covered += covers
        all_covered.append(all(covers))
        dearest, second = sorted(cost, key=cost.__getitem__, reverse=True)[:2]
        if cost[dearest] - cost[second] >= DIFFERS:
            first.append(next(iter(said)) == dearest)
        yield (player + 1) / cases
    few = cases < FAIR
    low, high = (COVERED[0] - WIDER * few, COVERED[1] + (100 - COVERED[1]) * few)
    rows = [
        Row("intervals that hold the truth", _percent([each for of_one in covered.values() for each in of_one]), low, high, "%")
    ]
    for what, each in covered.items():
        bounds = COVERED if len(each) >= FAIR else (0.0, 100.0)
        rows.append(Row(f"of them {what}", _percent(each), *bounds, "%"))
    return [
        *rows,
        Row("intervals of costs", _percent(costs_covered), low, high, "%"),
        Row("players whose costs all lie in them", _percent(all_covered), unit="%"),
        Row("players whose dearest fault is clear", len(first), low=1),
        Row("of them named first", _percent(first), low=NAMED_FIRST, unit="%"),
    ]


def _percent(held: Sequence[bool]) -> float:
    return 100 * float(np.mean(held))


def line_every(player: int) -> int:
    return (0, 1, 4)[player % 3]


def evidence_of(invented: Any, player: int) -> list[Evidence]:
    """What a player's putts say."""
    fields = parse(FindingsFields, {"putts": putts_of(invented, player, line_every(player))})
    return [each for putt in fields.logged() if not isinstance(each := evidence(putt), str)]


def at_once(work: Generator[float, None, dict[Any, Skill]]) -> dict[Any, Skill]:
    """Its answer, whatever it tells meanwhile."""
    while True:
        try:
            next(work)
        except StopIteration as done:
            return dict(done.value)


def found(invented: Any, player: int) -> tuple[dict[Any, Skill], dict[Any, Cost]]:
    """Skills and costs as the findings have them."""
    said = evidence_of(invented, player)
    known = at_once(skills(said, lines_suffice(said)))
    return known, costs(known)


def truth(invented: Any, player: int) -> dict[str, tuple[float, float]]:
    """Bias and spread of each skill as the findings name them."""
    alignment, stroke, pace, reading = ((float(bias), float(sd)) for bias, sd in invented.players[player])
    both = (alignment[0] + stroke[0], float(np.hypot(alignment[1], stroke[1])))
    lines = {"alignment": alignment, "start_line": stroke} if line_every(player) else {"start_line": both}
    return {**lines, "pace": pace, "reading": reading}


def _tour(name: str, true: Truth) -> float:
    """The tour's spread: of the start 0.9 degrees by the stroke and 0.45 by alignment, 6.5 % of pace, 10 % of the break."""
    spreads = {"alignment": np.radians(0.45), "start_line": np.radians(0.9), "pace": 0.065, "reading": 0.10}
    if name == "start_line" and "alignment" not in true:
        return float(np.hypot(*np.radians([0.9, 0.45])))
    return float(spreads[name])


def _bell(at: Any, bias: float, sd: float) -> Any:
    share = np.exp(-(((at - bias) / max(sd, 1e-9)) ** 2) / 2)
    return share / share.sum()


def _true_costs() -> Any:
    """What a fault costs, from rolls of the same set: putts taken over a grid of starts and rolls, where what misses is holed
    next as often as the set's own putts of its length, and after that."""
    greens = Greens(*(np.array(each) for each in zip(*((d, 10.0, 2.0, f) for d in SET_M for f in SET_FALLS_DEG), strict=True)))
    launch, needed = shoot(greens, PAST_M)
    which, turn, longer = (
        each.ravel() for each in np.meshgrid(np.arange(len(needed)), np.radians(SPAN_DEG), SPAN_LENGTH, indexing="ij")
    )
    struck = roll(greens.take(which), launch[which] * np.sqrt(1 + longer), needed[which] + turn)
    shape = (len(needed), len(SPAN_DEG), len(SPAN_LENGTH))
    holed = struck.holed.reshape(shape)
    left = np.abs(struck.stop - greens.distance_m[which]).reshape(shape)

    def putts(true: Truth) -> float:
        pace = _bell(SPAN_LENGTH, *true["pace"])
        lines = [true[name] for name in ("start_line", "alignment") if name in true]
        strokes = []
        for aim in needed:
            sd = np.sqrt((aim * true["reading"][1]) ** 2 + sum(line[1] ** 2 for line in lines))
            for side in (1, -1):
                bias = aim * true["reading"][0] + side * sum(line[0] for line in lines)
                strokes.append(np.outer(_bell(np.radians(SPAN_DEG), bias, max(sd, 0.002)), pace))
        made = [float((strokes[j] * holed[j // 2]).sum()) for j in range(len(strokes))]
        by_length = np.reshape(made, (len(SET_M), -1)).mean(1)
        again = 1 - np.interp(left, [0.0, *SET_M], [1.0, *by_length])
        missed = [float((strokes[j] * ~holed[j // 2] * again[j // 2]).sum()) for j in range(len(strokes))]
        return 100 * float(np.mean(2 - np.array(made) + np.array(missed)))

    def cost(true: Truth, name: str) -> float:
        return putts(true) - putts({**true, name: (0.0, _tour(name, true))})

    return cost
