"""The pace that costs least, against an independent simulation's figures and the published share of three putts."""

from math import radians

import pytest

from bench import crowd
from pycore.green.surface import Station, Surface
from pycore.putt import chance
from pycore.putt.pace import HABIT, _Second, _short
from pycore.putt.putt import Putt
from pycore.units import FOOT, INCH

TOUR = {"start_line_sd_deg": 1.0, "pace_sd_fraction": 0.065, "slope_sd_percent": 0.31}
AMATEUR = {"start_line_sd_deg": 1.6, "pace_sd_fraction": 0.10, "slope_sd_percent": 0.60}
FEW_INCHES = 3 * INCH
SLOPES = ((0, 15), (0.8, 35), (1.6, 32), (2.6, 18))  # %, weight; assumed, as in test_chance.py
FALLS = ((0, 1), (60, 2), (120, 2), (180, 1))


def putt(distance_ft, slope_percent, fall_deg):
    return {"distance_m": distance_ft * FOOT, "stimp_ft": 11, "slope_percent": slope_percent, "fall_deg": fall_deg}


@pytest.mark.parametrize(
    ("where", "player", "inches"),
    [
        ((10, 0, 0), TOUR, 21),
        ((8, 3, 0), TOUR, 26),
        ((40, 2, 180), TOUR, 4),
        ((10, 0, 0), AMATEUR, 13),
        ((8, 3, 0), AMATEUR, 20),
        ((40, 2, 180), AMATEUR, 1),
    ],
)
def test_the_pace_of_an_independent_simulation(engine_ask, where, player, inches):
    """D: another program's simulation at Stimp 11, to a few inches."""
    found = engine_ask("best_pace", **putt(*where), player=player)
    assert found["past_m"] == pytest.approx(inches * INCH, abs=FEW_INCHES)
    assert len(found["curve"]) >= 8
    assert all(putts >= found["expected_putts"] - 1e-3 for _, putts, _ in found["curve"])


@pytest.mark.parametrize("distance_ft", [20, 30, 40])
def test_tour_players_three_putts(engine_ask, published, distance_ft):
    """M: see the file."""
    expected = next(row["tour"] for row in published("three_putt_share") if row["distance_ft"] == distance_ft)
    share = 0.0
    for slope, often in SLOPES:
        for fall, much in FALLS if slope else ((0, 6),):
            found = engine_ask("best_pace", **putt(distance_ft, slope, fall), player=TOUR)
            share += often * much / 600 * found["three_putt_probability"]
    assert share == pytest.approx(expected, abs=0.03)


def test_without_a_player_it_is_the_tours(engine_ask):
    named, unnamed = (engine_ask("best_pace", **putt(10, 1, 90), **who) for who in ({"player": TOUR}, {}))
    assert named["past_m"] == pytest.approx(unnamed["past_m"], abs=0.1 * INCH)


def test_a_tour_player_needs_the_published_putts_from_ten_feet(engine_ask):
    """M: 40 % holed and 1 % three-putts make 1.61; slopes and falls weighed as above."""
    putts = 0.0
    for slope, often in SLOPES:
        for fall, much in FALLS if slope else ((0, 6),):
            found = engine_ask("best_pace", **putt(10, slope, fall), player=TOUR)
            putts += often * much / 600 * found["expected_putts"]
    assert putts == pytest.approx(1.61, abs=0.04)


def many(distance, slope, fall, player):
    """Share holed of many strokes meant a foot past, by numpy and Penner's equations alone."""
    golfer = crowd.Golfer(player.start_line_sd, player.pace_sd, player.slope_sd)
    return crowd.make_share(crowd.green([(0, slope, fall)]), 11, distance, HABIT, golfer, 2**12, 1)


@pytest.mark.parametrize(("distance", "slope", "fall"), [(1, 2, 90), (2.5, 2, 180), (2.5, 4, 0), (2.5, 4, 90)])
def test_second_putts_holed_are_what_many_strokes_come_to(distance, slope, fall):
    here = Putt(distance, Surface(Station.measured(0, slope, fall)), 11, HABIT)
    player = chance.AMATEUR
    assert _short(here, player) == pytest.approx(many(distance, slope, fall, player), abs=0.015)


@pytest.mark.parametrize(
    ("distance", "slope", "fall", "off"),
    [(1, 2, 90, 0.01), (2.5, 4, 0, 0.01), (6, 2, 90, 0.01), (1, 4, 90, 0.02), (6, 4, 90, 0.02), (1, 4, 45, 0.05)],
)
def test_the_tours_too_but_a_metre_slantwise_down_a_steep_slope(distance, slope, fall, off):
    """Where it is coarse: its docstring says what that costs."""
    here = Putt(distance, Surface(Station.measured(0, slope, fall)), 11, HABIT)
    assert _short(here, chance.TOUR) == pytest.approx(many(distance, slope, fall, chance.TOUR), abs=off)


def test_a_third_putt_is_no_shorter_than_second_ones_run_past():
    """However short the second was: a wild player misses many of them."""
    wild = chance.Player(radians(8), 0.1)
    second = _Second(Putt(3, Surface(Station.measured(0, 0, 0)), 11, HABIT), wild)
    assert second.missed(0.0, 0.0) == pytest.approx(1 - many(HABIT, 0, 0, wild), abs=0.02)
