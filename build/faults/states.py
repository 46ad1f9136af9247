"""States of the app in which it is killed, and how it is brought there. What is done and seen in each: ``pages/states.js``.

In every state something rises, step by step, and the screen shows how far it is.
"""

import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from faults.phone import Phone
from tests import touching

PAGES = Path(__file__).with_name("pages")
SETTLED_MS = 1200  # after which what a touch did is kept
ON_DISK_MS = 6500  # after which the browser has written localStorage
RUNS = "() => !!document.querySelector('.run-counts')"


@dataclass(frozen=True)
class State:
    """``begin`` brings the app there in a round; ``key`` is its name in ``states.js``. ``says_kept``: what the screen shows is
    told to be kept already; else it is what was done."""

    key: str
    name: str
    begin: Callable[[Phone, int], None]
    every_ms: int = 120
    longest_ms: int = 2500
    says_kept: bool = False


def seen(messages: list[str]) -> list[tuple[float, int]]:
    """When (ms since 1970) the screen first showed what."""
    told = [json.loads(text.removeprefix("seen ")) for text in messages if text.startswith("seen ")]
    return [(each["at"], each["value"]) for each in told]


def session(phone: Phone, _: int = 0) -> None:
    """A session that runs: the one that was broken off goes on, or a new one begins."""
    phone.open("practice")
    phone.wait("() => document.querySelector('.run-counts') || document.querySelector('.go:not([disabled])')")
    if not phone.page.evaluate(RUNS):
        phone.page.locator(".go").click()
        phone.wait(RUNS)
    elif phone.page.locator(".go").inner_text() == "Go on":
        phone.page.locator(".go").click()


def _last_block(phone: Phone, _: int) -> None:
    session(phone)
    while phone.page.locator(".run-next .over").first.inner_text().lower() == "next":
        phone.page.locator(".run-does [aria-keyshortcuts=n]").click()
    phone.page.wait_for_timeout(SETTLED_MS)


def _counted_none(phone: Phone, _: int) -> None:
    session(phone)
    phone.page.locator(".run-does [aria-keyshortcuts=r]").click()
    phone.page.wait_for_timeout(SETTLED_MS)


def _settings(phone: Phone, _: int) -> None:
    phone.open("settings")
    phone.page.get_by_label("Usual green speed").fill("5")
    phone.page.keyboard.press("Tab")
    phone.page.wait_for_timeout(SETTLED_MS)


def _speed(phone: Phone, _: int) -> None:
    phone.open("green")
    phone.page.get_by_role("button", name="Speed", exact=True).click()
    clear = phone.page.get_by_role("button", name="Clear the rolls")
    if clear.count():
        clear.click()
        phone.page.wait_for_timeout(SETTLED_MS)


def _notes(phone: Phone, _: int) -> None:
    _forget(phone, "note")
    phone.open("record")
    phone.page.get_by_role("button", name="Notes", exact=True).click()
    phone.page.locator("#note-text").fill("")
    phone.page.wait_for_timeout(SETTLED_MS)


def _log(phone: Phone, _: int) -> None:
    _forget(phone, "putt")
    phone.open("record")
    phone.page.locator(".holed").wait_for()


def _watch(phone: Phone, _: int) -> None:
    """Until a first putt has been seen, and what it was is being worked out."""
    _forget(phone, "putt")
    phone.page.context.grant_permissions(["accelerometer", "gyroscope", "magnetometer"])
    phone.open("watch")
    marks = phone.page.evaluate("async () => { const { MARKS, open } = await import('/camera.js'); open(); return MARKS; }")
    phone.page.get_by_role("button", name="Open the camera").click()
    phone.wait("document.querySelector('.watch-says')?.textContent === 'Touch the ball'")
    phone.page.get_by_role("button", name="Keep pictures").click()
    for mark in marks:
        touching.touch(phone.page, ".film", (1, 1), mark)
    phone.wait("document.querySelector('.watch-says')?.textContent.startsWith('Working')")


def _forget(phone: Phone, kind: str) -> None:
    """What the rounds before have left."""
    phone.page.evaluate("async kind => (await import('/records/db.js')).erase(each => each.kind === kind)", kind)


def _file(phone: Phone, turn: int) -> None:
    content = phone.page.evaluate("async turn => (await import('/states.js')).file(turn)", turn)
    phone.open("record")
    phone.page.get_by_role("button", name="File", exact=True).click()
    phone.page.locator("input[type=file]").set_input_files(
        {"name": "record.json", "mimeType": "application/json", "buffer": content.encode()}
    )
    phone.page.get_by_role("button", name="replace settings").wait_for()


def _all_there(phone: Phone, turn: int) -> None:
    _file(phone, turn)
    phone.page.get_by_role("button", name="replace settings").click()
    phone.page.get_by_text(" new, ").wait_for()
    phone.page.get_by_role("button", name="Delete everything").click()


def _older(phone: Phone, turn: int) -> None:
    phone.page.evaluate("async turn => (await import('/states.js')).makeOlder(turn)", turn)
    phone.page.wait_for_timeout(ON_DISK_MS)


STATES = [
    State("running", "a session that runs", _counted_none, longest_ms=4000),
    State("paused", "a session that is paused", _counted_none, longest_ms=4000),
    State("between", "a session between blocks", session, longest_ms=1500),
    State("finished", "a session that ends", _last_block, longest_ms=1800),
    State("settings", "settings", _settings),
    State("calibration", "calibration", _speed, every_ms=80),
    State("writing", "a note half written", _notes, every_ms=40),
    State("noted", "notes kept", _notes, says_kept=True),
    State("logged", "putts logged", _log, every_ms=250, longest_ms=4000, says_kept=True),
    State("watched", "putts watched", _watch, every_ms=2000, longest_ms=1500, says_kept=True),
    State("importing", "an import under way", _file, every_ms=5, longest_ms=500, says_kept=True),
    State("erasing", "everything deleted", _all_there, every_ms=5, longest_ms=500, says_kept=True),
    State("older", "an older version's part that moves over", _older, every_ms=5, longest_ms=1200),
]
