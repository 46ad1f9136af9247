"""An endpoint: one question of a capability, with the types of its request and its answer."""

from collections.abc import Callable
from dataclasses import dataclass
from inspect import isgeneratorfunction
from typing import Any, get_args


@dataclass(frozen=True)
class Endpoint[Request, Answer]:
    """One question that the engine answers.

    ``request`` is the dataclass that the door fills and checks, ``answer`` the function that turns it into a TypedDict
    of plain JSON values; its return annotation is the answer's type. What takes longer than a breath is a generator that
    yields the share done, from step to step, and returns the answer.
    """

    request: Callable[..., Request]
    answer: Callable[[Request], Answer]

    @property
    def reply(self) -> Any:
        """The type of the answer."""
        given = self.answer.__annotations__["return"]
        return get_args(given)[-1] if isgeneratorfunction(self.answer) else given
