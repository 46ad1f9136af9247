"""What goes wrong is told in plain words, and the app goes on: storage that fails or is late, and a screen that throws."""

import re
from typing import Any

from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.0, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3}
# No database opens for as long as ``torn`` is set
TORN = """() => {
  window.torn = true;
  const open = IDBFactory.prototype.open;
  IDBFactory.prototype.open = function (...all) {
    if (window.torn) throw new DOMException('torn', 'UnknownError');
    return open.apply(this, all);
  };
}"""
HOLD = "() => { navigator.locks.request('borrowline', () => new Promise((resolve) => { window.free = resolve; })); }"
# No day is written in words
FAILS = """() => {
  const includes = String.prototype.includes;
  String.prototype.includes = function (part) {
    if (part === 'T') throw new TypeError('undefined has no day');
    return includes.call(this, part);
  };
}"""
UNKNOWN = "How much is kept is not known yet."


def noted(phone: Any) -> Page:
    """The record with a note in it."""
    page: Page = phone.open("#record", putt=PUTT)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.get_by_role("textbox", name="Note").fill("grain to the west")
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_text("Noted.")).to_be_visible()
    return page


def test_storage_that_fails_to_open_is_tried_again_and_nothing_is_lost(phone: Any) -> None:
    page = noted(phone)
    page.add_init_script(f"({TORN})()")
    page.reload()
    expect(page.get_by_role("alert")).to_contain_text("It is tried again; until then nothing is kept.")
    expect(page.get_by_text(UNKNOWN)).to_be_visible()
    expect(page.get_by_text(re.compile(r"\b0 entries|\bNo entries|Nothing kept"))).to_have_count(0)
    page.get_by_role("link", name="Settings").click()
    page.get_by_label("dark", exact=True).check(force=True)
    assert phone.misfits() == []
    page.evaluate("window.torn = false")
    expect(page.get_by_role("alert")).to_have_count(0)
    page.get_by_role("link", name="Record").click()
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.get_by_text("grain to the west")).to_be_visible()
    assert phone.kept("settings.theme") == "dark"


def test_storage_that_another_tab_holds_is_late_and_then_there(phone: Any) -> None:
    page = noted(phone)
    other = page.context.new_page()
    other.goto(phone.url + "licences.txt")
    other.evaluate(HOLD)
    page.reload()
    expect(page.get_by_role("alert")).to_contain_text("storage has not opened yet")
    expect(page.get_by_text(UNKNOWN)).to_be_visible()
    other.evaluate("free()")
    expect(page.get_by_role("alert")).to_have_count(0)
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.get_by_text("grain to the west")).to_be_visible()
    other.close()


def test_a_screen_that_throws_leaves_a_way_out_and_a_way_back(phone: Any) -> None:
    page = noted(phone)
    page.evaluate(FAILS)
    page.get_by_role("link", name="Read").click()
    page.get_by_role("link", name="Record").click()
    expect(page.get_by_role("heading", name="This screen has failed")).to_be_visible()
    assert phone.misfits() == []
    with page.expect_download() as download:
        page.get_by_role("button", name="Export everything").click()
    assert "grain to the west" in download.value.path().read_text("utf-8")
    page.get_by_role("link", name="Read").click()
    expect(page.locator(".answer .pace")).to_be_visible()
    page.get_by_role("link", name="Record").click()
    page.get_by_role("button", name="Set this part back").click()
    expect(page.get_by_role("heading", name="This screen has failed")).to_have_count(0)
    page.reload()
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.get_by_text("grain to the west")).to_be_visible()
