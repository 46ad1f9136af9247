"""Old phones, thumbs and screen readers: what is missing is named, numbers are typed over, one hears where one is."""

from typing import Any

import pytest
from playwright.sync_api import expect

# What the oldest phones of README have, and those before them have not
ABILITIES = {
    "BroadcastChannel": "delete self.BroadcastChannel",
    "toSorted": "delete Array.prototype.toSorted",
    "dialog": "delete self.HTMLDialogElement",
}


@pytest.mark.parametrize("taken", ABILITIES.values(), ids=ABILITIES)
def test_a_missing_ability_is_named_with_what_to_do(forgetful: Any, site: Any, taken: str) -> None:
    context = forgetful.new_context()
    page = context.new_page()
    page.add_init_script(taken)
    page.goto(site.url)
    expect(page.get_by_text("This browser cannot")).to_contain_text("iOS 16")
    context.close()


def test_the_page_has_words_before_its_first_script(forgetful: Any, site: Any) -> None:
    context = forgetful.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(site.url)
    expect(page.get_by_role("heading", name="Borrowline")).to_be_visible()
    expect(page.get_by_text("too old for it")).to_be_visible()
    context.close()


@pytest.mark.parametrize("way", ["click", "tap"])
def test_what_is_typed_takes_the_place_of_a_number(phone: Any, way: str) -> None:
    page = phone.open("#settings")
    field = page.get_by_label("Usual green speed")
    getattr(field, way)()
    page.keyboard.type("11.5")
    expect(field).to_have_value("11.5")


def test_another_screen_is_told_by_title_and_focus(phone: Any) -> None:
    page = phone.open()
    for link, heading in (("Settings", "Settings"), ("Line", "Line"), ("Green", "Green"), ("Practice", None)):
        page.get_by_role("link", name=link, exact=True).click()
        expect(page).to_have_title(f"{link} · Borrowline")
        expect(page.locator("main h1")).to_have_count(1)
        expect(page.locator("main h1")).to_be_focused()
        if heading:
            expect(page.get_by_role("heading", level=1)).to_have_text(heading)


def test_a_shortcut_opens_the_tempo(phone: Any) -> None:
    expect(phone.open("#tempo").get_by_role("button", name="Tempo", exact=True)).to_have_attribute("aria-pressed", "true")


def test_an_idle_page_draws_nothing_and_sets_no_clock(phone: Any) -> None:
    page = phone.page
    page.add_init_script(
        """(() => {
          window.woken = 0;
          for (const name of ['requestAnimationFrame', 'setInterval', 'setTimeout']) {
            const real = self[name];
            self[name] = (then, ...given) => {
              window.woken += 1;
              return real.call(self, (...told) => { window.woken += 1; then(...told); }, ...given);
            };
          }
        })()"""
    )
    phone.ready()

    def still() -> bool:
        before = page.evaluate("woken")
        page.wait_for_timeout(3500)
        return page.evaluate("woken") == before

    assert any(still() for _ in range(12))  # what the start leaves to do takes a busy machine a while


def test_a_drag_that_ends_where_it_was_has_its_window(phone: Any) -> None:
    page = phone.ready()
    box = page.locator("#ruler").bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    # One event after the other, before an answer can come: there, back again, and once more without a change
    page.evaluate(
        """([x, y]) => { for (const dx of [-40, 0, -40, -40.5]) document.querySelector('#ruler').dispatchEvent(
          new PointerEvent('pointermove', { bubbles: true, pointerId: 1, clientX: x + dx, clientY: y })); }""",
        [x, y],
    )
    page.mouse.up()
    expect(page.locator(".window.stale")).to_have_count(0)
    expect(page.locator(".window")).to_have_count(1)
