"""A phone that dies while it writes: what was said to be kept is there, and nothing is twice."""

import os
import re
import signal
import subprocess
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, Playwright
from playwright.sync_api import TimeoutError as TooSlow

import browser
import environment

ROUNDS = 20
WRITE_ON = """async round => {
  const db = await import('/records/db.js');
  const at = '2026-05-03T17:30:00.000Z';
  for (let i = 0; ; i++) {
    const id = `${round}-${i}`;
    await db.write([{ kind: 'note', id, at, changed: at, place: '', text: 'x'.repeat(500) }]);
    console.log(`kept ${id}`);
  }
}"""
READ = "() => import('/records/db.js').then(db => db.readAll()).then(all => all.map(({ id }) => id))"


def kill(process: subprocess.Popen[str]) -> None:
    """All of the browser at once, as when a battery dies."""
    os.killpg(process.pid, signal.SIGKILL)
    process.wait()
    assert process.stderr
    process.stderr.close()


def started(playwright: Playwright, store: Path, url: str) -> tuple[subprocess.Popen[str], Page]:
    """A browser that was killed before, with a page of the site; where it hangs in its own start it is killed once more."""
    command = [environment.windowless_chromium(), *browser.FLAGS, "--headless", "--remote-debugging-port=0"]
    for patience_ms in (10_000, 60_000):
        process = subprocess.Popen(
            [*command, f"--user-data-dir={store}"], stderr=subprocess.PIPE, text=True, start_new_session=True
        )
        assert process.stderr
        try:
            address = next(found[0] for line in process.stderr if (found := re.search(r"ws://\S+", line)))
            page = playwright.chromium.connect_over_cdp(address, timeout=patience_ms).contexts[0].new_page()
            page.goto(f"{url}licences.txt", timeout=patience_ms)
        except TooSlow:
            kill(process)
        else:
            return process, page
    pytest.fail("the browser does not start")


def test_what_was_acknowledged_outlives_a_kill(playwright: Playwright, site: Any, tmp_path: Path) -> None:
    acknowledged: set[str] = set()
    for turn in range(ROUNDS + 1):
        process, page = started(playwright, tmp_path, site.url)
        heard: list[str] = []
        try:
            held = page.evaluate(READ)
            assert len(held) == len(set(held))
            assert acknowledged <= set(held)
            page.on("console", lambda message, heard=heard: heard.append(message.text.removeprefix("kept ")))  # type: ignore[call-overload]
            page.evaluate(f"round => {{ ({WRITE_ON})(round); }}", turn)
            page.wait_for_timeout(40 + 17 * turn)
        finally:
            kill(process)
        acknowledged |= set(heard)
    assert len(acknowledged) > 10 * ROUNDS


LOSE = """async () => {
  const { stores } = await import('/records/stores.js');
  (await stores()).first.close();
  await new Promise((done) => { indexedDB.deleteDatabase('borrowline').onsuccess = done; });
}"""
KEEP = """async (ids) => {
  const db = await import('/records/db.js');
  const at = '2026-05-03T17:30:00.000Z';
  for (const id of ids) await db.write([{ kind: 'note', id, at, changed: at, place: '', text: '' }]);
}"""


def test_a_database_that_the_browser_throws_away_comes_back(phone: Any) -> None:
    """As Chromium does with one that a kill has torn."""
    page = phone.open("#about")
    page.evaluate(KEEP, ["a", "b"])
    for late in ("c", "d"):
        page.evaluate(LOSE)
        page.reload()
        assert sorted(page.evaluate(READ))[:2] == ["a", "b"]
        page.evaluate(KEEP, [late])
    assert sorted(page.evaluate(READ)) == ["a", "b", "c", "d"]


def test_a_twin_left_behind_follows(phone: Any) -> None:
    page = phone.open("#about")
    page.evaluate(KEEP, ["a"])
    page.evaluate("async () => (await import('/records/stores.js')).dropTwin()")
    page.evaluate(KEEP, ["b"])
    page.reload()
    assert sorted(page.evaluate(READ)) == ["a", "b"]
    page.evaluate(LOSE)
    page.reload()
    assert sorted(page.evaluate(READ)) == ["a", "b"]
