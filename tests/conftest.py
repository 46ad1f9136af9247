"""What the tests share: the built site, a server that can be stopped, browsers, and the engine in the site's own runtime."""

import json
import subprocess
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Playwright, expect, sync_playwright

import browser
import dist as dist_module
import environment
import runtime
from server import Site

PHONE = {"viewport": browser.PHONE, "has_touch": True}
SENSORS = ["accelerometer", "gyroscope", "magnetometer"]  # as phones give leave for
TOUCHED: dict[str, Any] = {"has_touch": True, "permissions": SENSORS}
IDLE_ENGINE = """async () => {
  const { createEngine } = await import('/engine/client.js');
  globalThis.engine = createEngine({ onState() {} });
  await engine.ask('read', { distance_m: 3, stimp_ft: 10, slope_percent: 2, fall_deg: 90, past_m: 0.3 });
}"""

expect.set_options(timeout=30_000)  # ms; a busy machine starts an engine in more than the usual five seconds


class EngineRuntime:
    """The engine in the Python that the site ships, run by Node."""

    def __init__(self, folder: Path) -> None:
        script = Path(__file__).with_name("engine-runtime.mjs")
        self._process = subprocess.Popen(
            [environment.node(), str(script), str(folder), str(runtime.PYODIDE)],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )

    def answer(self, request: str) -> str:
        """The reply to a request, as ``pycore.api.answer`` gives it."""
        assert self._process.stdin
        assert self._process.stdout
        self._process.stdin.write(json.dumps(request) + "\n")
        self._process.stdin.flush()
        line = self._process.stdout.readline()
        assert line, "the engine's runtime ended"
        reply: str = json.loads(line)
        return reply

    def ask(self, **request: Any) -> Any:
        """The reply to a request, as an object."""
        return json.loads(self.answer(json.dumps(request)))

    def close(self) -> None:
        assert self._process.stdin
        assert self._process.stdout
        self._process.stdin.close()
        self._process.wait(timeout=10)
        self._process.stdout.close()


@pytest.fixture(scope="session")
def dist() -> Path:
    """dist/, up to date."""
    return dist_module.build()


@pytest.fixture(scope="session")
def runtime_folder(dist: Path) -> Path:
    return next(dist.glob("runtime-*"))


@pytest.fixture(scope="session")
def engine_runtime(runtime_folder: Path) -> Iterator[EngineRuntime]:
    runtime = EngineRuntime(runtime_folder)
    yield runtime
    runtime.close()


@pytest.fixture(scope="session")
def modules(dist: Path) -> Path:
    """The app's modules by their own addresses, for tests that call one of them."""
    return dist_module.modules()


@pytest.fixture
def site(dist: Path, modules: Path) -> Iterator[Site]:
    """The built site, served for one test."""
    served = Site(dist, modules)
    yield served
    served.stop()


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    with sync_playwright() as running:
        yield running


@pytest.fixture(scope="session")
def forgetful(playwright: Playwright) -> Iterator[Browser]:
    """One browser for all that need not be restarted: a new context in it knows nothing of the others.

    The pages of a context share a process, and with it what has been compiled of the engine.
    """
    launched = browser.launch(playwright, "--process-per-site")
    yield launched
    launched.close()


@pytest.fixture(scope="session")
def installed(dist: Path, modules: Path, forgetful: Browser, until: Any) -> Iterator[tuple[BrowserContext, str]]:
    """A context in which the app has been used before, so that it starts as on the second day; and its address.

    Its first page stays open with an engine that nobody asks: what the browser has compiled for it is there for the
    engines of the others, which spares each a second of the processor's time.
    """
    served = Site(dist, modules)
    context = forgetful.new_context(viewport=browser.PHONE, **TOUCHED)
    first = context.new_page()
    first.goto(served.url)
    # the engine's memory, which spares each later start two seconds
    until(first, browser.SNAPSHOT_KEPT, seconds=90)
    first.goto(served.url + "licences.txt")
    first.evaluate(IDLE_ENGINE)
    yield context, served.url
    context.close()
    served.stop()


type OpenBrowser = Callable[..., BrowserContext]


@pytest.fixture
def open_browser(playwright: Playwright, tmp_path: Path) -> Iterator[OpenBrowser]:
    """Opens a browser that keeps what it stored: close the context and open again to restart it.

    Takes Playwright's options for a context; ``profile`` names another store.
    """
    opened: list[BrowserContext] = []

    def open_browser(profile: str = "profile", **options: Any) -> BrowserContext:
        context = browser.open_store(
            playwright, tmp_path / profile, **{**PHONE, "executable_path": environment.windowless_chromium(), **options}
        )
        opened.append(context)
        return context

    yield open_browser
    for context in opened:
        context.close()


type Until = Callable[..., None]


@pytest.fixture(scope="session")
def until() -> Until:
    """Waits for a script of the page to come true, promises too. Playwright's own wait takes a promise for a yes."""

    def until(page: Page, script: str, seconds: float = 30) -> None:
        deadline = time.monotonic() + seconds
        while not page.evaluate(script):
            if time.monotonic() > deadline:
                pytest.fail(f"never came true: {script}")
            page.wait_for_timeout(50)

    return until
