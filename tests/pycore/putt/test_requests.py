"""What the door makes of a putt's fields: a percent is a hundredth, a degree is pi / 180, and what it says of bad ones."""

from math import pi
from typing import Any

import pytest

from pycore.errors import Refusal
from pycore.putt.doubt import Doubt
from pycore.putt.requests import PlayerFields, PuttFields, ReadFields, StationFields

PUTT: dict[str, Any] = {"distance_m": 3.0, "stimp_ft": 10.0, "past_m": 0.3}
PLANE: dict[str, Any] = {**PUTT, "slope_percent": 2.0, "fall_deg": 90.0}


def stations(*places):
    return tuple(StationFields(at_m=at, slope_percent=2.0, fall_deg=90.0) for at in places)


def test_a_player_in_the_engines_terms():
    player = PlayerFields(
        start_line_sd_deg=1.8,
        pace_sd_fraction=0.065,
        slope_sd_percent=0.5,
        start_line_bias_deg=-0.9,
        pace_bias_fraction=0.02,
    ).player()
    assert (player.start_line_sd, player.pace_sd, player.slope_sd) == pytest.approx((pi / 100, 0.065, 0.005))
    assert (player.start_line_bias, player.pace_bias) == pytest.approx((-pi / 200, 0.02))


def test_a_player_who_says_no_more_has_no_bias_and_reads_slopes_as_they_are():
    player = PlayerFields(start_line_sd_deg=1.0, pace_sd_fraction=0.0).player()
    assert (player.pace_sd, player.slope_sd, player.start_line_bias, player.pace_bias) == (0, 0, 0, 0)


@pytest.mark.parametrize(("given", "taken"), [(2e-9, 2e-9), (5e-10, 0.0)])
def test_a_spread_below_a_micrometre_is_none(given, taken):
    assert PlayerFields(start_line_sd_deg=1.0, pace_sd_fraction=given).player().pace_sd == taken


def test_a_putt_in_the_engines_terms():
    putt = PuttFields(**PLANE).putt()
    assert (putt.distance, putt.stimp_ft, putt.past) == (3.0, 10.0, 0.3)
    # it falls to the right, which is down y
    assert (putt.downhill.real, putt.downhill.imag) == pytest.approx((0.0, -0.02))


@pytest.mark.parametrize(
    ("given", "doubt"),
    [
        ({}, Doubt(0.007, 0.0)),
        ({"stimp_sd_ft": 0.5}, Doubt(0.007, 0.5)),
        ({"tilt_sd_percent": 0.4}, Doubt(0.004, 0.0)),
        ({"tilt_sd_percent": 0.0, "stimp_sd_ft": 0.3}, Doubt(0.0, 0.3)),
    ],
)
def test_a_doubt_that_is_told_stands_in_place_of_the_players(given, doubt):
    fields = ReadFields(**PLANE, **given)
    assert fields.doubt(0.007) == doubt
    assert fields.doubted == bool(given)


@pytest.mark.parametrize("places", [(0.0,), (3.0,), (0.0, 0.01), (1.0, 1.0101, 3.0)])
def test_places_along_the_line(places):
    assert PuttFields(**PUTT, stations=stations(*places)).surface() is not None


@pytest.mark.parametrize(
    ("places", "field", "low"),
    [
        ((3.001,), "stations[0].at_m", 0.0),
        ((1.0, 1.0), "stations[1].at_m", 1.01),
        ((1.0, 1.0099), "stations[1].at_m", 1.01),
        ((0.5, 1.0, 0.7), "stations[2].at_m", 1.01),
    ],
)
def test_places_out_of_order_or_past_the_hole(places, field, low):
    with pytest.raises(Refusal) as refusal:
        PuttFields(**PUTT, stations=stations(*places)).surface()
    said = refusal.value
    assert (said.code, said.field, said.value) == ("bad_field", field, places[int(field[9])])
    assert said.low == pytest.approx(low)
    assert (said.high, said.unit) == (3.0, "m")
    assert "past the station before it, and not past the hole" in said.message


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({**PUTT, "fall_deg": 90.0}, "missing_field", "slope_percent"),
        ({**PUTT, "slope_percent": 2.0}, "missing_field", "fall_deg"),
        ({**PUTT, "slope_percent": 2.0, "stations": stations(0.0)}, "bad_field", "stations"),
        ({**PUTT, "fall_deg": 90.0, "stations": stations(0.0)}, "bad_field", "stations"),
        ({"stimp_ft": 10.0, "past_m": 0.3, "slope_percent": 2.0, "fall_deg": 90.0}, "missing_field", "distance_m"),
    ],
)
def test_what_is_missing_or_said_twice(fields, code, field):
    with pytest.raises(Refusal) as refusal:
        PuttFields(**fields).putt()
    assert (refusal.value.code, refusal.value.field) == (code, field)
    assert field in refusal.value.message
