"""After one visit the app needs no network; a new version waits, and is whole or not at all."""

import json
import re
import shutil

import pytest
from playwright.sync_api import expect

import offline
from browser import SNAPSHOT_KEPT

WORKER_ACTIVE = "() => navigator.serviceWorker.getRegistration().then((found) => found?.active?.state === 'activated')"
WORKER_WAITING = "() => navigator.serviceWorker.getRegistration().then((found) => !!found?.waiting)"
REGISTER = "() => navigator.serviceWorker.register('/sw.js').then(() => null, String)"
KEPT = "() => caches.open('borrowline-files').then((cache) => cache.keys()).then((keys) => keys.length)"
TITLE = "() => fetch('/').then((response) => response.text()).then((text) => text.match(/<title>(.*)<.title>/)[1])"


@pytest.fixture
def changing_site(site, tmp_path):
    """The site in a folder of its own, to publish other versions in."""
    copy = tmp_path / "site"
    shutil.copytree(site.folder, copy)
    site.stop()
    site.folder = copy
    site.start()
    return site


def publish(site, title):
    """A version with another title in its page."""
    page = site.folder / "index.html"
    old = page.read_bytes()
    page.write_bytes(old.replace(b"<title>Borrowline", f"<title>{title}".encode()))
    precache = site.folder / "precache.js"
    precache.write_text(precache.read_text().replace(offline.integrity(old), offline.integrity(page.read_bytes())))


def visit(context, site, until):
    page = context.new_page()
    page.goto(site.url)
    until(page, WORKER_ACTIVE)
    return page


def listed(site):
    """Each file of the list and its hash."""
    script = (site.folder / "precache.js").read_text().removeprefix("self.PRECACHE = ")
    found, _ = json.JSONDecoder().raw_decode(script)
    return found


def test_a_new_version_waits_until_it_is_asked_for(open_browser, changing_site, until):
    context = open_browser()
    page = visit(context, changing_site, until)
    until(page, SNAPSHOT_KEPT)
    page.reload()
    before = page.evaluate(KEPT)
    publish(changing_site, "Newer")
    page.evaluate("navigator.serviceWorker.getRegistration().then((found) => found.update())")
    until(page, WORKER_WAITING)
    assert page.evaluate(TITLE) == "Borrowline"

    other = context.new_page()
    other.goto(changing_site.url)
    for each in (page, other):  # a version takes over once the one before it has nothing left to send
        expect(each.get_by_role("button", name=re.compile("^Make .*%"))).to_be_visible(timeout=60_000)
    page.evaluate("navigator.serviceWorker.getRegistration().then((found) => found.waiting.postMessage({ type: 'take over' }))")
    expect(page).to_have_title("Newer", timeout=60_000)
    expect(other).to_have_title("Newer", timeout=60_000)
    until(page, f"({KEPT})().then((kept) => kept === {before})")


def test_a_version_with_a_wrong_file_is_refused_and_the_old_one_stays(open_browser, changing_site, until):
    page = visit(open_browser(), changing_site, until)
    page.reload()
    publish(changing_site, "Newer")
    spoiled = changing_site.folder / "index.html"
    spoiled.write_bytes(spoiled.read_bytes() + b"<!-- cut or changed on the way -->")
    state = page.evaluate(
        """async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          await registration.update();
          const fresh = registration.installing;
          await new Promise((done) => fresh.addEventListener('statechange', done));
          return fresh.state;
        }"""
    )
    assert state == "redundant"
    page.reload()
    assert page.title() == "Borrowline"


def test_an_install_that_broke_off_fetches_only_what_is_missing(open_browser, changing_site, until):
    lost = changing_site.folder / "main.css"
    content = lost.read_bytes()
    lost.unlink()
    context = open_browser()
    page = context.new_page()
    page.goto(changing_site.url + "licences.txt")
    page.evaluate(REGISTER)
    until(page, f"({KEPT})().then((kept) => kept > 10)")
    until(page, "() => navigator.serviceWorker.getRegistration().then((found) => !found?.installing)")
    assert not page.evaluate(WORKER_ACTIVE)

    lost.write_bytes(content)
    fetched = []
    context.on("request", lambda request: fetched.append(request.url) if request.service_worker else None)
    page.evaluate(REGISTER)
    until(page, WORKER_ACTIVE)
    assert [url for url in fetched if not url.endswith(("sw.js", "precache.js"))] == [changing_site.url + "main.css"]


