"""How a row of watched strikes leans and scatters, against SciPy's distributions."""

import math

import numpy as np
import pytest
from scipy import stats


def strikes(errors, paces, sd=0.0, launch_sd=0.0):
    return [
        {
            "start_deg": 3.0 + error,
            "start_sd_deg": sd,
            "launch_mps": 2.0 * math.sqrt(1 + pace),
            "launch_sd_mps": launch_sd,
            "aim_deg": 3.0,
            "meant_mps": 2.0,
        }
        for error, pace in zip(errors, paces, strict=True)
    ]


def test_lean_and_spread(engine_ask):
    errors, paces = [0.2, 1.1, -0.4, 0.8, 0.5], [0.05, -0.02, 0.1, 0.0, 0.04]
    told = engine_ask("block", strikes=strikes(errors, paces))
    for name, values in (("start", errors), ("pace", paces)):
        low, high = stats.t.interval(0.95, 4, np.mean(values), stats.sem(values))
        row = told[name]
        assert row["strikes"] == 5
        assert row["lean"] == pytest.approx({"value": np.mean(values), "low": low, "high": high}, rel=1e-6)
        free, sd = 4, np.std(values, ddof=1)
        ends = [sd * math.sqrt(free / stats.chi2.ppf(share, free)) for share in (0.975, 0.025)]
        assert row["spread"] == pytest.approx({"value": sd, "low": ends[0], "high": ends[1]}, rel=1e-6)


def test_what_all_films_are_off_by_does_not_grow_less(engine_ask):
    rng = np.random.default_rng(1)
    errors = rng.normal(0, 0.3, 200)
    row = engine_ask("block", strikes=strikes(errors, [0.0] * 200, sd=0.25))["start"]
    assert row["lean"]["high"] - row["lean"]["low"] > 2 * 1.96 * 0.25


def test_a_strike_that_was_seen_in_part_counts_for_that_part(engine_ask):
    some = strikes([0.1, 0.2, 0.3], [0.0, 0.1, 0.2])
    some[0] |= {"start_deg": None, "start_sd_deg": None}
    told = engine_ask("block", strikes=some)
    assert (told["start"]["strikes"], told["pace"]["strikes"]) == (2, 3)


def test_of_one_strike_nothing_is_told(engine_ask):
    assert engine_ask("block", strikes=strikes([0.1], [0.0])) == {"start": None, "pace": None}
    assert engine_ask("block", strikes=[]) == {"start": None, "pace": None}


def test_enough_is_enough(engine_ask):
    """A player who putts until it says enough, at whatever lean, has a lean within half a degree, in 19 of 20 blocks or more
    but for the few first strikes that chance to agree."""
    rng = np.random.default_rng(20261127)
    held, counts = 0, []
    for _ in range(200):
        errors = list(rng.normal(0.4, 0.9, 2))
        while (row := engine_ask("block", strikes=strikes(errors, [0.0] * len(errors)))["start"])["more"]:
            errors.append(rng.normal(0.4, 0.9))
        held += row["lean"]["low"] < 0.4 < row["lean"]["high"]
        counts.append(len(errors))
    assert held / 200 > 0.9
    assert 8 < np.median(counts) < 18  # 1.96 x 0.9 / 0.5, squared, is 12.4
    assert min(counts) >= 6


def test_a_launch_of_none_is_refused(refused):
    told = refused(name="block", strikes=[{"aim_deg": 0, "meant_mps": 0}])
    assert told["field"] == "strikes[0].meant_mps"
