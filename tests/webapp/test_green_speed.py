"""Speed of the green, the same putt at home, and the pocket card."""

import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 12.5, "past_m": 0.3}
ROLLS = [
    {"distance_m": 6.1, "time_s": 4.7, "way": "out"},
    {"distance_m": 5.6, "time_s": 4.2, "way": "back"},
    {"distance_m": 6.0, "time_s": 4.65, "way": "out"},
]


def rolled(*rolls: dict[str, Any], place: str = "") -> list[dict[str, Any]]:
    """Rolls of today, at a place."""
    return [{**roll, "place": place, "date": datetime.now(UTC).isoformat()} for roll in rolls]


def show(phone: Any, part: str, **record: Any) -> Page:
    page = phone.open("#green", putt=PUTT, settings={"distance": "m", "aim": "cm"}, **record)
    page.get_by_role("button", name=part, exact=True).click()
    return page


def fill(page: Page, label: str, text: str) -> None:
    page.get_by_role("textbox", name=label, exact=True).fill(text)
    page.keyboard.press("Tab")


def test_rolls_make_a_speed_that_is_kept(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Speed")
    for i, roll in enumerate(ROLLS):
        fill(page, "Time", str(roll["time_s"]))
        fill(page, "Length of the roll", str(roll["distance_m"]))
        page.get_by_role("button", name="Keep this roll").click()
        # the way alternates by itself
        expect(page.get_by_label("out" if i % 2 else "back", exact=True)).to_be_checked()
    found = engine("roll_test", rolls=ROLLS, skid="rolled")
    result = page.locator(".result")
    expect(result.locator(".big")).to_contain_text(f"{found['stimp_ft']:.1f}", timeout=60_000)
    expect(result).to_contain_text(f"give or take {found['stimp_sd_ft']:.1f} ft")
    fill(page, "Place", "Course A (demo)")
    result.get_by_role("button", name="Keep and take into the read").click()
    expect(page.get_by_text("Course A (demo), ")).to_be_visible()
    putt = phone.kept("putt")
    assert putt["stimp_ft"] == round(found["stimp_ft"], 1)
    assert (putt["stimp_source"], putt["stimp_sd_ft"]) == ("rolls", pytest.approx(found["stimp_sd_ft"], abs=0.01))
    # the next speed has rolls of its own
    expect(page.locator(".result")).to_have_count(0)
    assert phone.kept("calibration.rolls") == []
    page.reload()
    page.get_by_role("button", name="Speed", exact=True).click()
    expect(page.get_by_text("Course A (demo), ")).to_be_visible()
    page.get_by_role("button", name="Remove speed 1").click()
    expect(page.get_by_text("Course A (demo), ")).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_text("Course A (demo), ")).to_be_visible()


def test_rolls_of_another_green_or_day_do_not_count(phone: Any, engine: Callable[..., Any]) -> None:
    yesterday = {"place": "Larkmoor", "date": (datetime.now(UTC) - timedelta(days=1)).isoformat()}
    other = [{**roll, "distance_m": 9.0} for roll in rolled(*ROLLS, place="Quill Bay")]
    old = [{**roll, "distance_m": 9.0, **yesterday} for roll in ROLLS]
    here = rolled(*ROLLS, place="Larkmoor")
    page = show(phone, "Speed", calibration={"place": "Larkmoor", "rolls": [*other, *old, *here]})
    found = engine("roll_test", rolls=ROLLS, skid="rolled")
    expect(page.locator(".result .big")).to_contain_text(f"{found['stimp_ft']:.1f}", timeout=60_000)
    expect(page.get_by_text("6 rolls of another green or day do not count here")).to_be_visible()


@pytest.mark.alone
def test_a_speed_of_another_day_tells_less(phone: Any) -> None:
    page = show(phone, "Speed")
    fill(page, "Speed", "9.5")
    page.get_by_role("button", name="Keep what was told").dblclick()
    expect(page.get_by_role("button", name="Use 9.5 ft")).to_have_count(1)
    assert "stimp_source" not in phone.kept("putt")
    page.clock.set_fixed_time(datetime.now(UTC) + timedelta(days=3))
    page.get_by_role("button", name="Use 9.5 ft").click()
    putt = phone.kept("putt")
    assert (putt["stimp_ft"], putt["stimp_source"]) == (9.5, "kept")
    assert putt["stimp_sd_ft"] > 0.5


