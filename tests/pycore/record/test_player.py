"""The likelihood of holed putts against SciPy's own quadrature, and what a gate adds."""

from math import inf, log, radians

import numpy as np
import pytest
import scipy.integrate
import scipy.stats

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.findings import PACE, START_LINE
from pycore.record.opening import opening
from pycore.record.player import Holed, Miss, _hill, fit

B, S, C, Q = radians(0.4), radians(1.2), -0.03, 0.07
SHARE = 0.02  # of a putt's chance; twelve paces that a gate cuts unevenly


def putt(distance=3.0):
    found = Putt(distance, Surface(Station.measured(0.0, 2.0, 70.0)), 10.0, 0.3)
    return opening(found, solve(found))


@pytest.mark.parametrize("gate", [(-inf, inf), (0.0, inf)], ids=["open", "gate"])
def test_a_holed_putt_counts_by_the_share_that_its_opening_holds(gate):
    held = Holed(putt(), radians(0.3), *gate)
    nothing = _hill([], [], START_LINE, PACE)([B, log(S), C, log(Q)]).value
    found = _hill([], [held.rows(C, Q)], START_LINE, PACE)([B, log(S), C, log(Q)]).value - nothing

    def at(length):
        low, high = (edge - held.meant for edge in held.opening.edges(length))
        ends = scipy.stats.norm.cdf([max(low, gate[0]), max(low, gate[0], min(high, gate[1]))], B, S)
        return (ends[1] - ends[0]) * scipy.stats.norm.pdf(length, C, Q)

    share, _ = scipy.integrate.quad(at, held.opening.shortest, held.opening.longest, points=[held.opening.dying], limit=200)
    assert found == pytest.approx(log(share), abs=SHARE)


def test_slopes_and_information_are_those_of_the_value():
    misses, holed = [Miss(0.02, 0.1), Miss(-0.03, -0.05)], [Holed(putt(), 0.0), Holed(putt(5.0), 0.01)]
    hill = _hill(misses, [each.rows(C, Q) for each in holed], START_LINE, PACE)
    place, nudge = [B, log(S), C, log(Q)], 1e-5
    look = hill(place)
    for i in range(4):
        up, down = (hill([x + way * (j == i) for j, x in enumerate(place)]) for way in (nudge, -nudge))
        assert look.slopes[i] == pytest.approx((up.value - down.value) / (2 * nudge), rel=1e-5, abs=1e-4)
        assert look.information[i] == pytest.approx(
            [-(a - b) / (2 * nudge) for a, b in zip(up.slopes, down.slopes, strict=True)], rel=1e-4, abs=1e-3
        )


def test_a_gate_that_is_touched_tells_the_side_of_a_holed_putt():
    untold, left = (
        fit([], [Holed(putt(), 0.0, *gate)] * 20, START_LINE, PACE).start_line_skill().bias for gate in ((), (0.0, inf))
    )
    assert left.low > untold.low
    assert left.low > 0


def test_a_record_that_cannot_be_is_no_news():
    """A putt meant 40 degrees aside and holed all the same was not logged as it was."""
    good = [Miss(*each) for each in np.random.default_rng(3).normal([0.01, 0.02], [0.02, 0.07], (40, 2))]
    honest = fit(good, [], START_LINE, PACE).start_line_skill().bias
    odd = fit(good, [Holed(putt(), radians(40.0))], START_LINE, PACE).start_line_skill().bias
    assert odd.value == pytest.approx(honest.value, abs=radians(0.01))
