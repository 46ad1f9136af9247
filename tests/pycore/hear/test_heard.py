"""Putts heard in levels of sound: made by numpy, worked out by hand, and refused where they tell nothing."""

import numpy as np
import pytest

from tests import sounds

RATE = 48_000
MOMENT = 0.003  # s
LAUNCH = 0.015  # of it, where the floor is known


@pytest.fixture
def hear(engine_ask):
    def hear(room, **fields):
        return engine_ask("heard", bands=room.levels(), rate_hz=1000, marks_m=list(room.marks_m), **fields)

    return hear


def quiet(marks=(2.5,), things=("glass",), launches=(1.9, 2.1, 2.4), seed=3, **options):
    room = sounds.Room(RATE, 3 + 7 * len(launches), seed, marks_m=marks, things=things, **options)
    for i, launch in enumerate(launches):
        room.putt(1.5 + 7 * i, launch)
    room.echo()
    room.noise(room.white(), 30)
    return room


def test_two_sounds_and_a_length_tell_the_launch(hear):
    """D: d = v t - a t^2 / 2 with a = 1.83^2 / (2 S) (Holmes 1991, Penner 2002), the room's own law."""
    room = quiet()
    answer = hear(room, stimp_ft=9.0, stimp_sd_ft=0.0)
    assert len(answer["strokes"]) == 3
    for stroke, (impact, (arrival,), launch) in zip(answer["strokes"], room.putts, strict=True):
        assert stroke["impact_s"] == pytest.approx(impact, abs=MOMENT)
        assert stroke["arrivals_s"] == [pytest.approx(arrival, abs=MOMENT)]
        assert stroke["launch_mps"] == pytest.approx(launch, rel=LAUNCH)
        assert abs(stroke["launch_mps"] - launch) < 3 * stroke["launch_sd_mps"] < 0.02 * launch
        # by hand: v^2 / (2 a), a = 3.3489 / (18 * 0.3048) = 0.61040
        assert stroke["roll_m"] == pytest.approx(stroke["launch_mps"] ** 2 / (2 * 0.61040), rel=1e-3)
    assert answer["stimp_ft"] is None
    assert {part["part"] for part in answer["heard"]} >= {"impact", "arrival"}
    assert {left["reason"] for left in answer["left_out"]} <= {"rebound"}


def test_three_sounds_tell_the_floor_too(hear):
    launches = np.linspace(2.3, 3.2, 10)
    room = quiet(marks=(1.4, 3.0), things=("paper", "glass"), launches=launches, stimp_ft=8.2)
    answer = hear(room, stimp_ft=None)
    assert len(answer["strokes"]) == 10
    assert answer["stimp_ft"] == pytest.approx(8.2, rel=0.08)
    assert abs(answer["stimp_ft"] - 8.2) < 2.5 * answer["stimp_sd_ft"] < 1.6
    for stroke, (_, _, launch) in zip(answer["strokes"], room.putts, strict=True):
        assert abs(stroke["launch_mps"] - launch) < 3 * stroke["launch_sd_mps"]


def test_a_ball_that_dies_between_the_marks_counts_by_the_first(hear):
    room = quiet(marks=(1.4, 3.0), things=("paper", "glass"), launches=(2.3, 1.6, 2.5, 2.2))
    answer = hear(room, stimp_ft=9.0)
    assert [stroke["marks"] for stroke in answer["strokes"]] == [[0, 1], [0], [0, 1], [0, 1]]
    assert answer["strokes"][1]["launch_mps"] == pytest.approx(1.6, rel=LAUNCH)


def test_the_floors_doubt_is_in_the_launch(hear):
    """By hand: v = d / t + a t / 2, so a tenth of a changes v by a t / 20."""
    room = quiet()
    sure, unsure = (hear(room, stimp_ft=9.0, stimp_sd_ft=sd)["strokes"][0] for sd in (0.0, 0.9))
    time = sure["arrivals_s"][0] - sure["impact_s"]
    added = np.sqrt(unsure["launch_sd_mps"] ** 2 - sure["launch_sd_mps"] ** 2)
    assert added == pytest.approx(0.6104 * time / 20, rel=0.02)


