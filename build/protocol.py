"""webapp/engine/protocol.d.ts: what may be asked and what is answered, as the engine's own types say it."""

import dataclasses
from collections.abc import Mapping
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, NotRequired, Union, get_args, get_origin, get_type_hints, is_typeddict

from environment import ROOT

FILE = ROOT / "webapp" / "engine" / "protocol.d.ts"
PLAIN = {float: "number", int: "number", str: "string", bool: "boolean", NoneType: "null"}
HEAD = "// Written by `python3 build` from the engine's types; change those, not this.\n"


def write() -> None:
    text = current()
    if not FILE.exists() or FILE.read_text() != text:
        FILE.write_text(text)


def current() -> str:
    """What the file has to say."""
    from pycore.api import ENDPOINTS

    return declare({name: (endpoint.request, endpoint.reply) for name, endpoint in ENDPOINTS.items()})


def declare(endpoints: Mapping[str, tuple[Any, Any]]) -> str:
    """Declarations of each endpoint's request and answer, and of every type that they hold."""
    interfaces: dict[str, str] = {}
    lines = [
        f"  {name}: {{ request: {_typed(request, interfaces)}; value: {_typed(answer, interfaces)} }};"
        for name, (request, answer) in endpoints.items()
    ]
    asks = "\n".join(["export interface Asks {", *lines, "}"])
    return "\n\n".join([HEAD + asks, *interfaces.values()]) + "\n"


def _typed(hint: Any, interfaces: dict[str, str]) -> str:
    origin, inner = get_origin(hint), get_args(hint)
    if hint in PLAIN:
        return PLAIN[hint]
    if origin in (Annotated, NotRequired):
        return _typed(inner[0], interfaces)
    if origin is Literal:
        return " | ".join(f'"{value}"' if isinstance(value, str) else str(value).lower() for value in inner)
    if origin in (Union, UnionType):
        return " | ".join(_typed(part, interfaces) for part in inner)
    if origin in (list, tuple) and (origin is list or inner[1:] == (...,)):
        return f"Array<{_typed(inner[0], interfaces)}>"
    if origin is tuple:
        return f"[{', '.join(_typed(part, interfaces) for part in inner)}]"
    if dataclasses.is_dataclass(hint) or is_typeddict(hint):
        return _interface(hint, interfaces)
    raise TypeError(f"{hint!r} has no counterpart in JSON")


def _interface(kind: Any, interfaces: dict[str, str]) -> str:
    name: str = kind.__name__
    if name not in interfaces:
        interfaces[name] = ""  # holds the place, above the types within
        hints = get_type_hints(kind, include_extras=True)
        lines = [f"  {_note(hint)}{field}{_mark(kind, field)}: {_typed(hint, interfaces)};" for field, hint in hints.items()]
        interfaces[name] = "\n".join([f"export interface {name} {{", *lines, "}"])
    return name


def _mark(kind: Any, field: str) -> str:
    if is_typeddict(kind):
        return "" if field in kind.__required_keys__ else "?"
    declared = {each.name: each for each in dataclasses.fields(kind)}[field]
    left_out = declared.default is not dataclasses.MISSING or declared.default_factory is not dataclasses.MISSING
    return "?" if left_out else ""


def _note(hint: Any) -> str:
    notes = [str(rule) for part in (hint, *get_args(hint)) if get_origin(part) is Annotated for rule in get_args(part)[1:]]
    return f"/** {', '.join(notes)} */ " if notes else ""
