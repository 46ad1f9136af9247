"""The one exception that leaves the engine as an answer."""


class Refusal(Exception):  # noqa: N818 - it is an answer, not an error
    """A request that the engine will not answer, and why, in words for the person who asked.

    Parameters
    ----------
    code : short and fixed, for programs: ``bad_json``, ``unknown_ask``, ``bad_field``, ``unknown_field``, ``runs_away``...
    message : names the field, the value and what would do.
    field : name of the field at fault, as in the request, or None.
    """

    def __init__(self, code: str, message: str, field: str | None = None) -> None:
        super().__init__(message)
        self.code = code
        self.message = message
        self.field = field
