"""Height lines, by plain geometry."""

from itertools import pairwise
from math import hypot

import pytest

from pycore.green.contours import MOST_LINES, contours

SIDE = [float(i) for i in range(11)]


def test_on_a_plane_they_are_straight_and_evenly_apart():
    """A slope of 2 % rises 20 mm a metre: with lines 50 mm apart, one every 2.5 m."""
    found = contours(lambda x, _: 0.02 * x + 0.001, SIDE, SIDE, 0.05)
    assert [height for height, _ in found] == pytest.approx([0.05, 0.1, 0.15, 0.2])
    for height, line in found:
        assert len(line) == len(SIDE)
        assert {round(x, 4) for x, _ in line} == {round((height - 0.001) / 0.02, 4)}


def test_round_a_bowl_they_close():
    found = contours(lambda x, y: 0.01 * hypot(x - 5, y - 5) ** 2, SIDE, SIDE, 0.1)
    line = next(line for height, line in found if height == pytest.approx(0.1))
    assert line[0] == line[-1]
    assert all(hypot(x - 5, y - 5) == pytest.approx(10**0.5, abs=1e-4) for x, y in line)


@pytest.mark.parametrize(("tip", "corners"), [(0.1, {(1, 0), (0, 1)}), (-0.1, {(0, 0), (1, 1)})])
def test_over_a_saddle_a_line_parts_what_the_middle_does_not_join(tip, corners):
    """One cell; its middle lies just above or below the line, farther up the sheet it does not."""
    found = contours(lambda x, y: (2 * x - 1) * (2 * y - 1) + tip * (1.5 - y), [0.0, 1.0], [0.0, 1.0], 5.0)
    lines = [line for height, line in found if height == 0]
    assert len(lines) == 2
    cut_off = {
        min(((a, b) for a in (0, 1) for b in (0, 1)), key=lambda c: sum(hypot(x - c[0], y - c[1]) for x, y in line))
        for line in lines
    }
    assert cut_off == corners


@pytest.mark.parametrize(("rise", "step"), [(0.14, 0.01), (0.15, 0.02), (0.3, 0.05), (1.0, 0.1), (14.0, 1.0), (30.0, 1.0)])
def test_there_are_no_more_than_can_be_told_apart(rise, step):
    """Steps of 1, 2, 5, 10, 20, 50 and 100 units; the largest serves what is higher still."""
    heights = [height for height, _ in contours(lambda x, _: rise * x / 10 + 0.0003, SIDE, SIDE, 0.01)]
    assert {round(b - a, 6) for a, b in pairwise(heights)} == {step}
    assert len(heights) <= MOST_LINES + 1 or step == 1.0
