"""A phone with the app open, and what the tests of its screens share."""

import json
import re
from collections.abc import Callable, Iterator
from typing import Any, Literal

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, ViewportSize, expect

import browser
import environment
from pycore import api
from tests.conftest import TOUCHED

KEY = "borrowline"
TWIN = "borrowline-twin"
# A page that is put away keeps what it has; a write that was under way is followed by one more
KEPT = """async () => {
  const done = () => navigator.locks.request('borrowline', () => {});
  dispatchEvent(new Event('pagehide'));
  await done();
  await new Promise((resolve) => setTimeout(resolve, 250));
  await done();
  return (await import('/records/db.js')).readMarks();
}"""
AXE = (environment.NODE_PACKAGES / "axe-core" / "axe.min.js").read_text("utf-8")
VIOLATIONS = """() => axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
  .then(found => found.violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 100)}`))"""
# Texts cut off, screens wider than the phone, and whatever is too small for a thumb
MISFITS = """() => {
  const told = (what, element) => `${what}: ${element.outerHTML.slice(0, 100)}`;
  const shown = (selector) => [...document.querySelectorAll(selector)].filter(element => element.getClientRects().length);
  const wide = shown('html, main, dialog').filter(element => element.scrollWidth > element.clientWidth);
  const cut = shown('h1, p, span, button, a, label, input, legend, text, th, td, li, summary')
    .filter(element => !element.closest('.tape') && element.type !== 'file' && !element.readOnly)
    .filter(element => {
      const box = element.getBoundingClientRect();
      const inBox = element instanceof HTMLElement && getComputedStyle(element).display !== 'inline';
      const clips = inBox && element.scrollWidth > element.clientWidth + 1;
      return clips || box.left < -0.5 || box.right > innerWidth + 0.5;
    });
  const small = shown('button, a, input:not(.cell input, [type=file]), summary, .cell, [role=slider]').filter(element => {
    const box = element.getBoundingClientRect();
    return box.width < 47.5 || box.height < 47.5;
  });
  return [...wide.map(e => told('wide', e)), ...cut.map(e => told('cut', e)), ...small.map(e => told('small', e))];
}"""
SCREEN = {"viewport", "color_scheme", "reduced_motion"}


class Phone:
    """A page of the app, with what its console complained of."""

    def __init__(self, context: BrowserContext, url: str) -> None:
        self.page: Page = context.new_page()
        self.url = url
        self.errors: list[str] = []
        self.page.on("console", lambda message: self.errors.append(message.text) if message.type == "error" else None)
        self.page.on("pageerror", lambda error: self.errors.append(str(error)))

    def show(self, viewport: ViewportSize, **media: Any) -> None:
        """Another screen than a phone's, and nothing kept from before."""
        self.page.set_viewport_size(viewport)
        self.page.emulate_media(**media)
        session = self.page.context.new_cdp_session(self.page)
        session.send("Storage.clearDataForOrigin", {"origin": self.url.rstrip("/"), "storageTypes": "local_storage,indexeddb"})
        session.send("Storage.deleteStorageBucket", {"bucket": {"storageKey": self.url, "name": TWIN}})

    def open(self, path: str = "", **saved: Any) -> Page:
        """The app, as it starts with the given parts of its record; the engine is not waited for."""
        if saved:
            record = json.dumps({"schema": 1, "cautioned": True, **saved})
            self.page.add_init_script(f"localStorage.{KEY} ??= {json.dumps(record)}")
        self.page.goto(self.url + path)
        return self.page

    def ready(self, **saved: Any) -> Page:
        """The app with a read, how sure it is, and its window on the screen."""
        page = self.open(**saved)
        expect(page.locator(".answer .off")).to_contain_text("±", timeout=60_000)
        expect(page.get_by_role("button", name=re.compile(r"^Make .*%"))).to_be_visible(timeout=60_000)
        return page

    def kept(self, path: str) -> Any:
        """A part of what is kept besides the entries, by its way: ``calibration.feet``."""
        part: Any = self.page.evaluate(KEPT)
        for name in path.split("."):
            part = part[name]
        return part

    def violations(self, *colours: Literal["light", "dark"]) -> list[str]:
        """What axe finds wrong with what is on the screen, as it is or in each of these colours."""
        if not self.page.evaluate("'axe' in window"):
            self.page.evaluate(AXE)
        found = [] if colours else self.page.evaluate(VIOLATIONS)
        for each in colours:
            self.page.emulate_media(color_scheme=each)
            found += [f"{each}: {violation}" for violation in self.page.evaluate(VIOLATIONS)]
        return found

    def misfits(self, *sizes: tuple[int, int]) -> list[str]:
        """What does not fit the screen or a thumb, on a screen as it is or of each of these sizes."""
        if not sizes:
            return self.page.evaluate(MISFITS)
        return [f"{size}: {misfit}" for size in self.sized(*sizes) for misfit in self.misfits()]

    def sized(self, *sizes: tuple[int, int]) -> Iterator[tuple[int, int]]:
        """The screen turned to each size in turn; what is drawn to measure has been drawn anew."""
        for width, height in sizes:
            self.page.set_viewport_size({"width": width, "height": height})
            self.page.evaluate("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")
            yield width, height


@pytest.fixture
def phone(request: pytest.FixtureRequest, forgetful: Browser) -> Iterator[Phone]:
    """A phone; ``@pytest.mark.parametrize("phone", [options], indirect=True)`` gives it another screen.

    It is one on which the app is installed and nothing is kept. A test that turns its clock or stops its site has it
    new: marked ``alone``, or with ``site`` or other options of a context than its screen.
    """
    options = {"viewport": browser.PHONE, **getattr(request, "param", {})}
    text_px = options.pop("text_px", None)
    if text_px:  # the size of text that the browser is set to, which is the whole browser's
        launched = browser.launch(request.getfixturevalue("playwright"), f"--blink-settings=defaultFontSize={text_px}")
        held = Phone(launched.new_context(**TOUCHED, **options), request.getfixturevalue("site").url)
        yield held
        launched.close()
    elif request.node.get_closest_marker("alone") or "site" in request.fixturenames or options.keys() - SCREEN:
        context = forgetful.new_context(**TOUCHED, **options)
        held = Phone(context, request.getfixturevalue("site").url)
        yield held
        context.close()
    else:
        context, url = request.getfixturevalue("installed")
        held = Phone(context, url)
        held.show(**options)
        yield held
        for page in context.pages[1:]:
            assert "[native code]" in page.evaluate("Date.toString()"), "its clock was set, which stays: mark it alone"
            page.close()
    assert held.errors == []


def ask(name: str, **fields: Any) -> Any:
    """The engine's answer, as CPython gives it."""
    reply = json.loads(api.answer(json.dumps({"ask": name, **fields})))
    assert reply["ok"], reply
    return reply["value"]


@pytest.fixture
def engine() -> Callable[..., Any]:
    return ask
