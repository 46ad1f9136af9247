"""What holds on each screen, those to come too: it is found by its links and by the buttons that turn its parts."""

from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Page, expect

TURNS = "main :is(.tabs, .parts) > button.pick"
USUAL_PX = 16  # the size of text that a browser is set to by its makers


def screens(page: Page) -> Iterator[str]:
    """The name of every screen and part, once it is shown."""
    links = page.locator(".screens a")
    for link in links.all():
        name = link.get_attribute("aria-label") or link.inner_text()
        link.click()
        expect(link).to_have_attribute("aria-current", "page")
        yield name
        for i in range(page.locator(TURNS).count()):
            turn = page.locator(TURNS).nth(i)
            if turn.get_attribute("aria-pressed") == "false":
                turn.click()
                expect(turn).to_have_attribute("aria-pressed", "true")
                yield f"{name}, {turn.inner_text()}"


@pytest.mark.parametrize("theme", ["light", "dark"])
def test_axe_finds_nothing_and_one_heading_leads(phone: Any, theme: str) -> None:
    page = phone.ready(settings={"theme": theme})
    for screen in screens(page):
        assert phone.violations() == [], screen
        assert page.locator("h1").count() == 1, screen


PHONES = {
    "small": {"viewport": {"width": 320, "height": 640}},
    "usual": {"viewport": {"width": 390, "height": 844}},
    "large text": {"viewport": {"width": 390, "height": 844}, "text_px": 2 * USUAL_PX},
}


@pytest.mark.parametrize("phone", PHONES.values(), indirect=True, ids=PHONES)
def test_nothing_is_cut_or_too_small(phone: Any) -> None:
    for screen in screens(phone.ready(cautioned=False)):
        assert phone.misfits() == [], screen
