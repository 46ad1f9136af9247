"""Chromium as the tests and benchmarks run it."""

from pathlib import Path
from typing import Any

from playwright.sync_api import Browser, BrowserContext, Playwright, ViewportSize

import environment

PHONE: ViewportSize = {"width": 390, "height": 844}
# The engine's memory is kept, by which later starts are quick
SNAPSHOT_KEPT = "() => caches.open('borrowline-snapshots').then((cache) => cache.keys()).then((keys) => keys.length)"
FLAGS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)


def launch(playwright: Playwright, *flags: str) -> Browser:
    """A browser whose contexts keep nothing."""
    return playwright.chromium.launch(executable_path=environment.windowless_chromium(), args=[*FLAGS, *flags])


def open_store(playwright: Playwright, store: Path, **options: Any) -> BrowserContext:
    """A browser that keeps in ``store`` what it keeps: close it and open it again to restart it."""
    return playwright.chromium.launch_persistent_context(
        store, **{"executable_path": environment.chromium(), "args": list(FLAGS), **options}
    )
