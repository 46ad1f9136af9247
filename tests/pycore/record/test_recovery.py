"""The players behind the findings' promise (``tests/prove/recovery.py``), and that holed putts are needed to keep it."""

from math import degrees

import numpy as np
import pytest

from bench import independent
from pycore.record.findings import BREAK, PACE, START_LINE, TILT
from pycore.record.player import Miss, fit
from tests.prove.recovery import evidence_of, line_every, truth

COVERED = 0.90  # at least, of 95 % intervals
HUNDREDTH_DEG = 0.01


def test_the_players_are_struck_as_scipy_strikes(invented):
    greens = invented.greens
    for i in range(0, len(invented.needed), 40):
        green = independent.Green(greens.stimp_ft[i], [(0.0, greens.slope_percent[i], greens.fall_deg[i])])
        _, aim = independent.shoot(green, greens.distance_m[i], 0.3)
        assert degrees(invented.needed[i]) == pytest.approx(degrees(aim), abs=HUNDREDTH_DEG)


def test_without_the_holed_putts_the_promise_is_not_kept(invented):
    held = []
    for player in range(len(invented.players)):
        if line_every(player):
            continue  # the ball's line is left out of it
        misses = [each.strike for each in evidence_of(invented, player) if isinstance(each.strike, Miss)]
        strokes = fit((misses, []), [START_LINE, PACE, BREAK, TILT])
        for i, name in enumerate(("start_line", "pace")):
            bias, sd = truth(invented, player)[name]
            said = strokes.skill(i)
            held += [said.bias.low <= bias <= said.bias.high, said.sd.low <= sd <= said.sd.high]
    assert np.mean(held) < COVERED
