"""Nothing clipped, nothing sideways, nothing too small for a thumb, from 320 px to a desk."""

from typing import Any

import pytest
from playwright.sync_api import expect

SCREENS = [(320, 568), (320, 700), (390, 664), (390, 844), (844, 390), (1280, 800)]
PUTTS = {
    "long": {"distance_m": 29.9, "slope_percent": 1.5, "fall_deg": 100, "stimp_ft": 12.5, "past_m": 0.9},
    "short": {"distance_m": 0.5, "slope_percent": 3, "fall_deg": -90, "stimp_ft": 10, "past_m": 0.3},
    "wide": {"distance_m": 6, "slope_percent": 5, "fall_deg": 90, "stimp_ft": 11, "past_m": 0.3},
}


@pytest.mark.parametrize("putt", PUTTS.values(), ids=PUTTS)
def test_the_read_fits(phone: Any, putt: dict[str, float]) -> None:
    phone.ready(putt=putt, settings={"aim": "balls", "distance": "paces"})
    assert phone.misfits(*SCREENS) == []


def test_what_is_said_of_settings_and_the_app_fits(phone: Any) -> None:
    for screen in ("settings", "about"):
        phone.open(f"#{screen}", settings={"aim": "balls", "distance": "paces"})
        expect(phone.page.locator("main h1")).to_have_count(1)
        assert phone.misfits(*SCREENS) == []


def test_the_main_job_needs_no_scrolling(phone: Any) -> None:
    page = phone.ready(putt=PUTTS["wide"])
    for cell in ("Slope", "Falls"):
        page.locator(f".cell[aria-label^='{cell}']").click()
        for size in phone.sized(*SCREENS):
            assert page.evaluate("(main => main.scrollHeight <= main.clientHeight)(document.querySelector('main'))"), size


@pytest.mark.parametrize("phone", [{"viewport": {"width": 320, "height": 640}}], indirect=True)
def test_the_sheets_fit(phone: Any) -> None:
    page = phone.ready(putt=PUTTS["wide"])
    for sheet in ("Slopes", "Make", "A miss"):
        page.locator(".deeper").get_by_role("button", name=sheet).click()
        page.get_by_role("button", name="Done").wait_for()
        assert phone.misfits() == [], sheet
        page.keyboard.press("Escape")
        expect(page.locator("dialog")).to_have_count(0)
