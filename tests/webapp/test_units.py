"""Every unit, against the engine's own answer converted by hand here."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

PUTT = {"distance_m": 4.0, "slope_percent": 2.0, "fall_deg": 250.0, "stimp_ft": 11.0, "past_m": 0.3}
PACE_M = 0.8


def choose(page: Page, name: str, unit: str) -> None:
    page.get_by_role("link", name="Settings").click()
    page.locator(f"[name='{name}'][value='{unit}']").check(force=True)
    page.get_by_role("link", name="Read", exact=True).click()


def test_the_aim(phone: Any, engine: Callable[..., Any]) -> None:
    read = engine("read", **PUTT)
    assert read["aim_offset_m"] < -0.254, "the putt is meant to take more than ten inches on the right"
    page = phone.ready(putt=PUTT)
    for unit, shown, digits in (
        ("in", read["aim_offset_m"] / 0.0254, 0),
        ("cm", read["aim_offset_m"] * 100, 0),
        ("cups", read["aim_offset_m"] / 0.108, 1),
        ("balls", read["aim_offset_m"] / 0.04267, 1),
        ("degrees", read["aim_deg"], 1),
    ):
        choose(page, "aim", unit)
        expect(page.locator(".answer h1")).to_contain_text("right of the cup")
        number = page.locator(".answer h1 .big").inner_text().replace("°", " ").split()[0]
        assert float(number) == pytest.approx(abs(shown), abs=0.5 * 10**-digits), unit


def test_the_distance(phone: Any, engine: Callable[..., Any]) -> None:
    page = phone.ready(putt=PUTT, settings={"pace_m": PACE_M})
    distance_m = PUTT["distance_m"]
    for unit, metres, digits in (("ft", 0.3048, 1), ("m", 1.0, 2), ("paces", PACE_M, 1)):
        choose(page, "distance", unit)
        assert float(page.locator("#entry").input_value()) == pytest.approx(distance_m / metres, abs=0.5 * 10**-digits)
        pace = float(page.locator(".answer .pace .big").inner_text().split()[0])
        plays_like_m = engine("read", **{**PUTT, "distance_m": distance_m})["plays_like_m"]
        assert pace == pytest.approx(plays_like_m / metres, abs=0.5 * 10**-digits), unit
        page.locator("#entry").fill("5")
        page.keyboard.press("Enter")
        distance_m = 5 * metres
        longer = engine("read", **{**PUTT, "distance_m": distance_m})["plays_like_m"] / metres
        expect(page.locator(".answer .pace .big")).to_contain_text(f"{round(longer, digits):g}")


def test_units_are_chosen_in_settings_and_last(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    page.get_by_role("link", name="Settings").click()
    page.get_by_label("cups", exact=True).check(force=True)
    page.get_by_label("metres", exact=True).check(force=True)
    page.get_by_role("link", name="Read").click()
    expect(page.locator(".answer h1")).to_contain_text("cups")
    page.reload()
    expect(page.locator(".answer h1")).to_contain_text("cups")
    expect(page.locator("#entry")).to_have_value("4")
