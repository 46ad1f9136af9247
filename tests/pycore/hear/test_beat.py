"""A strike against the beat: the delay from the notes as an earpiece gives them, then strikes at known distances from it."""

import numpy as np
import pytest

from tests import sounds

RATE = 48_000
BACK_S, FORWARD_S, CYCLE_S, STROKES = 0.6, 0.3, 3.3, 6
BEGAN_S = 0.7  # on the microphone's clock
NOTES = [
    (BEGAN_S + CYCLE_S * i + at, kind)
    for i in range(STROKES)
    for at, kind in ((0.0, "start"), (BACK_S, "top"), (BACK_S + FORWARD_S, "impact"))
]
BEATS = [at for at, kind in NOTES if kind == "impact"]


def room(seed=5):
    return sounds.Room(RATE, 3 + CYCLE_S * STROKES, seed)


def earpiece(delay_s, loud=0.1, seed=5):
    """The notes as they come back, a wireless link wavering by 2 ms."""
    made = room(seed)
    for at, kind in NOTES:
        made.put(at + delay_s + made.rng.normal(0, 0.002), sounds.tone(kind, RATE), loud)
    made.noise(made.white(), 24)
    return made


@pytest.fixture
def on_beat(engine_ask):
    return lambda made, **fields: engine_ask("on_beat", bands=made.levels(), **fields)


@pytest.mark.parametrize("delay_s", [-0.03, 0.02, 0.18, 0.31, 0.6])
def test_the_notes_tell_how_late_they_come_back(on_beat, delay_s):
    answer = on_beat(earpiece(delay_s), beats_s=[at for at, _ in NOTES])
    assert answer["delay_s"] == pytest.approx(delay_s, abs=0.003)
    assert abs(answer["delay_s"] - delay_s) < 3 * answer["delay_sd_s"] < 0.01
    assert answer["heard"] >= 0.8 * len(NOTES)


def test_a_quiet_room_tells_no_delay(on_beat):
    made = room()
    made.noise(made.white(), 24)
    for at in (2.0, 5.1, 6.6):
        made.put(at, sounds.door(RATE, made.rng), 0.3)
    answer = on_beat(made, beats_s=[at for at, _ in NOTES])
    assert (answer["delay_s"], answer["delay_sd_s"], answer["heard"]) == (None, None, 0)


OFFS = [0.03, -0.02, 0.05, 0.0, 0.04, -0.01]


def test_each_strike_is_told_from_the_beat_that_the_ear_had(on_beat):
    """The microphone hears a strike 40 ms late, and the ear the note 140 ms: together the delay of 180 ms."""
    made = room(8)
    for beat, off in zip(BEATS, OFFS, strict=True):
        made.putt(beat + 0.14 + off + 0.04, 2.2)
    made.noise(made.white(), 24)
    answer = on_beat(made, beats_s=BEATS, delay_s=0.18, delay_sd_s=0.004)
    assert [strike["beat"] for strike in answer["strikes"]] == [0, 1, 2, 3, 4, 5]
    assert [strike["off_s"] for strike in answer["strikes"]] == pytest.approx(OFFS, abs=0.003)
    assert answer["lean"]["value"] == pytest.approx(np.mean(OFFS), abs=0.003)
    assert answer["spread"]["low"] < np.std(OFFS, ddof=1) < answer["spread"]["high"]


def test_the_delay_s_doubt_stays_in_the_lean(on_beat):
    made = room(8)
    sure, unsure = (
        on_beat(made, beats_s=BEATS, delay_s=0.18, delay_sd_s=sd, earlier_s=[0.02, 0.03] * 200)["lean"] for sd in (0.0, 0.01)
    )
    assert sure["high"] - sure["low"] < 0.002
    assert unsure["high"] - unsure["low"] == pytest.approx(2 * 1.96 * 0.01, rel=0.02)


def test_what_is_far_from_every_beat_is_no_strike_on_it(on_beat):
    made = room(9)
    made.putt(BEATS[1] + 0.18 + 0.9, 2.2)
    answer = on_beat(made, beats_s=BEATS, delay_s=0.18)
    assert (answer["strikes"], answer["lean"]) == ([], None)
