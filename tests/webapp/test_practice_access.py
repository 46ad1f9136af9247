"""The practice screens for every eye, thumb and width: axe, both themes, from 320 px to a desk."""

from collections.abc import Iterator
from typing import Any

from playwright.sync_api import Page, expect

WIDTHS = [(320, 568), (390, 844), (844, 390), (1280, 800)]
# A block without cautions, with two, and with a sound
BLOCKS: list[dict[str, Any]] = [
    {"drill": drill, "minutes": 2, "why": "Why.", "instead": []} for drill in ("start_gate", "floor_line", "tempo")
]
PLAN = {"minutes": 10, "place": "room", "at_hand": [], "weights": {}}
PLANNED = {**PLAN, "blocks": BLOCKS, "planned": PLAN}


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
    button("button", name="Arc to print").click()
    yield "strip"
    tabs.get_by_role("button", name="Session").click()
    button("button", name="Start", exact=True).click()
    for i, block in enumerate(BLOCKS):
        expect(page.locator(".run-head")).to_contain_text(f"{i + 1} of {len(BLOCKS)}")
        yield f"run {block['drill']}"
        button("button", name="Skip").click()
    yield "done"


def test_everything_fits_and_axe_finds_nothing(phone: Any) -> None:
    page = phone.open("#practice", practice=PLANNED)
    for screen in screens(page):
        assert phone.violations("dark", "light") == [], screen
        for size in phone.sized(*WIDTHS):
            assert phone.misfits() == [], (screen, size)
            if screen.startswith("run"):  # it lies on the floor
                assert page.evaluate("(m => m.scrollHeight <= m.clientHeight)(document.querySelector('main'))"), (screen, size)
