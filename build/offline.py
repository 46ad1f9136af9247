"""What the service worker keeps: every file's path and hash, and a budget for their weight."""

import base64
import hashlib
import json
import os
import threading
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import brotli

import archive
import environment

BUDGET = 3_500_000  # bytes as brotli, for all that a first visit downloads
# The browser itself keeps the worker's script and its list; hosts read _headers; shops and installers, where there is a
# network, the screenshots and the large icons
LEFT_OUT = ("sw.js", "precache.js", "_headers", "screenshots/", "icons/icon-512.png", "icons/maskable-512.png")
MAPS = ".map"  # of those who look for a fault
CHANGES = environment.ROOT / "webapp" / "changes.js"
COMPRESSED = environment.VENV / "compressed"


class TooHeavy(environment.SetupError):
    """The site weighs more than a first visit may download."""


def precache(files: archive.Files) -> dict[str, str]:
    """Path to integrity of every file that the app needs without a network; the page itself is at the root."""
    return {"" if name == "index.html" else name: integrity(content) for name, content in sorted(kept(files).items())}


def kept(files: archive.Files) -> dict[str, bytes]:
    """Of a site's files those that a phone keeps."""
    return {name: content for name, content in files.items() if not name.startswith(LEFT_OUT) and not name.endswith(MAPS)}


def integrity(content: bytes) -> str:
    return "sha256-" + base64.b64encode(hashlib.sha256(content).digest()).decode()


def script(listed: dict[str, str]) -> bytes:
    """precache.js, which the service worker imports: the browser looks for a new version in both."""
    return f"self.PRECACHE = {json.dumps(listed, indent=1)};\n".encode()


def changes() -> bytes:
    """What this version brings, for its service worker to tell while it waits."""
    listed, _, _ = CHANGES.read_text().partition("\nexport const VERSION")
    return listed.replace("export const CHANGES =", "self.CHANGES =").encode() + b"\n"


def weights(files: archive.Files) -> dict[str, int]:
    """Bytes as brotli of every file that is kept."""
    listed = kept(files)
    with ThreadPoolExecutor() as pool:
        return dict(zip(listed, map(len, pool.map(compressed, listed.values())), strict=True))


def sent(content: bytes) -> bytes:
    """As brotli, at once: what was not weighed is a little larger than it could be."""
    path = _remembered(content)
    quick: bytes = path.read_bytes() if path.exists() else brotli.compress(content, quality=5)
    return quick


def _remembered(content: bytes) -> Path:
    return COMPRESSED / f"{hashlib.sha256(content).hexdigest()}.br"


def compressed(content: bytes) -> bytes:
    """As brotli, as small as it gets; remembered, since the large ones take seconds."""
    path = _remembered(content)
    if path.exists():
        return path.read_bytes()
    result: bytes = brotli.compress(content)
    COMPRESSED.mkdir(exist_ok=True)
    # Another process may look for it meanwhile
    fresh = path.with_suffix(f".{os.getpid()}-{threading.get_ident()}")
    fresh.write_bytes(result)
    fresh.replace(path)
    return result


def check_weight(weights: dict[str, int], budget: int = BUDGET) -> int:
    """Total weight in bytes. Raises TooHeavy above the budget, naming the heaviest files."""
    total = sum(weights.values())
    if total > budget:
        heaviest = sorted(weights, key=weights.__getitem__, reverse=True)[:5]
        raise TooHeavy(
            f"A first visit downloads {total:,} bytes as brotli, over the budget of {budget:,}. The heaviest files:\n"
            + "\n".join(f"  {weights[name]:>9,} {name}" for name in heaviest)
        )
    return total
