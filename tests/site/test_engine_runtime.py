"""The engine in the Python that the site ships answers as it does here."""

import json

import pytest

from pycore.api import EXAMPLES, answer

# An end of a window is searched to some 1e-5 m/s, where its edge is steep: degrees differ by 1e-4 with another C library
SEARCHED = 2e-4


def close(here, there):
    """The same answer, but for what a search leaves open."""
    if isinstance(here, dict):
        return here.keys() == there.keys() and all(close(here[name], there[name]) for name in here)
    if isinstance(here, list):
        return len(here) == len(there) and all(map(close, here, there))
    if isinstance(here, float):
        return here == pytest.approx(there, rel=SEARCHED, abs=SEARCHED)
    return here == there


@pytest.mark.parametrize("request_", EXAMPLES, ids=[request["ask"] for request in EXAMPLES])
def test_examples(engine_runtime, request_):
    here = json.loads(answer(json.dumps(request_)))
    assert close(here, engine_runtime.ask(**request_))


@pytest.mark.parametrize("text", ["", "{", "[]", '{"ask": "nothing"}', '{"ask": "read", "distance_m": NaN}', "é" * 1000])
def test_refusals(engine_runtime, text):
    reply = json.loads(engine_runtime.answer(text))
    assert not reply["ok"]
    assert reply == json.loads(answer(text))
