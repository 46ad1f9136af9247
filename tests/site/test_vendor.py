"""Bare module names become paths, and what they name comes along."""

import pytest

from environment import SetupError
from vendor import Library


@pytest.mark.parametrize(
    ("path", "source", "expected"),
    [
        ("main.js", "import { html } from 'lit-html';", "import { html } from './vendor/lit-html/lit-html.js';"),
        ("a/b.js", 'import { openDB } from "idb";', 'import { openDB } from "../vendor/idb/build/index.js";'),
        ("a/b.js", "const m = await import('idb');", "const m = await import('../vendor/idb/build/index.js');"),
        ("a/b.js", "import.meta.resolve('pyodide')", "import.meta.resolve('../home/pyodide.mjs')"),
        ("a/b.js", "export { x } from './x.js';", "export { x } from './x.js';"),
        ("a/b.js", " * @import { PyodideAPI } from 'pyodide'", " * @import { PyodideAPI } from 'pyodide'"),
    ],
)
def test_link(path, source, expected):
    assert Library({"pyodide": "home"}).linked(path, source) == expected


def test_a_library_brings_the_modules_that_it_imports():
    library = Library({})
    library.linked("main.js", "import { live } from 'lit-html/directives/live.js';")
    assert {"vendor/lit-html/directives/live.js", "vendor/lit-html/lit-html.js"} <= library.files.keys()
    assert b"sourceMappingURL" not in b"".join(library.files.values())


def test_a_package_of_the_build_is_not_copied():
    library = Library({"pyodide": "home"})
    library.linked("main.js", "import { loadPyodide } from 'pyodide';")
    assert library.files == {}


def test_an_unknown_module_is_named():
    with pytest.raises(SetupError, match=r"lit-html/nothing\.js"):
        Library({}).linked("main.js", "import 'lit-html/nothing.js';")
