"""A session, hands-free: the clock, the counts, and what survives."""

import json
import re
from typing import Any

import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.alone  # its clock is turned

BLOCKS = [
    {"drill": "set_up", "minutes": 2, "why": "First.", "instead": []},
    {"drill": "tempo", "minutes": 3, "why": "Then.", "instead": ["walk_in"]},
    {"drill": "last_stroke", "minutes": 2, "why": "Last.", "instead": []},
]


def kept(page: Page) -> dict[str, Any]:
    return json.loads(page.evaluate("localStorage.borrowline"))["practice"]


def started(phone: Any) -> Page:
    """A session of three blocks, on a clock that the test turns."""
    page = phone.page
    page.clock.install()
    phone.open("#practice", practice={"blocks": BLOCKS})
    # the engine answers in its own time, and the page draws in frames of the test's clock
    turned(page, page.locator(".plan strong", has_text="Set-up by feel"))
    page.get_by_role("button", name="Start").click()
    page.clock.run_for(100)
    return page


def turned(page: Page, shows: Any) -> None:
    for _ in range(300):
        page.clock.run_for(20)
        if shows.count():
            return
        page.evaluate("fetch('licences.txt')")
    pytest.fail("it never shows")


def seconds_left(page: Page) -> int:
    minutes, seconds = page.get_by_role("timer").inner_text().split(":")
    return int(minutes) * 60 + int(seconds)


def test_the_clock_runs_and_pauses(phone: Any) -> None:
    page = started(phone)
    assert seconds_left(page) == 120
    page.clock.run_for(30_000)
    assert seconds_left(page) == pytest.approx(90, abs=1)
    expect(page.locator(".run-next")).to_contain_text("Tempo, 3 min")
    page.get_by_role("button", name="Pause").click()
    page.clock.run_for(60_000)
    assert seconds_left(page) == pytest.approx(90, abs=1)
    page.get_by_role("button", name="Go on").click()
    page.clock.run_for(30_000)
    assert seconds_left(page) == pytest.approx(60, abs=2)


def test_back_repeat_and_skip(phone: Any) -> None:
    page = started(phone)
    page.clock.run_for(30_000)
    page.get_by_role("button", name="Repeat").click()
    page.clock.run_for(100)
    assert seconds_left(page) == 120
    page.get_by_role("button", name="Skip").click()
    page.clock.run_for(100)
    expect(page.locator(".run-head")).to_contain_text("2 of 3")
    page.get_by_role("button", name="Back").click()
    page.clock.run_for(100)
    expect(page.locator(".run-head")).to_contain_text("1 of 3")


def test_counts_by_thumb_and_by_key_and_kept_at_once(phone: Any) -> None:
    page = started(phone)
    page.get_by_role("button", name="Same again").click()
    for key in ("1", "1", "2"):
        page.keyboard.press(key)
    page.clock.run_for(100)
    expect(page.get_by_role("button", name="Same again, 3")).to_be_visible()
    expect(page.get_by_role("button", name="Different, 1")).to_be_visible()
    page.keyboard.press("n")
    # no tick of the clock in between: a block that is over is on the phone already
    (finished,) = kept(page)["finished"]
    assert (finished["drill"], finished["good"], finished["bad"]) == ("set_up", 3, 1)


@pytest.mark.parametrize("end", ["reload", "crash"])
def test_it_stands_where_it_was(phone: Any, end: str) -> None:
    page = started(phone)
    page.get_by_role("button", name="Skip").click()
    page.clock.run_for(47_000)
    page.keyboard.press("1")
    page.clock.run_for(1_500)
    before = seconds_left(page)
    if end == "crash":
        # no farewell: what is on the phone is what there is
        record = page.evaluate("localStorage.borrowline")
        page.evaluate("addEventListener('pagehide', (event) => event.stopImmediatePropagation(), true)")
        phone.page.add_init_script(f"localStorage.borrowline = {json.dumps(record)}")
    page.reload()
    turned(page, page.locator(".run-head strong", has_text=re.compile("Tempo")))
    assert seconds_left(page) == pytest.approx(before, abs=2)
    expect(page.get_by_role("button", name="In time, 1")).to_be_visible()
    expect(page.get_by_text("Paused where it stopped.")).to_be_visible()
    page.clock.run_for(10_000)
    assert seconds_left(page) == pytest.approx(before, abs=2)
    page.get_by_role("button", name="Go on").click()
    page.clock.run_for(5_000)
    assert seconds_left(page) == pytest.approx(before - 5, abs=2)


