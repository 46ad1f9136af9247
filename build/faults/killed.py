"""Kills of the browser in every state of the app, and what they took."""

import random
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

from playwright.sync_api import ConsoleMessage, Playwright

from faults.fault import Fault
from faults.phone import Phone
from faults.states import PAGES, STATES, State, seen
from server import Site

SEED = 13
LATEST_MS = 1000  # what is older than this may not be lost
UNHEARD = 2  # steps that may have been done at the very kill, beside those that there was time for since the last that was told
GO = "async ([key, every]) => (await import('/states.js')).go(key, every)"
HELD = "async ([key, turn]) => (await import('/states.js')).STATES[key].held(turn)"


def faults(
    playwright: Playwright, store: Path, folders: Sequence[Path], rounds: int, states: Sequence[State] = STATES
) -> Iterator[Fault]:
    """So many kills in each state, all on one phone.

    A loss is what was said to be kept and is gone, what the screen had shown for ``LATEST_MS`` and is gone, and what is there
    twice or beyond what was done.
    """
    chance = random.Random(SEED)
    site = Site(*folders, PAGES)
    phone = Phone(playwright, store, site.url)
    try:
        for state in states:
            fault, steps, latest = Fault(f"killed: {state.name}"), 0, 0.0
            for turn in range(1, rounds + 1):
                state.begin(phone, turn)
                shown, at = _struck(phone, state, chance.uniform(0.02, 1) * state.longest_ms)
                phone = Phone(playwright, store, site.url)
                held = phone.page.evaluate(HELD, [state.key, turn])
                missing = max((at - when for when, value in shown if value > held["value"]), default=0.0)
                wrong = [*_wrong(state, held, shown, missing, at)]
                fault.rounds, steps = fault.rounds + 1, steps + len(shown)
                fault.losses += [f"round {turn}: {each}" for each in wrong]
                latest = latest if wrong else max(latest, missing)
            fault.told = f"{steps} steps seen, the oldest that was missing {latest:.0f} ms old" if steps else ""
            yield fault
    finally:
        phone.kill()
        site.stop()


def _struck(phone: Phone, state: State, after_ms: float) -> tuple[list[tuple[float, int]], float]:
    """What the screen showed until the kill, and when that was (ms since 1970)."""
    messages: list[str] = []

    def hear(message: ConsoleMessage) -> None:
        messages.append(message.text)

    phone.page.on("console", hear)
    phone.page.evaluate(GO, [state.key, state.every_ms])
    phone.page.wait_for_timeout(after_ms)
    return seen(messages), phone.kill()


def _wrong(state: State, held: dict[str, Any], shown: list[tuple[float, int]], missing: float, at: float) -> Iterator[str]:
    yield from held["wrong"]
    value = held["value"]
    if missing > (0 if state.says_kept else LATEST_MS):
        yield f"{value} is there; what was first seen {missing:.0f} ms before is not, {shown[-1][1]} at the last"
    if shown and value > max(most for _, most in shown) + (at - shown[-1][0]) / state.every_ms + UNHEARD:
        yield f"{value} is there, but {shown[-1][1]} was done"
