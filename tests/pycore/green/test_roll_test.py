"""Green speed from rolls: published rows, exact inverses, and intervals that hold the truth as often as they say."""

import cmath
import json
import math

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from pycore import api
from pycore.constants import GRAVITY, ROLLING, STIMPMETER_SPEED
from pycore.green import roll_test
from pycore.green.roll_test import CROSS, MEASURE, TAP, Roll, slowing, speed, stimpmeter, suspects
from pycore.green.surface import Station, Surface
from pycore.putt.putt import Putt
from pycore.units import FOOT, INCH

CASES = 2000
LATEST = 0.15  # s
COVERED = (0.90, 0.98)  # what an honest 95 % interval may hold
COVERED_PUTTED = (0.90, 0.99)  # the range of the skid, and a lag without a cross slope, leave a little too much
EXACT_FT = 1e-6
EXACT_SLOPE = 1e-8
BREDE_FT = 0.005  # the formula leaves out the cosine of the slope


def ask(**request):
    return json.loads(api.answer(json.dumps(request)))


def rolled(stimp_ft, slope, out, launch, across=0.0) -> tuple[float, float]:
    """Distance and time of a ball on the engine's own green, which falls ``across`` to the left of the way out."""
    tilt = complex(slope, across) * (1 if out else -1)
    end = Putt(10.0, Surface(Station(0.0, abs(tilt), cmath.phase(tilt))), stimp_ft).roll(launch, 0.0).at(math.inf)
    return math.hypot(end.x, end.y), end.t


def test_stimpmeter_row():
    # D: from Penner 2002; Brede, USGA Green Section Record 28(6), 1990, makes 10.002 of it
    found = stimpmeter([13.426 * FOOT], [7.970 * FOOT])
    assert found.stimp_ft == pytest.approx(10.002, abs=BREDE_FT)
    assert found.slope == pytest.approx(0.02, abs=5e-5)


@pytest.mark.parametrize("slope", [-0.03, 0.0, 0.005, 0.02])
@pytest.mark.parametrize("stimp_ft", [8, 12])
def test_stimpmeter_lengths_of_the_engines_green(stimp_ft, slope):
    lengths = [rolled(stimp_ft, slope, out, STIMPMETER_SPEED)[0] for out in (True, False)]
    found = stimpmeter(lengths[:1], lengths[1:])
    assert (found.stimp_ft, found.slope) == pytest.approx((stimp_ft, slope), abs=EXACT_FT)


def test_lengths_that_scatter_leave_the_mean_as_unsure_as_their_pooled_spread_makes_it():
    """On the level the speed is the mean length: of two balls each way its variance is the pooled one over four."""
    out, back = [3.0, 3.4], [2.9, 3.5]
    pooled = (np.var(out, ddof=1) + np.var(back, ddof=1)) / 2
    assert stimpmeter(out, back).stimp_sd_ft * FOOT == pytest.approx((pooled / 4) ** 0.5, rel=1e-3)


@pytest.mark.parametrize("time", [1.0, 4.0, 20.0])
def test_both_ends_of_the_time_and_the_measure_leave_a_roll_unsure(time):
    """Propagation of errors by hand, of a = 2 d / t^2: a share of 2 per share of the time, of 1 per share of the distance."""
    found = slowing(Roll(3.0, time, True), putted=False)
    assert found.sd / found.value == pytest.approx(math.hypot(2 * math.sqrt(2) * TAP / time, MEASURE), rel=1e-3)


@pytest.mark.parametrize("slope", [-0.03, 0.0, 0.005, 0.02])
@pytest.mark.parametrize("launch", [1.5, 2.4])
def test_rolls_without_error_give_the_green_back(slope, launch):
    balls = [Roll(*rolled(11, slope, out, launch), out) for out in (True, False)]
    found = speed([slowing(ball, putted=False) for ball in balls])
    assert found.stimp_ft == pytest.approx(11, abs=EXACT_FT)
    assert found.slope == pytest.approx(slope, abs=EXACT_SLOPE)


