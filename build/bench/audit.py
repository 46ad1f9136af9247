"""Lighthouse's four figures on each screen, as a phone sees it on its first visit."""

import json
import os
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from playwright.sync_api import Playwright

import browser
import environment
from bench.row import Row
from server import Site

SCREENS = (
    *("read", "line", "watch", "green", "walk", "practice"),
    *("record", "rounds", "findings", "book", "settings", "about"),
)
WANTED = {"performance": 95, "accessibility": 100, "best-practices": 100, "seo": 100}


def rows(_: Playwright, folder: Path, store: Path) -> Iterator[Row]:
    site = Site(folder)
    for screen in SCREENS:
        report = _audited(f"{site.url}#{screen}", store / f"{screen}.json")
        found = {name: round(100 * report["categories"][name]["score"]) for name in WANTED}
        ratio = max(wanted / max(found[name], 1) for name, wanted in WANTED.items())
        yield Row(f"Lighthouse, {screen}", _listed(found), f"at least {_listed(WANTED)}", ratio, 1)
    site.stop()


def _audited(url: str, report: Path) -> Any:
    line = [environment.lighthouse(), url, "--quiet", "--output=json", f"--output-path={report}"]
    line += [f"--only-categories={','.join(WANTED)}", f"--chrome-flags={' '.join(('--headless=new', *browser.FLAGS))}"]
    subprocess.run(line, check=True, env={**os.environ, "CHROME_PATH": environment.chromium()})
    return json.loads(report.read_text())


def _listed(figures: dict[str, int]) -> str:
    return ", ".join(map(str, figures.values()))
