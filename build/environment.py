"""Everything the build needs, put under .venv: a Python 3.13, the packages of the lock files, the npm packages.

This module and ``__main__`` run under whatever ``python3`` is (3.8 or later) until they have found the right one.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import subprocess
import sys
import time
from contextlib import contextmanager
from functools import lru_cache
from pathlib import Path
from typing import Iterator

ROOT = Path(__file__).resolve().parent.parent
LOCKS = ROOT / "build" / "locks"
VENV = ROOT / ".venv"
BIN = VENV / ("Scripts" if os.name == "nt" else "bin")
PYTHON = BIN / ("python.exe" if os.name == "nt" else "python")
NODE_PACKAGES = VENV / "node" / "node_modules"
WANTED = (3, 13)
WINDOWLESS = "chromium-headless-shell"
LIGHTHOUSE = "lighthouse@12.8.2"

ADVICE = """Borrowline is built with Python 3.13, and none was found. Any one of these will do, then try again:
  uv python install 3.13
  pyenv install 3.13
  apt-get install python3.13 python3.13-venv
  or the installer for Python 3.13 from the makers of Python"""


class SetupError(Exception):
    """Something that the person at the keyboard has to put right; the message says how."""


@contextmanager
def step(what: str) -> Iterator[None]:
    """Says what is going on, and how long it took where that was over a second."""
    print(what, "...", end="", flush=True)
    start = time.monotonic()
    try:
        yield
    except BaseException:
        print(" failed", flush=True)
        raise
    took = time.monotonic() - start
    print(f" {took:.1f} s" if took > 1 else " done", flush=True)


def enter() -> None:
    """Go on under .venv's own Python, with every package in place; returns there."""
    if Path(sys.prefix).resolve() != VENV.resolve():
        _make_venv()
        os.environ["PYTHONPYCACHEPREFIX"] = str(VENV / "pycache")
        arguments = [str(PYTHON), str(ROOT / "build"), *sys.argv[1:]]
        if os.name == "nt":
            sys.exit(subprocess.call(arguments))
        os.execv(arguments[0], arguments)
    _install_node_packages()


def _make_venv() -> None:
    lock = LOCKS / "dev.txt"
    stamp = VENV / "python.stamp"
    if PYTHON.exists() and fresh(stamp, lock):
        return
    if VENV.is_symlink():
        raise SetupError(f"{VENV} is a link: what it leads to would be emptied. Remove the link and try again")
    python = find_python()
    with step("Making .venv with " + python):
        _quietly([python, "-m", "venv", "--clear", str(VENV)])
    with step("Installing the Python packages"):
        install(lock)
    stamp.write_text(digest(lock))


def find_python() -> str:
    """Path of a Python 3.13: the running one, pyenv's, the PATH's or uv's."""
    if sys.version_info[:2] == WANTED:
        return sys.executable
    version = "{}.{}".format(*WANTED)
    pyenv = Path(os.environ.get("PYENV_ROOT") or Path.home() / ".pyenv")
    candidates = [str(path) for path in sorted(pyenv.glob(f"versions/{version}*/bin/python3"), reverse=True)]
    candidates += [found for found in [shutil.which("python" + version)] if found]
    for candidate in candidates:
        if _is_wanted(candidate):
            return candidate
    if shutil.which("uv"):
        subprocess.run(["uv", "python", "install", version], check=False)
        found = subprocess.run(["uv", "python", "find", version], stdout=subprocess.PIPE, check=False)
        if found.returncode == 0:
            return found.stdout.decode().strip()
    raise SetupError(ADVICE)


def _is_wanted(python: str) -> bool:
    # A name on the PATH proves little: pyenv puts a shim there for versions that are not active
    code = f"import sys, venv, ensurepip; sys.exit(sys.version_info[:2] != {WANTED})"
    return subprocess.run([python, "-c", code], stderr=subprocess.DEVNULL, check=False).returncode == 0


def _install_node_packages() -> None:
    lock = ROOT / "webapp" / "package-lock.json"
    folder = NODE_PACKAGES.parent
    stamp = folder / "stamp"
    if fresh(stamp, lock):
        return
    folder.mkdir(exist_ok=True)
    for name in ("package.json", "package-lock.json"):
        shutil.copy(ROOT / "webapp" / name, folder)
    if npm() is None:
        with step("Installing Node"):
            install(LOCKS / "node.txt")
    with step("Installing the npm packages"):
        _quietly([str(npm()), "ci", "--ignore-scripts", "--no-audit", "--no-fund"], cwd=folder)
    stamp.write_text(digest(lock))


def npm() -> str | None:
    return shutil.which("npm", path=_search_path())


