"""A putt in one touch, notes, and a record that editing does not lose."""

import re
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
KEPT = """() => new Promise((resolve, reject) => {
  const open = indexedDB.open('borrowline');
  open.onerror = () => reject(open.error);
  open.onsuccess = () => {
    const all = open.result.transaction('entries').objectStore('entries').getAll();
    all.onsuccess = () => { open.result.close(); resolve(all.result); };
  };
})"""
CENTIMETRE = 0.01
AT_ONCE = """(typed) => typed.forEach(([name, text]) => {
  const field = document.getElementById(name);
  field.value = text;
  field.dispatchEvent(new Event('change'));
})"""


def kept(page: Page) -> list[dict[str, Any]]:
    return page.evaluate(KEPT)


def logging(phone: Any) -> Page:
    page = phone.ready(putt=PUTT, settings={"distance": "m", "aim": "cm"})
    page.get_by_role("link", name="Record").click()
    expect(page.get_by_role("button", name="Holed", exact=True)).to_be_visible()
    return page


def holed(phone: Any) -> Page:
    page = logging(phone)
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_role("button", name="Take back")).to_be_visible()
    return page


def listed_at_larkmoor(phone: Any) -> Page:
    page = logging(phone)
    page.get_by_label("Place").fill("Larkmoor")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_role("button", name="Take back")).to_be_visible()
    page.get_by_role("button", name="Notes", exact=True).click()
    return page


def touch(page: Page, x_m: float, y_m: float) -> None:
    """Touch the picture where the ball finished; it shows 1.2 m to either side, the hole at six tenths of its height."""
    box = page.locator(".pad").bounding_box()
    assert box
    scale = box["width"] / 2.4
    page.locator(".pad").click(position={"x": box["width"] / 2 - y_m * scale, "y": box["height"] * 0.6 - x_m * scale})


def test_one_touch_logs_where_it_finished(phone: Any, engine: Any) -> None:
    page = logging(phone)
    page.locator("[name=read][value=app]").check(force=True)
    touch(page, 0.45, -0.2)
    # from the edge: 49.2 cm from the centre, less the radius of 5.4
    expect(page.locator(".logged-line")).to_contain_text("40\xa0cm past, 18\xa0cm right")
    (putt,) = kept(page)
    assert (putt["result"]["x_m"], putt["result"]["y_m"]) == pytest.approx((0.45, -0.2), abs=CENTIMETRE)
    assert {name: putt[name] for name in PUTT} == PUTT
    assert putt["aim_deg"] == pytest.approx(engine("read", **PUTT)["aim_deg"], abs=1e-6)
    assert putt.get("read") == "app"
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.locator(".logged-line")).to_contain_text("Holed")
    assert sorted(str(putt["result"]) == "holed" for putt in kept(page)) == [False, True]


def test_a_touch_on_the_hole_is_a_putt_holed(phone: Any) -> None:
    page = logging(phone)
    touch(page, 0.03, 0.02)
    expect(page.locator(".logged-line")).to_contain_text("Holed")
    touch(page, 0.0, 0.08)
    expect(page.locator(".logged-line")).to_contain_text("3\xa0cm left")
    assert {str(putt["result"]) == "holed" for putt in kept(page)} == {True, False}


def test_a_finish_is_typed_and_undone(phone: Any) -> None:
    page = logging(phone)
    page.locator("[name=x_m]").fill("9900")
    page.locator("[name=y_m]").fill("12")
    page.get_by_role("button", name="Log", exact=True).click()
    expect(page.get_by_role("alert")).to_contain_text("to 3000\xa0cm; “9900” does not fit.")
    page.locator("[name=x_m]").fill("-30")
    page.get_by_role("button", name="Log", exact=True).click()
    expect(page.locator(".logged-line")).to_contain_text("30\xa0cm short, 12\xa0cm left")
    (putt,) = kept(page)
    # what is kept counts from the hole's centre
    assert np.hypot(putt["result"]["x_m"], putt["result"]["y_m"]) == pytest.approx(np.hypot(0.3, 0.12) + 0.054)
    page.get_by_role("button", name="Take back").click()
    expect(page.locator(".said")).to_have_text("Taken back.")
    (putt,) = kept(page)
    assert putt["gone"] is True
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.locator(".entry")).to_have_count(0)
    page.get_by_label("deleted", exact=True).check(force=True)
    page.locator(".entry").click()
    page.get_by_role("button", name="Bring it back").click()
    expect(page.get_by_role("button", name="Delete", exact=True)).to_be_visible()
    assert "gone" not in kept(page)[0]


