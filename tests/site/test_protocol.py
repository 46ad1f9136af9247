"""The page's types say what the engine's types say."""

from dataclasses import dataclass
from typing import Annotated, Literal, NotRequired, TypedDict

import pytest

import protocol
from pycore.fields import Range


@dataclass(frozen=True, kw_only=True)
class Place:
    at_m: Annotated[float, Range(0, 30, "m")]


@dataclass(frozen=True, kw_only=True)
class Request:
    distance_m: Annotated[float, Range(0.3, 30, "m")]
    places: list[Place] | None = None
    hand: Literal["left", "right"] = "right"


class Answer(TypedDict):
    points: list[tuple[float, float]]
    holed: bool
    note: NotRequired[str]


def test_declare():
    assert protocol.declare({"read": (Request, Answer)}).removeprefix(protocol.HEAD) == (
        "export interface Asks {\n"
        "  read: { request: Request; value: Answer };\n"
        "}\n\n"
        "export interface Request {\n"
        "  /** a number from 0.3 to 30 m */ distance_m: number;\n"
        "  places?: Array<Place> | null;\n"
        '  hand?: "left" | "right";\n'
        "}\n\n"
        "export interface Place {\n"
        "  /** a number from 0 to 30 m */ at_m: number;\n"
        "}\n\n"
        "export interface Answer {\n"
        "  points: Array<[number, number]>;\n"
        "  holed: boolean;\n"
        "  note?: string;\n"
        "}\n"
    )


def test_a_type_that_json_has_not_is_refused():
    with pytest.raises(TypeError, match="complex"):
        protocol.declare({"read": (complex, Answer)})


def test_the_file_is_up_to_date():
    assert protocol.FILE.read_text() == protocol.current()
