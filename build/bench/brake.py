"""A browser on a processor some times slower.

The browser's own brake (``Emulation.setCPUThrottlingRate``) slows the thread of the page and no worker: Python, which runs in
one, would be as quick as ever on it. So the whole browser is held still for a part of each moment.
"""

import os
import signal
import subprocess
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

MOMENT_S = 0.02  # what is told is unsure by as much


@contextmanager
def slowed(store: Path, times: float) -> Iterator[None]:
    """Meanwhile the browser that keeps what it keeps in ``store`` goes so many times slower; 1 leaves it alone."""
    if times == 1:
        yield
        return
    group, over = _group(store), threading.Event()

    def brake() -> None:
        while not over.is_set():
            os.killpg(group, signal.SIGSTOP)
            time.sleep(MOMENT_S * (1 - 1 / times))
            os.killpg(group, signal.SIGCONT)
            time.sleep(MOMENT_S / times)

    braking = threading.Thread(target=brake)
    braking.start()
    try:
        yield
    finally:
        over.set()
        braking.join()


def _group(store: Path) -> int:
    """The browser's processes, which Playwright puts into a group of their own."""
    told = subprocess.run(["ps", "-eo", "pgid=,args="], capture_output=True, text=True, check=True).stdout
    return next(int(line.split()[0]) for line in told.splitlines() if f"--user-data-dir={store}" in line)