def test_what_was_seen_beside_is_added(phone: Any, until: Any) -> None:
    page = holed(phone)
    page.get_by_label("left", exact=True).check(force=True)
    page.locator("#line_error_deg").fill("0.5")
    page.keyboard.press("Tab")
    page.get_by_label("Slope you felt").fill("99")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("Slope you felt takes 0 to 8")
    page.get_by_label("Slope you felt").fill("1.5")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_have_count(0)
    until(page, f"({KEPT})().then(([putt]) => putt.felt_percent === 1.5)")
    (putt,) = kept(page)
    assert (putt["gate"], putt["line_error_deg"], putt["felt_percent"]) == ("left", 0.5, 1.5)


def test_two_changes_at_once_are_both_kept(phone: Any, until: Any) -> None:
    page = holed(phone)
    page.locator("#line_error_deg").wait_for()
    page.evaluate(AT_ONCE, [["line_error_deg", "0.5"], ["felt_percent", "1.5"]])
    expect(page.locator("#felt_percent")).to_have_value("1.5")
    until(page, f"({KEPT})().then(([putt]) => putt.felt_percent === 1.5 && putt.line_error_deg === 0.5)")
    (putt,) = kept(page)
    assert (putt["line_error_deg"], putt["felt_percent"]) == (0.5, 1.5)


def test_what_was_refused_stays_while_another_change_is_written(phone: Any, until: Any) -> None:
    page = holed(phone)
    page.locator("#line_error_deg").wait_for()
    page.evaluate(AT_ONCE, [["line_error_deg", "0.5"], ["felt_percent", "99"]])
    until(page, f"({KEPT})().then(([putt]) => putt.line_error_deg === 0.5)")
    expect(page.locator("#line_error_deg")).to_have_value("0.5")
    expect(page.get_by_role("alert")).to_contain_text("Slope you felt takes 0 to 8")
    expect(page.locator("#felt_percent")).to_have_value("99")


def test_editing_loses_nothing(phone: Any) -> None:
    page = holed(phone)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.locator(".entry").click()
    page.get_by_label("Distance").fill("4")
    page.keyboard.press("Tab")
    expect(page.locator(".before li")).to_have_count(1)
    expect(page.locator(".before li")).to_contain_text("Distance: 3.05\xa0m")
    page.locator("dialog").get_by_label("missed").check(force=True)
    expect(page.locator(".before li")).to_have_count(2)
    expect(page.locator(".before li").first).to_contain_text("Result: Holed")
    page.locator("#entry-x_m").fill("-20")
    page.keyboard.press("Tab")
    expect(page.locator(".before li")).to_have_count(3)
    page.keyboard.press("Escape")
    expect(page.locator(".entry")).to_contain_text("4\xa0m · 20\xa0cm short")
    page.reload()
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.locator(".entry")).to_contain_text("4\xa0m · 20\xa0cm short")
    page.locator(".entry").click()
    page.locator(".before li").last.get_by_role("button", name="Put back").click()
    expect(page.locator(".before li")).to_have_count(4)
    page.keyboard.press("Escape")
    expect(page.locator(".entry")).to_contain_text("3.05\xa0m · Holed")


def test_a_refusal_belongs_to_one_putt(phone: Any) -> None:
    page = holed(phone)
    page.get_by_label("Slope you felt").fill("99")
    page.keyboard.press("Tab")
    expect(page.get_by_role("alert")).to_contain_text("“99” does not fit")
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_role("alert")).to_have_count(0)
    expect(page.get_by_label("Slope you felt")).to_have_value("")


