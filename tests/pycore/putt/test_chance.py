from dataclasses import replace
from math import radians

import numpy as np
import pytest

from bench import crowd
from pycore.green.surface import Station, Surface
from pycore.putt.chance import AMATEUR, TOUR, Player, make_probability
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.putt.window import window
from pycore.units import FOOT

STROKES = 4000
POINT = 0.01
SPREAD = 3.5 * 0.5 / STROKES**0.5  # three and a half standard errors of a share from so many strokes

STEADY = Player(radians(1.0), 0.065)
BIASED = Player(radians(1.5), 0.085, start_line_bias=radians(0.7), pace_bias=0.05)


def share(putt, player):
    found = solve(putt)
    return make_probability(putt, found, window(putt, found), player)


def putt(distance_ft, slope_percent, fall_deg=90):
    return Putt(distance_ft * FOOT, Surface(Station.measured(0, slope_percent, fall_deg)), 10.5, FOOT)


@pytest.mark.parametrize(
    "player", [Player(radians(1), 0.065), Player(radians(1.5), 0.085, start_line_bias=radians(0.7), pace_bias=0.05)]
)
@pytest.mark.parametrize("slope", [0, 2])
def test_quadrature_is_what_many_strokes_come_to(player, slope):
    here = putt(8, slope)
    found = solve(here)
    random = np.random.default_rng(1)
    lengths = random.normal(player.pace_bias, player.pace_sd, STROKES)
    aims = random.normal(found.aim + player.start_line_bias, player.start_line_sd, STROKES)
    holed = [
        here.finish(here.roll(found.launch * (1 + length) ** 0.5, aim)).holed for length, aim in zip(lengths, aims, strict=True)
    ]
    assert share(here, player) == pytest.approx(np.mean(holed), abs=SPREAD)


@pytest.mark.parametrize("player", [TOUR, AMATEUR])
@pytest.mark.parametrize(("slope", "fall"), [(0, 0), (3, 90), (3, 0), (2, 150)])
def test_misread_tilt_is_what_many_misreadings_come_to(player, slope, fall):
    here = putt(8, slope, fall)
    golfer = crowd.Golfer(player.start_line_sd, player.pace_sd, player.slope_sd)
    many = crowd.make_share(crowd.green([(0, slope, fall)]), 10.5, here.distance, here.past, golfer, 2**13, 1)
    assert share(here, player) == pytest.approx(many, abs=POINT)


def test_on_the_level_the_dial_of_the_fall_means_nothing(engine_ask):
    asked = {"distance_m": 10 * FOOT, "stimp_ft": 11, "slope_percent": 0, "past_m": FOOT}
    player = {"start_line_sd_deg": 1, "pace_sd_fraction": 0.065, "slope_sd_percent": 0.5}
    shares = [engine_ask("window", **asked, fall_deg=fall, player=player)["make_probability"] for fall in (0, 90, 37)]
    assert max(shares) - min(shares) < 0.3 * POINT


def test_a_measured_doubt_stands_in_place_of_the_players(engine_ask):
    asked = {"distance_m": 3, "stimp_ft": 11, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}
    player = {"start_line_sd_deg": 1, "pace_sd_fraction": 0.065}

    def made(misread, **doubt):
        return engine_ask("window", **asked, **doubt, player={**player, "slope_sd_percent": misread})["make_probability"]

    assert made(0.5, tilt_sd_percent=0.1) == made(0.0, tilt_sd_percent=0.1) > made(0.5)
    assert made(0.5, tilt_sd_percent=0.0) == made(0.0)
    assert made(0.5, stimp_sd_ft=1.0) < made(0.5)
    assert made(0.5, stimp_sd_ft=0.0) == made(0.5)


@pytest.mark.parametrize("fall", [0, 60, 180])
def test_the_read_says_how_far_it_may_be_off(engine_ask, fall):
    """Against reads of misread greens by numpy and Penner's equations alone."""
    asked = {"distance_m": 4, "stimp_ft": 10, "slope_percent": 2, "fall_deg": fall, "past_m": 0.3}
    found = engine_ask("read", **asked, tilt_sd_percent=0.4, stimp_sd_ft=0.7)
    along, across, faster = crowd.normals(512, 3, 1)
    green = crowd.green([(0, 2, fall)])
    launch, aim = crowd.read(green, 10 + 0.7 * faster, 4.0, 0.3, 0.004 * (along + 1j * across))
    assert found["aim_sd_deg"] == pytest.approx(np.degrees(aim.std()), rel=0.05)
    assert found["launch_sd_fraction"] == pytest.approx(launch.std() / found["launch_mps"], rel=0.05)
    assert found["aim_offset_sd_m"] == pytest.approx((4 * np.tan(aim)).std(), rel=0.05)
    plain = engine_ask("read", **asked)
    assert plain["aim_sd_deg"] is plain["aim_offset_sd_m"] is plain["launch_sd_fraction"] is None
    assert engine_ask("read", **asked, tilt_sd_percent=0.0)["aim_sd_deg"] == 0


def test_a_perfect_player_holes_everything_and_a_wild_one_nothing():
    assert share(putt(8, 2), Player(0, 0)) == 1
    assert share(putt(8, 2), Player(0, 0, pace_bias=0.6)) == 0
    assert share(putt(8, 2), Player(0, 0, start_line_bias=radians(5))) == 0


def test_biases_have_sides():
    # below the hole every fault costs more than above it on a putt struck firmly enough; mirrored, the same
    high = share(putt(8, 2), replace(TOUR, start_line_bias=radians(1)))
    low = share(putt(8, 2), replace(TOUR, start_line_bias=radians(-1)))
    assert high != pytest.approx(low, abs=0.01)
    assert share(putt(8, 2, -90), replace(TOUR, start_line_bias=radians(-1))) == pytest.approx(high, abs=1e-3)


# what putts there are, of which the shares are published over all; assumed: slope %, weight; fall, weight
SLOPES = ((0, 15), (0.8, 35), (1.6, 32), (2.6, 18))
FALLS = ((0, 1), (60, 2), (120, 2), (180, 1))


@pytest.mark.parametrize(("name", "player", "allowed"), [("tour", TOUR, 0.03), ("amateur", AMATEUR, 0.04)])
def test_players_hole_what_players_hole(published, name, player, allowed):
    """Against the published shares; the misread of each player is calibrated to them, so this holds the calibration."""
    off = []
    for row in published("one_putt_share"):
        if name in row:
            made = 0.0
            for slope, often in SLOPES:
                for fall, much in FALLS if slope else ((0, 6),):
                    here = replace(putt(row["distance_ft"], slope, fall), stimp_ft=11, past=0.3)
                    made += often * much / 600 * share(here, player)
            off.append(made - row[name])
            assert abs(off[-1]) < allowed, row
    assert name != "tour" or np.sqrt(np.mean(np.square(off))) < 0.015


def test_amateurs_hole_fewer():
    assert share(putt(8, 2), AMATEUR) < share(putt(8, 2), TOUR) - 0.1
