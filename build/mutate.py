"""``python3 build mutate [FOLDER]``: small wrong changes to the engine, one at a time, and those that no test notices.

mutmut makes the changes; each is tried in a fork of a process that has the tests' libraries loaded, without a file being
written. The tests of a module are those of its own name, those that import it, those of its folder, then the door's, that of
the page's table of fields and the short forms of the folder's proofs; what passes them all is shown to mypy, as the test
command would.
"""

import ast
import os
import random
import resource
import subprocess
import sys
from dataclasses import dataclass
from difflib import ndiff
from functools import cached_property
from importlib.abc import Loader, MetaPathFinder
from importlib.machinery import ModuleSpec
from importlib.util import find_spec, spec_from_loader
from itertools import islice, zip_longest
from pathlib import Path
from tempfile import TemporaryDirectory
from types import ModuleType
from typing import Any

import environment
from environment import LOCKS, ROOT, SetupError

TESTS = ROOT / "tests" / "pycore"
DOOR = TESTS / "test_api.py", ROOT / "tests" / "site" / "test_protocol.py"
PROOFS = ROOT / "tests" / "prove"
SHORT_FORM = f"{ROOT / 'tests' / 'site' / 'test_prove.py'}::test_short_form"
LONGEST_S = 300  # of the processor's time for one mutant's tests; one that runs for ever is noticed


@dataclass(frozen=True)
class Mutant:
    """A module of the engine with one wrong change."""

    file: Path
    tree: Any
    mutation: Any

    @cached_property
    def changed(self) -> str:
        """The module's text with the change."""
        text: str = self.tree.deep_replace(self.mutation.original_node, self.mutation.mutated_node).code
        return text

    @property
    def module(self) -> str:
        return ".".join(self.file.relative_to(ROOT).with_suffix("").parts)

    @property
    def line(self) -> int:
        """The first that differs."""
        pairs = zip_longest(self.file.read_text().splitlines(), self.changed.splitlines())
        return next(number for number, (own, its) in enumerate(pairs, 1) if own != its)

    @property
    def is_example(self) -> bool:
        """Whether it changes nothing but a question that the build exercises."""
        body = ast.parse(self.file.read_text()).body
        named = [each for each in body if isinstance(each, ast.AnnAssign) and ast.unparse(each.target) == "EXAMPLES"]
        return self.file.stem == "examples" or any(each.lineno <= self.line <= (each.end_lineno or 0) for each in named)

    def __str__(self) -> str:
        """Where it is, with the lines that differ."""
        lines = ndiff(self.file.read_text().splitlines(), self.changed.splitlines())
        differ = [f"  {line[0]} {line[1:].strip()}" for line in lines if line[:1] in ("-", "+")]
        return "\n".join([f"{self.file.relative_to(ROOT)}:{self.line}", *differ])


def show(folder: str, sample: int | None, seed: int) -> int:
    """Print the survivors of all mutants of ``pycore/FOLDER``, or of so many by chance. Returns 0 whatever survives."""
    if find_spec("mutmut") is None:
        with environment.step("Installing mutmut"):
            environment.install(LOCKS / "mutate.txt")
    os.chdir(ROOT)  # mutmut reads pyproject.toml where it is
    files = sorted((ROOT / "pycore" / folder).rglob("*.py"))
    if not files:
        raise SetupError(f"There is no pycore/{folder}")
    found = [mutant for file in files for mutant in mutants(file)]
    if sample:
        random.Random(seed).shuffle(found)
    chosen = list(islice((mutant for mutant in found if not mutant.is_example), sample))
    print(f"{len(chosen)} of {len(found)} mutants", flush=True)
    _warm()
    tests = list(dict.fromkeys(test for mutant in chosen for test in _tests(mutant.file)))
    if os.waitpid(_started(None, tests), 0)[1] or _mistyped():
        raise SetupError("The tests or types fail as it is: nothing would be shown")
    survivors = _survivors(chosen)
    killed = len(chosen) - len(survivors)
    print(f"{killed} of {len(chosen)} killed: {killed / len(chosen):.1%}")
    return 0


