"""What a survey leaves open of a read does not hang on how its map lies."""

from cmath import rect
from dataclasses import replace
from math import radians

import numpy as np
import pytest

from pycore.green.surveyed import Surveyed
from pycore.green.walked import walked
from pycore.putt.line_doubt import spread
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from tests.invented_greens import MISPLACED, invented, walk

BALL, HOLE = 4 + 3j, 7 + 8j


def spread_on(readings, turn):
    """Of the putt on a green that is turned as a whole."""
    by = rect(1.0, radians(turn))
    found = walked([replace(each, place=each.place * by, gradient=each.gradient * by) for each in readings], MISPLACED)
    surface = Surveyed(found.relief, BALL * by, (HOLE - BALL) / abs(HOLE - BALL) * by)
    putt = Putt(abs(HOLE - BALL), surface, 10.0, 0.3)
    solved = solve(putt)
    assert solved
    return spread(putt, solved, surface, found.survey)


@pytest.mark.parametrize("turn", [50, 90, -130])
def test_it_is_the_same_whichever_way_the_map_lies(turn):
    readings = invented(5).read(walk(4), np.random.default_rng(5))
    straight, turned = spread_on(readings, 0), spread_on(readings, turn)
    assert turned.aim == pytest.approx(straight.aim, rel=0.001)
    assert turned.launch == pytest.approx(straight.launch, rel=0.001)
