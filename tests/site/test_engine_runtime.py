"""The engine in the Python that the site ships answers as it does here."""

import csv
import json
from pathlib import Path

import numpy as np
import pytest

from pycore.api import answer, examples

# An end of a window is searched to some 1e-5 m/s, where its edge is steep: degrees differ by 1e-4 with another C library
SEARCHED = 2e-4
CLOSING = 0.05  # degrees, of a window's edge, which is steep where it closes: 0.032 was seen on stations

PUBLISHED = Path(__file__).parents[1] / "published"


def close(here, there):
    """The same answer, but for what a search leaves open."""
    if isinstance(here, dict):
        return here.keys() == there.keys() and all(
            closing(here[name], there[name]) if name == "edge" else close(here[name], there[name]) for name in here
        )
    if isinstance(here, list):
        return len(here) == len(there) and all(map(close, here, there))
    if isinstance(here, float):
        return here == pytest.approx(there, rel=SEARCHED, abs=SEARCHED)
    return here == there


def closing(here, there):
    """The same edge of a window, as nearly as its two ends are searched, from which its launches are laid out."""
    return len(here) == len(there) and np.allclose(here, there, rtol=0, atol=CLOSING)


@pytest.mark.parametrize("request_", examples(), ids=lambda request: request["ask"])
def test_examples(engine_runtime, request_):
    here = json.loads(answer(json.dumps(request_)))
    assert close(here, engine_runtime.ask(**request_))


@pytest.mark.parametrize("text", ["", "{", "[]", '{"ask": "nothing"}', '{"ask": "read", "distance_m": NaN}', "é" * 1000])
def test_refusals(engine_runtime, text):
    reply = json.loads(engine_runtime.answer(text))
    assert not reply["ok"]
    assert reply == json.loads(answer(text))


def published(name):
    lines = (PUBLISHED / f"{name}.csv").read_text().splitlines()
    rows = csv.DictReader(line for line in lines if not line.startswith("#"))
    return [{key: float(value) for key, value in row.items() if value} for row in rows]


@pytest.mark.parametrize("row", published("stops"))
def test_published_stops(engine_runtime, row):
    """The rows that CPython is held to, in the site's own runtime."""
    green = {"distance_m": 3, "stimp_ft": row["stimp_ft"], "slope_percent": row["slope_percent"], "fall_deg": 0}
    value = engine_runtime.ask(ask="roll", **green, launch_mps=1.83, aim_deg=row["off_downhill_deg"])["value"]
    stop = value["stop"]["x_m"], value["stop"]["y_m"], value["time_s"]
    assert stop == pytest.approx((row["downhill_m"], row["across_m"], row["time_s"]), abs=0.51e-5)


@pytest.mark.parametrize("row", published("reads"))
def test_published_reads(engine_runtime, row):
    green = {"stimp_ft": row["stimp_ft"], "slope_percent": row["slope_percent"], "fall_deg": 90}
    soft, firm = 0.0, 1.0
    for _ in range(40):  # they are given by their speed at the hole
        past = (soft + firm) / 2
        value = engine_runtime.ask(ask="read", **green, distance_m=row["distance_ft"] * 0.3048, past_m=past)["value"]
        soft, firm = (past, firm) if value["entry_mps"] < row["entry_mps"] else (soft, past)
    assert value["aim_deg"] == pytest.approx(row["aim_deg"], abs=0.51e-4)
    assert value["launch_mps"] == pytest.approx(row["launch_mps"], abs=0.51e-5)
