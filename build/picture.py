"""``python3 build picture``: the pictures of README and of the app's manifest, taken from the built site."""

import json
import re
import tempfile
from pathlib import Path

from playwright.sync_api import sync_playwright

import browser
import dist
import film_picture
from environment import ROOT
from server import Site

FOLDER = ROOT / "webapp" / "screenshots"
PUTT = {"distance_m": 3.6576, "slope_percent": 3, "fall_deg": 75, "stimp_ft": 11, "past_m": 0.3048}
WIDE = {"width": 1280, "height": 800}
SHOTS = {"read-light": ("light", browser.PHONE), "read-dark": ("dark", browser.PHONE), "read-wide": ("light", WIDE)}
NO_OFFER = "addEventListener('beforeinstallprompt', (event) => event.stopImmediatePropagation(), true)"


def take() -> int:
    """Write pictures of the read by day, by night and on a desk, and build the site that holds them."""
    FOLDER.mkdir(exist_ok=True)
    film_picture.take(FOLDER / "watched.jpg")
    site = Site(dist.build())
    with sync_playwright() as playwright, tempfile.TemporaryDirectory() as store:
        for name, (theme, screen) in SHOTS.items():
            saved = {"schema": 1, "cautioned": True, "putt": PUTT, "settings": {"theme": theme}}
            context = browser.open_store(playwright, Path(store) / name, viewport=screen, device_scale_factor=2)
            page = context.new_page()
            page.add_init_script(f"localStorage.borrowline = {json.dumps(json.dumps(saved))}; {NO_OFFER}")
            page.goto(site.url)
            page.get_by_role("button", name=re.compile(r"^Make .*%")).wait_for(timeout=60_000)
            page.wait_for_timeout(500)  # the window comes a frame after its number
            page.screenshot(path=FOLDER / f"{name}.png")
            context.close()
    site.stop()
    dist.build()
    return 0
