"""A session, hands-free: the clock, the counts, and what survives."""

from typing import Any

import pytest
from playwright.sync_api import Page, expect

BLOCKS = [
    {"drill": "set_up", "minutes": 2, "why": "First.", "instead": []},
    {"drill": "tempo", "minutes": 3, "why": "Then.", "instead": ["walk_in"]},
    {"drill": "last_stroke", "minutes": 2, "why": "Last.", "instead": []},
]
PLANNED = {"minutes": 20, "place": "room", "at_hand": ["level_floor"], "weights": {}}
# Time stands still until the test lets it pass, second by second
CLOCK = """(() => {
  const began = Date.now(), real = setInterval, ticks = [];
  let ahead = 0;
  Date.now = () => began + ahead;
  window.setInterval = (tick, ms, ...rest) => (ms === 1000 ? ticks.push(tick) : real(tick, ms, ...rest));
  window.sleep = (seconds) => { ahead += 1000 * seconds; ticks.forEach((tick) => tick()); };
  window.pass = (seconds) => { for (let i = 0; i < seconds; i++) sleep(1); };
})()"""


def results(page: Page) -> list[dict[str, Any]]:
    """Drill results of the record, oldest first."""
    entries = page.evaluate("() => import('/records/db.js').then((db) => db.readAll())")
    return [entry for entry in reversed(entries) if entry["kind"] == "drill"]


def press(page: Page, name: str) -> None:
    page.get_by_role("button", name=name, exact=True).click()


def started(phone: Any, **practice: Any) -> Page:
    """A session of three blocks, on a clock that the test turns."""
    phone.page.add_init_script(CLOCK)
    page = phone.open("#practice", practice={"blocks": BLOCKS, "planned": PLANNED, **practice})
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    press(page, "Start")
    return page


def expect_left(page: Page, clock: str) -> None:
    expect(page.get_by_role("timer")).to_have_text(clock)


def test_the_clock_runs_and_pauses(phone: Any) -> None:
    page = started(phone)
    expect_left(page, "2:00")
    page.evaluate("pass(30)")
    expect_left(page, "1:30")
    expect(page.locator(".run-next")).to_contain_text("Tempo, 3 min")
    press(page, "Pause")
    page.evaluate("pass(60)")
    expect(page.get_by_role("button", name="Go on")).to_be_visible()
    expect_left(page, "1:30")
    press(page, "Go on")
    page.evaluate("pass(30)")
    expect_left(page, "1:00")


def test_back_repeat_and_skip(phone: Any) -> None:
    page = started(phone)
    page.evaluate("pass(30)")
    press(page, "Repeat")
    expect_left(page, "2:00")
    press(page, "Skip")
    expect(page.locator(".run-head")).to_contain_text("2 of 3")
    press(page, "Back")
    expect(page.locator(".run-head")).to_contain_text("1 of 3")


def test_counts_by_thumb_and_by_key_and_kept_at_once(phone: Any) -> None:
    page = started(phone)
    page.get_by_role("button", name="Same again").click()
    for key in ("1", "1", "2"):
        page.keyboard.press(key)
    expect(page.get_by_role("button", name="3 Same again")).to_be_visible()
    expect(page.get_by_role("button", name="1 Different")).to_be_visible()
    assert phone.kept("run.good") == 3
    page.keyboard.press("n")
    # a block that is over and the session in the next one are written in one breath
    assert phone.kept("run.block") == 1
    (finished,) = results(page)
    assert (finished["drill"], finished["good"], finished["bad"]) == ("set_up", 3, 1)


def test_a_result_that_finds_no_room_waits(phone: Any) -> None:
    page = started(phone)
    page.evaluate(
        """() => {
          const put = IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };
          window.free = () => { IDBObjectStore.prototype.put = put; };
        }"""
    )
    press(page, "Skip")
    expect(page.get_by_role("alert")).to_contain_text("The phone has no room left. Nothing was lost")
    assert results(page) == []
    page.evaluate("free()")
    press(page, "Skip")
    assert phone.kept("run.block") == 2
    assert [result["drill"] for result in results(page)] == ["set_up", "tempo"]