def test_a_note_half_written_waits(phone: Any) -> None:
    """For a putt that is logged in between, and for a page that the phone puts away."""
    page = logging(phone)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.get_by_label("Note", exact=True).fill("Slow after rain")
    page.get_by_label("Place").fill("Quill Bay")
    page.get_by_role("button", name="Putt", exact=True).click()
    page.get_by_role("button", name="Holed", exact=True).click()
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.get_by_label("Note", exact=True)).to_have_value("Slow after rain")
    assert phone.kept("place") == "Quill Bay"
    page.reload()
    page.get_by_role("button", name="Notes", exact=True).click()
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_label("Note", exact=True)).to_have_value("")
    expect(page.get_by_label("Place")).to_have_value("Quill Bay")
    assert [each["text"] for each in kept(page) if each["kind"] == "note"] == ["Slow after rain"]


def test_notes_are_kept_and_filtered(phone: Any) -> None:
    page = listed_at_larkmoor(phone)
    page.get_by_label("Note", exact=True).fill("Windy <b>and</b> firm")
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator(".entry")).to_have_count(2)
    page.get_by_label("notes", exact=True).check(force=True)
    expect(page.locator(".entry")).to_have_count(1)
    expect(page.locator(".entry")).to_contain_text("Windy <b>and</b> firm")
    expect(page.locator(".entry")).to_contain_text("Larkmoor")


def test_a_place_without_entries_is_asked_for_no_more(phone: Any) -> None:
    page = listed_at_larkmoor(phone)
    page.locator("#only-place").select_option("Larkmoor")
    page.locator(".entry").click()
    page.locator("dialog").get_by_label("Place").fill("Quill Bay")
    page.keyboard.press("Tab")
    expect(page.locator(".before li")).to_contain_text("Place: Larkmoor")
    page.keyboard.press("Escape")
    expect(page.locator("#only-place")).to_have_value("")
    expect(page.locator(".entry")).to_contain_text("Quill Bay")


def test_a_day_has_its_weather_and_its_greens(phone: Any) -> None:
    page = logging(phone)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.get_by_label("Weather").fill("Light rain")
    speed = page.get_by_label("Green speed")
    speed.fill("40")
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_role("alert")).to_contain_text("Green speed takes 5 to 15")
    expect(page.get_by_label("Weather")).to_have_value("Light rain")
    speed.fill("9,5")
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator(".entry")).to_contain_text("Stimp 9.5 · Light rain")
    expect(page.get_by_label("Weather")).to_have_value("")
    page.locator(".entry").click()
    page.locator("dialog").get_by_label("When").fill("2026-05-03T18:30")
    page.locator("dialog").get_by_label("Weather").fill("Rain")
    page.locator("dialog").get_by_label("Green speed").fill("")
    page.keyboard.press("Tab")
    expect(page.locator(".before li")).to_have_count(3)
    page.keyboard.press("Escape")
    expect(page.locator("dialog")).to_have_count(0)
    expect(page.locator(".entry")).to_contain_text(re.compile(r"^\s*Rain\s.*\b3\b.*2026"))
    page.get_by_label("Note", exact=True).fill("Today")
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator(".entry")).to_have_count(2)
    days = page.get_by_label("When", exact=True)
    days.select_option(index=2)
    expect(page.locator(".entry")).to_have_count(1)
    expect(page.locator(".entry")).to_contain_text("Rain")


def test_a_drill_result_is_mended(phone: Any) -> None:
    block = {"session": "s", "drill": "start_gate", "name": "Start gate", "spent_s": 300, "good": 14, "bad": 6}
    page = phone.open("#record", schema=2, unkept=[{"kind": "drill", "id": "d", "at": "2026-05-03T17:30:00Z", **block}])
    page.get_by_role("button", name="Notes", exact=True).click()
    page.get_by_label("drills", exact=True).check(force=True)
    expect(page.locator(".entry")).to_contain_text("Start gate · 14 of 20")
    page.locator(".entry").click()
    page.get_by_label("Good").fill("15")
    page.keyboard.press("Tab")
    expect(page.locator(".before li")).to_contain_text("Good: 14")
    assert kept(page)[0]["good"] == 15


def test_another_tab_sees_what_was_logged(phone: Any) -> None:
    page = logging(phone)
    other = page.context.new_page()
    other.goto(f"{phone.url}#record")
    other.get_by_role("button", name="Notes", exact=True).click()
    expect(other.locator(".entry")).to_have_count(0)
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(other.locator(".entry")).to_have_count(1)


