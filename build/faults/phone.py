"""A browser that dies as a phone does whose battery is taken out, and is started again on what it kept."""

import os
import re
import signal
import subprocess
import time
from pathlib import Path
from typing import Any

from playwright.sync_api import Page, Playwright
from playwright.sync_api import TimeoutError as TooSlow

import browser
import environment

PATIENCE_MS = (10_000, 60_000)  # a browser that was killed may hang in its own start: it is killed once more
QUIET = "licences.txt"  # a page of the site's origin without the app


class Phone:
    """A headless Chromium of its own on ``store``, with one page of the site at ``url``."""

    def __init__(self, playwright: Playwright, store: Path, url: str) -> None:
        self.url = url
        command = [environment.windowless_chromium(), *browser.FLAGS, "--headless", "--remote-debugging-port=0"]
        for patience in PATIENCE_MS:
            self._process = subprocess.Popen(
                [*command, f"--user-data-dir={store}"], stderr=subprocess.PIPE, text=True, start_new_session=True
            )
            try:
                self.page = self._connect(playwright, patience)
            except TooSlow:
                self.kill()
            else:
                return
        raise environment.SetupError("The browser does not start any more")

    def _connect(self, playwright: Playwright, patience: int) -> Page:
        assert self._process.stderr
        address = next(found[0] for line in self._process.stderr if (found := re.search(r"ws://\S+", line)))
        page = playwright.chromium.connect_over_cdp(address, timeout=patience).contexts[0].new_page()
        page.goto(self.url + QUIET, timeout=patience)
        return page

    def open(self, screen: str) -> None:
        """The app, at one of its screens."""
        self.page.goto(f"{self.url}#{screen}")

    def wait(self, script: str, seconds: float = 60) -> Any:
        """What a script of the page returns once that is true; promises too."""
        deadline = time.monotonic() + seconds
        while not (found := self.page.evaluate(script)):
            if time.monotonic() > deadline:
                raise TimeoutError(f"never came true: {script}")
            self.page.wait_for_timeout(50)
        return found

    def kill(self) -> float:
        """All of the browser at once. Returns when, ms since 1970."""
        now = time.time() * 1e3
        os.killpg(self._process.pid, signal.SIGKILL)
        self._process.wait()
        assert self._process.stderr
        self._process.stderr.close()
        return now
