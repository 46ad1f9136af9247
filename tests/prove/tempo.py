"""The tempo found in strokes of 18 shapes that numpy drew (tests/drawn_strokes.py): 8 strokes a session, 30 and 60 samples a
second with jitter and gaps, ratios 1.5 to 2.8. Of an early peak and of a smooth stroke with a tremor the start cannot be told
so well: their errors stand here for information, and the interval has to hold them.
"""

import json

import numpy as np

from prove import Proof, Row
from pycore.api import answer
from tests.drawn_strokes import SHAPES, session

SHORT = 1
RATIOS = (1.5, 2.0, 2.4, 2.8)
NEAR_S = 0.25  # an impact farther off is another stroke
UNTOLD = ("early peak", "smooth, tremor")


def prove(cases: int = 10) -> Proof:
    rows = []
    false = found = held = sessions = far = told = 0
    for done, (name, shape) in enumerate(SHAPES.items()):
        errors = []
        for number in range(cases):
            hz, ratio = (30, 60)[number % 2], RATIOS[(number + done) % len(RATIOS)]
            samples, marks = session(shape, ratio, hz, 7 * number + hz)
            reply = json.loads(answer(json.dumps({"ask": "find_tempo", "rates": samples})))
            assert reply["ok"], (name, reply)
            value = reply["value"]
            impacts = [s["at_s"] + s["back_s"] + s["forward_s"] for s in value["strokes"]]
            false += sum(min(abs(at - mark[2]) for mark in marks) > NEAR_S for at in impacts)
            found += len(impacts)
            true = float(np.median([(top - start) / (impact - top) for start, top, impact in marks]))
            errors.append(value["ratio"] - true)
            held += value["ratio_low"] <= true <= value["ratio_high"]
            sessions += 1
            yield (done + (number + 1) / cases) / len(SHAPES)
        bias = float(np.mean(errors))
        if name in UNTOLD:
            rows.append(Row(f"mean error, {name}", bias))
        else:
            # with one session the mean is no more than that session's own error
            rows.append(Row(f"mean error, {name}", bias, -0.1 if cases > 1 else -0.2, 0.1 if cases > 1 else 0.2))
            far += sum(abs(error) > 0.2 for error in errors)
            told += len(errors)
    return [
        *rows,
        Row("sessions within 0.2, of the shapes that are told", 100 * (1 - far / told), 90, unit="%"),
        Row("intervals that hold the ratio, of all", 100 * held / sessions, 90, unit="%"),
        Row("false strokes, of a hundred", 100 * false / found, high=2),
    ]
