"""What the engine was asked: an answer stands under its own question alone, and a refusal is said in the player's units."""

from typing import Any

from playwright.sync_api import Page, expect

PUTT = {"distance_m": 3.048, "stimp_ft": 10.0, "past_m": 0.3048}
STATIONS = [{"at_m": 0, "slope_percent": 1, "fall_deg": 90}, {"at_m": 1.5, "slope_percent": 2, "fall_deg": 45}]
# The next question of a name is the engine's last
DEADLY = """(name) => {
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message) {
    if (!String(message).includes(`"ask":"${name}"`)) return post.call(this, message);
    Worker.prototype.postMessage = post;
    this.onerror(new ErrorEvent('error', { message: 'killed by a test' }));
  };
}"""


def planned(page: Page) -> int:
    """Minutes of the plan on the screen."""
    return sum(int(text.split()[0]) for text in page.locator(".plan-minutes").all_inner_texts())


def test_a_plan_of_other_minutes_does_not_start(phone: Any) -> None:
    page = phone.open("#practice")
    start = page.get_by_role("button", name="Start", exact=True)
    expect(start).to_be_enabled(timeout=60_000)
    page.evaluate(DEADLY, "plan")
    page.get_by_role("slider", name="Minutes").press("PageUp")
    expect(page.get_by_role("heading", name="30 min")).to_be_visible()
    # the engine is on its way back: what stands is the plan of 20
    assert planned(page) == 20
    expect(start).to_be_disabled()
    expect(page.get_by_role("heading", name="The plan before")).to_be_visible()
    expect(start).to_be_enabled(timeout=60_000)
    assert planned(page) == 30


def test_a_place_that_does_not_fit_is_told_in_feet(phone: Any) -> None:
    page = phone.ready(putt={**PUTT, "stations": STATIONS})
    page.get_by_role("button", name="2 slopes").click()
    for typed, least in (("0", "0.1"), ("12", "0.1"), ("99", "0")):
        page.locator("#station-1-at_m").fill(typed)
        page.keyboard.press("Tab")
        alert = page.locator("dialog").get_by_role("alert")
        expect(alert).to_have_text(f"From the ball takes {least} to 10\xa0ft; “{typed}” does not fit.")


def test_old_addresses_lead_on(phone: Any) -> None:
    page = phone.page
    for old, new in {
        "calibrate": "Green",
        "sight": "Line",
        "notes": "Record",
        "findings": "Record",
        "settings": "Settings",
    }.items():
        page.goto("about:blank")
        phone.open(f"#{old}")
        expect(page.locator(".screens").get_by_role("link", name=new, exact=True)).to_have_attribute("aria-current", "page")


def test_the_store_tells_each_change_once_in_order_to_all(phone: Any) -> None:
    page = phone.open()
    told = page.evaluate(
        """async () => {
          const { createStore } = await import('/store.js');
          const store = createStore({ n: 0 }), told = [];
          store.subscribe(({ n }, before, action) => {
            told.push(`a ${action} ${before.n} to ${n}`);
            if (action === 'one') store.change('two', { n: 2 });
          });
          store.subscribe(({ n }, before, action) => told.push(`b ${action} ${before.n} to ${n}`));
          store.change('one', { n: 1 });
          return told;
        }"""
    )
    assert told == ["a one 0 to 1", "b one 0 to 1", "a two 1 to 2", "b two 1 to 2"]