@pytest.mark.parametrize("end", ["reload", "crash"])
def test_it_stands_where_it_was(phone: Any, end: str, until: Any) -> None:
    page = started(phone)
    press(page, "Skip")
    page.evaluate("pass(48)")
    page.keyboard.press("1")
    expect_left(page, "2:12")
    until(page, "import('/records/db.js').then((db) => db.readMarks()).then(({ run }) => run.good === 1)")
    if end == "crash":
        # no farewell, and nothing in localStorage: what is in the database is what there is
        page.evaluate("addEventListener('pagehide', (event) => event.stopImmediatePropagation(), true)")
        page.evaluate("localStorage.clear()")
    page.reload()
    expect(page.get_by_role("button", name="1 In time")).to_be_visible(timeout=60_000)
    expect_left(page, "2:12")
    expect(page.get_by_text("Paused where it stopped.")).to_be_visible()
    page.evaluate("pass(10)")
    press(page, "Go on")
    page.evaluate("pass(5)")
    expect_left(page, "2:07")


def test_a_phone_that_slept_lost_no_time(phone: Any) -> None:
    page = started(phone)
    page.evaluate("pass(10); sleep(600)")  # timers fire once, as after a lock
    expect(page.get_by_text("Paused: the phone was asleep.")).to_be_visible()
    expect_left(page, "1:50")


def test_twenty_minutes_from_plan_to_end(phone: Any) -> None:
    page = started(phone, minutes=20, at_hand=["level_floor", "ball", "balls"], blocks=[])
    planned = phone.kept("practice.blocks")
    assert sum(block["minutes"] for block in planned) == 20
    for minute in range(20):
        expect(page.get_by_role("timer")).to_be_visible()
        page.evaluate("pass(60)" if minute < 19 else "pass(59)")
        page.keyboard.press("1")
    page.evaluate("pass(1)")
    expect(page.get_by_role("heading", name="Session over")).to_be_visible()
    expect(page.locator("tbody tr")).to_have_count(len(planned))
    assert phone.kept("run") is None
    finished = results(page)
    assert [done["drill"] for done in finished] == [block["drill"] for block in planned]
    assert [done["spent_s"] for done in finished] == [60 * block["minutes"] for block in planned]
    assert sum(done["good"] for done in finished) == 20
    page.get_by_role("link", name="Record").click()
    press(page, "Notes")
    page.get_by_label("drills", exact=True).check(force=True)
    expect(page.locator(".entry")).to_have_count(len(planned))
    expect(page.locator(".entry").last).to_contain_text(finished[0]["name"])


def test_the_plan_is_the_players_to_change(phone: Any) -> None:
    page = phone.open("#practice", practice={"minutes": 30, "at_hand": ["level_floor", "ball", "balls"]})
    names = page.locator(".plan strong")
    expect(names.nth(3)).not_to_be_empty(timeout=60_000)
    before = names.all_inner_texts()
    press(page, "Change")
    press(page, f"{before[2]} earlier")
    expect(names.nth(1)).to_have_text(before[2])
    assert page.get_by_role("button", name=f"{before[1]} earlier").count() == 1
    assert page.get_by_role("button", name=f"{before[0]} earlier").count() == 0
    assert page.get_by_role("button", name=f"{before[-1]} earlier").count() == 0
    press(page, f"Another drill in place of {before[2]}")
    expect(names.nth(1)).not_to_have_text(before[2])
    assert names.first.inner_text() == before[0]


def test_what_the_records_say_weighs_in_the_plan(phone: Any) -> None:
    """And no longer when the record is gone."""
    page = phone.open("#record", practice={"minutes": 30, "place": "green", "at_hand": ["ball", "hole"]})
    press(page, "File")
    press(page, "Load an invented player")
    page.goto(phone.url + "#practice")
    needs = page.get_by_role("listitem").filter(has_text="Needs work the most.")
    expect(needs.first).to_contain_text("Shallow breaks", timeout=60_000)
    page.goto(phone.url + "#record")
    press(page, "File")
    press(page, "Remove the invented player")
    expect(page.get_by_text("The invented player is gone.")).to_be_visible()
    page.goto(phone.url + "#practice")
    expect(page.locator(".plan strong").first).not_to_be_empty()
    expect(needs).to_have_count(0)


def test_findings_become_weights_and_leave_a_running_session_alone(phone: Any, until: Any) -> None:
    page = phone.open("#record")
    press(page, "File")
    press(page, "Load an invented player")
    page.goto(phone.url + "#practice")
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    press(page, "Start")
    before = page.locator(".run-next").inner_text()
    until(page, "import('/records/db.js').then((db) => db.readMarks()).then(({ practice }) => practice.weights.tempo > 0)", 60)
    assert page.locator(".run-next").inner_text() == before


