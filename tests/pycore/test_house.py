"""The engine's floors: what may know what, and that nothing outside the standard library is among it."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
FILES = sorted((ROOT / "pycore").rglob("*.py"))
GROUND = ["units", "constants", "errors", "fields", "quantities", "roots", "endpoint", "attitude"]
FLOORS = [
    GROUND,
    ["stats"],
    ["green"],
    ["stroke", "putt", "hear"],
    ["senses", "travel"],
    ["sight"],
    ["drills", "watch"],
    ["record"],
    ["api"],
]


def floor_of(module: str) -> int:
    name = module.split(".")[1] if "." in module else "api"
    return next(i for i, names in enumerate(FLOORS) if name in names)


@pytest.mark.parametrize("file", FILES, ids=lambda file: str(file.relative_to(ROOT)))
def test_arrows_run_down(file):
    module = ".".join(file.relative_to(ROOT).with_suffix("").parts)
    if module == "pycore.__init__":
        return
    for node in ast.walk(ast.parse(file.read_text())):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names = [f"pycore.{alias.name}" for alias in node.names] if node.module == "pycore" else [node.module]
        else:
            continue
        for name in names:
            if name.startswith("pycore.") and name.split(".")[1] != module.split(".")[1]:
                above = floor_of(name) > floor_of(module)
                beside = floor_of(name) == floor_of(module) and module.split(".")[1] not in GROUND
                assert not above, f"{module} knows {name}, which is above it"
                assert not beside, f"{module} knows {name}, which is beside it"


def test_standard_library_alone():
    script = (
        "import sys; from pycore.api import endpoints; endpoints(); "
        "print([n for n in sys.modules if n.split('.')[0] not in {*sys.stdlib_module_names, 'pycore', '__main__'}])"
    )
    done = subprocess.run(
        [sys.executable, "-I", "-B", "-S", "-c", f"import sys; sys.path.insert(0, {str(ROOT)!r}); {script}"],
        capture_output=True,
        text=True,
        check=True,
    )
    assert done.stdout.strip() == "[]"