def test_a_phone_that_slept_lost_no_time(phone: Any) -> None:
    page = started(phone)
    page.clock.run_for(10_000)
    before = seconds_left(page)
    page.clock.fast_forward(600_000)  # timers fire once, as after a lock
    page.clock.run_for(1_000)
    expect(page.get_by_text("Paused: the phone was asleep.")).to_be_visible()
    assert seconds_left(page) == pytest.approx(before, abs=2)


def test_twenty_minutes_from_plan_to_end(phone: Any) -> None:
    page = phone.page
    page.clock.install()
    phone.open("#practice", practice={"minutes": 20, "at_hand": ["level_floor", "ball", "balls"]})
    turned(page, page.locator(".plan li"))
    planned = kept_blocks(page)
    assert sum(block["minutes"] for block in planned) == 20
    page.get_by_role("button", name="Start").click()
    for _ in range(20):
        page.clock.run_for(60_000)
        page.keyboard.press("1")
    page.clock.run_for(30_000)
    expect(page.get_by_role("heading", name="Session over")).to_be_visible()
    record = kept(page)
    assert record["run"] is None
    assert [done["drill"] for done in record["finished"]] == [block["drill"] for block in planned]
    assert sum(done["spent_s"] for done in record["finished"]) == pytest.approx(1200, abs=len(planned) + 1)
    assert sum(done["good"] for done in record["finished"]) >= 19


def kept_blocks(page: Page) -> list[dict[str, Any]]:
    for _ in range(100):
        page.clock.run_for(400)
        if blocks := kept(page)["blocks"]:
            return blocks
    pytest.fail("no plan was kept")


def test_the_plan_is_the_players_to_change(phone: Any) -> None:
    page = phone.open("#practice", practice={"minutes": 30, "at_hand": ["level_floor", "ball", "balls"]})
    names = page.locator(".plan strong")
    expect(names.nth(3)).not_to_be_empty(timeout=60_000)
    before = names.all_inner_texts()
    page.get_by_role("button", name="Change").click()
    page.get_by_role("button", name=f"{before[2]} earlier").click()
    expect(names.nth(1)).to_have_text(before[2])
    assert page.get_by_role("button", name=f"{before[1]} earlier").count() == 1
    assert page.get_by_role("button", name=f"{before[0]} earlier").count() == 0
    assert page.get_by_role("button", name=f"{before[-1]} earlier").count() == 0
    page.get_by_role("button", name=f"Another drill in place of {before[2]}").click()
    expect(names.nth(1)).not_to_have_text(before[2])
    assert names.first.inner_text() == before[0]


def test_what_the_records_say_weighs_in_the_plan(phone: Any) -> None:
    weights = {"alignment": 1, "start_line": 1, "pace": 9, "reading": 1, "tempo": 3}
    page = phone.open("#practice", practice={"minutes": 30, "place": "green", "at_hand": ["ball", "hole"], "weights": weights})
    expect(page.get_by_text("Needs work the most.").first).to_be_visible(timeout=60_000)
    expect(page.locator(".plan strong").nth(1)).to_have_text("A foot past")


def test_findings_become_weights_and_leave_a_running_session_alone(phone: Any) -> None:
    page = phone.open("#notes")
    page.get_by_role("button", name="File", exact=True).click()
    page.get_by_role("button", name="Load an invented player").click()
    page.goto(phone.url + "#practice")
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    page.get_by_role("button", name="Start", exact=True).click()
    before = page.locator(".run-next").inner_text()
    page.goto(phone.url + "#findings")
    page.wait_for_function("() => JSON.parse(localStorage.borrowline ?? 'null')?.practice.weights.tempo > 0", timeout=60_000)
    page.goto(phone.url + "#practice")
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
    page = phone.open("#practice", practice={"blocks": BLOCKS, "spoken": True})
    expect(page.locator(".plan strong").first).to_have_text("Set-up by feel", timeout=60_000)
    page.get_by_role("button", name="Start", exact=True).click()
    page.wait_for_function("() => locks.length === 1")
    page.get_by_role("button", name="Skip").click()
    page.wait_for_function("() => said.length === 2")
    assert page.evaluate("said") == ["Set-up by feel. Same feet, same hands, same eyes", "Tempo. Back on the low note"]
    page.get_by_role("button", name="Pause").click()
    page.wait_for_function("() => locks.length === 0")
    page.get_by_role("button", name="Voice on").click()
    page.get_by_role("button", name="Go on").click()
    page.get_by_role("button", name="Skip").click()
    expect(page.locator(".run-head")).to_contain_text("3 of 3")
    assert len(page.evaluate("said")) == 2
