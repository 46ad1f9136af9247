"""Pace from putts that were heard: against SciPy's normal distribution, and players that NumPy has strike on floors that are
not what they are taken for."""

import numpy as np
import pytest
from scipy.optimize import approx_fprime
from scipy.stats import multivariate_normal

from pycore.record.by_ear import block, paces
from pycore.record.terms import SIZE

AT = "2026-05-03T18:00:00Z"


def place(bias: float, log_spread: float) -> list[float]:
    here = [0.0] * SIZE
    here[2:4] = bias, log_spread
    return here


def test_a_block_is_a_normal_whose_errors_share_one_of_their_own():
    rolls, meant, sd = [3.8, 4.1, 4.4, 4.6, 3.9], 4.0, 0.18
    found = paces([block(rolls, meant, sd)], SIZE)
    errors, alike = np.array(rolls) / meant - 1, sd / meant

    def scipy(two: list[float]) -> float:
        bias, log_spread = two
        covariance = np.eye(5) * np.exp(2 * log_spread) + alike**2
        return float(multivariate_normal([bias] * 5, covariance).logpdf(errors))

    here, there = [0.02, np.log(0.07)], [-0.03, np.log(0.1)]
    assert found(place(*here)).value - found(place(*there)).value == pytest.approx(scipy(here) - scipy(there), abs=1e-9)
    derivatives = found(place(*here))
    assert derivatives.gradient[2:4] == pytest.approx(approx_fprime(here, scipy, 1e-6), rel=1e-3)
    for i in (2, 3):
        bend = approx_fprime(here, lambda two, i=i: found(place(*two)).gradient[i], 1e-6)
        assert derivatives.information[i][2:4] == pytest.approx(-bend, rel=1e-3)
    others = [value for i, value in enumerate(derivatives.gradient) if i not in (2, 3)]
    assert others == [0.0] * (SIZE - 2)


@pytest.fixture
def pace(engine_ask):
    """What is said of pace from blocks that were heard, and no putt."""

    def ask(*blocks):
        heard = [{"at": AT, "meant_m": meant, "rolls_m": list(rolls), "roll_sd_m": sd} for meant, rolls, sd in blocks]
        return engine_ask("findings", putts=[], heard=heard)["skills"]["pace"]

    return ask


def test_intervals_hold_players_on_floors_that_are_taken_for_others(pace):
    """Eight per cent of spread, lean from -8 to 8; the floor is off by 4 % and said to be known to that."""
    random = np.random.default_rng(19)
    lean, spread = [], []
    for _ in range(80):
        bias = random.uniform(-0.08, 0.08)
        blocks = []
        for _ in range(2):
            floor = 1 + 0.04 * random.standard_normal()
            errors = bias + 0.08 * random.standard_normal(12)
            blocks.append((4.0, 4.0 * (1 + errors) * floor, 0.16))
        found = pace(*blocks)
        lean.append(found["bias_low"] <= bias <= found["bias_high"])
        spread.append(found["sd_low"] <= 0.08 <= found["sd_high"])
    assert 0.87 <= np.mean(lean) <= 1
    assert 0.87 <= np.mean(spread) <= 1


def test_what_the_floor_leaves_open_no_number_of_putts_settles(pace):
    rolls = 4.0 + 0.3 * np.random.default_rng(4).standard_normal(200)
    sure, unsure = pace((4.0, rolls, 0.0)), pace((4.0, rolls, 0.2))
    assert sure["bias_high"] - sure["bias_low"] < 0.03
    assert unsure["bias_high"] - unsure["bias_low"] == pytest.approx(2 * 1.96 * 0.05, rel=0.15)
    assert unsure["sd"] == pytest.approx(sure["sd"], rel=0.02)


def test_it_is_told_how_many_were_heard(pace):
    assert "24 putts heard on a floor are in this." in pace((4.0, [4.1] * 12 + [3.9] * 12, 0.1))["words"]


def test_the_newest_500_count(engine_ask):
    old = {"at": "2020-01-01", "meant_m": 4.0, "rolls_m": [6.0] * 400}
    new = [{"at": AT, "meant_m": 4.0, "rolls_m": [3.9, 4.1] * 150}] * 2
    assert abs(engine_ask("findings", putts=[], heard=[old, *new])["skills"]["pace"]["bias"]) < 0.01


def test_a_block_without_a_day_is_named(refused):
    heard = [{"at": "yesterday evening", "meant_m": 4.0, "rolls_m": [4.0]}]
    assert refused("findings", putts=[], heard=heard)["field"] == "heard[0].at"
