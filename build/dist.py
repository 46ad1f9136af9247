"""Assembles dist/: plain static files for any host, the same bytes every time."""

import shutil
from importlib import metadata
from pathlib import Path

import archive
import artwork
import bundle
import headers
import offline
import protocol
import runtime
from environment import NODE_PACKAGES, ROOT, VENV, digest, fresh, step

DIST = ROOT / "dist"
STAMP = VENV / "dist.stamp"
SOURCES = tuple(ROOT / name for name in ("webapp", "pycore", "build", "LICENSE"))
# Of webapp/, what serves its making only
TOOLS = ("package.json", "package-lock.json", "tsconfig.json", "tsconfig.workers.json")
BUNDLED = (".js", ".css", ".d.ts")


def build() -> Path:
    """Write dist/ where it is missing or older than what it is made from."""
    protocol.write()
    if DIST.exists() and fresh(STAMP, *SOURCES):
        return DIST
    sources = digest(*SOURCES)
    python = runtime.kept()
    with step("Putting the site together"):
        files = site(python)
    STAMP.unlink(missing_ok=True)
    _write(files)
    STAMP.write_text(sources)
    print("dist/ is ready")
    return DIST


def weigh() -> None:
    """What a first visit to dist/ downloads; a minute's work for a new runtime. Raises ``offline.TooHeavy``."""
    files = {path.relative_to(DIST).as_posix(): path.read_bytes() for path in DIST.rglob("*") if path.is_file()}
    with step("Weighing it"):
        total = offline.check_weight(offline.weights(files))
    print(f"{total / 1e6:.2f} MB for a first visit, as brotli")


def site(python: archive.Files) -> dict[str, bytes]:
    """Every file of the site by path, given the runtime's."""
    home = runtime.folder(python)
    files = {f"{home}/{name}": content for name, content in python.items()}
    files |= _webapp() | bundle.app(home) | artwork.icons()
    files["licences.txt"] = _licences()
    files["_headers"] = headers.file().encode()
    files["precache.js"] = offline.script(offline.precache(files)) + offline.changes()
    return files


def modules() -> Path:
    """The app's modules by their own addresses, beside what is in dist/: see ``bundle.modules``."""
    return bundle.modules(runtime.folder(runtime.kept()))


def _webapp() -> dict[str, bytes]:
    """What goes into the site as it stands."""
    paths = {path.relative_to(bundle.WEBAPP).as_posix(): path for path in sorted(bundle.WEBAPP.rglob("*")) if path.is_file()}
    return {
        name: path.read_bytes()
        for name, path in paths.items()
        if name in bundle.WHOLE or (name not in TOOLS and not name.endswith(BUNDLED))
    }


def _licences() -> bytes:
    """In full, since the app is read where there is no network."""
    texts = [f"Borrowline\n\n{(ROOT / 'LICENSE').read_text()}"]
    for name in ("lit-html", "idb"):
        texts.append(f"{name}\n\n{(NODE_PACKAGES / name / 'LICENSE').read_text()}")
    # Neither npm's package of Pyodide nor its Python comes with its licence; these distributions have the same texts
    for name, of in {"Pyodide": "pyodide-build", "Python": "typing-extensions"}.items():
        texts.append(f"{name}\n\n{_licence(of)}")
    return ("\n" + "-" * 72 + "\n").join(texts).encode()


def _licence(distribution: str) -> str:
    found = next(each for each in metadata.files(distribution) or () if each.match("*.dist-info/licenses/LICENSE"))
    return found.read_text("utf-8")


def _write(files: archive.Files) -> None:
    # Beside the old one first: a page that loads meanwhile gets one version or the other
    fresh = VENV / "dist"
    shutil.rmtree(fresh, ignore_errors=True)
    for name, content in files.items():
        path = fresh / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content)
    shutil.rmtree(DIST, ignore_errors=True)
    fresh.rename(DIST)
