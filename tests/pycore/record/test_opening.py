"""The opening against the window that is searched edge by edge."""

from math import sqrt

import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.putt.window import window
from pycore.record.opening import Curve, opening

OF_THE_WIDTH = 0.2  # the worst of an edge, where a ball all but dies at the hole's rim
WIDE_ENOUGH = 0.3  # of the widest; nearer to its ends the window closes and little is holed there
ENDS = 0.015  # of the roll
SHARE = 0.03  # of the putts holed


@pytest.mark.parametrize(
    ("distance", "stations"),
    [
        (0.8, [(0.0, 1.5, 90.0)]),
        (2.0, [(0.0, 2.0, 90.0)]),
        (5.0, [(0.0, 1.5, 40.0)]),
        (9.0, [(0.0, 2.0, 150.0)]),
        (3.0, [(0.0, 2.5, 0.0)]),
        (3.0, [(0.0, 0.0, 0.0)]),
        (4.0, [(0.0, 1.0, 90.0), (4.0, 2.0, 45.0)]),
    ],
)
def test_it_is_the_window(distance, stations):
    putt = Putt(distance, Surface(*(Station.measured(*station) for station in stations)), 10.0, 0.3)
    found = solve(putt)
    laid, exact = opening(putt, found), window(putt, found)
    lengths = [(launch / found.launch) ** 2 - 1 for launch in exact.launch]
    assert (laid.shortest, laid.longest) == pytest.approx((lengths[0], lengths[-1]), abs=ENDS)
    widest = max(high - low for low, high in zip(exact.low, exact.high, strict=True))
    compared = 0
    for length, low, high in zip(lengths, exact.low, exact.high, strict=True):
        if high - low < WIDE_ENOUGH * widest or length < laid.dying:
            continue
        compared += 1
        assert laid.edges(length) == pytest.approx((low - found.aim, high - found.aim), abs=OF_THE_WIDTH * (high - low))
    assert compared >= 8
    area = sum(row.weight * (row.high - row.low) for row in laid.rows(0.0, 10.0))
    steps = zip(lengths, lengths[1:], exact.low, exact.low[1:], exact.high, exact.high[1:], strict=False)
    assert area == pytest.approx(sum((b - a) * (h + k - f - g) / 2 for a, b, f, g, h, k in steps), rel=SHARE)


def test_a_curve_goes_through_its_points():
    places, values = [0.0, 0.5, 0.7, 1.0], [1.0, sqrt(2), -3.0, 0.2]
    curve = Curve.through(places, values)
    assert [curve.at(place) for place in places] == pytest.approx(values)


def test_a_ball_that_all_but_dies_at_the_rim_is_in_it():
    putt = Putt(3.0, Surface(Station.measured(0.0, 2.0, 90.0)), 10.0, 0.3)
    found = solve(putt)
    laid, exact = opening(putt, found), window(putt, found)
    shortest, dying = laid.shortest, laid.dying
    for share in (0.1, 0.2, 0.3):
        length = shortest + share * (dying - shortest)
        low, high = exact.edges(found.launch * sqrt(1 + length))
        right, left = laid.edges(length)
        assert (right, left) == pytest.approx((low - found.aim, high - found.aim), abs=OF_THE_WIDTH * (high - low))