def mutants(file: Path) -> list[Mutant]:
    """Every change that mutmut makes to a file."""
    from mutmut.mutation.file_mutation import create_mutations

    tree, mutations, *_ = create_mutations(str(file), file.read_text())
    return [Mutant(file, tree, each) for each in mutations]


def _survivors(chosen: list[Mutant]) -> list[Mutant]:
    survivors: list[Mutant] = []
    waiting, running = list(reversed(chosen)), dict[int, Mutant]()
    for done in range(1, len(chosen) + 1):
        while waiting and len(running) < (os.cpu_count() or 1):
            mutant = waiting.pop()
            running[_started(mutant, _tests(mutant.file))] = mutant
        process, status = os.wait()
        mutant = running.pop(process)
        if status == 0 and not _mistyped(mutant):
            survivors.append(mutant)
            print(mutant, flush=True)
        print(f"\r{done}/{len(chosen)}, {len(survivors)} survive ", end="", file=sys.stderr, flush=True)
    print(file=sys.stderr)
    return survivors


def _warm() -> None:
    """What each fork would have to load."""
    import numpy  # noqa: F401
    import playwright.sync_api  # noqa: F401
    import pytest  # noqa: F401
    import scipy.integrate
    import scipy.optimize  # noqa: F401


def _started(mutant: Mutant | None, tests: list[str]) -> int:
    """The process that runs the tests against it, or as it is; it ends with 0 where they pass."""
    process = os.fork()
    if process:
        return process
    status = 1
    try:
        os.nice(10)
        resource.setrlimit(resource.RLIMIT_CPU, (LONGEST_S, LONGEST_S))
        silence = os.open(os.devnull, os.O_WRONLY)
        os.dup2(silence, 1)
        os.dup2(silence, 2)
        if mutant:
            sys.meta_path.insert(0, _Finder(mutant))
        import pytest

        # plain: what pytest rewrites it reads from the file, and a module named as a test is might be ours
        status = int(pytest.main(["-x", "-q", "-p", "no:xdist", "--assert=plain", *tests]))
    finally:
        os._exit(status)


def _mistyped(mutant: Mutant | None = None) -> bool:
    """Whether its types do not hold, or those of what there is."""
    with TemporaryDirectory() as folder:
        # anew each time: what mypy remembers of the file it takes for the shadow's
        mypy = [sys.executable, "-m", "mypy", "--no-incremental", "pycore"]
        if mutant:
            changed = Path(folder) / mutant.file.name
            changed.write_text(mutant.changed)
            mypy += ["--shadow-file", str(mutant.file), str(changed)]
        return subprocess.run(mypy, cwd=ROOT, capture_output=True).returncode != 0


def _tests(file: Path) -> list[str]:
    """Its own first: they notice soonest."""
    folder = TESTS / file.relative_to(ROOT / "pycore").parent
    imported = ".".join(file.relative_to(ROOT).with_suffix("").parts) + " import"
    naming = [test for test in sorted(TESTS.rglob("test_*.py")) if imported in test.read_text()]
    tests = [folder / f"test_{file.stem}.py", *naming, *sorted(folder.glob("test_*.py")), *DOOR]
    return [*dict.fromkeys(str(test) for test in tests if test.exists()), *_proofs(file.parent.name)]


def _proofs(folder: str) -> list[str]:
    """The short forms of those that ask what is in this folder themselves; in a browser the site's engine would answer."""
    texts = {path.stem: path.read_text() for path in sorted(PROOFS.glob("*.py"))}
    asking = [name for name, text in texts.items() if f"from pycore.{folder}." in text and "import browser" not in text]
    return [f"{SHORT_FORM}[{name}]" for name in asking]


class _Finder(MetaPathFinder, Loader):
    """Gives the changed source in place of the file's."""

    def __init__(self, mutant: Mutant) -> None:
        self.mutant = mutant

    def find_spec(self, name: str, path: object = None, target: ModuleType | None = None) -> ModuleSpec | None:
        return spec_from_loader(name, self, origin=str(self.mutant.file)) if name == self.mutant.module else None

    def exec_module(self, module: ModuleType) -> None:
        module.__file__ = str(self.mutant.file)
        exec(compile(self.mutant.changed, str(self.mutant.file), "exec"), module.__dict__)
