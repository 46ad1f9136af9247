"""The practice screens for every eye, thumb and width: axe, both themes, from 320 px to a desk."""

from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Page, expect

import environment

AXE = (environment.NODE_PACKAGES / "axe-core" / "axe.min.js").read_text("utf-8")
WIDTHS = [(320, 568), (390, 844), (844, 390), (1280, 800)]
# A block without cautions, with two, and with a sound
BLOCKS = [{"drill": drill, "minutes": 2, "why": "Why.", "instead": []} for drill in ("start_gate", "floor_line", "tempo")]
CLIPPED = """() => [...document.querySelectorAll('h1, p, span, button, a, label, input, legend, th, td, li, summary')]
  .filter(element => element.getClientRects().length && !element.closest('.tape'))
  .filter(element => {
    const box = element.getBoundingClientRect();
    const clips = element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).display !== 'inline';
    return clips || box.left < -0.5 || box.right > innerWidth + 0.5;
  }).map(element => element.outerHTML.slice(0, 100))"""
SMALL = """() => [...document.querySelectorAll('main :is(button, a, input, summary, [role=slider])')]
  .map(element => [element.outerHTML.slice(0, 80), element.getBoundingClientRect()])
  .filter(([, box]) => box.width && (box.width < 43.5 || box.height < 43.5)).map(([html]) => html)"""


def screens(page: Page) -> Iterator[str]:
    """Every screen of practice in turn."""
    button = page.get_by_role
    tabs = page.locator(".tabs")
    expect(page.locator(".plan strong").first).not_to_be_empty(timeout=60_000)
    button("button", name="Change").click()
    yield "session"
    tabs.get_by_role("button", name="Tempo").click()
    page.get_by_text("Headphones and lock screen").click()
    yield "tempo"
    for name in ("Find my tempo", "Stroke length"):
        tabs.get_by_role("button", name="Tempo").click()
        button("button", name=name).click()
        expect(page.locator("h1")).to_have_text(name)
        yield name
    tabs.get_by_role("button", name="Drills").click()
    yield "drills"
    page.locator(".row", has_text="Laser along").click()
    expect(page.locator(".figures")).not_to_be_empty()
    yield "drill"
    button("button", name="Strip to print").click()
    yield "strip"
    tabs.get_by_role("button", name="Session").click()
    button("button", name="Start", exact=True).click()
    for block in BLOCKS:
        yield f"run {block['drill']}"
        button("button", name="Skip").click()
    yield "done"


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_axe_finds_nothing(phone: Any, theme: str) -> None:
    page = phone.open("#practice", settings={"theme": theme}, practice={"blocks": BLOCKS})
    page.evaluate(AXE)
    for screen in screens(page):
        found = page.evaluate(
            "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag22aa']})"
            ".then(found => found.violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 100)}`))"
        )
        assert found == [], screen


@pytest.mark.parametrize("phone", [{"viewport": {"width": w, "height": h}} for w, h in WIDTHS], indirect=True, ids=str)
def test_everything_fits(phone: Any) -> None:
    page = phone.open("#practice", settings={"theme": "light"}, practice={"blocks": BLOCKS})
    for screen in screens(page):
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), screen
        assert page.evaluate("(m => m.scrollWidth <= m.clientWidth)(document.querySelector('main'))"), screen
        assert page.evaluate(CLIPPED) == [], screen
        assert page.evaluate(SMALL) == [], screen
        if screen.startswith("run"):  # it lies on the floor
            assert page.evaluate("(m => m.scrollHeight <= m.clientHeight)(document.querySelector('main'))"), screen
