from dataclasses import replace
from math import degrees, radians

import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.edges import Search
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.putt.window import Window, aim_tolerance, pace_tolerance, window

PUTTS = {
    "across": Putt(3, Surface(Station.measured(0, 2, 90)), 10, 0.3),
    "down": Putt(3, Surface(Station.measured(0, 3, 10)), 10, 0.3),
    "up": Putt(6, Surface(Station.measured(0, 2, 170)), 9, 0.4),
    "level": Putt(2, Surface(Station.measured(0, 0, 0)), 11, 0.2),
    "short": Putt(0.4, Surface(Station.measured(0, 4, 270)), 12, 0.1),
    "stations": Putt(3, Surface(Station.measured(0, 1, 60), Station.measured(2, 2, 100)), 10, 0.3),
}
HAIR = radians(0.005)


def holes(putt, launch, aim):
    return putt.finish(putt.roll(launch, aim)).holed


@pytest.fixture(params=PUTTS.values(), ids=list(PUTTS), scope="module")
def solved(request):
    putt = request.param
    found = solve(putt)
    return putt, found, window(putt, found)


def test_starts_inside_hole_and_outside_do_not(solved):
    putt, _, found = solved
    for launch, low, high in list(zip(found.launch, found.low, found.high, strict=True))[1:-1]:
        assert low < high
        for share in (0.02, 0.5, 0.98):
            assert holes(putt, launch, low + share * (high - low))
        assert not holes(putt, launch, low - HAIR)
        assert not holes(putt, launch, high + HAIR)


def test_between_the_speeds_the_edges_are_still_edges(solved):
    putt, _, found = solved
    for i in (2, 7, 12):
        launch = (found.launch[i] + found.launch[i + 1]) / 2
        low, high = found.edges(launch)
        allowed = 0.03 * (high - low) + HAIR
        assert holes(putt, launch, low + allowed)
        assert not holes(putt, launch, low - allowed)
        assert holes(putt, launch, high - allowed)
        assert not holes(putt, launch, high + allowed)


def test_nothing_is_holed_slower_or_faster(solved):
    putt, _, found = solved
    for launch, aim in ((found.launch[0] * 0.997, found.low[0]), (found.launch[-1] * 1.003, found.low[-1])):
        turns = [aim + radians(i / 20) for i in range(-40, 41)]
        assert not any(holes(putt, launch, turn) for turn in turns)
    assert found.edges(found.launch[0] * 0.99) is None


def test_tolerances_are_the_window_at_the_read(solved):
    putt, found, whole = solved
    right, left = aim_tolerance(putt, found)
    low, high = whole.edges(found.launch)
    assert (found.aim + right, found.aim + left) == pytest.approx((low, high), abs=0.03 * (high - low))
    short, long = pace_tolerance(putt, found)
    assert short < 0 < long
    for end, outwards in ((short, -0.002), (long, 0.002)):
        assert holes(putt, found.launch * (1 + end - outwards) ** 0.5, found.aim)
        assert not holes(putt, found.launch * (1 + end + outwards) ** 0.5, found.aim)


def test_most_borrow_is_soft_and_least_is_firm():
    putt = PUTTS["across"]
    found = solve(putt)
    most, least = window(putt, found).extremes(found.aim)
    assert most[0] < found.launch < least[0]
    assert most[1] > found.aim > least[1]


def test_soft_is_to_the_middle_of_the_launches_and_firm_from_there():
    """The middle one counts as both: by hand, on a putt that borrows to the left."""
    whole = Window((1.0, 1.1, 2.0, 2.9, 3.0), (0.04, 0.03, -0.02, 0.0, 0.0), (0.04, 0.06, 0.09, 0.03, 0.0))
    assert whole.extremes(0.02) == ((2.0, 0.09), (2.0, -0.02))


@pytest.mark.parametrize(
    ("distance", "stations"),
    [
        (3.0, [(0.0, 0.0, 0.0)]),
        (5.0, [(0.0, 2.0, 180.0)]),
        (8.0, [(0.0, 3.0, 90.0), (4.0, 1.0, 0.0), (8.0, 3.0, -90.0)]),
    ],
    ids=["level", "straight up", "both ways"],
)
def test_the_soft_ball_is_slower_than_the_firm_one_however_the_putt_turns(distance, stations):
    putt = Putt(distance, Surface(*(Station.measured(*each) for each in stations)), 10, 0.3)
    found = solve(putt)
    soft, firm = window(putt, found).extremes(found.aim)
    assert soft[0] < found.launch < firm[0]
    assert soft[1] != firm[1]


def test_mirrored():
    right = Putt(3, Surface(Station.measured(0, 2, 60)), 10, 0.3)
    left = Putt(3, Surface(Station.measured(0, 2, -60)), 10, 0.3)
    found = solve(right), solve(left)
    here, there = window(right, found[0]), window(left, found[1])
    assert here.launch == pytest.approx(there.launch)
    assert [degrees(a) for a in here.low] == pytest.approx([-degrees(a) for a in there.high], abs=0.01)


def test_a_pace_too_firm_for_the_hole_has_no_tolerance_yet_there_is_a_window():
    firm = Putt(3, Surface(Station.measured(0, 8, 180)), 5, 1.0)
    found = solve(firm)
    assert aim_tolerance(firm, found) is None
    assert pace_tolerance(firm, found) is None
    softer = replace(firm, past=0.3)
    assert window(firm, found).launch == pytest.approx(window(softer, solve(softer)).launch, rel=1e-3)


def test_where_a_harder_ball_is_started_is_known_from_the_first_alone():
    """Beside the read of the same putt to five centimetres more."""
    putt = PUTTS["stations"]
    found, harder = solve(putt), solve(replace(putt, past=0.35))
    search = Search(putt)
    search.begin(found)
    assert search.along(found.launch) == found.aim
    assert abs(search.along(harder.launch) - harder.aim) < abs(found.aim - harder.aim) / 4
