"""A browser killed while it writes, in the other engines: what was said to be kept is there when it is started again.

No driver: WebKitGTK's keeps nothing of a driven browser. It is started by its own name on a profile, and the page says to the
server what it finds and what it has been told is kept.
"""

import os
import signal
import subprocess
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from queue import SimpleQueue
from typing import Any

from flask import Flask, request

import environment
from server import Site

KILLS = 3
PATIENCE_S = 60
# A Firefox that was killed shall neither ask what to do nor open the page of the time before
PREFERENCES = {
    "browser.sessionstore.resume_from_crash": "false",
    "toolkit.startup.max_resumed_crashes": "-1",
    "browser.aboutwelcome.enabled": "false",
    "datareporting.policy.dataSubmissionEnabled": "false",
}


class Heard(Site):
    """The site, which keeps what its pages say to it."""

    def __init__(self, *folders: Path) -> None:
        self.kept: set[str] = set()
        self._words: SimpleQueue[dict[str, Any]] = SimpleQueue()
        super().__init__(*folders)

    def application(self) -> Flask:
        app = super().application()

        @app.post("/heard")
        def hear() -> str:
            self._words.put(request.get_json(force=True))
            return ""

        return app

    def word(self, kind: str) -> Any:
        """The next of its kind; what is said to be kept is noted on the way."""
        while True:
            word = self._words.get(timeout=PATIENCE_S)
            assert "broken" not in word, word
            if "kept" in word:
                self.kept.add(word["kept"])
            if kind in word:
                return word[kind]


def command(name: str, profile: Path, screen: str) -> tuple[list[str], Mapping[str, str]]:
    """What starts a browser on a profile, and the variables that it needs."""
    if name == "firefox":
        lines = [f'user_pref("{key}", {value});\n' for key, value in PREFERENCES.items()]
        profile.mkdir(exist_ok=True)
        (profile / "user.js").write_text("".join(lines))
        return [environment.firefox(), "-headless", "-no-remote", "-profile", str(profile)], {}
    places = {f"XDG_{kind}_HOME": str(profile / kind) for kind in ("DATA", "CACHE", "CONFIG")}
    return [environment.webkit()], {**places, "DISPLAY": screen, "WEBKIT_DISABLE_COMPOSITING_MODE": "1"}


@contextmanager
def running(started: tuple[list[str], Mapping[str, str]], url: str) -> Iterator[None]:
    """A browser at ``url``, which is killed with all its processes at the end."""
    line, variables = started
    browser = subprocess.Popen(
        [*line, url],
        env={**os.environ, **variables},
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
        start_new_session=True,
    )
    try:
        yield
    finally:
        os.killpg(browser.pid, signal.SIGKILL)
        # Some of its processes may lead groups of their own
        for each in _session(browser.pid):
            os.kill(each, signal.SIGKILL)
        browser.wait()


def _session(leader: int) -> list[int]:
    found = []
    for each in Path("/proc").glob("[0-9]*"):
        try:
            if os.getsid(int(each.name)) == leader:
                found.append(int(each.name))
        except ProcessLookupError:
            pass  # it has ended meanwhile
    return found


def test_what_was_acknowledged_outlives_a_kill(
    engine_name: str, screen: str, dist: Path, modules: Path, tmp_path: Path
) -> None:
    site = Heard(dist, modules, Path(__file__).with_name("pages"))
    started = command(engine_name, tmp_path / "profile", screen)
    for turn in range(KILLS + 1):
        with running(started, f"{site.url}killed.html?{turn}"):
            held = site.word("held")
            assert len(held) == len(set(held))
            assert site.kept <= set(held)
            # Killed as soon as one more is said to be kept, with the next on its way
            for _ in range(turn + 1):
                site.word("kept")
    site.stop()
    assert len(site.kept) > KILLS
