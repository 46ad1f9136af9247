"""Feet and eye: groups, sides, and a correction whose spread is honest."""

import json

import numpy as np
import pytest
from scipy.stats import t as student

from pycore import api
from pycore.senses import feel as feet

FALLS = ("left", "right", "toes", "heels")
SIDES: tuple[feet.Fall, feet.Fall] = ("left", "right")


def ask(**request):
    return json.loads(api.answer(json.dumps(request)))["value"]


def trials(rng, count, bias, spread, falls=FALLS):
    """Trials of a golfer who feels ``bias[fall]`` times the slope, give or take."""
    made = []
    for i in range(count):
        fall, measured = falls[i % len(falls)], rng.uniform(1, 4)
        felt = min(20.0, max(0.0, measured * bias.get(fall, 1) + rng.normal(0, spread)))
        made.append({"felt_percent": felt, "measured_percent": measured, "fall": fall})
    return made


def test_nothing_known_nothing_corrected():
    found = ask(ask="felt", trials=[], felt_percent=2, fall="left")
    assert found["slope_percent"] == 2
    assert found["trials"] == 0
    assert found["slope_sd_percent"] > 0.8
    assert {group["kind"]: group["bias"] for group in ask(ask="feel", trials=[])["groups"]} == dict.fromkeys(
        (*FALLS, "small", "large")
    )


@pytest.mark.parametrize(("less", "opposite", "neither"), [("right", "left", "toes"), ("heels", "toes", "left")])
def test_each_way_is_kept_apart(less, opposite, neither):
    made = trials(np.random.default_rng(7), 400, {less: 0.6}, 0.2)
    one, other = (ask(ask="felt", trials=made, felt_percent=1.5, fall=fall) for fall in (less, opposite))
    assert one["slope_percent"] == pytest.approx(2.5, abs=0.2)
    assert other["slope_percent"] == pytest.approx(1.5, abs=0.1)
    pairs = {pair["one"]: pair for pair in ask(ask="feel", trials=made)["sides"]}
    assert pairs[opposite]["differs"]
    assert pairs[opposite]["other"] == less
    assert pairs[opposite]["difference"]["low"] > 0.5
    assert not pairs[neither]["differs"]


def test_looking_again_after_every_trial_finds_no_more_than_chance_does():
    """Nothing differs, and it is looked at after each of 40 trials: 28 of 120 showed something once by one look's bound."""
    rng = np.random.default_rng(40)
    false = 0
    for _ in range(300):
        made = [
            feet.Trial(**{name.removesuffix("_percent"): of for name, of in each.items()})
            for each in trials(rng, 40, {}, 0.6, SIDES)
        ]
        false += any(feet.sides(made[:n], *SIDES).differs for n in range(4, 41))
    assert false / 300 <= 0.05


def test_how_far_an_uncorrected_feeling_is_off():
    rng = np.random.default_rng(41)
    assert ask(ask="feel", trials=[])["sd_percent"] is None
    made = trials(rng, 200, dict.fromkeys(FALLS, 1), 0.5)
    assert ask(ask="feel", trials=made)["sd_percent"] == pytest.approx(0.5, abs=0.06)
    assert 0.5 < ask(ask="feel", trials=made[:2])["sd_percent"] < 1.0


def test_small_and_large_are_kept_apart():
    made = [{"felt_percent": f, "measured_percent": m, "fall": "left"} for f, m in ((1, 1), (1.2, 1), (2, 3), (2.2, 3))]
    groups = {group["kind"]: group for group in ask(ask="feel", trials=made)["groups"]}
    assert groups["small"]["bias"]["value"] == pytest.approx(0.1)
    assert groups["large"]["bias"]["value"] == pytest.approx(-0.9)


def test_two_that_agree_to_the_tenth_are_not_certain():
    made = [{"felt_percent": 2.0, "measured_percent": 1.5, "fall": fall} for fall in ("left", "left", "right", "right")]
    value = ask(ask="feel", trials=made)
    for found in (group["bias"] for group in value["groups"] if group["trials"]):
        assert found["low"] < 0.5 < found["high"]
    (pair,) = (pair for pair in value["sides"] if pair["one"] == "left")
    assert pair["difference"]["low"] < 0 < pair["difference"]["high"]


def test_few_trials_correct_little_many_correct_all():
    rng = np.random.default_rng(8)
    steps = [
        ask(ask="felt", trials=trials(rng, n, {"left": 0.5}, 0.01, ("left",)), felt_percent=1, fall="left")["slope_percent"]
        for n in (1, 4, 60)
    ]
    assert 1 < steps[0] < steps[1] < steps[2]
    assert steps[2] == pytest.approx(2, abs=0.1)


def test_intervals_hold_the_truth_as_often_as_they_say():
    rng = np.random.default_rng(9)
    held = []
    for _ in range(400):
        made = [
            {"felt_percent": 3 + rng.normal(-0.3 if i % 2 else 0.2, 0.5), "measured_percent": 3, "fall": FALLS[i % 2]}
            for i in range(12)
        ]
        found = ask(ask="feel", trials=made)
        group, pair = found["groups"][0], found["sides"][0]
        held.append(
            [
                group["bias"]["low"] < 0.2 < group["bias"]["high"],
                group["spread"]["low"] < 0.5 < group["spread"]["high"],
                pair["difference"]["low"] < 0.5 < pair["difference"]["high"],
            ]
        )
    for share in np.mean(held, axis=0):
        assert 0.90 <= share <= 0.99


def test_the_spread_of_a_corrected_feel_is_honest():
    rng = np.random.default_rng(10)
    inside = []
    for _ in range(600):
        made = trials(rng, 10, {"left": rng.normal(1, 0.2)}, 0.6, ("left",))
        asked = made.pop()
        found = ask(ask="felt", trials=made, felt_percent=min(8, asked["felt_percent"]), fall="left")
        inside.append(abs(found["slope_percent"] - asked["measured_percent"]) < 1.96 * found["slope_sd_percent"])
    assert 0.90 <= np.mean(inside) <= 0.99


def test_the_trials_still_needed_settle_it():
    made = trials(np.random.default_rng(11), 6, {"left": 1.1}, 0.5, ("left", "right"))
    pair = ask(ask="feel", trials=made)["sides"][0]
    assert not pair["differs"]
    assert pair["more"] > 0
    # as many more like these, and the interval is fine enough or shows a difference
    times = -(-(3 + pair["more"]) // 3)
    settled = ask(ask="feel", trials=made * times)["sides"][0]
    assert settled["differs"] or settled["more"] == 0


@pytest.mark.parametrize("samples", [1, 2])
@pytest.mark.parametrize("ratio", [0.3, 0.8, 1.3, 2.0, 5.0])
def test_trials_still_needed_are_the_fewest_that_will_do(samples, ratio):
    """Of each sample the least n with t(0.975, samples (n - 1)) sd sqrt(samples / n) <= reach, by SciPy's t."""
    least = next(n for n in range(2, 1000) if student.ppf(0.975, samples * (n - 1)) * ratio * (samples / n) ** 0.5 <= 1)
    assert feet._needed(ratio * 0.7, 0.7, samples) == least


def test_the_curves_have_a_point_each_half_per_cent():
    curves = ask(ask="feel", trials=[])["curves"]
    assert [curve["fall"] for curve in curves] == list(feet.FALLS)
    for curve in curves:
        assert [felt for felt, _, _ in curve["points"]] == [0.5 * i for i in range(1, 9)]
