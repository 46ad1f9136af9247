from dataclasses import replace
from math import radians

import numpy as np
import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.chance import AMATEUR, TOUR, Player, make_probability
from pycore.putt.putt import Putt
from pycore.putt.solve import read
from pycore.putt.window import window
from pycore.units import FOOT

STROKES = 4000
SPREAD = 3.5 * 0.5 / STROKES**0.5  # three and a half standard errors of a share from so many strokes


def share(putt, player):
    found = read(putt)
    return make_probability(putt, found, window(putt, found), player)


def putt(distance_ft, slope_percent, fall_deg=90):
    return Putt(distance_ft * FOOT, Surface(Station.measured(0, slope_percent, fall_deg)), 10.5, FOOT)


@pytest.mark.parametrize("player", [TOUR, replace(AMATEUR, start_line_bias=radians(0.7), pace_bias=0.05)])
@pytest.mark.parametrize("slope", [0, 2])
def test_quadrature_is_what_many_strokes_come_to(player, slope):
    here = putt(8, slope)
    found = read(here)
    random = np.random.default_rng(1)
    lengths = random.normal(player.pace_bias, player.pace_sd, STROKES)
    aims = random.normal(found.aim + player.start_line_bias, player.start_line_sd, STROKES)
    holed = [
        here.finish(here.roll(found.launch * (1 + length) ** 0.5, aim)).holed for length, aim in zip(lengths, aims, strict=True)
    ]
    assert share(here, player) == pytest.approx(np.mean(holed), abs=SPREAD)


def test_misread_slope_is_what_many_misreadings_come_to():
    here, player = putt(8, 2), replace(TOUR, slope_sd=0.005)
    random = np.random.default_rng(2)
    holed = []
    for slope in random.normal(0.02, player.slope_sd, STROKES // 2):
        meant = read(replace(here, surface=Surface(Station(0, float(slope), radians(-90)))))
        launch = meant.launch * (1 + random.normal(0, player.pace_sd)) ** 0.5
        holed.append(here.finish(here.roll(launch, meant.aim + random.normal(0, player.start_line_sd))).holed)
    assert share(here, player) == pytest.approx(np.mean(holed), abs=SPREAD * 2**0.5)


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


def test_tour_players(published):
    """Against what tour players hole: P, secondary, see the file.

    The preset holes more than they do, by the shares below; none is tuned away. The model leaves out what the preset's
    source puts elsewhere: reading (60 % of the spread of tour-length putts, Karlsen and Nilsson 2008), unevenness of the
    green, and slopes that change along the putt; and what is published is over all putts, not level ones.
    """
    more = {}
    for row in published("one_putt_share"):
        level, sloping = (share(putt(row["distance_ft"], slope), TOUR) for slope in (0, 2))
        assert row["holed"] < sloping < level
        more[row["distance_ft"]] = round(sloping - row["holed"], 2)
    assert more == {3: 0.03, 5: 0.08, 8: 0.09, 10: 0.07}


def test_amateurs_hole_fewer():
    assert share(putt(8, 2), AMATEUR) < share(putt(8, 2), TOUR) - 0.1
