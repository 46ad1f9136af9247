"""A row of strokes: every event at its second."""

from itertools import pairwise

import pytest

SECOND = 1e-9


def times(answer, kind):
    return [event["at_s"] for event in answer["events"] if event["kind"] == kind]


def test_the_example_of_the_issue(engine_ask):
    answer = engine_ask("tempo", forward_s=0.30, ratio=2, rest_s=2.4, strokes=20, count_in=4)
    assert answer["cycle_s"] == pytest.approx(3.6, abs=SECOND)
    assert times(answer, "count") == pytest.approx([0, 0.6, 1.2, 1.8], abs=SECOND)
    assert answer["lead_s"] == pytest.approx(2.4, abs=SECOND)
    for i, (start, top, impact, finish) in enumerate(
        zip(*(times(answer, kind) for kind in ("start", "top", "impact", "finish")), strict=True)
    ):
        assert (start, top, impact, finish) == pytest.approx(
            (2.4 + 3.6 * i, 3.0 + 3.6 * i, 3.3 + 3.6 * i, 3.6 + 3.6 * i), abs=SECOND
        )
    assert len(answer["events"]) == 4 + 20 * 4
    assert answer["interpolated"] is False
    assert answer["total_s"] == pytest.approx(2.4 + 72, abs=SECOND)


@pytest.mark.parametrize("forward", [0.15, 0.27, 0.333, 0.6])
@pytest.mark.parametrize("ratio", [1, 1.87, 2, 4])
@pytest.mark.parametrize("rest", [0.5, 2.417, 10])
def test_a_cycle_is_whole_samples_and_hardly_longer_than_asked(engine_ask, forward, ratio, rest):
    answer = engine_ask("tempo", forward_s=forward, ratio=ratio, rest_s=rest, strokes=30, count_in=3)
    for rate in (44_100, 48_000):
        for length in (answer["cycle_s"], answer["lead_s"]):
            assert length * rate == pytest.approx(round(length * rate), abs=1e-6)
    assert abs(answer["cycle_s"] - (forward * (ratio + 2) + rest)) <= 0.005 + SECOND
    assert answer["interpolated"] == (ratio != 2)
    for start, top, impact in zip(*(times(answer, kind) for kind in ("start", "top", "impact")), strict=True):
        assert top - start == pytest.approx(forward * ratio, abs=SECOND)
        assert impact - top == pytest.approx(forward, abs=SECOND)


def test_the_curve_goes_there_and_back(engine_ask):
    answer = engine_ask("tempo", forward_s=0.3, ratio=2.2, rest_s=1.5)
    curve = answer["curve"]
    at = dict(map(tuple, curve))
    assert curve[0] == [0, 0]
    assert at[answer["back_s"]] == pytest.approx(-1, abs=SECOND)
    assert at[answer["back_s"] + 0.3] == pytest.approx(0, abs=SECOND)
    assert curve[-1] == pytest.approx([answer["cycle_s"], 0], abs=SECOND)
    assert max(abs(b[1] - a[1]) for a, b in pairwise(curve)) < 0.15
    assert all(a[0] < b[0] for a, b in pairwise(curve))


def test_no_light_follows_another_too_soon(engine_ask):
    """WCAG 2.2 SC 2.3.1: at most three a second; the page lights up at impact alone."""
    shortest = engine_ask("tempo", forward_s=0.15, ratio=1, rest_s=0.5)
    assert shortest["cycle_s"] > 1 / 3


def test_bad_tempos_are_refused(refused):
    refusal = refused("tempo", forward_s=2)
    assert refusal["field"] == "forward_s"
    assert "0.15 to 0.6 s" in refusal["message"]
