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


def test_one_heading_leads_axe_finds_nothing_and_nothing_is_cut_or_too_small(phone: Any) -> None:
    for screen in screens(phone.ready(cautioned=False)):
        assert phone.page.locator("h1").count() == 1, screen
        assert phone.misfits((320, 640), (390, 844)) == [], screen
        assert phone.violations("light", "dark") == [], screen


@pytest.mark.parametrize("phone", [{"text_px": 2 * USUAL_PX}], indirect=True)
def test_large_text_is_not_cut(phone: Any) -> None:
    for screen in screens(phone.ready(cautioned=False)):
        assert phone.misfits() == [], screen
