"""What a newcomer changes from outside: a screen is a folder and its line, a range of the engine is one number."""

import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

import browser
import bundle
import environment
import runtime
from server import Site

SCREEN = """
import './tides.css';
import { html } from 'lit-html';
import { between } from '../../records/forms.js';
import { fields } from '../../records/part.js';

/** @type {import('../../app.js').Feature} */
export const tides = {
  id: 'tides',
  label: 'Tides',
  formerly: ['ebb'],
  keeps: { tides: fields('tides', { level_m: 2 }, { level_m: between(0.3, 25) }, { atOnce: true }) },
  questions: [
    {
      into: 'tides',
      ask: 'read',
      when: ({ screen }) => screen === 'tides',
      fields: ({ putt, tides }) => ({ ...putt, distance_m: tides.level_m, slope_percent: 0 }),
    },
  ],
  make: ({ store }) => ({
    view: () => html`<main class="page"><h1>Tides</h1>
      <p class="tides-level">${store.state.answers.tides?.plays_like_m.toFixed(2) ?? 'asked'}</p>
      <button @click=${() => store.change('rise', { tides: { level_m: store.state.tides.level_m + 1 } })}>Rise</button></main>`,
  }),
};
"""
# What the build writes, of an engine beside the project's own
TABLE = "import protocol; print(next(text for path, text in protocol.current().items() if path.name == 'fields.js'))"
RANGES = {
    'Distance = Annotated[float, Range(0.3, 30.0, "m")': 'Distance = Annotated[float, Range(0.3, 25.0, "m")',
    'Stimp = Annotated[float, Range(5.0, 15.0, "ft")': 'Stimp = Annotated[float, Range(5.0, 14.0, "ft")',
}


@pytest.fixture(scope="module")
def changed(tmp_path_factory: pytest.TempPathFactory, dist: Path) -> Iterator[Site]:
    """The site with one more screen, and with the table of an engine that takes putts of up to 25 m and a Stimp of up to 14."""
    folder = tmp_path_factory.mktemp("outside")
    webapp = shutil.copytree(bundle.WEBAPP, folder / "webapp")
    screen = webapp / "features" / "tides"
    screen.mkdir()
    (screen / "index.js").write_text(SCREEN)
    (screen / "tides.css").write_text(".tides-level { color: rgb(1, 2, 3) }")
    main = webapp / "main.js"
    lines = main.read_text().replace(
        "\nimport { about }", "\nimport { tides } from './features/tides/index.js';\nimport { about }"
    )
    main.write_text(lines.replace("const FEATURES = [read,", "const FEATURES = [read, tides,"))

    engine = shutil.copytree(environment.ROOT / "pycore", folder / "pycore")
    quantities = engine / "quantities.py"
    text = quantities.read_text()
    for own, other in RANGES.items():
        assert own in text
        text = text.replace(own, other)
    quantities.write_text(text)
    path = {"PYTHONPATH": f"{folder}:{environment.ROOT / 'build'}", "PYTHONDONTWRITEBYTECODE": "1"}
    table = subprocess.run([sys.executable, "-c", TABLE], cwd=folder, env=path, capture_output=True, text=True, check=True)
    (webapp / "engine" / "fields.js").write_text(table.stdout)

    built = folder / "dist"
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(bundle, "WEBAPP", webapp)
        for name, content in bundle.app(runtime.folder(runtime.kept())).items():
            (built / name).parent.mkdir(parents=True, exist_ok=True)
            (built / name).write_bytes(content)
    served = Site(built, dist)  # what is not changed comes from the site as it is
    yield served
    served.stop()


@pytest.fixture
def page(changed: Site, forgetful: Browser) -> Iterator[Page]:
    context = forgetful.new_context(viewport=browser.PHONE, has_touch=True, service_workers="block")
    yield context.new_page()
    context.close()


def test_a_screen_is_a_folder_and_its_line(page: Page, changed: Site) -> None:
    page.goto(f"{changed.url}#ebb")
    row = page.get_by_role("link", name="Tides", exact=True)
    expect(row).to_have_attribute("aria-current", "page")
    level = page.locator(".tides-level")
    # on the level a putt plays its own length
    expect(level).to_have_text("2.00", timeout=60_000)
    expect(level).to_have_css("color", "rgb(1, 2, 3)")
    page.get_by_role("button", name="Rise").click()
    expect(level).to_have_text("3.00")
    page.get_by_role("link", name="Read", exact=True).click()
    expect(level).to_have_count(0)
    row.click()
    expect(level).to_have_text("3.00")
    page.reload()  # what it keeps is read back
    expect(level).to_have_text("3.00", timeout=60_000)


def test_the_page_follows_a_range_of_the_engine(page: Page, changed: Site) -> None:
    page.goto(changed.url)
    # 25 m are 82.02 ft
    expect(page.locator("#ruler")).to_have_attribute("aria-valuemax", "82")
    page.goto(f"{changed.url}#settings")
    speed, alert = page.get_by_label("Usual green speed"), page.get_by_role("alert")
    speed.fill("14.5")
    page.keyboard.press("Enter")
    expect(alert).to_have_text("Usual green speed takes 5 to 14\xa0ft; “14.5” does not fit.")
    speed.fill("14")
    page.keyboard.press("Enter")
    expect(alert).to_have_count(0)
