"""The door, asked."""

import json
from collections.abc import Callable

import pytest

from pycore.api import answer


@pytest.fixture
def engine_ask() -> Callable:
    """What the door answers."""

    def engine_ask(name, **fields):
        reply = json.loads(answer(json.dumps({"ask": name, **fields})))
        assert reply["ok"], reply
        return reply["value"]

    return engine_ask


@pytest.fixture
def refused() -> Callable:
    """What the door says when it refuses."""

    def refused(name, **fields):
        reply = json.loads(answer(json.dumps({"ask": name, **fields})))
        assert not reply["ok"], reply
        return reply

    return refused
