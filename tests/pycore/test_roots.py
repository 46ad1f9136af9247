from math import cos, exp, inf, nan

import pytest

from pycore.errors import BracketError
from pycore.roots import glance, peak, zero


@pytest.mark.parametrize(
    ("f", "a", "b", "x"),
    [
        (lambda x: cos(x) - x, 0.0, 1.0, 0.7390851332151607),
        (lambda x: x**3, -1.0, 2.0, 0.0),
        (lambda x: exp(20 * x) - 1, -1.0, 1.0, 0.0),
        (lambda x: 1.0 if x > 0.3 else -1.0, 0.0, 1.0, 0.3),
    ],
)
def test_zero(f, a, b, x):
    assert zero(f, a, b, f(a), f(b), 1e-10) == pytest.approx(x, abs=1e-9)
    assert zero(f, b, a, f(b), f(a), 1e-10) == pytest.approx(x, abs=1e-9)


def test_zero_at_an_end():
    assert zero(lambda x: x - 1, 1.0, 5.0, 0.0, 4.0, 1e-9) == 1.0
    assert zero(lambda x: x - 5, 1.0, 5.0, -4.0, 0.0, 1e-9) == 5.0


@pytest.mark.parametrize(("at_a", "at_b"), [(1.0, 2.0), (-1.0, -2.0), (nan, 1.0), (-1.0, nan), (1e-300, 1e-300)])
def test_no_zero_is_made_up(at_a, at_b):
    with pytest.raises(BracketError):
        zero(lambda x: at_a + x * (at_b - at_a), 0.0, 1.0, at_a, at_b, 1e-9)


@pytest.mark.parametrize("start", [-3.0, 0.2, 1.9])
def test_peak(start):
    x, value = peak(lambda x: -((x - 0.7) ** 2) - abs(x - 0.7), start, 0.1, inf, 1e-4)
    assert x == pytest.approx(0.7, abs=1e-3)
    assert value == pytest.approx(0, abs=2e-3)


def test_the_peak_of_a_parabola_is_where_the_first_parabola_says():
    """Three values to begin with, a few to bring it between them, one there, and one close by on either side."""
    calls = []

    def parabola(x):
        calls.append(x)
        return -((x - 0.7) ** 2)

    assert peak(parabola, 0.2, 0.1, inf, 1e-6)[0] == pytest.approx(0.7, abs=1e-9)
    assert len(calls) <= 9


def test_peak_stops_where_it_is_high_enough():
    calls = []

    def parabola(x):
        calls.append(x)
        return -x * x

    peak(parabola, 0.01, 0.1, -1.0, 1e-9)
    assert len(calls) == 1


def test_glance_finds_a_falling_zero_or_says_nothing():
    assert glance(lambda x: 0.25 - x * x, 0.6, 0.02, 1e-9) == pytest.approx(0.5)
    assert glance(lambda x: x * x - 0.25, 0.6, 0.02, 1e-9) is None
    assert glance(lambda x: 1.0, 0.6, 0.02, 1e-9) is None