DAMAGE = """async ({ hash, how }) => {
  const cache = await caches.open('borrowline-files');
  const key = `${location.origin}/?${encodeURIComponent(hash)}`;
  if (how === 'gone') return cache.delete(key);
  const response = await cache.match(key);
  const content = new Uint8Array(await response.arrayBuffer());
  if (how === 'changed') content.fill(7, content.length / 3, content.length / 2);
  await cache.put(key, new Response(how === 'changed' ? content : content.slice(0, content.length / 2), response));
  await caches.delete('borrowline-snapshots');
}"""


def damage(page, site, name, how):
    """Of a file that is kept; on a page without an engine, which would keep a snapshot of what was whole."""
    page.goto(site.url + "licences.txt")
    (integrity,) = (integrity for path, integrity in listed(site).items() if path.endswith(name))
    page.evaluate(DAMAGE, {"hash": integrity, "how": how})


def test_what_is_damaged_is_found_said_and_fetched_again(open_browser, site, until):
    page = visit(open_browser(), site, until)
    for name, how in (("engine.zip", "changed"), ("python.zip", "cut")):
        damage(page, site, name, how)
    page.goto(site.url)
    expect(page.get_by_text("It has been fetched again.")).to_be_visible()
    page.get_by_role("button", name="Understood").last.click()
    expect(page.get_by_role("button", name=re.compile("^Make .*%"))).to_be_visible(timeout=60_000)
    page.goto(site.url + "#settings")
    expect(page.get_by_role("region", name="On this phone")).to_contain_text("All of the app is on this phone since")


def test_everything_listed_is_kept_and_what_is_missing_again_when_it_is_missed(open_browser, site, until):
    page = visit(open_browser(), site, until)
    whole = len(set(listed(site).values()))
    assert page.evaluate(KEPT) == whole
    damage(page, site, "main.css", "gone")
    assert page.evaluate(KEPT) == whole - 1
    page.goto(site.url)
    until(page, f"({KEPT})().then((kept) => kept === {whole})")


def test_what_is_damaged_without_a_signal_is_said_and_fetched_when_there_is_one(open_browser, site, until):
    page = visit(open_browser(), site, until)
    damage(page, site, "engine.zip", "changed")
    site.stop()
    page.goto(site.url)
    expect(page.get_by_text("1 file of the app on this phone is damaged or missing.")).to_be_visible()
    site.start()
    page.evaluate("dispatchEvent(new Event('online'))")
    expect(page.get_by_text("It has been fetched again.")).to_be_visible()
    expect(page.get_by_role("button", name=re.compile("^Make .*%"))).to_be_visible(timeout=60_000)


def test_an_install_that_is_refused_is_told_and_tried_again(open_browser, changing_site, until):
    lost = changing_site.folder / "licences.txt"
    content = lost.read_bytes()
    lost.unlink()
    page = open_browser().new_page()
    page.goto(changing_site.url)
    expect(page.get_by_text("Not all of the app has come to this phone")).to_be_visible()
    lost.write_bytes(content)
    page.evaluate("dispatchEvent(new Event('online'))")
    until(page, WORKER_ACTIVE)
    expect(page.get_by_text("Not all of the app has come to this phone")).to_have_count(0)


def test_a_version_that_is_refused_is_told_and_tried_again(open_browser, changing_site, until):
    page = visit(open_browser(), changing_site, until)
    page.reload()
    publish(changing_site, "Newer")
    spoiled = changing_site.folder / "index.html"
    content = spoiled.read_bytes()
    spoiled.write_bytes(content + b"<!-- cut or changed on the way -->")
    page.evaluate("navigator.serviceWorker.getRegistration().then((found) => found.update())")
    expect(page.get_by_text("A new version did not come whole.")).to_be_visible()
    spoiled.write_bytes(content)
    page.evaluate("dispatchEvent(new Event('online'))")
    expect(page.get_by_text("A new version is ready.")).to_be_visible()
