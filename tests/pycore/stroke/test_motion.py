"""The tempo found in made-up motion: noise, drift, lost samples, 20 to 60 a second."""

import itertools
from math import atan2, cos, degrees, radians, sin, sqrt
from statistics import median

import pytest

from pycore.stroke.motion import _rest

RATIO = 0.1  # how near the ratio over eight strokes has to be


@pytest.mark.parametrize("hz", [20, 30, 60])
@pytest.mark.parametrize("ratio", [1.6, 2.0, 2.6])
@pytest.mark.parametrize("seed", [1, 2, 3])
def test_the_ratio_is_found(engine_ask, swing_phone, hz, ratio, seed):
    samples, true = swing_phone(ratio, hz, seed=seed)
    found = engine_ask("find_tempo", rates=samples)
    assert len(found["strokes"]) >= 7
    assert found["ratio"] == pytest.approx(median(true), abs=RATIO)
    assert found["ratio_low"] < median(true) < found["ratio_high"] < found["ratio_low"] + 0.7
    assert found["forward_s"] == pytest.approx(0.3, abs=0.02)
    assert found["back_s"] == pytest.approx(0.3 * ratio, abs=0.03)
    starts = [stroke["at_s"] for stroke in found["strokes"]]
    assert samples[0][0] <= starts[0] < starts[-1] < samples[-1][0]
    assert starts == sorted(starts)


@pytest.mark.parametrize("axis", [(1, 0, 0), (0, 0, -1), (-0.6, 0.6, 0.53)])
def test_it_does_not_matter_how_the_phone_is_held(engine_ask, swing_phone, axis):
    samples, true = swing_phone(2, 40, axis=axis)
    assert engine_ask("find_tempo", rates=samples)["ratio"] == pytest.approx(median(true), abs=RATIO)


def test_orientation_alone_will_do(engine_ask, swing_phone):
    """Angles rounded to a tenth of a degree, as browsers give them, of a phone on end that swings about a slanted axis."""
    samples, true = swing_phone(2, 60, noise=0.0, drift=0.0, drop=0.0, axis=(0, 0, 0.01))
    angle, angles = 0.0, []
    for before, sample in itertools.pairwise(samples):
        angle += (sample[3] + 1) * 100 * (sample[0] - before[0])
        # about the horizontal axis that points at the holder: the phone's top, up at rest, swings sideways
        a, lean = radians(angle), radians(70)
        top = (sin(a) * sin(lean), cos(a) * sin(lean), cos(lean))
        beta = atan2(top[2], sqrt(top[0] ** 2 + top[1] ** 2))
        alpha = atan2(-top[0], top[1])
        angles.append([sample[0], round(degrees(alpha) % 360, 1), round(degrees(beta), 1), 0])
    found = engine_ask("find_tempo", angles=angles)
    assert len(found["strokes"]) >= 7
    assert found["ratio"] == pytest.approx(median(true), abs=RATIO)


@pytest.mark.parametrize(("since", "until"), [(-0.45, -0.05), (0.03, 0.24)])
def test_a_stroke_is_not_used_that_is_torn_before_or_just_after_the_ball(engine_ask, swing_phone, since, until):
    samples, _ = swing_phone(2, 40)
    first_impact = 1.0 + 0.9
    torn = [s for s in samples if not first_impact + since < s[0] < first_impact + until]
    found = engine_ask("find_tempo", rates=torn)
    assert len(found["strokes"]) == 7
    assert [part["reason"] for part in found["unused"]] == ["gap"]


def test_it_says_what_was_cut_off(engine_ask, swing_phone):
    samples, _ = swing_phone(2, 40)
    cut = engine_ask("find_tempo", rates=[s for s in samples if s[0] > 1.5])
    assert "cut_off" in [part["reason"] for part in cut["unused"]]


def test_noise_alone_holds_no_stroke(refused, swing_phone):
    samples, _ = swing_phone(2, 40)
    still = [[t, 0.4 * sin(50 * t), 0.3 * cos(91 * t), 0.5] for t, *_ in samples]
    assert refused("find_tempo", rates=still)["code"] == "no_strokes"


def test_a_rest_begins_where_the_recording_does():
    still = [(i / 40, 0.0) for i in range(8)]
    assert _rest(still, [0.0] * 6 + [-1.0] * 2, 6, 0.1) == (0, 5)


def test_too_few_samples_a_second_are_refused(refused, swing_phone):
    samples, _ = swing_phone(2, 10)
    for name in ("rates", "angles"):
        said = refused("find_tempo", **{name: samples})
        assert (said["code"], said["field"], said["unit"]) == ("too_slow", name, "a second")


def test_samples_out_of_order_are_refused(refused, swing_phone):
    samples, _ = swing_phone(2, 40)
    samples[10][0] = samples[9][0]
    refusal = refused("find_tempo", rates=samples)
    assert refusal["field"] == "rates[10]"
