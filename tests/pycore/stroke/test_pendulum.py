"""The driven pendulum against what its paper says of it (P: R. Grober, arXiv:0903.1762)."""

from math import pi, sin

import pytest

from pycore.stroke import pendulum

EXACT = 1e-12
SMALL = 1e-5  # of the phase, for slopes by difference


def slope(f, at):
    return (f(at + SMALL) - f(at - SMALL)) / (2 * SMALL)


def test_top_at_two_thirds_of_the_time_to_impact():
    assert pytest.approx(2 / 3, abs=EXACT) == pendulum.TOP / pendulum.IMPACT
    assert pendulum.rate(pendulum.TOP) == pytest.approx(0, abs=EXACT)
    assert pendulum.position(pendulum.TOP) == pytest.approx(-1, abs=EXACT)


def test_constant_speed_at_impact():
    assert pendulum.position(pendulum.IMPACT) == pytest.approx(0, abs=EXACT)
    assert slope(pendulum.rate, pendulum.IMPACT) == pytest.approx(0, abs=1e-6)
    assert pendulum.rate(pendulum.IMPACT) == max(pendulum.rate(i * pi / 600) for i in range(801))


def test_it_is_the_formula():
    for i in range(50):
        t = i * pi / 40
        assert pendulum.position(t) == pytest.approx((sin(2 * t) - 2 * sin(t)) / 2.598076211353316, abs=EXACT)
        assert slope(pendulum.position, t) == pytest.approx(pendulum.rate(t), abs=1e-8)


@pytest.mark.parametrize("ratio", [1.5, 2, 3])
def test_a_swing_keeps_its_times(ratio):
    swing = pendulum.Swing(0.3 * ratio, 0.3)
    assert swing.position(0) == pytest.approx(0, abs=EXACT)
    assert swing.position(swing.back) == pytest.approx(-1, abs=EXACT)
    assert swing.position(swing.back + 0.3) == pytest.approx(0, abs=EXACT)
    assert swing.position(swing.finish) == pytest.approx(1, abs=EXACT)
    # Grober: speed at impact is 4 pi / (3 * 2.598) backswings over the time of the forward swing
    assert swing.rate(swing.back + 0.3) == pytest.approx(4 * pi / 3 / 2.598076211353316 / 0.3, rel=1e-9)
