"""The app's own files: a server that stops while they come, and files that are damaged on the phone."""

import json
import shutil
import time
from collections.abc import Iterator, Sequence
from pathlib import Path

from flask import Flask, Response
from playwright.sync_api import Error, Playwright

import offline
from browser import SNAPSHOT_KEPT
from faults.fault import Fault
from faults.phone import QUIET as WITHOUT_APP
from faults.phone import Phone
from server import Site

SAID_S = 10.0  # the longest until a damaged file is told
CHECKED_MS = 8000  # after a start every file has been looked at
CHANGED = ("index.html", "main.css", "licences.txt", "app.webmanifest")  # by each new version
QUIET = "async () => !(await navigator.serviceWorker.getRegistration())?.installing"
ACTIVE = "async () => (await navigator.serviceWorker.getRegistration())?.active?.state === 'activated'"
WAITS = "async () => !!(await navigator.serviceWorker.getRegistration())?.waiting"
TAKE_OVER = "async () => (await navigator.serviceWorker.getRegistration()).waiting.postMessage({ type: 'take over' })"
IS_NEW = "async () => (await fetch('licences.txt').then(found => found.arrayBuffer()).catch(() => '')).byteLength === {}"
UPDATE = "async () => { await (await navigator.serviceWorker.getRegistration()).update().catch(() => {}); }"
READS = "() => document.querySelector('.answer .pace')?.textContent && document.querySelector('.engine')?.textContent === ''"
TOLD = "() => /damaged or missing/.test(document.querySelector('.foot')?.textContent)"
WAYS = ("changed", "cut", "gone")
DAMAGE = """async ([hash, how]) => {
  const cache = await caches.open('borrowline-files');
  const key = `${location.origin}/?${encodeURIComponent(hash)}`;
  await caches.delete('borrowline-snapshots');
  if (how === 'gone') return cache.delete(key);
  const content = new Uint8Array(await (await cache.match(key)).arrayBuffer());
  if (how === 'changed') content.fill(7, content.length / 3, content.length / 2);
  await cache.put(key, new Response(how === 'cut' ? content.slice(0, content.length / 2) : content));
}"""


class Faltering(Site):
    """A site in a folder of its own that answers ``left`` more requests; None: it goes on."""

    left: int | None = None

    def application(self) -> Flask:
        app = super().application()
        app.before_request(self._answers)
        return app

    def _answers(self) -> Response | None:
        if self.left is None:
            return None
        self.left -= 1
        return Response(status=503) if self.left < 0 else None

    def publish(self, turn: int) -> None:
        """Another version."""
        precache = self.folder / "precache.js"
        text = precache.read_text()
        for name in CHANGED:
            path = self.folder / name
            old = path.read_bytes()
            path.write_bytes(old.rstrip() + b"\n" * (turn % 7 + 2))
            text = text.replace(offline.integrity(old), offline.integrity(path.read_bytes()))
        precache.write_text(text)


def faults(playwright: Playwright, store: Path, folders: Sequence[Path], rounds: int) -> Iterator[Fault]:
    store.mkdir(parents=True, exist_ok=True)
    folder = shutil.copytree(folders[0], store / "site")
    listed, _ = json.JSONDecoder().raw_decode((folder / "precache.js").read_text().removeprefix("self.PRECACHE = "))
    phone = Phone(playwright, store / "phone", "about:blank#")
    try:
        yield _installs(phone, folder, len(listed), rounds)
        site = Faltering(folder)
        phone.url = site.url
        _visit(phone)
        yield _updates(phone, site, rounds)
        yield _repairs(phone, site, rounds)
        site.stop()
    finally:
        phone.kill()


def _visit(phone: Phone) -> None:
    phone.page.goto(phone.url)
    phone.wait(ACTIVE)
    phone.page.reload()
    phone.wait(READS)


def _installs(phone: Phone, folder: Path, files: int, rounds: int) -> Fault:
    """First visits, each to an address that the phone does not know, to a server that stops after more and more files."""
    fault = Fault("the server stops while the app comes")
    for turn in range(rounds):
        site = Faltering(folder)
        phone.url, site.left = site.url, 2 + (files + 8) * turn // rounds
        try:
            phone.page.goto(site.url)
            phone.wait(QUIET)
            phone.page.wait_for_timeout(500)
        except (Error, TimeoutError):
            pass  # nothing has come yet
        site.left = None
        try:
            _visit(phone)
            site.left = 0
            phone.page.reload()
            phone.wait(READS)
        except (Error, TimeoutError) as error:
            fault.losses.append(f"round {turn + 1}: {error}"[:200])
        fault.rounds += 1
        phone.page.goto("about:blank")
        site.stop()
    return fault


def _updates(phone: Phone, site: Faltering, rounds: int) -> Fault:
    fault = Fault("it stops while a new version comes")
    for turn in range(rounds):
        site.publish(turn)
        site.left = turn % (len(CHANGED) + 3)
        try:
            phone.page.evaluate(UPDATE)
            phone.wait(QUIET)
            site.left = 0
            phone.page.reload()
            phone.wait(READS)
            site.left = None
            phone.page.evaluate(UPDATE)
            phone.wait(WAITS)
            # From a page without the app, which would begin anew in the midst of it
            phone.page.goto(site.url + WITHOUT_APP)
            site.left = 0
            phone.page.evaluate(TAKE_OVER)
            phone.wait(IS_NEW.format((site.folder / "licences.txt").stat().st_size))
            phone.page.goto(site.url)
            phone.wait(READS)
            site.left = None
        except (Error, TimeoutError) as error:
            fault.losses.append(f"round {turn + 1}: {error}"[:200])
        fault.rounds += 1
    return fault


def _repairs(phone: Phone, site: Faltering, rounds: int) -> Fault:
    """Every second time without a signal, which comes later."""
    fault, slowest = Fault("a file of the app is damaged or gone"), 0.0
    for turn in range(rounds):
        listed, _ = json.JSONDecoder().raw_decode((site.folder / "precache.js").read_text().removeprefix("self.PRECACHE = "))
        names = [name for name in listed if name.endswith((".wasm", ".zip", ".asm.js", "main.js", "worker.js"))]
        name, how = names[turn % len(names)], WAYS[turn // len(names) % len(WAYS)]
        try:
            phone.wait(SNAPSHOT_KEPT)
            phone.page.evaluate(DAMAGE, [listed[name], how])
            site.left = 0 if turn % 2 else None
            phone.page.reload()
            began = time.monotonic()
            # Without its script the app can tell nothing; what is missed and comes at once is not told
            if name != "main.js" and (how != "gone" or site.left is not None):
                phone.wait(TOLD, SAID_S)
                slowest = max(slowest, time.monotonic() - began)
            if site.left is not None or name == "main.js":
                site.left = None
                phone.page.reload()
                phone.page.wait_for_timeout(CHECKED_MS)
            phone.page.reload()
            phone.wait(READS)
        except (Error, TimeoutError) as error:
            fault.losses.append(f"round {turn + 1}, {name} {how}: {error}"[:300])
        fault.rounds += 1
    fault.told = f"told after {slowest:.1f} s at the longest"
    return fault
