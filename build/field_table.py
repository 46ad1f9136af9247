"""webapp/engine/fields.js: what each field of a request is to a person, in which unit, and what it takes; and the players
that come with the engine.

From this table the page labels, checks and explains; so does what reads a file or what was kept.
"""

import dataclasses
import json
from collections.abc import Mapping
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from pycore.fields import Doc, Length, Range, door_name
from pycore.putt.endpoints import answer_presets
from pycore.putt.requests import NoFields
from pycore.record.rounds import BANDS_M

type Asked = Mapping[str, tuple[Any, Any]]
"""The types of request and answer of each endpoint."""
type Row = dict[str, Any]
"""A field, as the page has it."""

TYPES = """
/** A number from `low` to `high`, both included. */
export interface NumberTaken { kind: "number" | "integer"; low: number; high: number; unit: string }
/** `low` to `high` characters. */
export interface TextTaken { kind: "text"; low: number; high: number }
export interface FlagTaken { kind: "flag" }
export interface WordTaken { kind: "word"; words: string[] }
/** `low` to `high` entries, each as `entry` has it. */
export interface ListTaken { kind: "list"; low: number; high: number; entry: Taken }
/** An object with the fields of `FIELDS[type]`. */
export interface ObjectTaken { kind: "object"; type: keyof Fields }
export interface EitherTaken { kind: "either"; forms: Taken[] }
/** What a value may be. */
export type Taken = NumberTaken | TextTaken | FlagTaken | WordTaken | ListTaken | ObjectTaken | EitherTaken;

/** What a field is: its name for a person and what that leaves unsaid, and whether a request has to have it. */
export interface Described {
  label: string;
  more: string;
  needed: boolean;
  /** what it is where a request has it not */ default: unknown;
  /** whether it may be null */ nullable: boolean;
}
export type Field = Described & Taken;
""".strip()
NAMES = {
    "number": "NumberTaken",
    "integer": "NumberTaken",
    "text": "TextTaken",
    "flag": "FlagTaken",
    "word": "WordTaken",
    "list": "ListTaken",
    "object": "ObjectTaken",
    "either": "EitherTaken",
}


def types(asked: Asked) -> str:
    """TypeScript's types of the table."""
    lines = [
        f"  {kind}: {{ {' '.join(f'{name}: Described & {NAMES[row["kind"]]};' for name, row in rows.items())} }};"
        for kind, rows in rows(asked).items()
    ]
    return "\n".join([TYPES, "", "/** The fields of each class of request. */", "export interface Fields {", *lines, "}"])


def script(asked: Asked) -> str:
    """The script that holds the table."""
    requests = {name: request.__name__ for name, (request, _) in asked.items()}
    classes = [
        "\n".join([f"  {kind}: {{", *(f"    {name}: {json.dumps(row)}," for name, row in rows.items()), "  },"])
        for kind, rows in rows(asked).items()
    ]
    return "\n".join(
        [
            "/** @import { Asks, Fields, Preset } from './protocol.js' */",
            "",
            "/** What each question asks for. @type {Record<keyof Asks, keyof Fields>} */",
            f"export const REQUESTS = {json.dumps(requests, indent=2)};",
            "",
            "/** The fields of each class of request. @type {Fields} */",
            "export const FIELDS = {",
            *classes,
            "};",
            "",
            "/** The players that come with the engine. @type {Preset[]} */",
            f"export const PRESETS = {json.dumps(answer_presets(NoFields())['players'], indent=2)};",
            "",
            "/** From and to which length, m, first putts of rounds are taken together. @type {[number, number][]} */",
            f"export const BANDS_M = {json.dumps(BANDS_M)};",
            "",
        ]
    )


def rows(asked: Asked) -> dict[str, dict[str, Row]]:
    """The fields of each class of request."""
    found: dict[str, dict[str, Row]] = {}
    for request, _ in asked.values():
        _gather(request, found)
    return found


def needed(kind: Any, name: str) -> bool:
    """Whether a request has to have the field."""
    field = kind.__dataclass_fields__[name]
    return field.default is dataclasses.MISSING and field.default_factory is dataclasses.MISSING


def _gather(kind: Any, found: dict[str, dict[str, Row]]) -> None:
    if kind.__name__ in found:
        return
    own = found[kind.__name__] = {}  # above the classes within
    for name, hint in get_type_hints(kind, include_extras=True).items():
        doc, forms = _names(hint), _forms(hint)
        if not doc:
            raise TypeError(f"{kind.__name__}.{name} has no Doc that says what it is")
        own[door_name(name)] = {
            "label": doc[-1].label,
            "more": doc[-1].more,
            "needed": needed(kind, name),
            "default": _default(kind.__dataclass_fields__[name]),
            "nullable": NoneType in forms,
            **_taken(forms, found),
        }


def _names(hint: Any) -> list[Doc]:
    """The names that a field has been given; the last is the nearest to it."""
    parts = [part for part in (hint, *get_args(hint)) if get_origin(part) is Annotated]
    return [note for part in parts for note in get_args(part)[1:] if isinstance(note, Doc)]


def _forms(hint: Any) -> list[Any]:
    """The forms that a value may have, None among them."""
    bare = get_args(hint)[0] if get_origin(hint) is Annotated else hint
    return [form for part in get_args(bare) for form in _forms(part)] if get_origin(bare) in (Union, UnionType) else [hint]


def _default(field: Any) -> Any:
    if field.default_factory is not dataclasses.MISSING:
        return dataclasses.asdict(field.default_factory())
    return None if field.default is dataclasses.MISSING else field.default


def _taken(forms: list[Any], found: dict[str, dict[str, Row]]) -> Row:
    """What a field takes that has these forms."""
    rows = [_form(form, found) for form in forms if form is not NoneType]
    return rows[0] if len(rows) == 1 else {"kind": "either", "forms": rows}


def _form(hint: Any, found: dict[str, dict[str, Row]]) -> Row:
    bare, *notes = get_args(hint) if get_origin(hint) is Annotated else (hint,)
    rules: list[Range | Length] = [note for note in notes if isinstance(note, Range | Length)]
    limits = {"low": _short(max(r.low for r in rules)), "high": _short(min(r.high for r in rules))} if rules else {}
    if bare is float or bare is int:
        unit = next(rule.unit for rule in rules if isinstance(rule, Range))
        return {"kind": "integer" if bare is int else "number", **limits, "unit": unit}
    if bare is str:
        return {"kind": "text", **limits}
    if bare is bool:
        return {"kind": "flag"}
    if get_origin(bare) is Literal:
        return {"kind": "word", "words": list(get_args(bare))}
    if get_origin(bare) is tuple:
        return {"kind": "list", **limits, "entry": _taken(_forms(get_args(bare)[0]), found)}
    _gather(bare, found)
    return {"kind": "object", "type": bare.__name__}


def _short(limit: float) -> float:
    """30 for 30.0, as JavaScript has it."""
    return int(limit) if limit == int(limit) else limit
