"""Libraries from npm for modules that no bundler joins: files copied, bare names turned into paths."""

import json
import posixpath
import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

from environment import NODE_PACKAGES, SetupError

# from 'x', import 'x', import('x') and import.meta.resolve('x')
SPECIFIER = re.compile(r"""(\bfrom\s*|\bimport\s*\(?\s*|\bimport\.meta\.resolve\(\s*)(["'])([^"'\s,]+)\2""")
CONDITIONS = ("browser", "import", "default")


class Library:
    """Copies what the modules of a site import from npm, and all that this imports in turn.

    Parameters
    ----------
    homes : folder in the site for a package that the build puts there itself; the others go to ``vendor/``.
    """

    def __init__(self, homes: dict[str, str]) -> None:
        self.homes = homes
        self.files: dict[str, bytes] = {}

    def linked(self, path: str, text: str) -> str:
        """The module ``text`` of the site's file ``path`` with every bare name turned into a relative path."""

        def link(name: str) -> str:
            if name.startswith((".", "/")):
                return name
            way = posixpath.relpath(self._place(name), posixpath.dirname(path) or ".")
            return way if way.startswith(".") else f"./{way}"

        return _rewritten(text, link)

    def _place(self, name: str) -> str:
        parts = name.split("/")
        package = "/".join(parts[: 2 if name.startswith("@") else 1])
        source = NODE_PACKAGES / package / _exported(package, name[len(package) :])
        if package in self.homes:
            return f"{self.homes[package]}/{source.name}"
        self._copy(source)
        return _address(source)

    def _copy(self, source: Path) -> None:
        place = _address(source)
        if place in self.files:
            return
        text = re.sub(r"\n?//# sourceMappingURL=.*", "", source.read_text("utf-8"))
        self.files[place] = b""
        for match in SPECIFIER.finditer(text):
            if match[3].startswith("."):
                self._copy((source.parent / match[3]).resolve())
        self.files[place] = self.linked(place, text).encode()


def _address(source: Path) -> str:
    return f"vendor/{source.relative_to(NODE_PACKAGES).as_posix()}"


def _exported(package: str, subpath: str) -> str:
    entry: Any = json.loads((NODE_PACKAGES / package / "package.json").read_text("utf-8"))["exports"].get(f".{subpath}")
    while isinstance(entry, dict):
        entry = next((entry[condition] for condition in entry if condition in CONDITIONS), None)
    if not isinstance(entry, str):
        raise SetupError(f"The npm package {package} has no module {package}{subpath}")
    return entry


def _rewritten(text: str, change: Callable[[str], str]) -> str:
    def line(text: str) -> str:
        # Types in comments name packages too, and are left alone
        if text.lstrip().startswith(("*", "/*", "//")):
            return text
        return SPECIFIER.sub(lambda match: f"{match[1]}{match[2]}{change(match[3])}{match[2]}", text)

    return "\n".join(map(line, text.split("\n")))
