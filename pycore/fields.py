"""Checks at the door: from plain JSON to a typed request, or a refusal that names field, value and range.

A request is a frozen dataclass. Its fields say what they take and what they are with
``Annotated[float, Range(0.3, 30, "m"), Doc("distance", "from the ball to the hole's centre")]``; a field with a default may
be left out, and so may no other. The same annotations give the page its TypeScript types and its table of fields.
"""

import dataclasses
import json
from collections.abc import Callable, Mapping
from dataclasses import MISSING, dataclass
from functools import cache
from math import inf, isfinite
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from pycore.errors import Plain, Refusal

MOST_SHOWN = 40  # characters of a value that a refusal repeats: what fits a phone
VERY_LARGE = 10**15  # whole numbers from here are not written out


@dataclass(frozen=True)
class Range:
    """What a number may be: ``low`` to ``high``, both included, in ``unit``."""

    low: float
    high: float
    unit: str = ""

    def __str__(self) -> str:
        return f"a number from {self.low:g} to {self.high:g} {self.unit}".rstrip()


@dataclass(frozen=True)
class Length:
    """How many entries a list may have, or how many characters a text: ``low`` to ``high``, both included."""

    low: int
    high: int

    def __str__(self) -> str:
        return f"{self.low} to {self.high}" if self.low < self.high else f"{self.low}"


@dataclass(frozen=True)
class Doc:
    """What a field is: its name for a person, and what that leaves unsaid."""

    label: str
    more: str = ""


def parse[T](kind: Callable[..., T], data: Mapping[str, Any], path: str = "") -> T:
    """A request of type ``kind`` from the JSON object ``data``.

    Parameters
    ----------
    kind : a dataclass whose fields carry the annotations above.
    data : the object as ``json`` read it.
    path : where the object stands in the request, for messages: ``stations[1].`` or nothing.

    Raises
    ------
    Refusal : ``unknown_field``, ``missing_field`` or ``bad_field``, for the first field that is wrong.
    """
    expected = _fields(kind)
    if not data.keys() <= expected.keys():
        name = next(name for name in data if name not in expected)
        raise Refusal(
            "unknown_field", f"{path}{_shown(name)} is no field here; there are {', '.join(expected)}", f"{path}{name}"[:80]
        )
    values = {}
    for name, field in expected.items():
        if name in data:
            values[field.name] = field.read(data[name], path + name)
        elif field.needed:
            raise missing(path + name, field.hint)
    return kind(**values)


type Reader = Callable[[Any, str], Any]
"""From a value of plain JSON, and where it stands, to the value that a request holds; or a refusal."""


def door_name(name: str) -> str:
    """The name of a field at the door: a word of Python's own has an underscore after it in the engine."""
    return name.removesuffix("_")


@dataclass(frozen=True)
class _Field:
    name: str
    hint: Any
    read: Reader
    needed: bool


# annotations are taken apart once: 20,000 putts come through one door
@cache
def _fields(kind: Any) -> dict[str, _Field]:
    hints = get_type_hints(kind, include_extras=True)
    return {
        door_name(field.name): _Field(
            field.name,
            hints[field.name],
            _reader(hints[field.name]),
            field.default is MISSING and field.default_factory is MISSING,
        )
        for field in dataclasses.fields(kind)
    }


def _reader(hint: Any) -> Reader:
    inner, rules = _split(hint)
    origin = get_origin(inner)
    if inner is float or inner is int:
        return _number(inner, rules)
    if inner is bool:
        return _plain(inner, rules, lambda value: isinstance(value, bool))
    if inner is str:
        return _plain(inner, rules, lambda value: isinstance(value, str) and all(r.low <= len(value) <= r.high for r in rules))
    if origin is Literal:
        words = get_args(inner)
        return _plain(inner, rules, lambda value: isinstance(value, str) and value in words)
    if origin is tuple:
        return _list(inner, rules)
    if origin is Union or origin is UnionType:
        return _either(inner)

    def read(value: Any, path: str) -> Any:
        if not isinstance(value, dict):
            raise _wrong(inner, rules, value, path)
        return parse(inner, value, path + ".")

    return read


def _plain(hint: Any, rules: tuple[Any, ...], fits: Callable[[Any], bool]) -> Reader:
    def read(value: Any, path: str) -> Any:
        if not fits(value):
            raise _wrong(hint, rules, value, path)
        return value

    return read


def _number(hint: Any, rules: tuple[Any, ...]) -> Reader:
    kinds = int if hint is int else (int, float)
    low, high = max((rule.low for rule in rules), default=-inf), min((rule.high for rule in rules), default=inf)

    def read(value: Any, path: str) -> Any:
        # bool is an int to Python, but true is no number to a person
        if not isinstance(value, kinds) or isinstance(value, bool) or not low <= value <= high:
            raise _wrong(hint, rules, value, path)
        return hint(value)

    return read


