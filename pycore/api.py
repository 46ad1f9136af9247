"""The one door of the engine: JSON in, JSON out; an exception only where the engine's own files are damaged."""

import json
from collections.abc import Generator, Iterator
from importlib import import_module
from math import isfinite
from typing import Any

from pycore.endpoint import Endpoint
from pycore.errors import Refusal
from pycore.fields import parse

MAX_REQUEST_CHARACTERS = 6_000_000  # 20,000 putts with all that may be known of each

# Looked through in this order, each imported when it is come to: the first read waits for its own alone, and comes some 0.7
# of 2.5 s sooner on a first visit
CAPABILITIES = ("putt", "stroke", "hear", "green", "senses", "sight", "watch", "travel", "drills", "record")


def capabilities() -> Iterator[Any]:
    """The module of each, with its ``ENDPOINTS``, by the name that a request asks them by, and its ``EXAMPLES``."""
    return (import_module(f"pycore.{name}.endpoints") for name in CAPABILITIES)


def endpoints() -> dict[str, Endpoint[Any, Any]]:
    """All that can be asked."""
    return {ask: endpoint for each in capabilities() for ask, endpoint in each.ENDPOINTS.items()}


def examples() -> list[dict[str, Any]]:
    """A request or more for each endpoint."""
    return [example for each in capabilities() for example in each.EXAMPLES]


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
        # what cannot be imported is no fault of the question: whoever runs the engine hears of it, and begins anew
        endpoint = _endpoint(fields.pop("ask", None))
    except Refusal as refusal:
        return _refused(refusal)
    try:
        value = endpoint.answer(parse(endpoint.request, fields))
        if isinstance(value, Generator):
            value = yield from value
        return _told(value)
    except Refusal as refusal:
        return _refused(refusal)
    except Exception as fault:
        # the engine's own fault, which the tests look for: it is said, and the next question is answered
        return _refused(Refusal("internal", f"the engine failed at this: {fault!r}"[:200]))


def _endpoint(ask: Any) -> Endpoint[Any, Any]:
    for each in capabilities():
        endpoint: Endpoint[Any, Any] | None = each.ENDPOINTS.get(ask) if isinstance(ask, str) else None
        if endpoint:
            return endpoint
    raise Refusal("unknown_ask", f"ask takes one of {', '.join(endpoints())}", "ask")


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
