"""What a record gives away of how it was kept, and what the green as it was logged has to do with a putt."""

from dataclasses import replace
from datetime import UTC, datetime
from math import hypot
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import solve
from pycore.record import doubts
from pycore.record.findings import BREAK, PACE, START_LINE, TILT, skills
from pycore.record.logged import Logged, Measured, Unseen, evidence, partition
from pycore.record.player import Coarse, Miss, Passed, fit
from tests.prove.recovery import at_once

FOOT = 0.3048
AT = datetime(2026, 5, 3, tzinfo=UTC)
FEW_PERCENT = 0.06  # of a shift; a slope that is a tenth steeper bends it by more than one that is a little steeper


def putt(distance_m=3.0, stop=None, slope_percent=2.0, fall_deg=60.0):
    green = Surface(Station.measured(0.0, slope_percent, fall_deg))
    return Logged("a", AT, Putt(distance_m, green, 10.0, 0.3), None, stop)


def test_how_coarsely_finishes_were_told_shows_in_the_numbers():
    rng = np.random.default_rng(1)
    fine = [putt(d, complex(*s)) for d, s in zip(rng.uniform(1, 6, 40), rng.uniform(-1, 1, (40, 2)), strict=True)]
    assert doubts.step(fine) == 0
    step = FOOT / 2
    half = [putt(e.putt.distance, step * complex(round(e.stop.real / step), round(e.stop.imag / step))) for e in fine]
    assert doubts.step(half) == pytest.approx(step)


@pytest.mark.parametrize(("made", "missing"), [(0, True), (2, True), (3, False), (20, False)])
def test_holed_putts_that_are_not_there_are_missed(made, missing):
    """Of 100 of 10 ft a 90-shooter holes 20 (Broadie 2014, secondary, from memory): half of that less 2.5 roots is 2.1."""
    record = [putt(10 * FOOT, None if i < made else Unseen()) for i in range(100)]
    assert (doubts.missing(record) is not None) == missing


@pytest.mark.parametrize(("off", "said"), [(0.11, ""), (0.21, "The slopes as logged are off by about 21 %")])
def test_slopes_that_are_far_off_leave_no_spread(off, said):
    found: Any = SimpleNamespace(tilt_off=off)
    assert doubts.untold(found, []).startswith(said)
    assert bool(doubts.untold(found, [])) == bool(said)


def test_misses_alone_tell_nothing_and_it_is_said(engine_ask):
    rng = np.random.default_rng(2)
    putts = [
        {
            "id": str(i),
            "at": "2026-05-03T17:30:00Z",
            "distance_m": 3.0,
            "stimp_ft": 10,
            "slope_percent": 2,
            "fall_deg": 60,
            "past_m": 0.3,
            "result": {"x_m": float(x), "y_m": float(0.2 + abs(y))},
        }
        for i, (x, y) in enumerate(rng.normal(0, 0.3, (120, 2)))
    ]
    said = engine_ask("findings", putts=putts)
    assert said["caution"].startswith("0 of these 120 putts were holed")
    assert said["costs"] == []
    assert {skill["bias"] for skill in said["skills"].values()} == {None}


def test_a_tilt_that_is_off_moves_start_and_roll_as_solving_anew_does():
    logged = putt(4.0, complex(0.6, 0.4))
    found = evidence(logged)
    assert not isinstance(found, str)
    assert isinstance(found.strike, Miss)
    given = found.strike.given
    read, steeper, turned = (solve(putt(4.0, None, *green).putt) for green in ((2.0, 60.0), (2.2, 60.0), (2.0, 65.73)))
    assert given.aim == pytest.approx(read.aim)
    # a tenth steeper, and turned by a tenth of itself across
    rolls = [(each.launch / read.launch) ** 2 - 1 for each in (steeper, turned)]
    starts = [each.aim - read.aim for each in (steeper, turned)]
    assert given.roll / 10 == pytest.approx(rolls[0], rel=FEW_PERCENT)
    # a share of a tilt of 2 % and of the 1 % that the flattest may be off by
    tenth = 2 / hypot(2, 1) / 10
    assert tenth * given.aside == pytest.approx(hypot(*starts), rel=FEW_PERCENT)
    assert tenth * given.along == pytest.approx(hypot(*rolls), rel=FEW_PERCENT)


