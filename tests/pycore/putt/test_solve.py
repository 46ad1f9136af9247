import random
from dataclasses import replace
from math import degrees, hypot, inf, radians, tan

import pytest

from bench import independent
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import NoPutt, Read, read, solve
from pycore.units import FOOT, INCH

MILLIMETRE = 1e-3


def plane(distance, slope_percent, fall_deg, stimp_ft=10, past=0.3):
    return Putt(distance, Surface(Station.measured(0, slope_percent, fall_deg)), stimp_ft, past)


def test_putts_across_the_slope(published):
    for row in published("reads"):
        putt = plane(row["distance_ft"] * FOOT, row["slope_percent"], 90, row["stimp_ft"])
        soft, firm = 0.0, 1.0
        for _ in range(50):  # the published putts are given by their speed at the hole
            past = (soft + firm) / 2
            found = solve(replace(putt, past=past))
            soft, firm = (past, firm) if found.hole.speed < row["entry_mps"] else (soft, past)
        assert degrees(found.aim) == pytest.approx(row["aim_deg"], abs=0.51e-4)
        assert found.launch == pytest.approx(row["launch_mps"], abs=0.51e-5)
        if "time_s" in row:
            assert found.hole.t == pytest.approx(row["time_s"], abs=0.51e-4)


def test_level_putt_that_dies_at_the_hole():
    found = solve(plane(10 * FOOT, 0, 0, past=0))
    assert found.launch == pytest.approx(1.830)  # D: the Stimpmeter's own putt
    assert found.aim == 0
    assert found.hole.speed == pytest.approx(0, abs=1e-6)


def test_what_the_trade_expects_of_a_putt_across_two_percent():
    # C, common practice, no source: 8.3 ft across 2 % on a tournament green is played about 10 in outside the middle
    found = solve(plane(8.3 * FOOT, 2, 90, stimp_ft=10.5, past=FOOT))
    assert 8.3 * FOOT * tan(found.aim) / INCH == pytest.approx(10, abs=0.5)


def test_signs():
    assert solve(plane(3, 2, 90)).aim > 0  # falls right, start left
    assert solve(plane(3, 2, 270)).aim == pytest.approx(-solve(plane(3, 2, 90)).aim)
    assert solve(plane(3, 2, 0)).launch < solve(plane(3, 0, 0)).launch < solve(plane(3, 2, 180)).launch


def assert_solved(putt, found, within=MILLIMETRE / 10):
    assert hypot(found.hole.x - putt.distance, found.hole.y) < within
    nearest = putt.finish(found.roll)
    assert nearest.offset < within
    rest = found.roll.at(inf)
    if putt.past == 0:
        assert hypot(rest.x - putt.distance, rest.y) < within


def test_every_putt_on_a_plane_has_its_read_or_its_reason():
    chance = random.Random(3)
    solved = 0
    for _ in range(3000):
        putt = plane(
            chance.uniform(0.3, 30),
            chance.choice([0, 8, chance.uniform(0, 8), chance.uniform(0, 0.01)]),
            chance.choice([0, 90, 180, 270, chance.uniform(0, 360)]),
            chance.uniform(5, 15),
            chance.choice([0, 1, chance.uniform(0, 1)]),
        )
        found = read(putt)
        if isinstance(found, NoPutt):
            assert abs(putt.downhill) >= putt.rho
            assert found.instead is None
        elif abs(putt.downhill) < 0.99 * putt.rho:
            assert_solved(putt, found)
            solved += 1
    assert solved > 2000


@pytest.mark.parametrize("kind", ["plane", "stations"])
def test_scipy_holes_what_the_engine_reads(kind):
    chance = random.Random(4)
    compared = 0
    while compared < 110:
        distance, stimp_ft, past = chance.uniform(0.5, 15), chance.uniform(6, 13), chance.uniform(0, 0.6)
        slope, fall = chance.uniform(0, 4), chance.uniform(0, 360)
        stations = [(0.0, slope, fall)]
        if kind == "stations":
            stations += [(distance * share, slope + chance.uniform(0, 1), fall + chance.gauss(0, 25)) for share in (0.4, 0.9)]
        putt = Putt(distance, Surface(*(Station.measured(*s) for s in stations)), stimp_ft, past)
        found = read(putt)
        if isinstance(found, NoPutt):
            assert abs(putt.downhill) > 0.6 * putt.rho
            continue
        green = independent.Green(stimp_ft, stations)
        assert hypot(*independent.miss(green, distance, past, found.launch, found.aim)) < MILLIMETRE / 10
        compared += 1


@pytest.mark.parametrize("stations", [[(0, 2, 60)], [(0, 1, 60), (1, 2, 90), (2, 2.5, 120)]])
def test_scipy_shoots_the_same_aim(stations):
    putt = Putt(3, Surface(*(Station.measured(*station) for station in stations)), 11, 0.3)
    found = solve(putt)
    launch, aim = independent.shoot(independent.Green(11, stations), 3, 0.3)
    assert 3 * tan(found.aim) == pytest.approx(3 * tan(aim), abs=MILLIMETRE / 10)
    assert found.launch == pytest.approx(launch, abs=1e-4)


def test_an_s_shaped_putt():
    putt = Putt(8, Surface(Station.measured(1, 3, 90), Station.measured(5, 3, 270)), 10, 0.3)
    found = solve(putt)
    assert_solved(putt, found)
    sides = [found.roll.at(found.roll.s_left(1 - i / 50)).heading for i in range(50)]
    assert min(sides) < found.aim - radians(0.5)
    assert sides[-1] > min(sides) + radians(0.5)


def test_a_green_that_bends_both_ways():
    """Down at the ball and up at the hole so that the mean tilt is rounding alone; SciPy rolls the ball."""
    stations, distance = [(0.0, 2.1, 0.0), (8 * FOOT, 1.1, 180.0)], 8 * FOOT
    found = read(Putt(distance, Surface(*(Station.measured(*station) for station in stations)), 10, 0.3))
    assert isinstance(found, Read)
    assert hypot(*independent.miss(independent.Green(10, stations), distance, 0.3, found.launch, found.aim)) < MILLIMETRE


@pytest.mark.parametrize("fall", [0, 45, 180, 200, 270, 359])
@pytest.mark.parametrize("slope", [5e-324, 2.7e-148, 1e-20, 1e-16, 1e-12, 1e-9, 1e-7])
def test_a_slope_that_no_eye_tells_from_level(slope, fall):
    level, found = solve(plane(3, 0, 0)), solve(plane(3, slope, fall))
    assert (found.launch, found.aim) == pytest.approx((level.launch, 0), abs=1e-7)


def test_no_ball_stops_on_a_slope_steeper_than_friction():
    assert read(plane(3, 8, 0)) == NoPutt(None)
    assert isinstance(read(plane(3, 7.8, 0)), Read)


def test_a_pace_that_would_do_is_named():
    # level at the hole, but so steep before it that even a touch arrives fast: a soft pace cannot be had
    putt = Putt(3, Surface(Station.measured(0, 8, 0), Station.measured(2, 8, 0), Station.measured(2.9, 0, 0)), 13, 0.05)
    found = read(putt)
    assert isinstance(found, NoPutt)
    if found.instead is not None:
        assert isinstance(read(replace(putt, past=found.instead)), Read)
