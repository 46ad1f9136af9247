"""The likelihood of holed putts against SciPy's own quadrature, and its gradient and information against differences."""

from functools import partial
from math import exp, inf, log, radians

import pytest
import scipy.integrate
import scipy.stats

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.opening import opening
from pycore.record.player import Holed, Miss, Passed
from pycore.record.terms import LEVEL, Given, _moved, as_one, normal, strokes

B, S, C, Q = radians(0.4), radians(1.2), -0.03, 0.07
T = radians(0.7)
BREAK = (-0.2, log(0.15), 0.1, log(0.12))
SHARE = 0.02  # of a putt's chance; twelve paces that a gate cuts unevenly


def putt(distance=3.0):
    found = Putt(distance, Surface(Station.measured(0.0, 2.0, 70.0)), 10.0, 0.3)
    return opening(found, solve(found))


@pytest.mark.parametrize("gate", [(-inf, inf), (0.0, inf)], ids=["open", "gate"])
def test_a_holed_putt_counts_by_the_share_that_its_opening_holds(gate):
    holed = Holed(putt(), radians(0.3), *gate)
    nothing = strokes([], [])([B, log(S), C, log(Q), *BREAK]).value
    found = strokes([], [(holed.rows(C, Q), LEVEL)])([B, log(S), C, log(Q), *BREAK]).value - nothing

    def at(length):
        low, high = (edge - holed.meant for edge in holed.opening.edges(length))
        ends = scipy.stats.norm.cdf([max(low, gate[0]), max(low, gate[0], min(high, gate[1]))], B, S)
        return (ends[1] - ends[0]) * scipy.stats.norm.pdf(length, C, Q)

    share, _ = scipy.integrate.quad(at, holed.opening.shortest, holed.opening.longest, points=[holed.opening.dying], limit=200)
    assert found == pytest.approx(log(share), abs=SHARE)


@pytest.mark.parametrize(
    ("seen", "place"),
    [
        (lambda log_likelihood: log_likelihood, [B, log(S), C, log(Q), *BREAK]),
        (lambda log_likelihood: partial(as_one, log_likelihood), [B / 2, log(S), C, log(Q), *BREAK, B, log(T)]),
    ],
    ids=["start and roll", "stroke, roll and alignment"],
)
def test_slopes_and_information_are_those_of_the_value(seen, place):
    misses, holed = (
        [Miss(0.02, 0.1, Given(0.1, 0.2, 0.15, 0.3, 0.01, 0.02)), Miss(-0.03, -0.05)],
        [Holed(putt(), 0.0), Holed(putt(5.0), 0.01)],
    )
    log_likelihood, nudge = (
        seen(
            strokes(
                misses, [(each.rows(C, Q), of) for each, of in zip(holed, (Given(0.08, -0.2, 0.1, 0.2), LEVEL), strict=True)]
            )
        ),
        1e-5,
    )
    here = log_likelihood(place)
    for i in range(len(place)):
        up, down = (log_likelihood([x + way * (j == i) for j, x in enumerate(place)]) for way in (nudge, -nudge))
        assert here.gradient[i] == pytest.approx((up.value - down.value) / (2 * nudge), rel=1e-5, abs=1e-4)
        assert here.information[i] == pytest.approx(
            [-(a - b) / (2 * nudge) for a, b in zip(up.gradient, down.gradient, strict=True)], rel=1e-4, abs=1e-3
        )


def test_a_miss_that_nobody_saw_counts_by_all_that_is_not_the_opening():
    place = [B, log(S), C, log(Q), *BREAK]

    def share(putt):
        return exp(strokes([], [(putt.rows(C, Q), LEVEL)])(place).value)

    window, meant = putt(), radians(0.3)
    missed = share(Passed(window, meant))
    assert share(Holed(window, meant)) + missed == pytest.approx(1, abs=SHARE)
    assert sum(share(Passed(window, meant, side=side)) for side in ("left", "right")) == pytest.approx(missed, abs=SHARE)
    assert sum(share(Passed(window, meant, length=length)) for length in ("short", "long")) == pytest.approx(missed, abs=SHARE)


def test_the_variances_of_what_is_not_known_of_a_putt_add_up():
    given = Given(aim=0.05, aside=0.04, along=0.3, blur=0.01, stretch=0.06)
    _, start, roll = _moved(given, S**2, Q**2, 0.2**2, 0.15**2)
    assert start**2 == pytest.approx(S**2 + (0.2 * 0.05) ** 2 + (0.15 * 0.04) ** 2 + 0.01**2)
    assert roll**2 == pytest.approx(Q**2 + (0.15 * 0.3) ** 2 + 0.06**2)


def test_of_errors_that_are_known_the_information_is_fishers():
    """At its top a normal likelihood of n errors is known to n / sd^2 of its mean, and to 2 n of the log of its spread."""
    errors = [0.3, -0.1, 0.25, 0.05, -0.2]
    mean = sum(errors) / 5
    sd = (sum((each - mean) ** 2 for each in errors) / 5) ** 0.5
    top = normal(errors)([mean, log(sd)])
    assert top.gradient == pytest.approx([0, 0], abs=1e-12)
    for matrix in (top.information, top.complete):
        assert matrix[0] == pytest.approx([5 / sd**2, 0])
        assert matrix[1] == pytest.approx([0, 10])
