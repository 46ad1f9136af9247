"""``python3 build bench slowest``: the slowest question about one putt, sought by hypothesis, in CPython.

The search is led to what takes longer (``target``). The processor's time counts, so that other work on the machine does not.
"""

import dataclasses
import json
import sys
import time
from collections.abc import Iterator
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from hypothesis import HealthCheck, Phase, given, settings, target
from hypothesis import strategies as st

from bench.row import Row, milliseconds
from pycore.api import answer, endpoints
from pycore.fields import Length, Range, door_name
from pycore.putt.requests import LEAST_APART, PaceFields, ShapeFields, StationFields

QUESTIONS = 5000
LIMIT = 0.7  # s
TRIES = 3  # of the slowest; the least counts, the others were disturbed
WITHOUT = {"survey"}  # a green walked once has a speed of its own: see prove survey

type Strategy = st.SearchStrategy[Any]
type Question = dict[str, Any]


def names() -> list[str]:
    """The questions about one putt; the pace that costs least asks about many."""
    return [
        name
        for name, each in endpoints().items()
        if isinstance(each.request, type) and issubclass(each.request, ShapeFields) and each.request is not PaceFields
    ]


def rows(questions: int = QUESTIONS) -> Iterator[Row]:
    for name in names():
        taken, question = slowest(name, questions)
        print(f"{name}: {taken:.3f} s for {json.dumps(question)}", file=sys.stderr, flush=True)
        yield Row(f"slowest of {questions:,} {name}", milliseconds(taken), f"limit {milliseconds(LIMIT)}", taken / LIMIT, 1)


def slowest(name: str, questions: int) -> tuple[float, Question]:
    """Seconds of the slowest question of so many, and that question."""
    found: tuple[float, Question] = (0.0, {})

    @settings(
        max_examples=questions,
        deadline=None,
        database=None,
        derandomize=True,
        phases=[Phase.generate, Phase.target],
        suppress_health_check=list(HealthCheck),
    )
    @given(asked(name))
    def search(question: Question) -> None:
        nonlocal found
        taken, reply = _timed(question)
        if reply["ok"] or reply["code"] in ("runs_away", "no_window"):
            target(taken)
            found = max(found, (taken, question), key=lambda each: each[0])

    search()
    taken, question = found
    return min(taken, *(_timed(question)[0] for _ in range(TRIES - 1))), question


def _timed(question: Question) -> tuple[float, Any]:
    text = json.dumps(question)
    began = time.process_time()
    reply = answer(text)
    return time.process_time() - began, json.loads(reply)


def asked(name: str) -> Strategy:
    """Valid questions of one kind, on a plane or on stations anywhere along the line."""
    return _request(endpoints()[name].request).map(lambda fields: {"ask": name, **_placed(fields)})


def _placed(fields: Question) -> Question:
    """Stations in the order of the line, their places given as shares of it."""
    if "stations" not in fields:
        return fields
    plane = {"slope_percent", "fall_deg"}
    longest = StationFields.__dataclass_fields__["at_m"]
    limit = next(rule for rule in get_args(longest.type)[1:] if isinstance(rule, Range)).high
    places = sorted(each["at_m"] / limit * fields["distance_m"] for each in fields["stations"])
    kept: list[Question] = []
    for at, station in zip(places, fields["stations"], strict=True):
        if not kept or at - kept[-1]["at_m"] >= 1.1 * LEAST_APART:
            kept.append({**station, "at_m": at})
    return {name: value for name, value in fields.items() if name not in plane} | {"stations": kept}


def _request(kind: Any) -> Strategy:
    hints = get_type_hints(kind, include_extras=True)
    needed: dict[Any, Strategy] = {}
    others: dict[Any, Strategy] = {}
    for field in dataclasses.fields(kind):
        if field.name in WITHOUT:
            continue
        always = field.name in ("distance_m", "slope_percent", "fall_deg") or field.default is dataclasses.MISSING
        (needed if always else others)[door_name(field.name)] = _value(hints[field.name])
    return st.fixed_dictionaries(needed, optional=others)


def _value(hint: Any, rules: tuple[Any, ...] = ()) -> Strategy:
    origin, given_types = get_origin(hint), get_args(hint)
    if origin is Annotated:
        return _value(given_types[0], given_types[1:])
    if origin is Union or origin is UnionType:
        return _value(next(each for each in given_types if each is not NoneType))
    if origin is Literal:
        return st.sampled_from(given_types)
    if origin is tuple:
        length = next(rule for rule in rules if isinstance(rule, Length))
        return st.lists(_value(given_types[0]), min_size=length.low, max_size=min(length.high, 40))
    if dataclasses.is_dataclass(hint):
        return _request(hint)
    if hint is bool:
        return st.booleans()
    limit = next(rule for rule in rules if isinstance(rule, Range))
    return st.integers(int(limit.low), int(limit.high)) if hint is int else st.floats(limit.low, limit.high)
