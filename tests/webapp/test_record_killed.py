"""A phone that dies while it writes: what was said to be kept is there, and nothing is twice."""

from pathlib import Path
from typing import Any

from playwright.sync_api import Playwright

from faults.phone import Phone

ROUNDS = 6
WRITE_ON = """async round => {
  const db = await import('/records/db.js');
  const at = '2026-05-03T17:30:00.000Z';
  const watched = {
    kind: 'putt', distance_m: 3, result: 'holed', aim_deg: 1, start_deg: 1.2, start_sd_deg: 0.1, launch_mps: 2,
    launch_sd_mps: 0.02, picture: `data:image/jpeg;base64,${'A'.repeat(40_000)}`,
  };
  for (let i = 0; ; i++) {
    const id = `${round}-${i}`;
    const own = i % 2 ? { kind: 'note' } : watched;
    await db.write([{ ...own, id, at, changed: at, place: '', text: 'x'.repeat(500) }]);
    console.log(`kept ${id}`);
  }
}"""
READ = """async () => {
  const all = await (await import('/records/db.js')).readAll();
  const { checked } = await import('/records/entry.js');
  return all.map((entry) => checked(entry).id);
}"""


def test_what_was_acknowledged_outlives_a_kill(playwright: Playwright, site: Any, tmp_path: Path) -> None:
    acknowledged: set[str] = set()
    for turn in range(ROUNDS + 1):
        phone = Phone(playwright, tmp_path, site.url)
        heard: list[str] = []
        try:
            held = phone.page.evaluate(READ)
            assert len(held) == len(set(held))
            assert acknowledged <= set(held)
            phone.page.on("console", lambda message, heard=heard: heard.append(message.text.removeprefix("kept ")))  # type: ignore[call-overload]
            phone.page.evaluate(f"round => {{ ({WRITE_ON})(round); }}", turn)
            phone.page.wait_for_timeout(40 + 17 * turn)
        finally:
            phone.kill()
        acknowledged |= set(heard)
    assert len(acknowledged) > ROUNDS


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


ERASED = """async () => {
  const db = await import('/records/db.js');
  const { first, twin } = await (await import('/records/stores.js')).stores();
  await db.erase(() => false);
  return (await Promise.all([first, twin].map((each) => each.get('marks', 'erased')))).map(({ value }) => value);
}"""


def test_both_copies_tell_the_same_time_of_an_erasure(playwright: Playwright, site: Any, tmp_path: Path) -> None:
    phone = Phone(playwright, tmp_path, site.url)
    try:
        for _ in range(3):
            mine, its = phone.page.evaluate(ERASED)
            assert mine == its
    finally:
        phone.kill()
