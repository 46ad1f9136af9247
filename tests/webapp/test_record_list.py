"""A long list draws only what is near, and leaves nothing behind."""

from typing import Any

from playwright.sync_api import Page, expect

NOTES = 305
DRAWN = 80
FILL = """async count => {
  const { write } = await import('/records/db.js');
  const at = i => new Date(Date.UTC(2026, 4, 1) + i * 60_000).toISOString();
  const note = i => ({ kind: 'note', id: `n${i}`, at: at(i), changed: at(i), place: '', text: `Note ${i}` });
  await write(Array.from({ length: count }, (_, i) => note(i)));
}"""
NODES = "document.querySelector('.entries').childNodes.length"
TO = """async share => {
  const page = document.querySelector('main');
  page.scrollTop = share * page.scrollHeight;
  for (let i = 0; i < 3; i += 1) await new Promise(requestAnimationFrame);
}"""


def listed(phone: Any) -> Page:
    page: Page = phone.open("#about")
    page.evaluate(FILL, NOTES)
    page.goto(page.url.split("#")[0] + "#record")
    page.get_by_role("button", name="Notes", exact=True).click()
    expect(page.get_by_role("button", name=f"Note {NOTES - 1}")).to_be_visible()
    return page


def test_a_long_list_draws_what_is_near_and_leaves_nothing_behind(phone: Any) -> None:
    page = listed(phone)
    rows = page.locator(".entries li")
    nodes, height = page.evaluate(NODES), page.evaluate("document.querySelector('.entries').offsetHeight")
    for share in (0.5, 1.0):
        page.evaluate(TO, share)
    expect(rows.last).to_contain_text("Note 0")
    expect(rows.last).to_have_attribute("aria-posinset", str(NOTES))
    expect(rows.last).to_have_attribute("aria-setsize", str(NOTES))
    assert rows.count() <= DRAWN
    page.evaluate(TO, 0)
    expect(rows.first).to_contain_text(f"Note {NOTES - 1}")
    assert page.evaluate(NODES) == nodes
    assert page.evaluate("document.querySelector('.entries').offsetHeight") == height


def test_a_row_keeps_the_focus_while_others_are_drawn(phone: Any) -> None:
    page = listed(phone)
    page.get_by_role("button", name=f"Note {NOTES - 1}").focus()
    focused = "document.activeElement.closest('li')?.ariaPosInSet"
    for place in range(2, 62):
        page.keyboard.press("Tab")
        assert page.evaluate(focused) == str(place)
