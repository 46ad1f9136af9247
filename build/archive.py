"""Zip files of byte-code that come out the same, byte for byte, whenever they are made."""

import io
import os
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Mapping
from pathlib import Path

type Files = Mapping[str, bytes]

COMPILE = """
import sys
from pathlib import Path
from pyodide_build._py_compile import _py_compile_archive
source = Path(sys.argv[1])
print(_py_compile_archive(source, verbose=False, compression_level=0) or source)
"""
EPOCH = (1980, 1, 1, 0, 0, 0)  # the earliest date that a zip can hold


def read(archive: Path) -> dict[str, bytes]:
    with zipfile.ZipFile(archive) as opened:
        return {name: opened.read(name) for name in opened.namelist() if not name.endswith("/")}


# Without docstrings and the columns of tracebacks, which are three tenths of its weight
LEAN = ("-OO", "-X", "no_debug_ranges")


def compiled(files: Files) -> dict[str, bytes]:
    """The same files with byte-code in place of Python source."""
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "source.zip"
        source.write_bytes(packed(files))
        # Byte-code depends on what the interpreter that writes it has done before, be it to import from byte-code of its
        # own or from source: each time it is a new one that finds none
        variables = {**os.environ, "SOURCE_DATE_EPOCH": "0", "PYTHONHASHSEED": "0", "PYTHONPYCACHEPREFIX": folder}
        done = subprocess.run(
            [sys.executable, "-B", *LEAN, "-c", COMPILE, str(source)],
            env=variables,
            capture_output=True,
            text=True,
            check=True,
        )
        return read(Path(done.stdout.splitlines()[-1]))


def packed(files: Files) -> bytes:
    """A zip, stored: a host that speaks brotli sends that in fewer bytes than a deflated one."""
    result = io.BytesIO()
    with zipfile.ZipFile(result, "w") as archive:
        for name, content in sorted(files.items()):
            archive.writestr(zipfile.ZipInfo(name, EPOCH), content)
    return result.getvalue()
