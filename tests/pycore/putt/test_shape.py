import itertools

import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.shape import apex, path
from pycore.putt.solve import solve

MILLIMETRE = 1e-3


@pytest.mark.parametrize("stations", [[(0, 2, 70)], [(0, 3, 90), (2, 2, 250)]])
def test_apex_is_the_farthest_point(stations):
    putt = Putt(3, Surface(*(Station.measured(*station) for station in stations)), 10, 0.3)
    found = solve(putt)
    x, y = apex(putt, found)
    points = [point for point in path(found.roll) if point[0] <= found.hole.t]
    assert abs(y) == pytest.approx(max(abs(point[2]) for point in points), abs=MILLIMETRE)
    assert any(abs(point[1] - x) < 0.05 and abs(point[2] - y) < MILLIMETRE for point in points)


def test_apex_of_a_straight_putt_is_half_way():
    putt = Putt(3, Surface(Station.measured(0, 2, 0)), 10, 0.3)
    found = solve(putt)
    assert apex(putt, found) == (1.5, 0)


@pytest.mark.parametrize("slope", [0, 2, 7.8])
def test_path_is_smooth_and_ends_at_rest(slope):
    putt = Putt(5, Surface(Station.measured(0, slope, 80)), 10, 0.3)
    points = path(solve(putt).roll)
    assert len(points) < 200
    assert points[0][:3] == (0, 0, 0)
    assert points[-1][3] == 0
    steps = [((b[1] - a[1]) ** 2 + (b[2] - a[2]) ** 2) ** 0.5 for a, b in itertools.pairwise(points)]
    assert max(steps) < 0.05 * sum(steps)
    assert all((b[0] >= a[0] and b[3] <= a[3] + 1e-3) or slope for a, b in itertools.pairwise(points))
