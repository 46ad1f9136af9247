"""A table in Markdown."""

from collections.abc import Sequence


def markdown(lines: Sequence[tuple[str, ...]]) -> str:
    """Of lines of cells, the headings first."""
    widths = [max(map(len, column)) for column in zip(*lines, strict=True)]
    rule = tuple("-" * max(width, 1) for width in widths)
    padded = (" | ".join(map(str.ljust, line, widths)) for line in (lines[0], rule, *lines[1:]))
    return "\n".join(f"| {line} |" for line in padded)
