"""webapp/engine/protocol.d.ts: what may be asked and what is answered, as the engine's own types say it."""

import dataclasses
from collections.abc import Iterator
from pathlib import Path
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, NotRequired, Union, get_args, get_origin, get_type_hints, is_typeddict

import field_table
from environment import ROOT
from field_table import Asked
from pycore.api import endpoints
from pycore.errors import Refusal
from pycore.fields import Doc, door_name

FOLDER = ROOT / "webapp" / "engine"
PLAIN = {float: "number", int: "number", str: "string", bool: "boolean", NoneType: "null"}
HEAD = "// Written by `python3 build` from the engine's types; change those, not this.\n"


def write() -> list[Path]:
    """Bring this file and the table of fields beside it up to date; those that were not."""
    stale = {file: text for file, text in current().items() if not file.exists() or file.read_text() != text}
    for file, text in stale.items():
        file.write_text(text)
    return list(stale)


def current() -> dict[Path, str]:
    """What both files have to say."""
    asked = {name: (endpoint.request, endpoint.reply) for name, endpoint in endpoints().items()}
    return {FOLDER / "protocol.d.ts": HEAD + declare(asked), FOLDER / "fields.js": HEAD + field_table.script(asked)}


def declare(asked: Asked) -> str:
    """Declarations of each endpoint's request and answer, of every type that they hold, of refusals and of the table."""
    found: dict[str, _Interface] = {}
    lines = [
        f"  {name}: {{ request: {_typed(request, found)}; value: {_typed(answer, found)} }};"
        for name, (request, answer) in asked.items()
    ]
    _interface(Refusal, found)
    asks = "\n".join(["export interface Asks {", *lines, "}"])
    return "\n\n".join([asks, *(interface.text for interface in found.values()), field_table.types(asked)]) + "\n"


@dataclasses.dataclass
class _Interface:
    kind: Any
    text: str = ""


def _typed(hint: Any, found: dict[str, _Interface]) -> str:
    origin, inner = get_origin(hint), get_args(hint)
    if hint in PLAIN:
        return PLAIN[hint]
    if origin in (Annotated, NotRequired):
        return _typed(inner[0], found)
    if origin is Literal:
        return " | ".join(f'"{value}"' if isinstance(value, str) else str(value).lower() for value in inner)
    if origin in (Union, UnionType):
        return " | ".join(_typed(part, found) for part in inner)
    if origin in (list, tuple) and (origin is list or inner[1:] == (...,)):
        return f"Array<{_typed(inner[0], found)}>"
    if origin is tuple:
        return f"[{', '.join(_member(part) + _typed(part, found) for part in inner)}]"
    if dataclasses.is_dataclass(hint) or is_typeddict(hint):
        return _interface(hint, found)
    raise TypeError(f"{hint!r} has no counterpart in JSON")


def _member(hint: Any) -> str:
    """The name of one of a tuple's places, where it has one."""
    return "".join(f"{note.label}: " for note in _notes(hint) if isinstance(note, Doc))


def _interface(kind: Any, found: dict[str, _Interface]) -> str:
    name: str = kind.__name__
    if name not in found:
        interface = found[name] = _Interface(kind)  # above the types within
        hints = get_type_hints(kind, include_extras=True)
        lines = [
            f"  {_comment(hint)}{door_name(field)}{_mark(kind, field)}: {_typed(hint, found)};" for field, hint in hints.items()
        ]
        interface.text = "\n".join([*_docstring(kind), f"export interface {name} {{", *lines, "}"])
    if found[name].kind is not kind:
        raise TypeError(f"there are two types called {name}")
    return name


def _docstring(kind: Any) -> list[str]:
    lines = (kind.__doc__ or "").replace("``", "`").strip().splitlines()
    if not lines or lines[0].startswith(f"{kind.__name__}("):  # what Python itself says of a dataclass
        return []
    if len(lines) == 1:
        return [f"/** {lines[0]} */"]
    return ["/**", *(f" * {line.removeprefix('    ')}".rstrip() for line in lines), " */"]


def _mark(kind: Any, field: str) -> str:
    if kind is Refusal:  # it says all it has
        return ""
    if is_typeddict(kind):
        return "" if field in kind.__required_keys__ else "?"
    return "" if field_table.needed(kind, field) else "?"


def _comment(hint: Any) -> str:
    notes = [f"{note.label}: {note.more}".removesuffix(": ") if isinstance(note, Doc) else str(note) for note in _notes(hint)]
    return f"/** {'; '.join(notes)} */ " if notes else ""


def _notes(hint: Any) -> Iterator[Any]:
    """What annotations say of a field, whether or not it may be null; of several names the one nearest to it."""
    notes = [note for part in (hint, *get_args(hint)) if get_origin(part) is Annotated for note in get_args(part)[1:]]
    names = [note for note in notes if isinstance(note, Doc)]
    yield from names[-1:]
    yield from (note for note in notes if not isinstance(note, Doc))
