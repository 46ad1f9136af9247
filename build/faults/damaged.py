"""Stores of which something is damaged, one after another on one phone: the app starts, and has what was whole."""

import json
import random
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from playwright.sync_api import Playwright

from browser import SNAPSHOT_KEPT
from faults.fault import Fault
from faults.phone import QUIET, Phone
from faults.states import session
from server import Site

SEED = 7
GONE = object()
WRONG: list[Any] = [
    GONE, None, True, "", "x", -1, 0, 5e-324, 1e-310, 1e308, -1e308, [], {}, [[]], [None], {"a": {"b": {}}}, "x" * 9999
]  # fmt: skip
AT = "2026-05-03T17:30:00.000Z"
WHOLE = [
    {"kind": "note", "id": "whole note", "at": AT, "changed": AT, "place": "", "text": "kept"},
    {
        "kind": "putt", "id": "whole putt", "at": AT, "changed": AT, "place": "", "text": "", "distance_m": 3, "stimp_ft": 10,
        "slope_percent": 2, "fall_deg": 90, "past_m": 0.3, "aim_deg": 5, "result": "holed",
    },
]  # fmt: skip
OTHER = {
    "kind": "drill",
    "id": "x",
    "at": AT,
    "changed": AT,
    "session": "s",
    "drill": "d",
    "name": "d",
    "spent_s": 9,
    "good": 1,
    "bad": 0,
}
TRIAL = {"felt_percent": 1, "measured_percent": 1.2, "fall": "left", "date": "2026-05-03"}
SCREENS = ("read", "line", "green", "practice", "record", "findings", "settings")
PUT = """async ([entries, marks]) => {
  const { stores } = await import('/records/stores.js');
  const { first, twin } = await stores();
  for (const db of twin ? [first, twin] : [first]) {
    const tx = db.transaction(['entries', 'before', 'marks'], 'readwrite');
    for (const name of ['entries', 'before', 'marks']) tx.objectStore(name).clear();
    for (const entry of entries) tx.objectStore('entries').put(entry);
    for (const [id, value] of Object.entries(marks)) tx.objectStore('marks').put({ id, value });
    await tx.done;
  }
}"""
STANDS = "() => document.querySelectorAll('.screens a').length >= 6 && document.querySelector('main')?.innerText.trim()"
FAILED = "() => document.querySelector('h1')?.textContent === 'This screen has failed'"


def faults(playwright: Playwright, store: Path, folders: Sequence[Path], rounds: int) -> Iterator[Fault]:
    site = Site(*folders)
    chance = random.Random(SEED)
    fault, failed = Fault("a damaged store"), 0
    phone = Phone(playwright, store, site.url)
    try:
        session(phone)
        phone.wait(SNAPSHOT_KEPT)
        marks = phone.page.evaluate("async () => (await import('/records/db.js')).readMarks()")
        marks["calibration"] |= {"feet": [TRIAL], "rolls": [{"distance_m": 3, "time_s": 2, "way": "out"}]}
        thrown: list[str] = []
        phone.page.on("pageerror", lambda error: thrown.append(str(error)))
        for turn in range(1, rounds + 1):
            part = damaged({"entries": [OTHER], "marks": marks}, chance)
            entries = [each for each in _list(part.get("entries")) if _has_key(each)]
            put = [[*WHOLE, *entries], part["marks"] if isinstance(part.get("marks"), dict) else {}]
            phone.page.goto(site.url + QUIET)
            phone.page.evaluate(PUT, put)
            thrown.clear()
            screen = SCREENS[turn % len(SCREENS)]
            phone.open(screen)
            phone.wait(STANDS, 20)
            failed += phone.page.evaluate(FAILED)
            phone.open("record")
            phone.page.get_by_role("button", name="Notes", exact=True).click()
            phone.page.locator(".entry").nth(1).wait_for()
            fault.rounds += 1
            if thrown:
                fault.losses.append(f"round {turn}, {screen}: {thrown[0]} for {json.dumps(put)[:300]}")
        fault.told = f"{failed} screens failed and said so"
        yield fault
    finally:
        phone.kill()
        site.stop()


def damaged(whole: dict[str, Any], chance: random.Random) -> dict[str, Any]:
    """One to four of its places hold something else."""
    data: dict[str, Any] = json.loads(json.dumps(whole))
    for _ in range(chance.randint(1, 4)):
        at: Any = data
        while names := list(at) if isinstance(at, dict) else list(range(len(at))):
            name = chance.choice(names)
            if isinstance(at[name], dict | list) and at[name] and chance.random() < 0.8:
                at = at[name]
                continue
            value = chance.choice(WRONG)
            if value is not GONE:
                at[name] = value
            elif isinstance(at, dict):
                del at[name]
            else:
                at.pop(name)
            break
    return data


def _list(value: Any) -> list[Any]:
    return value if isinstance(value, list) else []


def _has_key(entry: Any) -> bool:
    """The database itself takes no entry without one."""
    return isinstance(entry, dict) and isinstance(entry.get("id"), str | int | float) and not isinstance(entry.get("id"), bool)
