"""Every unit, against the engine's own answer converted by hand here."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import expect

PUTT = {"distance_m": 4.0, "slope_percent": 2.0, "fall_deg": 250.0, "stimp_ft": 11.0, "past_m": 0.3}
PACE_M = 0.8


@pytest.mark.parametrize(
    ("unit", "shown", "digits"),
    [
        ("in", lambda read: read["aim_offset_m"] / 0.0254, 0),
        ("cm", lambda read: read["aim_offset_m"] * 100, 0),
        ("cups", lambda read: read["aim_offset_m"] / 0.108, 1),
        ("balls", lambda read: read["aim_offset_m"] / 0.04267, 1),
        ("degrees", lambda read: read["aim_deg"], 1),
    ],
)
def test_the_aim(phone: Any, engine: Callable[..., Any], unit: str, shown: Callable[[Any], float], digits: int) -> None:
    page = phone.ready(putt=PUTT, settings={"aim": unit})
    read = engine("read", **PUTT)
    assert read["aim_offset_m"] < -0.254, "the putt is meant to take more than ten inches on the right"
    number = page.locator(".answer h1 .big").inner_text().replace("°", " ").split()[0]
    assert float(number) == pytest.approx(abs(shown(read)), abs=0.5 * 10**-digits)
    expect(page.locator(".answer h1")).to_contain_text("right of the cup")


@pytest.mark.parametrize(("unit", "metres", "digits"), [("ft", 0.3048, 1), ("m", 1.0, 2), ("paces", PACE_M, 1)])
def test_the_distance(phone: Any, engine: Callable[..., Any], unit: str, metres: float, digits: int) -> None:
    page = phone.ready(putt=PUTT, settings={"distance": unit, "pace_m": PACE_M})
    said = float(page.locator("#entry").input_value())
    assert said == pytest.approx(PUTT["distance_m"] / metres, abs=0.5 * 10**-digits)
    pace = float(page.locator(".answer .pace .big").inner_text().split()[0])
    assert pace == pytest.approx(engine("read", **PUTT)["plays_like_m"] / metres, abs=0.5 * 10**-digits)
    page.locator("#entry").fill("5")
    page.keyboard.press("Enter")
    longer = engine("read", **{**PUTT, "distance_m": 5 * metres})["plays_like_m"] / metres
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
