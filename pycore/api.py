"""The one door of the engine: JSON in, JSON out, never an exception."""

import json
from collections.abc import Generator, Iterator, Mapping
from math import isfinite
from typing import Any

import pycore.drills.endpoints as drills
import pycore.green.endpoints as green
import pycore.hear.endpoints as hear
import pycore.putt.endpoints as putt
import pycore.record.endpoints as record
import pycore.senses.endpoints as senses
import pycore.sight.endpoints as sight
import pycore.stroke.endpoints as stroke
import pycore.travel.endpoints as travel
import pycore.watch.endpoints as watch
from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import parse

MAX_REQUEST_CHARACTERS = 6_000_000  # 20,000 putts with all that may be known of each

ENDPOINTS: Mapping[str, Endpoint[Any, Any]] = {
    **putt.ENDPOINTS,
    **stroke.ENDPOINTS,
    **hear.ENDPOINTS,
    **green.ENDPOINTS,
    **senses.ENDPOINTS,
    **sight.ENDPOINTS,
    **watch.ENDPOINTS,
    **travel.ENDPOINTS,
    **drills.ENDPOINTS,
    **record.ENDPOINTS,
}
EXAMPLES: list[dict[str, Any]] = [
    *putt.EXAMPLES,
    *stroke.EXAMPLES,
    *hear.EXAMPLES,
    *green.EXAMPLES,
    *senses.EXAMPLES,
    *sight.EXAMPLES,
    *watch.EXAMPLES,
    *travel.EXAMPLES,
    *drills.EXAMPLES,
    *record.EXAMPLES,
]


def answer(request: str) -> str:
    """Answer a request.

    Parameters
    ----------
    request : a JSON object with ``ask``, the name of the question, and the question's own fields.

    Returns
    -------
    ``{"ok": true, "value": ...}``, or ``{"ok": false, "code": ..., "message": ..., ...}`` with what else a ``Refusal`` has,
    where the request is wrong or has no answer: ``not_finite`` names the field of the answer that has no value, and
    ``internal`` is a fault of the engine.
    """
    work = steps(request)
    while True:
        try:
            next(work)
        except StopIteration as done:
            return str(done.value)


def steps(request: str) -> Generator[float, None, str]:
    """``answer`` in steps: yields the share done after each, so that whoever runs it may tell of it, or stop."""
    try:
        fields = _read(request)
        ask = fields.pop("ask", None)
        endpoint = ENDPOINTS.get(ask) if isinstance(ask, str) else None
        if endpoint is None:
            raise Refusal("unknown_ask", f"ask takes one of {', '.join(ENDPOINTS)}", "ask")
        value = endpoint.answer(parse(endpoint.request, fields))
        if isinstance(value, Generator):
            value = yield from value
        return _told(value)
    except Refusal as refusal:
        return _refused(refusal)
    except Exception as fault:
        # the engine's own fault, which the tests look for: it is said, and the next question is answered
        return _refused(Refusal("internal", f"the engine failed at this: {fault!r}"[:200]))


def _told(value: Any) -> str:
    try:
        return json.dumps({"ok": True, "value": value}, allow_nan=False)
    except ValueError:
        field = next(_not_finite(value, ""))
        return _refused(Refusal("not_finite", f"{field} has no finite value for these fields", field))


def _not_finite(value: Any, path: str) -> Iterator[str]:
    """Where an answer holds what is no number or has no end: ``rows[2].miss_m``."""
    if isinstance(value, dict):
        for name, part in value.items():
            yield from _not_finite(part, f"{path}.{name}" if path else name)
    elif isinstance(value, list | tuple):
        for i, part in enumerate(value):
            yield from _not_finite(part, f"{path}[{i}]")
    elif isinstance(value, float) and not isfinite(value):
        yield path


def _refused(refusal: Refusal) -> str:
    return json.dumps({"ok": False, **vars(refusal)})


def _read(request: str) -> dict[str, Any]:
    if len(request) > MAX_REQUEST_CHARACTERS:
        raise Refusal(
            "too_large", f"the request has {len(request):,} characters; up to {MAX_REQUEST_CHARACTERS:,} will do", None
        )
    try:
        fields = json.loads(request)
    except (ValueError, RecursionError) as error:
        raise Refusal("bad_json", f"the request is not plain JSON: {error}"[:200], None) from None
    if not isinstance(fields, dict):
        raise Refusal("bad_json", "the request takes a JSON object", None)
    return fields
