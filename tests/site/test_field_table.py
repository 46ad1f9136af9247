"""The page's table of fields follows the engine's types."""

import json
import subprocess
from dataclasses import dataclass, field
from typing import Annotated, Literal

import pytest

import environment
import field_table
from pycore.api import endpoints
from pycore.fields import Doc, Length, Range


@dataclass(frozen=True, kw_only=True)
class Point:
    x_m: Annotated[float, Range(-2.5, 30.0, "m"), Doc("x")] = 1.0


def request(high):
    """A class of request whose length goes up to ``high``."""

    @dataclass(frozen=True, kw_only=True)
    class Request:
        length_m: Annotated[Annotated[float, Range(0.3, high, "m"), Doc("length")], Doc("distance", "to the hole")]
        count: Annotated[int, Range(1, 3), Doc("count")] | None = None
        name: Annotated[str, Length(1, 5), Doc("name")] = "none"
        sure: Annotated[bool, Doc("sure")] = False
        places: Annotated[tuple[Annotated[float, Range(0, 1, "m")], ...], Length(0, 2), Doc("places")] = ()
        point: Annotated[Point, Doc("point")] = field(default_factory=Point)
        result: Annotated[Literal["holed"] | Point, Doc("result")] = "holed"

    return Request


def row(name, high=30.0):
    return field_table.rows({"read": (request(high), dict)})["Request"][name]


@pytest.mark.parametrize(
    ("name", "taken"),
    [
        ("length_m", {"kind": "number", "low": 0.3, "high": 30, "unit": "m"}),
        ("count", {"kind": "integer", "low": 1, "high": 3, "unit": ""}),
        ("name", {"kind": "text", "low": 1, "high": 5}),
        ("sure", {"kind": "flag"}),
        ("places", {"kind": "list", "low": 0, "high": 2, "entry": {"kind": "number", "low": 0, "high": 1, "unit": "m"}}),
        ("point", {"kind": "object", "type": "Point"}),
        ("result", {"kind": "either", "forms": [{"kind": "word", "words": ["holed"]}, {"kind": "object", "type": "Point"}]}),
    ],
)
def test_what_a_field_takes(name, taken):
    described = {"label", "more", "needed", "default", "nullable"}
    assert {key: value for key, value in row(name).items() if key not in described} == taken


def test_what_a_field_is():
    described = {key: row("length_m")[key] for key in ("label", "more", "needed", "default", "nullable")}
    assert described == {"label": "distance", "more": "to the hole", "needed": True, "default": None, "nullable": False}
    assert (row("count")["needed"], row("count")["nullable"]) == (False, True)
    assert (row("name")["default"], row("point")["default"]) == ("none", {"x_m": 1.0})


def test_a_range_changed_in_python_is_followed_by_the_table():
    assert (row("length_m")["high"], row("length_m", 12.5)["high"]) == (30, 12.5)


def test_a_class_within_has_its_own_fields():
    assert field_table.rows({"read": (request(3.0), dict)})["Point"]["x_m"]["low"] == -2.5


def test_a_field_that_says_not_what_it_is_is_refused():
    nameless: type = dataclass(type("Nameless", (), {"__annotations__": {"at_m": Annotated[float, Range(0, 1, "m")]}}))
    with pytest.raises(TypeError, match=r"Nameless\.at_m"):
        field_table.rows({"read": (nameless, dict)})


def test_the_script_is_one_that_javascript_reads():
    asked = {"read": (request(3.0), dict)}
    told = "console.log(JSON.stringify([REQUESTS, FIELDS]))"
    done = subprocess.run(
        [environment.node(), "--input-type=module", "--eval", f"{field_table.script(asked)}\n{told}"],
        capture_output=True,
        text=True,
        check=True,
    )
    assert json.loads(done.stdout) == json.loads(json.dumps([{"read": "Request"}, field_table.rows(asked)]))


UNITS = {"m", "ft", "m/s", "m/s2", "s", "minutes", "days", "a second", "degrees", "%", "of the roll", "px", ""}


def test_the_apps_fields_speak_to_a_person():
    """Units are those that the page has words for; no label and no explanation is shouted."""
    units, words = set(), []

    def look(taken):
        units.add(taken.get("unit", ""))
        for inner in (taken.get("entry"), *taken.get("forms", ())):
            if inner:
                look(inner)

    for fields in field_table.rows({name: (each.request, each.reply) for name, each in endpoints().items()}).values():
        for row in fields.values():
            look(row)
            words += [row["label"], row["more"]]
    assert units <= UNITS
    assert not [text for text in words if (text.isupper() and len(text) > 4) or "XX" in text]
