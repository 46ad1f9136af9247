"""A page to measure on."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from playwright.sync_api import Page, Playwright

import browser
import dist
from server import Site


@contextmanager
def opened(playwright: Playwright, folder: Path, store: Path, path: str = "licences.txt") -> Iterator[Page]:
    """A page of the site in ``folder``; the usual one has its origin and policy, without the app's own engine."""
    site = Site(folder, dist.modules())
    context = browser.open_store(playwright, store)
    page = context.new_page()
    page.goto(site.url + path)
    yield page
    context.close()
    site.stop()