def scipy_putt(stimp_ft, slope, out, launch, mu) -> tuple[float, float]:
    """Distance and time of a putted ball, skid and all, by SciPy: a sphere that slips until it rolls."""
    pull = (1 if out else -1) * GRAVITY * slope / math.hypot(1, slope)
    friction = mu * GRAVITY / math.hypot(1, slope)
    drag = STIMPMETER_SPEED**2 / (2 * stimp_ft * FOOT) / math.hypot(1, slope)

    def slips(_, state):
        return [state[1], pull - friction, 2.5 * friction]

    def gripped(_, state):
        return state[1] - state[2]

    gripped.terminal = True  # type: ignore[attr-defined]
    skid = solve_ivp(slips, (0, 5), [0, launch, 0], events=gripped, rtol=1e-9, atol=1e-9)

    def stopped(_, state):
        return state[1]

    stopped.terminal = True  # type: ignore[attr-defined]
    start = [skid.y[0][-1], skid.y[1][-1]]
    roll = solve_ivp(lambda _, s: [s[1], ROLLING * pull - drag], (0, 60), start, events=stopped, rtol=1e-9, atol=1e-9)
    return roll.y[0][-1], skid.t[-1] + roll.t[-1]


def test_a_putted_ball_skids_first():
    distance, time = scipy_putt(10, 0.0, True, 3.0, roll_test.SKID)
    ball = Roll(distance, time, True)
    assert slowing(ball, putted=True).value == pytest.approx(STIMPMETER_SPEED**2 / (20 * FOOT), rel=1e-6)
    # taken for a pure roll, the green would seem slower
    assert slowing(ball, putted=False).value > 1.01 * slowing(ball, putted=True).value


def covered(rng, truth, balls, putted, shared, late=None):
    """Share of cases whose 95 % intervals hold speed and slope, with thumb and measure as they are said to err.

    The thumb is late on every roll of a case by the same time: ``late``, or anything up to ``LATEST``.
    """
    inside = []
    for (stimp_ft, slope), case in zip(truth, balls, strict=True):
        lag = rng.uniform(0, LATEST) if late is None else late
        seen = [
            Roll(d * (1 + rng.normal(0, MEASURE)), t + lag + rng.normal(0, TAP) - rng.normal(0, TAP), out) for d, t, out in case
        ]
        found = speed([slowing(ball, putted) for ball in seen], shared)
        inside.append(
            (abs(found.stimp_ft - stimp_ft) < 1.96 * found.stimp_sd_ft, abs(found.slope - slope) < 1.96 * found.slope_sd)
        )
    return np.mean(inside, axis=0)


def test_intervals_hold_the_engines_greens():
    rng = np.random.default_rng(4)
    truth = [(rng.uniform(8, 13), rng.uniform(-0.02, 0.02)) for _ in range(CASES)]
    balls = [
        [(*rolled(stimp, slope, out, rng.uniform(1.7, 2.3), across=0.01), out) for out in (True, False) * rng.integers(1, 4)]
        for stimp, slope in truth
    ]
    for share in covered(rng, truth, balls, putted=False, shared=CROSS):
        assert COVERED[0] <= share <= COVERED[1]


def test_intervals_hold_scipys_putts():
    rng = np.random.default_rng(5)
    putts = []
    for _ in range(50):
        stimp, slope, mu = rng.uniform(8, 13), rng.uniform(-0.02, 0.02), rng.uniform(0.3, 0.5)
        putts.append(
            ((stimp, slope), [(*scipy_putt(stimp, slope, out, rng.uniform(2.4, 3.2), mu), out) for out in (True, False) * 2])
        )
    times = CASES // len(putts)
    truth, balls = ([each[part] for each in putts for _ in range(times)] for part in (0, 1))
    for share in covered(rng, truth, balls, putted=True, shared=0.0, late=0.1):
        assert COVERED_PUTTED[0] <= share <= COVERED_PUTTED[1]


def test_a_stride_is_wrong_the_same_way_all_through():
    asked = [{"distance_m": 6, "time_s": 4.6, "way": way} for way in ("out", "back") * 12]
    taped, paced = (ask(ask="roll_test", rolls=asked, skid="rolled", measure=how)["value"] for how in ("tape", "paces"))
    assert paced["stimp_ft"] == taped["stimp_ft"]
    stride = math.sqrt(paced["stimp_sd_ft"] ** 2 - taped["stimp_sd_ft"] ** 2)
    assert stride == pytest.approx(roll_test.STRIDE * paced["stimp_ft"], rel=0.05)


@pytest.mark.parametrize("wrong", [0, 3, 5])
def test_the_roll_that_looks_wrong(wrong):
    balls = [slowing(Roll(*rolled(10, 0.01, out, 2.0), out), putted=False) for out in (True, False) * 3]
    assert suspects(balls) == []
    late = Roll(*rolled(10, 0.01, wrong % 2 == 0, 2.0), wrong % 2 == 0)
    balls[wrong] = slowing(Roll(late.distance, late.time + 1.2, late.out), putted=False)
    assert suspects(balls) == [wrong]


