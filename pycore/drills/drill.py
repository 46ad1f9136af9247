"""A drill, one file of this folder each, and the list of them."""

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib import resources
from typing import Annotated, Literal

from pycore.fields import Length, Range, parse

Skill = Literal["alignment", "start_line", "pace", "reading", "tempo"]
Role = Literal["set_up", "main", "last"]
Place = Literal["room", "green"]
Thing = Literal["level_floor", "mirror", "laser", "ball", "balls", "hole", "string", "chalk"]
Picture = Literal[
    "eyes", "arc", "tempo", "gate", "ball_line", "string", "feet", "chalk", "past", "stop", "shallow", "long", "walk", "last",
    "stance", "books", "skirting", "hand", "closed", "coins", "wall", "shim", "heard",
]  # fmt: skip
Line = Annotated[str, Length(1, 140)]
Minutes = Annotated[int, Range(1, 20, "minutes")]


@dataclass(frozen=True, kw_only=True)
class Drill:
    """What to do, with what, where, and what counts. ``bring`` is what any room or bag has. ``least`` and ``most`` are minutes;
    ``watched``: a camera can count it."""

    id: str = ""
    name: Annotated[str, Length(1, 40)]
    skill: Skill
    role: Role = "main"
    why: Line
    needs: Annotated[tuple[Thing, ...], Length(0, 6)]
    bring: Annotated[str, Length(0, 60)] = ""
    places: Annotated[tuple[Place, ...], Length(1, 2)]
    least: Minutes
    most: Minutes
    picture: Picture
    setup: Annotated[tuple[Line, ...], Length(1, 4)]
    cues: Annotated[tuple[Line, ...], Length(1, 4)]
    good: Annotated[str, Length(1, 24)]
    bad: Annotated[str, Length(1, 24)]
    cautions: Annotated[tuple[Line, ...], Length(0, 3)] = ()
    watched: bool = False

    def fits(self, place: Place, at_hand: frozenset[Thing]) -> bool:
        """Whether it can be done there with what is at hand."""
        return place in self.places and at_hand.issuperset(self.needs)


@cache
def catalogue() -> tuple[Drill, ...]:
    """Every drill, by its file's name."""
    files = [file for file in resources.files(__package__).iterdir() if file.name.endswith(".toml")]
    return tuple(
        parse(Drill, {"id": file.name.removesuffix(".toml"), **tomllib.loads(file.read_text("utf-8"))})
        for file in sorted(files, key=lambda file: file.name)
    )
