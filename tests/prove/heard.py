"""Putts heard in made-up rooms (tests/sounds.py): strikes of three colours, five things met, echo, 8 to 48 kHz, 12 dB of
signal to noise (root mean squares, a strike's over its first 5 ms), beside hum, talk, espeak-ng, a television, doors and the
app's own notes.
"""

import json
import tempfile
from collections.abc import Iterator
from pathlib import Path

import numpy as np

import environment
from prove import Proof, Row
from pycore.api import answer
from tests import sounds

SHORT = 1
NOISES = ("white", "hum", "talk", "espeak-ng", "television", "doors", "notes")
ROOMS = (
    (48_000, "usual", "glass"),
    (44_100, "dull", "skirting"),
    (16_000, "bright", "coin"),
    (8_000, "usual", "glass"),
    (48_000, "dull", "hole"),
    (22_050, "usual", "skirting"),
)
PUTTS = 5
EVERY_S = 7.0
DECIBELS = 12.0
QUIET_DB = 22.0  # for what is no noise of its own
WORDS = (
    "The weather stays dry in the north, with light wind from the west. Take the second course to the left, then count the "
    "tables in the kitchen. Peter picked a pack of tickets. "
)
LATE_S = 0.02  # a moment farther off is another sound


def room(noise: str, number: int, two: bool, spoken: np.ndarray | None = None) -> sounds.Room:
    """A room with five putts and a noise; with ``two`` marks a sheet of paper lies in the ball's way."""
    rate, strike, thing = ROOMS[number % len(ROOMS)]
    rng = np.random.default_rng(1000 + number)
    marks, things = ((1.4, 3.0), ("paper", thing)) if two else ((2.5,), (thing,))
    made = sounds.Room(rate, 4 + PUTTS * EVERY_S, number, strike, things, float(rng.uniform(7, 11)), marks)
    least = np.sqrt(2 * sounds.slowing(made.stimp_ft) * marks[-1])
    # every fifth room is so loud that it clips
    loud = 1.6 if number % 5 == 4 else 0.2
    for i in range(PUTTS):
        made.putt(2 + i * EVERY_S + rng.uniform(0, 1), least * rng.uniform(1.12, 1.9), loud, loud)
    if noise == "doors":
        for _ in range(PUTTS // 2):
            made.put(rng.uniform(0, made.seconds - 1), sounds.door(rate, rng), 0.3)
    if noise == "notes":
        for start in np.arange(0.5, made.seconds - 1, 3.6):
            for kind, after in (("start", 0.0), ("top", 0.6), ("impact", 0.9)):
                made.put(start + after, sounds.tone(kind, rate), 0.15)
    made.echo()
    if noise == "hum":
        made.noise(made.hum(), 0.0)
    heard = {
        "talk": lambda: sounds.voice(rate, made.seconds, rng),
        "espeak-ng": lambda: sounds.at_rate(spoken, 22_050, rate),
        "television": lambda: sounds.television(rate, made.seconds, rng),
    }
    made.noise(heard.get(noise, made.white)(), QUIET_DB if noise in ("hum", "notes") else DECIBELS)
    return made


def heard(made: sounds.Room, **fields: object) -> dict:
    """What the door answers."""
    asked = {"ask": "heard", "bands": made.levels(), "rate_hz": 1000, "marks_m": list(made.marks_m), **fields}
    reply = json.loads(answer(json.dumps(asked)))
    assert reply["ok"], reply
    return reply["value"]


def matched(made: sounds.Room, strokes: list[dict]) -> Iterator[tuple[dict, tuple[float, list[float], float] | None]]:
    """Each stroke with the putt that it is, None where it is none: every moment must be that of the putt."""
    for stroke in strokes:
        putt = next((p for p in made.putts if abs(p[0] - stroke["impact_s"]) < LATE_S), None)
        moments = zip(stroke["marks"], stroke["arrivals_s"], strict=True)
        fits = putt and all(m < len(putt[1]) and abs(putt[1][m] - at) < LATE_S for m, at in moments)
        yield stroke, putt if fits else None


def prove(cases: int = len(ROOMS) * 4) -> Proof:
    struck = found = false = told = 0
    late: list[float] = []
    off: list[float] = []
    floors: list[float] = []
    with tempfile.TemporaryDirectory() as folder:
        spoken = sounds.spoken(environment.voice(), WORDS * 4, Path(folder))
    rooms = [(noise, number, two) for number in range(cases) for noise in NOISES for two in (False, True)]
    for done, (noise, number, two) in enumerate(rooms):
        made = room(noise, number, two, spoken)
        answers = heard(made, stimp_ft=made.stimp_ft)
        struck += len(made.putts)
        for stroke, putt in matched(made, answers["strokes"]):
            if putt is None:
                false += 1
                continue
            found += 1
            late += [abs(stroke["impact_s"] - putt[0])]
            late += [abs(at - putt[1][m]) for m, at in zip(stroke["marks"], stroke["arrivals_s"], strict=True)]
            off.append(abs(stroke["launch_mps"] / putt[2] - 1))
            told += abs(stroke["launch_mps"] - putt[2]) < 2 * stroke["launch_sd_mps"]
        if two:
            floors.append(abs(answers["stimp_ft"] / made.stimp_ft - 1))
        yield (done + 1) / len(rooms)
    return [
        Row("putts struck", struck),
        Row("of them found", 100 * found / struck, 97, unit="%"),
        Row("false, of a hundred putts", 100 * false / struck, high=2),
        Row("moments off, 97th of a hundred", 1000 * float(np.quantile(late, 0.97)), high=3, unit="ms"),
        Row("launch off, 97th of a hundred", 100 * float(np.quantile(off, 0.97)), high=1.5, unit="%"),
        Row("launch within two of its spreads", 100 * told / found, 90, unit="%"),
        Row("floor's speed from five putts off, worst", 100 * max(floors), high=8, unit="%"),
    ]
