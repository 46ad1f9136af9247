"""The page's types say what the engine's types say."""

from dataclasses import dataclass
from typing import Annotated, Literal, NotRequired, TypedDict

import pytest

import protocol
from pycore.fields import Doc, Length, Range


@dataclass(frozen=True, kw_only=True)
class Place:
    """A place,
    along the line."""

    at_m: Annotated[float, Range(0, 30, "m"), Doc("place")]


@dataclass(frozen=True, kw_only=True)
class Request:
    distance_m: Annotated[Annotated[float, Range(0.3, 30, "m"), Doc("length")], Doc("distance", "to the hole")]
    places: Annotated[tuple[Place, ...], Length(1, 3), Doc("places")] | None = None
    hand: Annotated[Literal["left", "right"], Doc("hand")] = "right"


class Answer(TypedDict):
    """What ``read`` finds."""

    points: list[tuple[Annotated[float, Doc("x_m")], float]]
    holed: bool
    note: NotRequired[str]


def test_declare():
    assert protocol.declare({"read": (Request, Answer)}).startswith(
        "export interface Asks {\n"
        "  read: { request: Request; value: Answer };\n"
        "}\n\n"
        "export interface Request {\n"
        "  /** distance: to the hole; a number from 0.3 to 30 m */ distance_m: number;\n"
        "  /** places; 1 to 3 */ places?: Array<Place> | null;\n"
        '  /** hand */ hand?: "left" | "right";\n'
        "}\n\n"
        "/**\n"
        " * A place,\n"
        " * along the line.\n"
        " */\n"
        "export interface Place {\n"
        "  /** place; a number from 0 to 30 m */ at_m: number;\n"
        "}\n\n"
        "/** What `read` finds. */\n"
        "export interface Answer {\n"
        "  points: Array<[x_m: number, number]>;\n"
        "  holed: boolean;\n"
        "  note?: string;\n"
        "}\n\n"
    )


def test_two_types_of_one_name_are_refused():
    other: type = dataclass(type("Place", (), {"__annotations__": {"at_m": Annotated[float, Range(0, 1, "m"), Doc("place")]}}))
    with pytest.raises(TypeError, match="two types called Place"):
        protocol.declare({"read": (Request, Answer), "roll": (other, Answer)})


def test_a_type_that_json_has_not_is_refused():
    with pytest.raises(TypeError, match="complex"):
        protocol.declare({"read": (complex, Answer)})


def test_the_files_are_up_to_date():
    for file, text in protocol.current().items():
        assert file.read_text() == text
