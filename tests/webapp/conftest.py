"""A phone with the app open, and what the tests of its screens share."""

import json
import re
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

import browser
from pycore import api

KEY = "borrowline"


class Phone:
    """A page of the app, with what its console complained of."""

    def __init__(self, context: BrowserContext, url: str) -> None:
        self.page: Page = context.pages[0] if context.pages else context.new_page()
        self.url = url
        self.errors: list[str] = []
        self.page.on("console", lambda message: self.errors.append(message.text) if message.type == "error" else None)
        self.page.on("pageerror", lambda error: self.errors.append(str(error)))

    def open(self, path: str = "", **saved: Any) -> Page:
        """The app, as it starts with the given parts of its record; the engine is not waited for."""
        if saved:
            record = json.dumps({"schema": 1, "cautioned": True, **saved})
            self.page.add_init_script(f"localStorage.{KEY} ??= {json.dumps(record)}")
        self.page.goto(self.url + path)
        return self.page

    def ready(self, **saved: Any) -> Page:
        """The app with a read and its window on the screen."""
        page = self.open(**saved)
        expect(page.get_by_role("button", name=re.compile(r"^Make .*%"))).to_be_visible(timeout=60_000)
        return page


@pytest.fixture
def phone(site: Any, forgetful: Browser, request: pytest.FixtureRequest) -> Iterator[Phone]:
    """A phone; ``@pytest.mark.parametrize("phone", [options], indirect=True)`` gives it another screen."""
    context = forgetful.new_context(**{"viewport": browser.PHONE, "has_touch": True, **getattr(request, "param", {})})
    held = Phone(context, site.url)
    yield held
    context.close()
    assert held.errors == []


def ask(name: str, **fields: Any) -> Any:
    """The engine's answer, as CPython gives it."""
    reply = json.loads(api.answer(json.dumps({"ask": name, **fields})))
    assert reply["ok"], reply
    return reply["value"]


@pytest.fixture
def engine() -> Callable[..., Any]:
    return ask
