"""Keyboard alone, screen readers, bright sun, people who want no motion."""

from typing import Any

import pytest
from playwright.sync_api import expect

PUTT = {"distance_m": 3.048, "slope_percent": 2.0, "fall_deg": 90.0, "stimp_ft": 10.0, "past_m": 0.3048}
SUNLIGHT_CONTRAST = 7


def test_axe_finds_nothing(phone: Any) -> None:
    page = phone.ready(putt=PUTT, cautioned=False)
    page.locator(".cell[aria-label^='Falls']").click()
    page.locator("#dial").wait_for()
    assert phone.violations("light", "dark") == []
    for sheet in ("Slopes", "Make", "A miss"):
        page.locator(".deeper").get_by_role("button", name=sheet).click()
        page.get_by_role("button", name="Done").wait_for()
        assert phone.violations("light", "dark") == []
        page.keyboard.press("Escape")
        expect(page.locator("dialog")).to_have_count(0)
    page.get_by_role("link", name="Settings").click()  # every_screen looks at it
    page.get_by_role("link", name="About").click()
    page.locator("main.page").wait_for()
    assert phone.violations("light", "dark") == []


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_ink_stands_out_in_sunlight(phone: Any, theme: str) -> None:
    page = phone.ready(settings={"theme": theme})
    worn = "getComputedStyle(document.documentElement)"
    colours = page.evaluate(f"['--paper', '--ink', '--soft', '--mark'].map(name => {worn}.getPropertyValue(name))")

    def luminance(colour: str) -> float:
        channels = [int(colour.strip()[i : i + 2], 16) / 255 for i in (1, 3, 5)]
        red, green, blue = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue

    paper, *inks = map(luminance, colours)
    for ink in inks:
        assert (max(paper, ink) + 0.05) / (min(paper, ink) + 0.05) >= SUNLIGHT_CONTRAST


def test_the_keyboard_alone_does_it(phone: Any) -> None:
    page = phone.ready(putt=PUTT)

    def tab_to(name: str) -> None:
        for _ in range(40):
            page.keyboard.press("Tab")
            if page.evaluate(
                "n => (document.activeElement.ariaLabel ?? document.activeElement.textContent).trim().startsWith(n)", name
            ):
                return
        pytest.fail(f"Tab never comes to {name}")

    tab_to("Slope 2")
    page.keyboard.press("Enter")
    ruler = page.locator("#ruler")
    expect(ruler).to_be_focused()
    for key, value in (("ArrowRight", "2.1"), ("PageUp", "3.1"), ("ArrowLeft", "3"), ("Home", "0"), ("PageUp", "1")):
        page.keyboard.press(key)
        expect(ruler).to_have_attribute("aria-valuetext", f"{value}\xa0%")
    tab_to("Falls")
    page.keyboard.press("Enter")
    dial = page.locator("#dial")
    expect(dial).to_be_focused()
    for key, words in (
        ("ArrowRight", "falls right, 95 degrees"),
        ("End", "straight uphill, 180 degrees"),
        ("Home", "straight downhill, 0 degrees"),
    ):
        page.keyboard.press(key)
        expect(dial).to_have_attribute("aria-valuetext", words)
    tab_to("A miss")
    page.keyboard.press("Enter")
    expect(page.locator("dialog")).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.locator("dialog")).to_have_count(0)
    tab_to("Settings")
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name="Settings")).to_be_visible()


def test_the_picture_is_told_in_words(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    said = page.get_by_role("img").first.get_attribute("aria-label")
    assert said is not None
    for part in ("10\xa0ft putt", "2 percent, falls right", "in left of the cup", "Left to right", "on the level", "Make"):
        assert part in said
    # drawn in the system's own colours where it forces them
    page.emulate_media(forced_colors="active")
    drawn = page.evaluate(
        """() => {
          const system = document.body.appendChild(document.createElement('i'));
          system.style.forcedColorAdjust = 'none';
          const inks = ['CanvasText', 'Highlight'].map((name) => {
            system.style.color = name;
            return getComputedStyle(system).color;
          });
          const strokes = (selector) => [...document.querySelectorAll(selector)].map((each) => getComputedStyle(each).stroke);
          return [inks, strokes('svg[role=img] path')];
        }"""
    )
    inks, strokes = drawn
    assert set(inks) <= set(strokes)


@pytest.mark.parametrize("phone", [{"reduced_motion": "reduce"}], indirect=True)
def test_reduced_motion_shows_the_end_alone(phone: Any) -> None:
    page = phone.ready(putt=PUTT)
    seen = page.evaluate(
        """() => new Promise(resolve => {
          const ball = document.querySelector('[data-rolling]'), places = new Set();
          new MutationObserver(() => places.add(ball.getAttribute('transform'))).observe(ball, { attributes: true });
          document.querySelector('.roll').click();
          setTimeout(() => resolve(places.size), 800);
        })"""
    )
    assert seen == 1