def node() -> str:
    """Path of Node, the machine's or .venv's."""
    found = shutil.which("node", path=_search_path())
    if found is None:
        raise SetupError("Node went missing: remove .venv and try again")
    return found


def browsers() -> None:
    """All that the tests run beside Python and Node, installed with apt-get where it is missing."""
    for present in (chromium, firefox, webkit, voice):
        present()


def chromium() -> str:
    """Path of a Chromium, installed with apt-get where there is none."""
    return _browser(("chromium", "chromium-browser", "google-chrome", "chrome"), "chromium", WINDOWLESS)


def firefox() -> str:
    """Path of a Firefox, installed with apt-get where there is none."""
    return _browser(("firefox-esr", "firefox"), "firefox-esr")


def webkit() -> str:
    """Path of the small browser that comes with WebKitGTK, installed with its driver and a screen where there is none."""
    _browser(("WebKitWebDriver",), "webkit2gtk-driver", "xvfb")
    _browser(("Xvfb",), "xvfb")
    found = [path for place in ("lib/*", "lib*") for path in Path("/usr").glob(place + "/webkit2gtk-4.1/MiniBrowser")]
    if not found:
        raise SetupError("The browser tests need WebKitGTK's MiniBrowser: install webkit2gtk-driver")
    return str(found[0])


def lighthouse() -> str:
    """Path of Lighthouse, put under .venv when it is first asked for: no test needs its two hundred packages."""
    folder = VENV / "lighthouse"
    command = folder / "node_modules" / ".bin" / "lighthouse"
    if not command.exists():
        with step("Installing " + LIGHTHOUSE):
            folder.mkdir(exist_ok=True)
            line = [str(npm()), "install", "--ignore-scripts", "--no-audit", "--no-fund", "--prefix", str(folder), LIGHTHOUSE]
            _quietly(line)
    return str(command)


def voice() -> str:
    """Path of espeak-ng, which speaks where the tests want talk, installed with apt-get where there is none."""
    return _browser(("espeak-ng",), "espeak-ng")


def _browser(names: tuple[str, ...], package: str, *more: str) -> str:
    """Path of the first of ``names`` that is there, installed from Debian's ``package`` and, where known, ``more``."""
    found = next(filter(None, map(shutil.which, names)), None)
    if found is None and shutil.which("apt-get"):
        with step("Installing " + package):
            _update()
            known = [name for name in more if _is_known(name)]
            _quietly(["apt-get", "install", "-y", "--no-install-recommends", package, *known])
        found = next(filter(None, map(shutil.which, names)), None)
    if found is None:
        raise SetupError(f"The tests need {package}: install it so that `{names[0]}` is on the PATH")
    return found


@lru_cache
def _update() -> None:
    _quietly(["apt-get", "update"])


def _is_known(package: str) -> bool:
    return subprocess.run(["apt-cache", "show", package], stdout=subprocess.DEVNULL, check=False).returncode == 0


def windowless_chromium() -> str:
    """Path of the Chromium that has no windows: a page costs it two thirds of the time. The whole one where there is none."""
    return shutil.which(WINDOWLESS) or chromium()


def _search_path() -> str:
    return os.pathsep.join([os.environ.get("PATH", os.defpath), str(BIN)])


def install(lock: Path) -> None:
    """The Python packages of a lock, into .venv."""
    # --no-deps: the lock names every package, so none may come by another way
    # --no-compile: what is compiled is kept in .venv/pycache, where pip puts nothing
    _quietly([str(PYTHON), "-m", "pip", "install", "-q", "--no-deps", "--no-compile", "--require-hashes", "-r", str(lock)])


def _quietly(command: list[str], cwd: Path | None = None) -> None:
    done = subprocess.run(command, cwd=cwd, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, check=False)
    if done.returncode != 0:
        raise SetupError("{}\nThis command failed: {}".format(done.stdout.decode(errors="replace").strip(), " ".join(command)))


def fresh(stamp: Path, *sources: Path) -> bool:
    """Whether the files and folders are what they were when ``stamp`` was marked."""
    return stamp.exists() and stamp.read_text() == digest(*sources)


def digest(*sources: Path) -> str:
    """What the files and folders hold, to be written into a stamp; taken before the work, lest an edit during it be missed."""
    # .venv holds absolute paths, so a project that was moved makes everything anew
    seen = hashlib.sha256(str(ROOT).encode())
    for source in sources:
        for path in sorted([source, *source.rglob("*")]):
            if path.is_file() and "__pycache__" not in path.parts:
                seen.update(str(path.relative_to(source.parent)).encode() + hashlib.sha256(path.read_bytes()).digest())
    return seen.hexdigest()


if __name__ == "__main__":
    browsers()
