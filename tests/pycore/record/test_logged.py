"""What a logged putt says: errors from the line meant, the side that a gate tells, and the share of break."""

from dataclasses import replace
from datetime import UTC, datetime
from math import inf, radians, sqrt

import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record.logged import Evidence, Logged, Measured, Unseen, evidence, off_the_ball_line
from pycore.record.player import Holed, Miss

PUTT = Putt(3.0, Surface(Station.measured(0.0, 2.0, 90.0)), 10.0, 0.3)
READ = solve(PUTT)
MEANT, START, LENGTH, LINE = READ.aim + radians(1.0), radians(-2.5), 0.08, radians(0.5)
SAME = 1e-6  # rad, and of the roll


def logged(stop, **known):
    return Logged("a", datetime(2026, 5, 3, tzinfo=UTC), PUTT, MEANT, stop, read="own", **known)


def missed():
    end = PUTT.roll(READ.launch * sqrt(1 + LENGTH), MEANT + START).at(inf)
    return complex(end.x - PUTT.distance, end.y)


def told(one) -> Evidence:
    found = evidence(one)
    assert isinstance(found, Evidence)
    return found


def test_a_miss_is_measured_from_the_line_meant():
    found = told(logged(missed()))
    assert isinstance(found.strike, Miss)
    assert found.strike[:2] == pytest.approx((START, LENGTH), abs=SAME)
    assert found.strike.given.aim == 0
    assert found.reading == pytest.approx(MEANT / READ.aim - 1)


def test_a_known_line_is_taken_off_misses_and_holed_putts():
    miss = off_the_ball_line(told(logged(missed(), line_error=LINE)))
    assert isinstance(miss, Miss)
    assert miss.start == pytest.approx(START - LINE, abs=SAME)
    holed = off_the_ball_line(told(logged(None, line_error=LINE, gate="left")))
    assert isinstance(holed, Holed)
    assert (holed.meant, holed.least) == pytest.approx((MEANT - READ.aim + LINE, -LINE))


@pytest.mark.parametrize(
    ("gate", "sides"), [("left", (0.0, inf)), ("right", (-inf, 0.0)), ("clean", (-inf, inf)), (None, (-inf, inf))]
)
def test_a_gate_tells_the_side_of_a_holed_putt(gate, sides):
    strike = told(logged(None, gate=gate)).strike
    assert isinstance(strike, Holed)
    assert (strike.least, strike.most) == sides


def test_a_strike_that_was_seen_needs_no_finish():
    """Holed or missed, start and roll are those measured; a strike seen badly says no more than its result."""
    seen = Measured(MEANT + START, radians(0.1), READ.launch * sqrt(1 + LENGTH), 0.01)
    for stop in (None, Unseen(), 0.5 + 0.2j):
        strike = told(logged(stop, measured=seen)).strike
        assert isinstance(strike, Miss)
        assert strike[:2] == pytest.approx((START, LENGTH), abs=SAME)
        assert (strike.given.blur, strike.given.stretch, strike.given.aside) == (radians(0.1), 0.02, 0.0)
    assert isinstance(told(logged(None, measured=replace(seen, start_sd=radians(1)))).strike, Holed)


TOLD = {"id": "a", "at": "2026-05-03", "distance_m": 3, "stimp_ft": 10, "slope_percent": 2, "fall_deg": 90, "past_m": 0.3}


@pytest.mark.parametrize("lacking", ["start_deg", "start_sd_deg", "launch_mps", "launch_sd_mps"])
def test_a_measurement_is_whole_or_refused(engine_ask, refused, lacking):
    whole = {"start_deg": 6, "start_sd_deg": 0.1, "launch_mps": 1.9, "launch_sd_mps": 0.02}
    engine_ask("findings", putts=[{**TOLD, **whole, "result": "missed"}])
    part = {name: value for name, value in whole.items() if name != lacking}
    reply = refused("findings", putts=[{**TOLD, **part, "result": "missed"}])
    assert (reply["code"], reply["field"]) == ("missing_field", f"putts[0].{lacking}")


def test_of_a_measurement_that_lacks_more_the_first_is_named(refused):
    reply = refused("findings", putts=[{**TOLD, "result": "holed", "start_deg": 1}])
    assert (reply["code"], reply["field"]) == ("missing_field", "putts[0].start_sd_deg")