def test_of_two_that_differ_either_may_be_wrong():
    rolls = [(6.0, 4.6, "out"), (6.0, 3.2, "out"), (5.8, 4.5, "back")]
    asked = [{"distance_m": d, "time_s": t, "way": way} for d, t, way in rolls]
    alone = ask(ask="roll_test", rolls=asked, skid="rolled")["value"]
    assert alone["suspects"] == [0, 1]
    agreeing = ask(ask="roll_test", rolls=[asked[0], asked[0], asked[2]], skid="rolled")["value"]
    assert alone["stimp_sd_ft"] > 2 * agreeing["stimp_sd_ft"]


def test_one_way_is_refused():
    reply = ask(ask="roll_test", rolls=[{"distance_m": 6, "time_s": 4.6, "way": "out"}] * 2, skid="rolled")
    assert (reply["code"], reply["field"]) == ("one_way", "rolls")
    assert "a roll back along the same line" in reply["message"]


@pytest.mark.parametrize(
    "rolls",
    [[(15, 1.0, "out"), (15, 1.0, "back")], [(15, 1.0, "out"), (1.0, 10, "back")], [(1.0, 15, "out"), (1.0, 15, "back")]],
)
def test_what_no_green_does_is_refused(rolls):
    asked = [{"distance_m": d, "time_s": t, "way": way} for d, t, way in rolls]
    for skid in ("rolled", "putted"):
        reply = ask(ask="roll_test", rolls=asked, skid=skid)
        assert reply["code"] == "no_green"
        assert "wrong distance" in reply["message"]


def test_the_eight_inch_rule():
    within, beyond = [10, 10.3, 10 + 8 * INCH / FOOT], [10, 10.3, 10 + 8.1 * INCH / FOOT]
    assert ask(ask="stimpmeter", out_ft=within, back_ft=within)["value"]["again"] == []
    assert ask(ask="stimpmeter", out_ft=within, back_ft=beyond)["value"]["again"] == ["back"]
    wide = ask(ask="stimpmeter", out_ft=[9, 12], back_ft=[9, 12])["value"]["stimp_sd_ft"]
    assert wide > 5 * ask(ask="stimpmeter", out_ft=[10, 10], back_ft=[10, 10])["value"]["stimp_sd_ft"]


def test_rolls_that_were_watched():
    """How two balls slowed, out and back: Newton's second law on a plane, without a thumb."""
    drag, pull = 1.83**2 / (2 * 10 * FOOT), 5 / 7 * 9.80665 * 0.02
    rolls = [
        {"deceleration_mps2": drag - pull, "deceleration_sd_mps2": 0.01, "way": "out"},
        {"deceleration_mps2": drag + pull, "deceleration_sd_mps2": 0.01, "way": "back"},
    ]
    found = ask(ask="roll_test", rolls=rolls, skid="rolled")["value"]
    assert found["stimp_ft"] == pytest.approx(10, abs=0.01)
    assert found["slope_percent"] == pytest.approx(2, abs=0.01)
    assert found["stimp_sd_ft"] == pytest.approx(10 * 0.01 / 2**0.5 / drag, rel=0.02)
    assert found["slope_sd_percent"] == pytest.approx(100 * 0.01 / 2**0.5 / (5 / 7 * 9.80665), rel=0.02)
    del rolls[1]["deceleration_sd_mps2"]
    reply = ask(ask="roll_test", rolls=rolls, skid="rolled")
    assert (reply["code"], reply["field"]) == ("missing_field", "rolls[1].deceleration_sd_mps2")


@pytest.mark.parametrize(("launch", "slows"), [(1.5, 0.45), (3.0, 0.9)])
def test_a_putted_ball_slides_first(launch, slows):
    """Friction slows it to five sevenths of its speed, at which it rolls (a ball's inertia); then it slows evenly."""
    grip = roll_test.SKID * GRAVITY
    sliding, rolls_at = 2 * launch / (7 * grip), 5 / 7 * launch
    time = sliding + rolls_at / slows
    distance = (launch + rolls_at) / 2 * sliding + rolls_at**2 / (2 * slows)
    assert slowing(Roll(distance, time, out=True), putted=True).value == pytest.approx(slows)