def _list(hint: Any, rules: tuple[Any, ...]) -> Reader:
    entry = _reader(get_args(hint)[0])

    def read(value: Any, path: str) -> Any:
        if not isinstance(value, list) or not all(rule.low <= len(value) <= rule.high for rule in rules):
            raise _wrong(hint, rules, value, path)
        return tuple(entry(each, f"{path}[{i}]") for i, each in enumerate(value))

    return read


def _either(hint: Any) -> Reader:
    """One of several forms, told apart by what JSON says it is: null where that is one, an object or not."""
    nullable = NoneType in get_args(hint)
    forms = {dataclasses.is_dataclass(_split(form)[0]): _reader(form) for form in get_args(hint)[::-1] if form is not NoneType}

    def read(value: Any, path: str) -> Any:
        if value is None and nullable:
            return None
        form = forms.get(isinstance(value, dict))
        try:
            if form is not None:
                return form(value, path)
        except Refusal as refusal:
            if refusal.field != path:
                raise
        # what is of neither form is told both
        raise _wrong(hint, (), value, path)

    return read


def missing(path: str, hint: Any) -> Refusal:
    """The refusal of a request without a field that takes ``hint``."""
    return _refused("missing_field", f"{path} is missing; it takes {_takes(hint)}", path, hint)


def outside(field: str, value: float, limit: Range, why: str) -> Refusal:
    """The refusal of a number that other fields leave less room than its own range does."""
    return Refusal(
        "bad_field", f"{field} is {value:g}; it takes {limit}: {why}", field, value, limit.low, limit.high, limit.unit
    )


def _split(hint: Any) -> tuple[Any, tuple[Any, ...]]:
    """A type, and the rules that its annotation gives."""
    if get_origin(hint) is Annotated:
        inner, *notes = get_args(hint)
        return inner, tuple(note for note in notes if not isinstance(note, Doc))
    return hint, ()


def _takes(hint: Any, rules: tuple[Any, ...] = ()) -> str:
    inner, own = _split(hint)
    rules = rules or own
    origin = get_origin(inner)
    if inner is float:
        return " and ".join(map(str, rules)) or "a number"
    if inner is int:
        return "a whole " + (" and ".join(str(rule)[2:] for rule in rules) or "number")
    if inner is str:
        return "".join(["a text", *(f" of {rule} characters" for rule in rules)])
    if inner is bool:
        return "true or false"
    if origin is Literal:
        words = get_args(inner)
        return "one of " + ", ".join(words) if len(words) > 1 else words[0]
    if origin is tuple:
        return "".join(["a list", *(f" of {rule} entries" for rule in rules)])
    if origin is Union or origin is UnionType:
        return " or ".join(_takes(form) for form in get_args(inner) if form is not NoneType)
    return "an object with " + ", ".join(_fields(inner))


def _wrong(hint: Any, rules: tuple[Any, ...], value: Any, path: str) -> Refusal:
    message = f"{path} is {_shown(value)}; it takes {_takes(hint, rules)}"
    return _refused("bad_field", message, path, Annotated[hint, *rules] if rules else hint, value)


def _refused(code: str, message: str, path: str, hint: Any, value: Any = None) -> Refusal:
    """A refusal with the range that the field has."""
    inner, rules = _split(hint)
    if isinstance(inner, UnionType) or get_origin(inner) is Union:
        inner, rules = _split(get_args(inner)[0])
    if not rules:
        return Refusal(code, message, path, _plain_value(value))
    low, high = max(rule.low for rule in rules), min(rule.high for rule in rules)
    if inner is float or inner is int:
        return Refusal(code, message, path, _plain_value(value), low, high, rules[0].unit)
    if value is None or isinstance(value, str if inner is str else list):
        unit = "characters" if inner is str else "entries"
        return Refusal(code, message, path, None if value is None else len(value), low, high, unit)
    return Refusal(code, message, path, _plain_value(value))


def _plain_value(value: Any) -> Plain:
    """The value as a refusal has it: None for what is no number, truth or short text."""
    if isinstance(value, bool) or (isinstance(value, str) and len(value) <= MOST_SHOWN):
        return value
    if isinstance(value, int):
        return value if abs(value) < VERY_LARGE else None
    return value if isinstance(value, float) and isfinite(value) else None


def _shown(value: Any) -> str:
    """The value as JSON writes it, cut to what fits a phone."""
    if isinstance(value, list):
        return f"a list of {len(value)}"
    if isinstance(value, int) and not isinstance(value, bool) and abs(value) >= VERY_LARGE:
        return "a very large number"
    text = json.dumps(value)
    return text if len(text) <= MOST_SHOWN else text[: MOST_SHOWN - 3] + "..."