def test_a_finish_told_in_steps_lay_within_one_and_not_in_the_hole():
    coarse = evidence(putt(3.0, complex(0.3, 0.0), slope_percent=0.0), 0.1524)
    assert not isinstance(coarse, str)
    assert isinstance(coarse.strike, Coarse)
    rows = coarse.strike.rows(0.0, 0.0)
    # from half of six inches to the right of the line to half of them to its left, but where a hole of 54 mm takes a slow ball
    assert {round(3.3 * max(abs(row.low), abs(row.high)), 6) for row in rows} == {0.0762}
    assert all(0.04 < 3.3 * min(abs(row.low), abs(row.high)) < 0.054 and row.low * row.high > 0 for row in rows)
    assert sum(row.weight for row in rows) == pytest.approx(2 * 2 * 0.0762 / 3.3)  # of length, on both sides


def test_a_spread_is_found_again_in_finishes_told_to_half_a_foot(strike):
    """400 putts of 8 ft, level, struck by numpy with 1 degree and 7 % of spread: told in steps or exactly, it is the same."""
    rng, n = np.random.default_rng(8), 400
    greens = strike.Greens(*(np.full(n, value) for value in (8 * FOOT, 10.0, 0.0, 0.0)))
    launch, _ = strike.shoot(greens, 0.3)
    struck = strike.roll(greens, launch * np.sqrt(1 + 0.07 * rng.standard_normal(n)), np.radians(rng.standard_normal(n)))

    def found(step):
        record = [putt(8 * FOOT, None, slope_percent=0.0)] * int(struck.holed.sum())
        for stop in (struck.stop - 8 * FOOT)[~struck.holed]:
            told = step * complex(round(stop.real / step), round(stop.imag / step)) if step else complex(stop)
            record.append(putt(8 * FOOT, told, slope_percent=0.0))
        steps = doubts.step(record)
        strikes = [each.strike for logged in record if not isinstance(each := evidence(logged, steps), str)]
        assert sum(isinstance(each, Coarse) for each in strikes) == (n - struck.holed.sum() if step else 0)
        return [fit(partition(strikes), [START_LINE, PACE, BREAK, TILT]).skill(i) for i in (0, 1)]

    for coarse, exact, truth in zip(found(FOOT / 2), found(0), (np.radians(1.0), 0.07), strict=True):
        assert coarse.sd.low < truth < coarse.sd.high
        assert coarse.sd.value == pytest.approx(exact.sd.value, rel=0.07)


def test_a_spread_is_found_again_among_distances_told_in_feet(strike, engine_ask):
    """200 putts of 3 to 15 ft, level, struck by numpy with 1 degree and 7 % of spread for the hole where it is."""
    rng, n = np.random.default_rng(9), 200
    distance = rng.uniform(3, 15, n) * FOOT
    greens = strike.Greens(distance, *(np.full(n, value) for value in (10.0, 0.0, 0.0)))
    launch, _ = strike.shoot(greens, 0.3)
    struck = strike.roll(greens, launch * np.sqrt(1 + 0.07 * rng.standard_normal(n)), np.radians(rng.standard_normal(n)))
    putts = [
        {
            "id": str(i),
            "at": f"2026-05-03T10:{i // 60:02}:{i % 60:02}Z",
            "distance_m": FOOT * round(distance[i] / FOOT),
            "stimp_ft": 10,
            "slope_percent": 0,
            "fall_deg": 0,
            "past_m": 0.3,
            "result": "holed" if struck.holed[i] else {"x_m": stop.real, "y_m": stop.imag},
        }
        for i, stop in enumerate(struck.stop - distance)
    ]
    skills = engine_ask("findings", putts=putts)["skills"]
    assert skills["start_line"]["sd_low"] < 1.0 < skills["start_line"]["sd_high"]
    assert skills["pace"]["sd_low"] < 0.07 < skills["pace"]["sd_high"]
    assert skills["pace"]["sd"] == pytest.approx(0.07, rel=0.07)


def test_a_finish_that_was_measured_carries_its_own_doubt():
    seen = evidence(replace(putt(3.0, complex(0.6, 0.4)), finish_sd=0.15), 0.4)
    assert not isinstance(seen, str)
    assert (seen.strike.given.blur, seen.strike.given.stretch) == pytest.approx((0.15 / 3.3, 0.15 / 3.3))
    near = evidence(replace(putt(3.0, complex(0.03, 0.0)), finish_sd=0.15))
    assert not isinstance(near, str)
    assert isinstance(near.strike, Passed)