def test_a_putted_ball_is_worked_out_as_one(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Speed", calibration={"rolls": rolled(*ROLLS)})
    page.get_by_label("putted").check(force=True)
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_label("rolled by hand")).to_be_checked()
    page.get_by_label("putted").check(force=True)
    found = engine("roll_test", rolls=ROLLS, skid="putted")
    expect(page.locator(".result .big")).to_contain_text(f"{found['stimp_ft']:.1f}", timeout=60_000)


def test_the_thumb_times_a_roll(phone: Any) -> None:
    page = show(phone, "Speed")
    leaves, stops = (page.get_by_role("button", name=name, exact=True) for name in ("Leaves", "Stops"))
    expect(stops).to_be_disabled()
    leaves.click()
    expect(leaves).to_be_disabled()
    page.wait_for_timeout(500)
    stops.click()
    expect(leaves).to_be_enabled()
    assert 0.4 < float(page.get_by_role("textbox", name="Time").input_value()) < 4


def test_a_wrong_roll_is_named(phone: Any) -> None:
    slow = {"distance_m": 6.0, "time_s": 3.2, "way": "out"}
    page = show(phone, "Speed", calibration={"rolls": rolled(*ROLLS, slow)})
    expect(page.locator(".suspect")).to_have_count(1, timeout=60_000)
    expect(page.locator(".suspect")).to_contain_text("3.2\xa0s looks wrong")
    page.get_by_role("button", name="Remove roll 4").click()
    expect(page.locator(".suspect")).to_have_count(0)


def test_one_way_is_not_enough(phone: Any) -> None:
    page = show(phone, "Speed", calibration={"rolls": rolled(ROLLS[0], ROLLS[2])})
    expect(page.get_by_text("a roll back along the same line tells slope from speed")).to_be_visible(timeout=60_000)


def test_the_stimpmeter_both_ways(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Speed")
    page.get_by_label("a Stimpmeter").check(force=True)
    lengths = {"out": (13.2, 13.6, 13.5), "back": (8.0, 7.9, 8.9)}
    for way, row in lengths.items():
        for n, length in enumerate(row, 1):
            page.locator(f"#{way}{n}").fill(str(length))
            page.keyboard.press("Tab")
    found = engine("stimpmeter", out_ft=lengths["out"], back_ft=lengths["back"])
    expect(page.locator(".result .big")).to_contain_text(f"{found['stimp_ft']:.1f}", timeout=60_000)
    expect(page.get_by_role("alert")).to_have_count(1)
    expect(page.get_by_role("group", name="Back").get_by_role("alert")).to_contain_text("More than 8 in apart")
    page.locator("#back3").fill("99")
    page.keyboard.press("Tab")
    expect(page.get_by_text("Ball 3 takes 2 to 40")).to_be_visible()


def test_a_speed_as_told_and_home(phone: Any) -> None:
    page = show(phone, "Speed")
    fill(page, "Speed", "9.5")
    page.get_by_role("button", name="Keep what was told").click()
    page.get_by_role("button", name="A green is home").click()
    assert phone.kept("putt.stimp_ft") == 9.5
    assert phone.kept("calibration.home_stimp_ft") == 9.5


def test_the_same_putt_at_home(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Compare", calibration={"home_stimp_ft": 9})
    found = engine("translate", **PUTT, home_stimp_ft=9)
    expect(page.locator(".like")).to_contain_text(f"{found['breaks_like_percent']:.1f}", timeout=60_000)
    row = page.locator(".sides tr").nth(1).locator("td")
    for cell, green in ((row.nth(0), "today"), (row.nth(1), "home")):
        assert float(cell.inner_text().split()[0]) == pytest.approx(100 * found[green]["aim_offset_m"], abs=0.5)
    fill(page, "Speed at home", "12.5")
    expect(page.locator(".like")).to_contain_text("2")
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".like")).to_contain_text(f"{found['breaks_like_percent']:.1f}")


def test_the_card_is_all_that_is_printed(phone: Any, engine: Callable[..., Any]) -> None:
    page = show(phone, "Compare")
    card = page.locator(".card")
    expect(card).to_be_visible(timeout=60_000)
    rows = engine("table", stimp_ft=12.5, past_m=0.3, distances_m=[3], slopes_percent=[2])["rows"]
    cell = card.locator("table").first.locator("tbody tr").nth(2).locator("td").nth(1)
    assert float(cell.inner_text()) == pytest.approx(100 * rows[0][0]["aim_offset_m"], abs=0.5)
    expect(card).to_contain_text("Rule 4.3a")
    page.emulate_media(media="print")
    expect(page.locator(".parts")).to_be_hidden()
    expect(page.locator(".screens")).to_be_hidden()
    expect(card).to_be_visible()
    assert re.search(r"Stimp 12.5", card.inner_text())
