"""What a fault costs, and from where on it is told."""

from math import radians

import pytest
from scipy.stats import norm

from pycore.record.cost import FIRST_ORDER, YARDSTICKS, costs, leans
from pycore.record.player import Skill
from pycore.stats.intervals import Estimate

Z = norm.ppf(0.975)
# Bonferroni: one false alarm in twenty records, three biases looked at both ways and three spreads upwards
OF_A_BIAS, OF_A_SPREAD = norm.ppf(1 - 0.05 / 6 / 2), norm.ppf(1 - 0.05 / 6)


@pytest.mark.parametrize(("side", "told"), [(0.995, False), (1.005, True)])
@pytest.mark.parametrize("way", [-1, 1])
def test_a_lean_is_told_beyond_what_six_looks_at_once_find_by_chance(side, told, way):
    error = 0.03
    bias = way * side * OF_A_BIAS * error
    assert leans(Estimate(bias, bias - Z * error, bias + Z * error)) == told


def known(pace_low, pace, pace_high):
    start = YARDSTICKS["tour"]["start_line"]
    none = Estimate(0.0, 0.0, 0.0)
    return {
        "start_line": Skill(none, Estimate(start, start, start), 100, 0.0),
        "pace": Skill(none, Estimate(pace, pace_low, pace_high), 100, 0.0),
        "reading": Skill(none, Estimate(0.1, 0.1, 0.1), 100, 0.0),
        "alignment": Skill(none, Estimate(radians(0.45), radians(0.45), radians(0.45)), 100, 0.0),
    }


def test_a_cost_reaches_as_far_as_three_spreads_at_once_ask_for():
    """The far end of a spread's 95 % interval, stretched; a standard deviation of 7 % of the cost beside it."""
    low, pace, high = 0.08, 0.10, 0.12
    cost = costs(known(low, pace, high))["pace"].putts
    at = {end: costs(known(end, end, end))["pace"].putts.value for end in (low, high)}
    for end, reached in ((low, cost.low), (high, cost.high)):
        half = ((at[end] - cost.value) ** 2 + (Z * FIRST_ORDER * cost.value) ** 2) ** 0.5
        assert abs(reached - cost.value) == pytest.approx(OF_A_SPREAD / Z * half, rel=0.001)
