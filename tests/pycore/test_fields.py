from dataclasses import dataclass
from typing import Annotated, Literal

import pytest

from pycore.errors import Refusal
from pycore.fields import MOST_SHOWN, Length, Range, outside, parse


@dataclass(frozen=True, kw_only=True)
class Part:
    at_m: Annotated[float, Range(0, 5, "m")]


@dataclass(frozen=True, kw_only=True)
class Whole:
    size: Annotated[float, Range(1, 9, "m")]
    count: Annotated[int, Range(1, 3)] = 1
    side: Literal["left", "right"] = "left"
    name: Annotated[str, Length(1, 5)] = "none"
    sure: bool = False
    part: Part | None = None
    parts: Annotated[tuple[Part, ...], Length(1, 2)] | None = None
    result: Literal["holed"] | Part = "holed"


def test_what_is_right_comes_through():
    whole = parse(Whole, {"size": 2, "count": 3, "side": "right", "sure": True, "part": {"at_m": 1}, "parts": [{"at_m": 2}]})
    assert whole == Whole(size=2.0, count=3, side="right", sure=True, part=Part(at_m=1.0), parts=(Part(at_m=2.0),))
    assert parse(Whole, {"size": 1, "result": {"at_m": 3}}).result == Part(at_m=3.0)
    assert isinstance(parse(Whole, {"size": 2}).size, float)
    assert parse(Whole, {"size": 2, "part": None}).part is None


@pytest.mark.parametrize(
    ("fields", "code", "field", "words"),
    [
        ({}, "missing_field", "size", "a number from 1 to 9 m"),
        ({"size": None}, "bad_field", "size", "null"),
        ({"size": "2"}, "bad_field", "size", '"2"'),
        ({"size": True}, "bad_field", "size", "true"),
        ({"size": float("nan")}, "bad_field", "size", "NaN"),
        ({"size": float("inf")}, "bad_field", "size", "Infinity"),
        ({"size": -2}, "bad_field", "size", "-2"),
        ({"size": 10**400}, "bad_field", "size", "a very large number"),
        ({"size": 2, "siez": 3}, "unknown_field", "siez", "size"),
        ({"size": 2, "count": 1.5}, "bad_field", "count", "a whole number from 1 to 3"),
        ({"size": 2, "side": "up"}, "bad_field", "side", "one of left, right"),
        ({"size": 2, "side": ["left"]}, "bad_field", "side", "a list of 1"),
        ({"size": 2, "name": ""}, "bad_field", "name", "1 to 5 characters"),
        ({"size": 2, "sure": 1}, "bad_field", "sure", "true or false"),
        ({"size": 2, "part": 3}, "bad_field", "part", "an object with at_m"),
        ({"size": 2, "part": {"at_m": 6}}, "bad_field", "part.at_m", "0 to 5 m"),
        ({"size": 2, "parts": []}, "bad_field", "parts", "1 to 2 entries"),
        ({"size": 2, "parts": [{"at_m": 1}] * 1000}, "bad_field", "parts", "a list of 1000"),
        ({"size": 2, "parts": [{"at_m": 1}, {}]}, "missing_field", "parts[1].at_m", "a number"),
        ({"size": 2, "result": "missed"}, "bad_field", "result", "it takes holed or an object with at_m"),
    ],
)
def test_what_is_wrong_is_named(fields, code, field, words):
    with pytest.raises(Refusal) as refused:
        parse(Whole, fields)
    assert (refused.value.code, refused.value.field) == (code, field)
    assert words in refused.value.message


@pytest.mark.parametrize(
    ("fields", "value", "low", "high", "unit"),
    [
        ({"size": 12.5}, 12.5, 1, 9, "m"),
        ({"size": "two"}, "two", 1, 9, "m"),
        ({"size": float("nan")}, None, 1, 9, "m"),
        ({"size": 10**400}, None, 1, 9, "m"),
        ({"size": [1]}, None, 1, 9, "m"),
        ({}, None, 1, 9, "m"),
        ({"size": 2, "count": 4}, 4, 1, 3, ""),
        ({"size": 2, "side": "up"}, "up", None, None, None),
        ({"size": 2, "side": "u" * MOST_SHOWN}, "u" * MOST_SHOWN, None, None, None),
        ({"size": 2, "side": "u" * (MOST_SHOWN + 1)}, None, None, None, None),
        ({"size": 2, "sure": 1}, 1, None, None, None),
        ({"size": 2, "name": "longer"}, 6, 1, 5, "characters"),
        ({"size": 2, "name": True}, True, None, None, None),
        ({"size": 2, "part": {"at_m": 6}}, 6, 0, 5, "m"),
        ({"size": 2, "parts": [{"at_m": 1}] * 3}, 3, 1, 2, "entries"),
        ({"size": 2, "parts": 1}, 1, None, None, None),
        ({"size": 2, "siez": 3}, None, None, None, None),
    ],
)
def test_what_is_wrong_is_data(fields, value, low, high, unit):
    with pytest.raises(Refusal) as refused:
        parse(Whole, fields)
    found = refused.value
    assert (found.value, found.low, found.high, found.unit) == (value, low, high, unit)


def test_a_range_that_others_narrow():
    refusal = outside("size", 8, Range(1, 4.5, "m"), "the box is no wider")
    assert (refusal.code, refusal.field, refusal.value, refusal.low, refusal.high) == ("bad_field", "size", 8, 1, 4.5)
    assert refusal.message == "size is 8; it takes a number from 1 to 4.5 m: the box is no wider"
