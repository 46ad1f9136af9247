"""The likelihood of holed putts against SciPy's own quadrature, and what a gate adds."""

from functools import partial
from math import inf, log, radians

import numpy as np
import pytest
import scipy.integrate
import scipy.stats

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.findings import ALIGNMENT, PACE, START_LINE
from pycore.record.looks import as_one, strokes
from pycore.record.opening import opening
from pycore.record.player import Holed, Miss, fit, fit_apart

B, S, C, Q = radians(0.4), radians(1.2), -0.03, 0.07
SHARE = 0.02  # of a putt's chance; twelve paces that a gate cuts unevenly


def putt(distance=3.0):
    found = Putt(distance, Surface(Station.measured(0.0, 2.0, 70.0)), 10.0, 0.3)
    return opening(found, solve(found))


@pytest.mark.parametrize("gate", [(-inf, inf), (0.0, inf)], ids=["open", "gate"])
def test_a_holed_putt_counts_by_the_share_that_its_opening_holds(gate):
    held = Holed(putt(), radians(0.3), *gate)
    nothing = strokes([], [])([B, log(S), C, log(Q)]).value
    found = strokes([], [held.rows(C, Q)])([B, log(S), C, log(Q)]).value - nothing

    def at(length):
        low, high = (edge - held.meant for edge in held.opening.edges(length))
        ends = scipy.stats.norm.cdf([max(low, gate[0]), max(low, gate[0], min(high, gate[1]))], B, S)
        return (ends[1] - ends[0]) * scipy.stats.norm.pdf(length, C, Q)

    share, _ = scipy.integrate.quad(at, held.opening.shortest, held.opening.longest, points=[held.opening.dying], limit=200)
    assert found == pytest.approx(log(share), abs=SHARE)


T = radians(0.7)


@pytest.mark.parametrize(
    ("seen", "place"),
    [(lambda hill: hill, [B, log(S), C, log(Q)]), (lambda hill: partial(as_one, hill), [B / 2, log(S), C, log(Q), B, log(T)])],
    ids=["start and roll", "stroke, roll and alignment"],
)
def test_slopes_and_information_are_those_of_the_value(seen, place):
    misses, holed = [Miss(0.02, 0.1), Miss(-0.03, -0.05)], [Holed(putt(), 0.0), Holed(putt(5.0), 0.01)]
    hill, nudge = seen(strokes(misses, [each.rows(C, Q) for each in holed])), 1e-5
    look = hill(place)
    for i in range(len(place)):
        up, down = (hill([x + way * (j == i) for j, x in enumerate(place)]) for way in (nudge, -nudge))
        assert look.slopes[i] == pytest.approx((up.value - down.value) / (2 * nudge), rel=1e-5, abs=1e-4)
        assert look.information[i] == pytest.approx(
            [-(a - b) / (2 * nudge) for a, b in zip(up.slopes, down.slopes, strict=True)], rel=1e-4, abs=1e-3
        )


def test_putts_without_the_balls_line_sharpen_those_with_it():
    """Of the 200 the start is known to the sum of both errors, of the 20 to each."""
    rng = np.random.default_rng(5)
    lines, stroke = rng.normal(0.006, 0.01, 220), rng.normal(-0.004, 0.016, 220)
    rolls = rng.normal(0.02, 0.07, 220)
    beliefs = [START_LINE, PACE, ALIGNMENT]
    unlined = [Miss(*each) for each in zip((lines + stroke)[20:], rolls[20:], strict=True)]
    lined = [Miss(*each) for each in zip(stroke[:20], rolls[:20], strict=True)]
    few, all_of_them = (fit_apart((some, []), (lined, []), lines[:20].tolist(), beliefs) for some in ([], unlined))
    for skill, truth in enumerate(((-0.004, 0.016), (0.02, 0.07), (0.006, 0.01))):
        sharp, blunt = all_of_them.skill(skill), few.skill(skill)
        for of, ends in enumerate((sharp.bias, sharp.sd)):
            assert ends.low < truth[of] < ends.high
        assert sharp.bias.high - sharp.bias.low < blunt.bias.high - blunt.bias.low


def test_a_gate_that_is_touched_tells_the_side_of_a_holed_putt():
    untold, left = (fit(([], [Holed(putt(), 0.0, *gate)] * 20), START_LINE, PACE).skill(0).bias for gate in ((), (0.0, inf)))
    assert left.low > untold.low
    assert left.low > 0


def test_a_record_that_cannot_be_is_no_news():
    """A putt meant 40 degrees aside and holed all the same was not logged as it was."""
    good = [Miss(*each) for each in np.random.default_rng(3).normal([0.01, 0.02], [0.02, 0.07], (40, 2))]
    honest = fit((good, []), START_LINE, PACE).skill(0).bias
    odd = fit((good, [Holed(putt(), radians(40.0))]), START_LINE, PACE).skill(0).bias
    assert odd.value == pytest.approx(honest.value, abs=radians(0.01))