def test_the_screen_stays_on_and_the_cues_are_spoken(phone: Any) -> None:
    phone.page.add_init_script(
        """window.locks = []; window.said = [];
        Object.defineProperty(navigator, 'wakeLock', { value: { request: async () => {
          const lock = new EventTarget();
          lock.release = async () => { locks.splice(locks.indexOf(lock), 1); lock.dispatchEvent(new Event('release')); };
          locks.push(lock);
          return lock;
        } } });
        speechSynthesis.speak = ({ text }) => said.push(text);"""
    )
    page = started(phone, spoken=True)
    page.wait_for_function("() => locks.length === 1")
    press(page, "Skip")
    page.wait_for_function("() => said.length === 2")
    assert page.evaluate("said") == ["Set-up by feel. Same feet, same hands, same eyes", "Tempo. Start back on the low note"]
    press(page, "Pause")
    page.wait_for_function("() => locks.length === 0")
    press(page, "Voice")
    press(page, "Go on")
    press(page, "Skip")
    expect(page.locator(".run-head")).to_contain_text("3 of 3")
    assert len(page.evaluate("said")) == 2
    press(page, "Voice")
    assert page.evaluate("said[2]") == "One putt. See it drop, then swing"
    press(page, "Pause")
    press(page, "Go on")
    assert page.evaluate("said.length") == 4


@pytest.mark.parametrize("chime", [True, False])
def test_a_block_that_ends_is_felt_and_chimes_for_who_wants_it(phone: Any, chime: bool) -> None:
    phone.page.add_init_script(
        """window.chimes = 0; window.buzzes = [];
        AudioBufferSourceNode.prototype.start = () => chimes++;
        navigator.vibrate = (pattern) => buzzes.push(pattern);"""
    )
    page = started(phone)
    if chime:
        press(page, "Chime")
        page.wait_for_function("() => chimes === 1")  # as a sample
    page.evaluate("pass(120)")
    expect(page.locator(".run-head")).to_contain_text("2 of 3")
    assert page.evaluate("chimes") == 2 * chime
    assert page.evaluate("buzzes.length") == 1
    press(page, "Skip")  # by hand: there is nothing to tell
    expect(page.locator(".run-head")).to_contain_text("3 of 3")
    assert page.evaluate("chimes") == 2 * chime


def test_a_coach_s_plan_comes_by_link(phone: Any) -> None:
    page = phone.open("#plan?place=green&do=start_gate.12~last_putt.8", practice={"blocks": BLOCKS, "planned": PLANNED})
    came = page.locator("section").filter(has_text="A plan was sent to you")
    expect(came.get_by_role("listitem")).to_have_text(["Start gate, 12 min", "The putt that must drop, 8 min"], timeout=60_000)
    assert phone.violations() == []
    assert phone.misfits((390, 844), (320, 640)) == []
    page.reload()  # the offer stands until it is answered
    press(page, "Take it")
    expect(came).to_have_count(0)
    expect(page.locator(".plan-minutes")).to_have_text(["12 min", "8 min"])
    page.reload()
    expect(page.locator(".plan-minutes")).to_have_text(["12 min", "8 min"])
    expect(came).to_have_count(0)
    press(page, "Send this plan")
    assert page.get_by_label("Link").input_value().endswith("#plan?place=green&do=start_gate.12%7Elast_putt.8")
    press(page, "Start")
    expect(page.locator(".run-name")).to_have_text("Start gate")


@pytest.mark.parametrize(
    ("fragment", "words"),
    [("plan?place=green&do=start_gate.1", "cut short or damaged"), ("plan?place=green&do=moon_walk.20", "Update the app")],
)
def test_a_plan_that_cannot_be_done_is_told(phone: Any, fragment: str, words: str) -> None:
    page = phone.open(f"#{fragment}", practice={"blocks": BLOCKS, "planned": PLANNED})
    expect(page.get_by_role("alert").filter(has_text=words)).to_be_visible(timeout=60_000)
    expect(page.get_by_role("button", name="Take it")).to_have_count(0)
    page.locator(".result .word").last.click()
    expect(page.locator(".result")).to_have_count(0)
    expect(page.locator(".plan li")).to_have_count(3)
