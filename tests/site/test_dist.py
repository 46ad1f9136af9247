"""dist/: complete, the same every time, and runnable as it stands."""

import json
import re

import pytest

import archive
import bundle
import dist as dist_module
import environment
import headers
import offline
import runtime


def contents(folder):
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def listed(folder):
    list_, _, _ = (folder / "precache.js").read_text().removeprefix("self.PRECACHE = ").partition(";\n")
    return json.loads(list_)


def test_every_file_is_kept_offline_or_left_out_on_purpose(dist):
    left_out = {name for name in contents(dist) if name.startswith("screenshots/") or name.endswith((".map", "-512.png"))}
    left_out |= {"sw.js", "precache.js", "_headers"}
    kept = {name or "index.html" for name in listed(dist)}
    assert kept == set(contents(dist)) - left_out


def test_every_hash_is_that_of_the_file(dist):
    files = contents(dist)
    for name, integrity in listed(dist).items():
        assert integrity == offline.integrity(files[name or "index.html"]), name


def test_it_comes_out_the_same_again(dist):
    assert contents(dist) == dist_module.site(runtime.files())


def test_no_tool_and_no_type_is_in_it(dist):
    assert not [name for name in contents(dist) if name.endswith((".d.ts", "package.json", "tsconfig.json"))]


def test_the_app_is_one_script_one_style_and_a_worker_that_wait_for_no_other(dist):
    files = contents(dist)
    scripts = {name for name in files if name.endswith(".js") and not name.startswith("runtime-")}
    assert scripts == {"main.js", "engine/early.js", "engine/worker.js", "device/levels.js", "sw.js", "precache.js"}
    assert [name for name in files if name.endswith(".css")] == ["main.css"]
    for name in ("main.js", "engine/early.js", "engine/worker.js"):
        assert not re.search(rb"""(^|[;}\n])import ?[{*"']""", files[name]), name
    page = files["index.html"].decode()
    assert page.index("engine/early.js") < page.index("main.js")


def test_the_worker_knows_the_runtimes_folder(dist, runtime_folder):
    assert runtime_folder.name.encode() in (dist / "engine/worker.js").read_bytes()


def test_every_style_is_in_the_one(dist):
    style = (dist / "main.css").read_text()
    for source in bundle.WEBAPP.rglob("*.css"):
        for name in set(re.findall(r"^\.([\w-]+)", source.read_text(), re.MULTILINE)):
            assert f".{name}" in style, f"{source.name} is imported by no module"


def test_a_module_that_is_not_there_is_named(monkeypatch, tmp_path):
    (tmp_path / "main.js").write_text("import './nothing.js';")
    monkeypatch.setattr(bundle, "WEBAPP", tmp_path)
    monkeypatch.setattr(bundle, "ENTRIES", ("main.js",))
    with pytest.raises(environment.SetupError, match=r"nothing\.js"):
        bundle.app("runtime-0")


def test_every_address_in_the_page_and_the_manifest_is_there_and_relative(dist):
    files = contents(dist)
    page = files["index.html"].decode()
    named = re.findall(r"""(?:href|src)="([^"#]+)\"""", page)
    manifest = json.loads(files["app.webmanifest"])
    named += [picture["src"] for kind in ("icons", "screenshots") for picture in manifest.get(kind, [])]
    assert named
    assert [name for name in named if name not in files] == []


def test_the_library_and_the_engine_hold_byte_code_alone(runtime_folder):
    for name in ("python.zip", "engine.zip"):
        inside = archive.read(runtime_folder / name)
        assert any(path.endswith(".pyc") for path in inside)
        assert not [path for path in inside if path.endswith(".py")]


def test_another_engine_has_another_folder():
    assert runtime.folder({"engine.zip": b"a"}) != runtime.folder({"engine.zip": b"b"})


def test_headers_are_written_for_static_hosts(dist):
    text = (dist / "_headers").read_text()
    for name, value in headers.HEADERS.items():
        assert f"\n  {name}: {value}\n" in text


def test_it_is_within_its_budget(dist, runtime_folder):
    files = contents(dist)
    # The heaviest file is the locked package's own, and half a minute's work: weighed once by ``python3 build``
    heaviest = files.pop(f"{runtime_folder.name}/pyodide.asm.wasm")
    assert offline.integrity(heaviest) == "sha256-VDCaWiz9dXsfD9vJCTySUD97NBUAEQMp2TJIcYORJxg=", (
        "a new one: weigh it and write down what it weighs"
    )
    weights = {name: len(offline.sent(content)) for name, content in offline.kept(files).items()}
    # packed quickly, which spares a quarter of a minute as long as it is enough
    if sum(weights.values()) > 3_500_000 - 2_122_063:
        weights = offline.weights(files)
    assert offline.check_weight({**weights, "pyodide.asm.wasm": 2_122_063}) < 3_500_000


def test_a_site_over_its_budget_is_refused_with_the_heaviest_file_named():
    with pytest.raises(offline.TooHeavy, match=r"3,500,001 bytes.*3,500,000.*\n.*3,500,000 big\.wasm"):
        offline.check_weight({"big.wasm": 3_500_000, "small.js": 1})
