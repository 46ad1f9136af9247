"""How sure the read is: where its numbers come from, on the screen, in links and in the record."""

import re
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
MEASURED = {**PUTT, "tilt_source": "level", "tilt_sd_percent": 0.5, "stimp_source": "rolls", "stimp_sd_ft": 0.4}
INCH_M = 0.0254
TOLD_FT = 0.5  # of a speed that nobody measured
TOUR_MISREAD = 0.31  # %, what the engine's preset has


def shown_in(page: Any) -> float:
    off = page.locator("button.off")
    expect(off).to_be_visible(timeout=60_000)
    return float(off.inner_text().removeprefix("±"))


def test_a_typed_putt_is_as_sure_as_the_player_reads(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    found = engine("read", **PUTT, tilt_sd_percent=TOUR_MISREAD, stimp_sd_ft=TOLD_FT)
    assert shown_in(page) == pytest.approx(found["aim_offset_sd_m"] / INCH_M, abs=0.5)
    expect(page.locator(".picture .give")).to_have_count(1)
    page.locator("button.off").click()
    sheet = page.locator("dialog")
    expect(sheet).to_contain_text("Slope: typed, as sure as the player reads")
    alone = engine("read", **PUTT, tilt_sd_percent=TOUR_MISREAD)["aim_offset_sd_m"] / INCH_M
    expect(sheet).to_contain_text(f"±0.31\xa0% each way: ±{alone:.0f}\xa0in of aim", timeout=60_000)
    expect(sheet.get_by_role("button", name="Lay the phone down")).to_be_visible()


def test_make_is_what_the_preset_holes(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    share = engine("window", **PUTT)["make_probability"]
    expect(page.get_by_role("button", name=f"Make {share * 100:.0f}")).to_be_visible()
    assert phone.kept("player.slope_sd_percent") == TOUR_MISREAD


def test_a_measured_tilt_stands_in_place_of_the_misread(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.open(putt=MEASURED, schema=4)
    read = engine("read", **PUTT, tilt_sd_percent=0.5, stimp_sd_ft=0.4)
    assert shown_in(page) == pytest.approx(read["aim_offset_sd_m"] / INCH_M, abs=0.5)
    share = engine("window", **PUTT, tilt_sd_percent=0.5)["make_probability"]
    expect(page.get_by_role("button", name=f"Make {share * 100:.0f}")).to_be_visible(timeout=60_000)


def test_typing_makes_it_typed(phone: Any) -> None:
    page = phone.open(putt=MEASURED, schema=4)
    shown_in(page)
    page.locator(".cell[aria-label^='Slope']").click()
    expect(page.get_by_text("How steep, measured with a level")).to_be_visible()
    page.locator("#ruler").press("ArrowRight")
    putt = phone.kept("putt")
    assert (putt["slope_percent"], putt["stimp_source"]) == (2.1, "rolls")
    assert "tilt_source" not in putt
    assert "tilt_sd_percent" not in putt
    page.locator(".cell[aria-label^='Stimp']").click()
    page.locator("#ruler").press("ArrowRight")
    assert "stimp_source" not in phone.kept("putt")


def test_the_doubt_goes_with_a_link(phone: Any) -> None:
    page = phone.open("#line", putt=MEASURED, schema=4)
    page.get_by_role("button", name="Send").click()
    link = page.get_by_label("Link").input_value()
    page.evaluate("localStorage.clear()")
    page.goto(link)
    page.get_by_role("button", name="Read it").click(timeout=60_000)
    assert phone.kept("putt") == MEASURED


def test_the_doubt_goes_into_the_record(phone: Any) -> None:
    page = phone.open("#record", putt=MEASURED, schema=4)
    page.get_by_role("button", name="Holed", exact=True).click()
    expect(page.get_by_role("button", name="Take back")).to_be_visible(timeout=60_000)
    entries = page.evaluate("async () => (await import('/records/db.js')).readAll()")
    (entry,) = entries
    for name in ("tilt_source", "tilt_sd_percent", "stimp_source", "stimp_sd_ft"):
        assert entry[name] == MEASURED[name]


def test_the_pace_that_costs_least_is_taken_with_a_touch(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT)
    best = engine("best_pace", **{name: of for name, of in PUTT.items() if name != "past_m"})
    page.get_by_role("button", name="Pace", exact=True).click()
    inches = round(best["past_m"] / INCH_M)
    take = page.get_by_role("button", name=f"Take {inches}\xa0in past")
    expect(take).to_be_visible(timeout=60_000)
    expect(page.locator("dialog")).to_contain_text(re.compile(r"12.in past costs \d putts? more in 100"))
    take.click()
    assert phone.kept("putt.past_m") == pytest.approx(inches * INCH_M, abs=1e-4)


def test_an_example_says_so_until_it_is_ones_own(phone: Any) -> None:
    page = phone.ready()
    expect(page.get_by_text("An example: set your own putt.")).to_be_visible()
    page.locator("#ruler").press("ArrowRight")
    expect(page.get_by_text("An example")).to_have_count(0)


def test_you_are_a_player_once_the_record_tells_enough(phone: Any) -> None:
    def player(sd: float) -> dict[str, float]:
        return {
            "start_line_sd_deg": 1.2 * sd,
            "pace_sd_fraction": 0.08 * sd,
            "slope_sd_percent": 0.4 * sd,
            "start_line_bias_deg": 0.0,
            "pace_bias_fraction": 0.0,
        }

    you = {"value": player(1), "low": player(0.8), "high": player(1.2), "putts": 214, "date": "2026-11-20", "sample": False}
    page = phone.open(putt=PUTT, you=you, schema=4)
    page.get_by_role("button", name=re.compile("^Make")).click(timeout=60_000)
    page.get_by_role("button", name="you", exact=True).click()
    expect(page.locator("dialog")).to_contain_text("from 214 putts, as found 20 Nov 2026")
    expect(page.locator(".odds")).to_contain_text(re.compile(r"\d+\s%\s*drop from here, \d+.to.\d+"), timeout=60_000)
