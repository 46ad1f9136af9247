"""What the engine raises: a refusal, which is an answer, and what is nobody's fault but its own."""

from dataclasses import dataclass, replace

Plain = float | bool | str | None


@dataclass(eq=False)
class Refusal(Exception):  # noqa: N818 - it is an answer, not an error
    """What the engine will not answer, and why: as data, and in words.

    Parameters
    ----------
    code : short and fixed, for programs: ``bad_json``, ``unknown_ask``, ``bad_field``, ``unknown_field``, ``runs_away``...
    message : names the field, the value and what would do, in the units of the request.
    field : name of the field at fault, as in the request, or None.
    value : what the field had; how many entries or characters, where they are too few or too many; None where it is no
        number, truth or short text.
    low, high : what would do, both included; None where that is no range.
    unit : of value, low and high, as the table of fields has it.
    """

    code: str
    message: str
    field: str | None = None
    value: Plain = None
    low: float | None = None
    high: float | None = None
    unit: str | None = None

    def __str__(self) -> str:
        return self.message

    def about(self, field: str) -> "Refusal":
        """The same, of a field that whoever refused does not know by its name in the request."""
        return replace(self, field=field)


class BracketError(ArithmeticError):
    """A zero was sought between two places where a function has the same sign, or no value: a fault of the engine."""
