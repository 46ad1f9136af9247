"""The promise of the findings, kept for 300 invented players of 150 putts that numpy struck."""

from math import degrees

import numpy as np
import pytest

from bench import independent
from pycore.fields import parse
from pycore.record.cost import costs
from pycore.record.findings import BREAK, PACE, START_LINE, lines_suffice, skills
from pycore.record.logged import evidence
from pycore.record.player import Miss, fit
from pycore.record.requests import FindingsFields

COVERED = (0.90, 0.98)  # of 95 % intervals
FAIR = 200  # intervals of a kind; of a hundred, 99 hold the truth by luck in one kind of twenty-seven
NAMED_FIRST = 0.80  # of players whose costs differ
DIFFERS = 3.0  # putts in a hundred
SET_M, SET_FALLS_DEG = (1.0, 1.5, 2.0, 3.0, 4.5, 6.0), (45.0, 135.0)  # the cost's own set; its other half mirrors this
SPAN_DEG, SPAN_LENGTH = np.arange(-7, 7.01, 0.1), np.arange(-0.5, 0.5001, 0.02)
HUNDREDTH_DEG = 0.01


def found(record, logged, player):
    fields = parse(FindingsFields, {"putts": logged(record, player, line_every(player))})
    return [each for putt in fields.logged() if not isinstance(each := evidence(putt), str)]


def line_every(player):
    """A third of the players never log the ball's line, a third always, a third every fourth time."""
    return (0, 1, 4)[player % 3]


@pytest.fixture(scope="module")
def findings(invented, logged):
    """Skills, costs and evidence of every player; see ``line_every``."""
    return [
        (known := skills(each := found(invented, logged, player), lines_suffice(each)), costs(known), each)
        for player in range(len(invented.players))
    ]


def truth(invented, player):
    """Bias and spread of each skill as the findings name them."""
    alignment, stroke, pace, reading = invented.players[player]
    both = (alignment[0] + stroke[0], np.hypot(alignment[1], stroke[1]))
    lines = {"alignment": alignment, "start_line": stroke} if line_every(player) else {"start_line": both}
    return {**lines, "pace": pace, "reading": reading}


def tour(name, faults):
    """The tour's spread: of the start 0.9 degrees by the stroke and 0.45 by alignment, 6.5 % of pace, 10 % of the break."""
    spreads = {"alignment": np.radians(0.45), "start_line": np.radians(0.9), "pace": 0.065, "reading": 0.10}
    return np.hypot(*np.radians([0.9, 0.45])) if name == "start_line" and "alignment" not in faults else spreads[name]


def covered(invented, known):
    """Whether each interval holds the truth, by what it is of."""
    inside: dict[tuple[str, str], list[bool]] = {}
    for player, said in enumerate(known):
        for name, (bias, sd) in truth(invented, player).items():
            if name in said:
                inside.setdefault((name, "bias"), []).append(said[name].bias.low <= bias <= said[name].bias.high)
                inside.setdefault((name, "sd"), []).append(said[name].sd.low <= sd <= said[name].sd.high)
    return inside


def test_the_players_are_struck_as_scipy_strikes(invented):
    greens = invented.greens
    for i in range(0, len(invented.needed), 40):
        green = independent.Green(greens.stimp_ft[i], [(0.0, greens.slope_percent[i], greens.fall_deg[i])])
        _, aim = independent.shoot(green, greens.distance_m[i], 0.3)
        assert degrees(invented.needed[i]) == pytest.approx(degrees(aim), abs=HUNDREDTH_DEG)


def test_nineteen_intervals_in_twenty_hold_the_truth(invented, findings):
    inside = covered(invented, [known for known, *_ in findings])
    assert set(inside) == {(name, what) for name in ("alignment", "start_line", "pace", "reading") for what in ("bias", "sd")}
    assert COVERED[0] <= np.mean([each for of_one in inside.values() for each in of_one]) <= COVERED[1]
    for what, each in inside.items():
        assert len(each) >= FAIR
        assert COVERED[0] <= np.mean(each) <= COVERED[1], what


def test_without_the_holed_putts_they_do_not(invented, findings):
    def misses_alone(evidence):
        strokes = fit(([each.strike for each in evidence if isinstance(each.strike, Miss)], []), START_LINE, PACE, BREAK)
        return {"start_line": strokes.skill(0), "pace": strokes.skill(1)}

    # the ball's line is left out of it: only players who did not log it
    known = [misses_alone(each) if not line_every(player) else {} for player, (*_, each) in enumerate(findings)]
    inside = covered(invented, known)
    assert np.mean([each for of_one in inside.values() for each in of_one]) < COVERED[0]
    assert np.mean(inside["start_line", "sd"]) < COVERED[0]


@pytest.fixture(scope="module")
def true_costs(invented, strike):
    """What each player's faults cost, from rolls of the same set: the share of a grid of starts and rolls that hole."""
    greens = strike.Greens(
        *(np.array(each) for each in zip(*((d, 10.0, 2.0, f) for d in SET_M for f in SET_FALLS_DEG), strict=True))
    )
    launch, needed = strike.shoot(greens, 0.3)
    which, turn, longer = (
        each.ravel() for each in np.meshgrid(np.arange(len(needed)), np.radians(SPAN_DEG), SPAN_LENGTH, indexing="ij")
    )
    holed = strike.roll(greens.take(which), launch[which] * np.sqrt(1 + longer), needed[which] + turn).holed
    holed = holed.reshape(len(needed), len(SPAN_DEG), len(SPAN_LENGTH))

    def bell(at, bias, sd):
        share = np.exp(-(((at - bias) / max(sd, 1e-9)) ** 2) / 2)
        return share / share.sum()

    def holed_per_100(players):
        pace = bell(SPAN_LENGTH, *players["pace"])
        lines = [players[name] for name in ("start_line", "alignment") if name in players]
        total = 0.0
        for i, aim in enumerate(needed):
            sd = np.sqrt((aim * players["reading"][1]) ** 2 + sum(line[1] ** 2 for line in lines))
            for side in (1, -1):
                bias = aim * players["reading"][0] + side * sum(line[0] for line in lines)
                total += bell(np.radians(SPAN_DEG), bias, max(sd, 0.001)) @ holed[i] @ pace
        return 100 * total / (2 * len(needed))

    def costs_of(player):
        faults = truth(invented, player)
        return {name: holed_per_100({**faults, name: (0.0, tour(name, faults))}) - holed_per_100(faults) for name in faults}

    return [costs_of(player) for player in range(len(invented.players))]


def test_the_dearest_fault_is_named_first(findings, true_costs):
    first = []
    for (_, said, _), true in zip(findings, true_costs, strict=True):
        ordered = sorted(true, key=true.get, reverse=True)
        if true[ordered[0]] - true[ordered[1]] >= DIFFERS:
            first.append(next(iter(said)) == ordered[0])
    assert len(first) > 50
    assert np.mean(first) >= NAMED_FIRST


def test_intervals_of_costs_hold_the_truth(findings, true_costs):
    inside = [
        said[name].putts.low <= true[name] <= said[name].putts.high
        for (_, said, _), true in zip(findings, true_costs, strict=True)
        for name in true
    ]
    assert COVERED[0] <= np.mean(inside) <= COVERED[1]
