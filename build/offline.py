"""What the service worker keeps: every file's path and hash, and a budget for their weight."""

import base64
import hashlib
import json
from concurrent.futures import ThreadPoolExecutor

import archive
import environment

BUDGET = 3_600_000  # bytes as brotli, for all that a first visit downloads
# The browser itself keeps the worker's script and its list; hosts read _headers; shops and installers the screenshots
LEFT_OUT = ("sw.js", "precache.js", "_headers", "screenshots/")
WEIGHTS = environment.VENV / "weights.json"


class TooHeavy(environment.SetupError):
    """The site weighs more than a first visit may download."""


def precache(files: archive.Files) -> dict[str, str]:
    """Path to integrity of every file that the app needs without a network; the page itself is at the root."""
    kept = {name: content for name, content in sorted(files.items()) if not name.startswith(LEFT_OUT)}
    return {"" if name == "index.html" else name: integrity(content) for name, content in kept.items()}


def integrity(content: bytes) -> str:
    return "sha256-" + base64.b64encode(hashlib.sha256(content).digest()).decode()


def script(listed: dict[str, str]) -> bytes:
    """precache.js, which the service worker imports: the browser looks for a new version in both."""
    return f"self.PRECACHE = {json.dumps(listed, indent=1)};\n".encode()


def weights(files: archive.Files) -> dict[str, int]:
    """Bytes as brotli of every file that is kept, remembered by hash: the large ones take seconds."""
    known: dict[str, int] = json.loads(WEIGHTS.read_text()) if WEIGHTS.exists() else {}
    kept = {name: content for name, content in files.items() if not name.startswith(LEFT_OUT)}
    contents = {integrity(content): content for content in kept.values()}
    with ThreadPoolExecutor() as pool:
        fresh = dict(zip(contents, pool.map(lambda key: known.get(key) or archive.weigh(contents[key]), contents), strict=True))
    WEIGHTS.write_text(json.dumps(fresh))
    return {name: fresh[integrity(content)] for name, content in kept.items()}


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