def test_two_tabs_have_one_setting_and_forget_together(phone: Any) -> None:
    page = phone.open("#settings", settings={"distance": "ft"})
    other = page.context.new_page()
    other.goto(f"{phone.url}#record")
    expect(other.get_by_role("button", name="Holed", exact=True)).to_be_visible()
    page.get_by_label("metres", exact=True).check(force=True)
    expect(other.locator(".intent")).to_contain_text("3.05\xa0m")
    other.get_by_label("Place").fill("Larkmoor")
    other.keyboard.press("Tab")
    other.get_by_role("button", name="Holed", exact=True).click()
    back = other.get_by_role("button", name="Take back")
    expect(back).to_be_visible(timeout=60_000)
    assert phone.kept("place") == "Larkmoor"
    assert phone.kept("settings.distance") == "m"
    page.goto(f"{phone.url}#record")
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Delete everything").click()
    page.get_by_role("button", name="Yes, delete everything").click()
    expect(page.get_by_text("Everything is deleted.")).to_be_visible()
    expect(other.locator(".intent")).to_contain_text("10\xa0ft")
    expect(other.get_by_label("Place")).to_have_value("")
    expect(back).to_have_count(0)
    other.get_by_role("button", name="Holed", exact=True).click()
    expect(back).to_be_visible()
    assert [each["place"] for each in kept(other)] == [""]


def test_no_room_is_said_and_nothing_lost(phone: Any) -> None:
    page = holed(phone)
    page.evaluate("IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; 0")
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_text("The phone has no room left")).to_be_visible()
    assert len(kept(page)) == 1


def test_a_note_that_finds_no_room_is_told_and_waits(phone: Any) -> None:
    page = phone.open("#record", putt=PUTT)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.evaluate("IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; 0")
    page.get_by_role("textbox", name="Note").fill("grain to the west")
    page.get_by_role("button", name="Keep it").click()
    expect(page.get_by_role("alert")).to_contain_text("The phone has no room left.")
    expect(page.get_by_text("Noted.")).to_have_count(0)
    expect(page.get_by_role("textbox", name="Note")).to_have_value("grain to the west")


def test_the_first_log_asks_the_browser_to_keep_it(phone: Any) -> None:
    phone.page.add_init_script("window.asked = 0; navigator.storage.persist = async () => { asked += 1; return true; };")
    page = phone.open("#record", putt=PUTT)
    for _ in range(2):
        page.get_by_role("button", name="Holed", exact=True).click()
        expect(page.get_by_role("button", name="Take back")).to_be_visible()
        page.get_by_role("button", name="Take back").click()
        expect(page.get_by_role("button", name="Take back")).to_have_count(0)
    assert page.evaluate("asked") == 1


@pytest.mark.parametrize(("standalone", "said"), [("false", "not opened for seven days"), ("true", "That is another record")])
def test_an_iphone_has_two_records(phone: Any, standalone: str, said: str) -> None:
    phone.page.add_init_script(f"Object.defineProperty(navigator, 'standalone', {{ value: {standalone} }})")
    page = phone.open("#record", putt=PUTT)
    expect(page.get_by_role("note").filter(has_text=said)).to_be_visible()
    assert phone.misfits() == []
    assert phone.violations() == []


def test_settings_that_find_no_room_are_told(phone: Any) -> None:
    page = logging(phone)
    page.evaluate("IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; 0")
    page.get_by_role("link", name="Settings").click()
    page.get_by_label("dark", exact=True).check(force=True)
    expect(page.get_by_role("alert")).to_contain_text("The phone has no room left")
    page.get_by_role("button", name="Understood").click()
    expect(page.get_by_role("alert")).to_have_count(0)


def test_everything_is_deleted_after_a_second_question(phone: Any) -> None:
    page = holed(phone)
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Delete everything").click()
    assert len(kept(page)) == 1
    page.get_by_role("button", name="Keep it").click()
    page.get_by_role("button", name="Delete everything").click()
    page.get_by_role("button", name="Yes, delete everything").click()
    expect(page.get_by_text("Everything is deleted.")).to_be_visible()
    assert kept(page) == []


