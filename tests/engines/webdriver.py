"""A browser driven by the W3C's WebDriver, as far as these tests need it: what every engine's own driver understands."""

import json
import os
import re
import socket
import subprocess
import time
import zlib
from base64 import b64decode
from collections.abc import Mapping
from pathlib import Path
from typing import Any
from urllib.error import HTTPError, URLError
from urllib.request import Request, urlopen

ELEMENT = "element-6066-11e4-a52e-4f735466cecf"  # the standard's name for a reference to an element
TRIES = 5
PATIENCE_S = 180  # a runtime that starts for the first time on a busy machine


class RefusedError(Exception):
    """The driver's own words for what it could not do."""


class Browser:
    """One window of a browser that keeps what it stores until it is closed."""

    def __init__(self, command: list[str], capabilities: Mapping[str, object], variables: Mapping[str, str]) -> None:
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self._root = f"http://127.0.0.1:{free.getsockname()[1]}"
            port = free.getsockname()[1]
        self._driver = subprocess.Popen(
            [*command, f"--port={port}"],
            env={**os.environ, **variables},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        self._session = ""
        started = self._when_up("/session", {"capabilities": {"alwaysMatch": capabilities}})
        self._session = f"/session/{started['sessionId']}"

    def close(self) -> None:
        self._call("DELETE", "")
        self._driver.terminate()
        self._driver.wait(timeout=10)

    def open(self, url: str) -> None:
        self._call("POST", "/url", {"url": url})

    def reload(self) -> None:
        self._call("POST", "/refresh", {})

    def run(self, script: str, *arguments: object) -> Any:
        """What the body of a function of the page returns."""
        return self._call("POST", "/execute/sync", {"script": script, "args": arguments})

    def until(self, script: str, *arguments: object) -> Any:
        """Waits for an expression of the page, a promise too, to come true."""
        deadline = time.monotonic() + PATIENCE_S
        why = ""
        while True:
            try:
                if found := self.run(f"return {script}", *arguments):
                    return found
            except RefusedError as refused:  # what is not drawn yet has no text either
                why = str(refused)
            assert time.monotonic() < deadline, f"never came true: {script} {why}"
            time.sleep(0.1)

    def find(self, selector: str, text: str = "") -> dict[str, str]:
        """The element of a CSS selector that says ``text`` or is labelled so, once it is there."""
        script = """(([selector, text]) => [...document.querySelectorAll(selector)].find((one) =>
          (one.ariaLabel ?? one.getAttribute('aria-label') ?? one.textContent).trim().startsWith(text)))(arguments)"""
        found: dict[str, str] = self.until(script, selector, text)
        return found

    def click(self, selector: str, text: str = "") -> None:
        """As a mouse does."""
        for left in reversed(range(TRIES)):
            try:
                self._call("POST", f"/element/{self.find(selector, text)[ELEMENT]}/click", {})
                return
            except RefusedError:  # an answer that came has drawn another in its place
                if not left:
                    raise
                time.sleep(0.2)

    def type(self, selector: str, text: str) -> None:
        """Click a field and type, without emptying it first."""
        for _ in range(TRIES):
            self.click(selector)
            if self.run("return document.activeElement?.matches(arguments[0])", selector):
                break
            time.sleep(0.2)  # an answer that came moved the field from under the pointer
        else:
            raise RefusedError(f"{selector} takes no click")
        keys = [{"type": kind, "value": key} for key in text for kind in ("keyDown", "keyUp")]
        self._call("POST", "/actions", {"actions": [{"type": "key", "id": "keys", "actions": keys}]})

    def drag(self, selector: str, by: int) -> None:
        """Sideways, by so many pixels."""
        origin = self.find(selector)
        steps: list[dict[str, object]] = [{"type": "pointerMove", "origin": origin, "x": 0, "y": 0}]
        steps += [{"type": "pointerDown", "button": 0}]
        steps += [{"type": "pointerMove", "origin": origin, "x": by * i // 4, "y": 0, "duration": 50} for i in (1, 2, 3, 4)]
        steps += [{"type": "pointerUp", "button": 0}]
        self._call("POST", "/actions", {"actions": [{"type": "pointer", "id": "mouse", "actions": steps}]})

    def choose(self, selector: str, file: Path) -> None:
        """A file for a field of files."""
        self._call("POST", f"/element/{self.find(selector)[ELEMENT]}/value", {"text": str(file)})

    def pages(self) -> int:
        """How many sheets of paper the page takes."""
        whole = b64decode(self._call("POST", "/print", {}))
        packed = re.findall(rb"stream\r?\n(.*?)endstream", whole, re.DOTALL)
        parts = [zlib.decompressobj().decompress(each) for each in packed if each[:1] == b"\x78"]
        return sum(len(re.findall(rb"/Type\s*/Page\b", each)) for each in (whole, *parts))

    def _when_up(self, path: str, body: Mapping[str, object]) -> Any:
        deadline = time.monotonic() + PATIENCE_S
        while True:
            try:
                return self._call("POST", path, body)
            except URLError:
                assert time.monotonic() < deadline, "the driver does not answer"
                time.sleep(0.1)

    def _call(self, method: str, path: str, body: Mapping[str, object] | None = None) -> Any:
        content = json.dumps(body).encode() if body is not None else None
        asked = Request(self._root + self._session + path, content, {"Content-Type": "application/json"}, method=method)
        try:
            with urlopen(asked, timeout=PATIENCE_S) as answer:
                return json.load(answer)["value"]
        except HTTPError as error:
            raise RefusedError(json.load(error)["value"]["message"]) from None