def test_a_tilt_that_was_measured_moves_start_and_roll_by_as_much_as_it_may_be_off():
    """Solved anew with a hundredth of a per cent more tilt along the line, and across it."""
    logged = putt(4.0, complex(0.6, 0.4))
    known = evidence(replace(logged, tilt_sd=0.0027))
    assert not isinstance(known, str)
    tilt = 0.02 * np.exp(-1j * np.radians(60.0))
    read, *nudged = (
        solve(putt(4.0, None, 100 * abs(each), -np.degrees(np.angle(each))).putt) for each in (tilt, tilt + 1e-4, tilt + 1e-4j)
    )
    start = 27 * hypot(*(each.aim - read.aim for each in nudged))
    roll = 27 * hypot(*((each.launch / read.launch) ** 2 - 1 for each in nudged))
    assert known.strike.given.blur == pytest.approx(start, rel=FEW_PERCENT)
    assert known.strike.given.stretch == pytest.approx(roll, rel=FEW_PERCENT)


def test_of_slopes_that_were_measured_the_steep_ones_are_less_steep():
    """Two normal errors of 0.4 % in slopes of 2 %: 2 (0.4 / 2)^2 of the break is theirs (regression to the mean)."""
    rng = np.random.default_rng(4)
    said = [
        evidence(replace(putt(3.0, complex(0.6, y), 2.0, fall), read="app", tilt_sd=0.004))
        for y, fall in zip(rng.normal(0, 0.1, 250), rng.uniform(0, 360, 250), strict=True)
    ]
    found = [each for each in said if not isinstance(each, str)]
    bare = [replace(each, logged=replace(each.logged, tilt_sd=0.0)) for each in found]
    with_it, without = (at_once(skills(each, False))["reading"].bias.value for each in (found, bare))
    assert without - with_it == pytest.approx(0.08)


def test_slopes_that_may_be_off_by_a_share_may_make_a_read_seem_too_high_and_never_too_low():
    """As if measured with that share of them for an error, at the most; and nothing where the aim was not the app's."""
    rng = np.random.default_rng(4)
    said = [
        evidence(replace(putt(3.0, complex(0.6, y), 2.0, fall), read="app"))
        for y, fall in zip(rng.normal(0, 0.1, 150), rng.uniform(0, 360, 150), strict=True)
    ]
    found = [each for each in said if not isinstance(each, str)]
    others = [replace(each, logged=replace(each.logged, read=None)) for each in found]
    played, plain = (at_once(skills(each, False))["reading"].bias for each in (found, others))
    off = fit(partition([each.strike for each in found]), [START_LINE, PACE, BREAK, TILT]).about(3).sd.high
    assert (played.value, played.high) == pytest.approx((plain.value, plain.high))
    assert plain.low - played.low == pytest.approx(2 * off**2)


def test_a_start_that_was_seen_owes_nothing_to_the_slope():
    """What is taken off for slopes logged too steep is no concern of a strike that was measured."""
    rng = np.random.default_rng(5)
    said = [
        evidence(replace(putt(3.0, complex(0.6, 0.1), 2.0, fall), read="app", measured=Measured(start, 0.001, 2.0, 0.005)))
        for start, fall in zip(rng.normal(0, 0.01, 250), rng.uniform(0, 360, 250), strict=True)
    ]
    found = [each for each in said if not isinstance(each, str)]
    doubted = [replace(each, logged=replace(each.logged, tilt_sd=0.004)) for each in found]
    with_it, without = (at_once(skills(each, False))["reading"].bias for each in (doubted, found))
    assert with_it == without


def test_a_spread_that_is_not_told_is_told_of_no_skill():
    """One miss by far the farthest: no one spread describes these putts, of start, of pace or of reading."""
    rng = np.random.default_rng(6)
    ys = [*rng.normal(0, 0.1, 119), 1.5]
    said = [evidence(putt(3.0, complex(0.6, y), 2.0, fall)) for y, fall in zip(ys, rng.uniform(0, 360, 120), strict=True)]
    found = [each for each in said if not isinstance(each, str)]
    known = at_once(skills(found, False))
    assert {name for name, skill in known.items() if "lies farther off" in skill.untold} == {"start_line", "pace", "reading"}
    assert not any(skill.untold for skill in at_once(skills(found[:-1], False)).values())