def test_the_invented_player_comes_and_goes(phone: Any) -> None:
    page = holed(phone)
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Load an invented player").click()
    expect(page.get_by_text(re.compile("invented player is loaded"))).to_be_visible()
    assert sum(entry.get("sample", False) for entry in kept(page)) > 100
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.locator(".entry").nth(5)).to_contain_text("Invented")
    page.get_by_role("button", name="File").click()
    page.get_by_role("button", name="Remove the invented player").click()
    expect(page.get_by_text("The invented player is gone.")).to_be_visible()
    assert len(kept(page)) == 1


def test_whose_aim_it_was_is_chosen_once(phone: Any) -> None:
    page = logging(phone)
    before: list[str] = []
    for choice in ("app", "own", ""):
        page.locator(f"[name=read][value='{choice}']").check(force=True)
        for _ in range(2):
            page.get_by_role("button", name="Holed", exact=True).click()
        expect(page.locator(".logged-line")).to_contain_text(f"{len(before) + 2} now")
        putts = [putt for putt in kept(page) if putt["id"] not in before]
        assert len(putts) == 2
        assert all((choice or None) == putt.get("read") for putt in putts)
        assert all((choice == "app") == ("aim_deg" in putt) for putt in putts)
        assert phone.kept("logging.read") == choice
        before += [putt["id"] for putt in putts]


def test_an_aim_of_ones_own_is_told_as_it_was_measured(phone: Any) -> None:
    page = logging(phone)
    page.get_by_label("my own", exact=True).check(force=True)
    page.get_by_role("button", name="Holed", exact=True).click()
    page.get_by_label("Aim played").fill("-30")
    page.keyboard.press("Tab")
    page.get_by_role("button", name="Notes", exact=True).click()
    page.locator(".entry").click()
    expect(page.locator("#entry-aim_deg")).to_have_value(re.compile(r"^\D30$"))
    (putt,) = kept(page)
    # 30 cm to the right of a hole 3.048 m away
    assert np.tan(np.radians(putt["aim_deg"])) * 3.048 == pytest.approx(-0.3)


def test_a_miss_may_be_no_more_than_side_and_length(phone: Any) -> None:
    page = logging(phone)
    page.locator("[name=by][value=words]").check(force=True)
    page.get_by_role("button", name="short, left").click()
    expect(page.locator(".logged-line")).to_contain_text("Missed short, left")
    page.get_by_role("button", name="missed", exact=True).click()
    expect(page.locator(".logged-line strong")).to_have_text("Missed")
    results = [(putt["result"], putt.get("side"), putt.get("length")) for putt in kept(page)]
    assert sorted(results, key=str) == [("missed", "left", "short"), ("missed", None, None)]


def test_two_touches_too_many_are_taken_back_one_by_one(phone: Any) -> None:
    page = logging(phone)
    page.get_by_role("button", name="Holed", exact=True).dblclick()
    expect(page.locator(".logged-line")).to_contain_text("2 now")
    for left in ("the first", "Or how it missed"):
        page.get_by_role("button", name="Take back").click()
        expect(page.locator(".logged-line")).to_contain_text(left)
    assert all(putt["gone"] for putt in kept(page))


def test_a_putt_of_another_day(phone: Any) -> None:
    page = logging(phone)
    page.get_by_label("Day").fill("2026-05-03")
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.locator(".logged-line")).to_contain_text("for 3 May 2026")
    assert kept(page)[0]["at"].startswith("2026-05-03")


def test_a_miss_that_was_logged_as_holed_asks_where(phone: Any, until: Any) -> None:
    page = holed(phone)
    page.get_by_role("button", name="Notes", exact=True).click()
    page.locator(".entry").click()
    page.locator("dialog").get_by_label("missed", exact=True).check(force=True)
    expect(page.get_by_text("Where? As far as you know it.")).to_be_visible()
    assert kept(page)[0]["result"] == "missed"
    page.locator("dialog").get_by_role("button", name="long", exact=True).click()
    until(page, f"({KEPT})().then(([putt]) => putt.length === 'long' && !('side' in putt))")