def test_a_putted_ball_skids_first(hear):
    """By hand, mu 0.4 (as the roll test has it), u = 2.5: it rolls with 12.5 / 7 after 2 u / (7 mu g) = 0.18209 s and
    12 u^2 / (49 mu g) = 0.39020 m, then slows by 0.61040; it would have run 0.39020 + 1.78571^2 / (2 * 0.61040) = 3.0023 m."""
    skid_s, skid_m, rolls, slowing = 0.18209, 0.39020, 12.5 / 7, 0.61040
    mark = 2.0
    after = (rolls - np.sqrt(rolls**2 - 2 * slowing * (mark - skid_m))) / slowing
    room = sounds.Room(RATE, 6, 1, marks_m=(mark,))
    room.put(1.0, sounds.ring(sounds.STRIKES["usual"], RATE, room.rng), 0.3)
    room.put(1.0 + skid_s + after, room.thing("glass"), 0.3)
    room.noise(room.white(), 30)
    putted, rolled = (hear(room, stimp_ft=9.0, skid=skid)["strokes"][0] for skid in ("putted", "rolled"))
    assert putted["roll_m"] == pytest.approx(3.0023, rel=0.01)
    assert rolled["roll_m"] > 1.02 * putted["roll_m"]
    assert putted["launch_sd_mps"] > rolled["launch_sd_mps"]


@pytest.mark.parametrize(("kind", "reason"), [("voice", "lasting"), ("notes", "tone"), ("knock", "alone")])
def test_what_is_no_putt_is_left_out_with_its_reason(hear, kind, reason):
    room = sounds.Room(RATE, 24, 5)
    if kind == "voice":
        room.sound += 0.2 * np.resize(sounds.voice(RATE, 24, room.rng), room.sound.size)
    elif kind == "notes":
        for start in np.arange(0.5, 23, 3.6):
            for note, after in (("start", 0.0), ("top", 0.6), ("impact", 0.9)):
                room.put(start + after, sounds.tone(note, RATE), 0.2)
    else:
        for at in (1.0, 9.0, 17.0):
            room.put(at, sounds.ring(sounds.STRIKES["usual"], RATE, room.rng), 0.3)
    room.noise(room.white(), 40)
    answer = hear(room, stimp_ft=9.0)
    assert answer["strokes"] == []
    assert reason in {left["reason"] for left in answer["left_out"]}


def test_silence_is_no_putt(engine_ask):
    for level in (0.0, 1e-5, 1.0):
        answer = engine_ask("heard", bands=[[level] * 5000] * 3, marks_m=[2.0], stimp_ft=9)
        assert answer["strokes"] == answer["heard"] == answer["left_out"] == []


BAND = [0.01] * 1000


@pytest.mark.parametrize(
    ("fields", "code", "field"),
    [
        ({"bands": [BAND, BAND]}, "bad_field", "bands"),
        ({"bands": [BAND, BAND, BAND[1:]]}, "bad_field", "bands[2]"),
        ({"bands": [BAND, BAND, [1.2, *BAND[1:]]]}, "bad_field", "bands[2][0]"),
        ({"bands": [[0.0] * 121_000] * 3}, "too_long", "bands"),
        ({"marks_m": [2.0, 1.0]}, "bad_field", "marks_m[1]"),
        ({"marks_m": []}, "bad_field", "marks_m"),
        ({"stimp_ft": None}, "no_speed", "stimp_ft"),
    ],
)
def test_refusals(refused, fields, code, field):
    refusal = refused("heard", **{"bands": [BAND] * 3, "marks_m": [2.0], "stimp_ft": 9.0, **fields})
    assert (refusal["code"], refusal["field"]) == (code, field)


def test_lean_and_spread_of_a_row(engine_ask):
    """By hand: errors -0.05, 0.025, 0.10; mean 0.025, SD 0.075; Student's 4.3027 and chi-square 7.3778 and 0.050636 with two
    degrees of freedom (Abramowitz and Stegun, tables 26.10 and 26.8)."""
    answer = engine_ask("paces", rolls_m=[3.8, 4.1, 4.4], meant_m=4.0)
    assert answer["errors"] == pytest.approx([-0.05, 0.025, 0.10])
    reach = 4.3027 * 0.075 / np.sqrt(3)
    assert answer["lean"] == pytest.approx({"value": 0.025, "low": 0.025 - reach, "high": 0.025 + reach}, rel=1e-3)
    spread = {"value": 0.075, "low": 0.075 * np.sqrt(2 / 7.3778), "high": 0.075 * np.sqrt(2 / 0.050636)}
    assert answer["spread"] == pytest.approx(spread, rel=1e-3)
    assert engine_ask("paces", rolls_m=[4.0], meant_m=4.0)["lean"] is None


def test_what_the_floor_leaves_open_is_in_the_lean(engine_ask):
    """Of 400 putts the mean is known; a spread of 0.2 m that all of 4 m share leaves 1.96 times a twentieth to each side."""
    rolls = [3.9, 4.1] * 200
    sure, unsure = (engine_ask("paces", rolls_m=rolls, meant_m=4.0, roll_sd_m=sd) for sd in (0.0, 0.2))
    assert sure["lean"]["high"] < 0.003
    assert unsure["lean"]["high"] == pytest.approx(1.96 * 0.05, rel=0.01)
    assert unsure["spread"] == sure["spread"]
