"""Setting up from a bare machine."""

import subprocess
import sys

import pytest

import environment


def test_the_right_python_is_its_own_answer():
    assert environment.find_python() == sys.executable


def test_another_python_finds_the_right_one_on_the_path(monkeypatch, tmp_path):
    monkeypatch.setattr(sys, "version_info", (3, 11, 0))
    monkeypatch.setenv("PYENV_ROOT", str(tmp_path))
    (tmp_path / "python3.13").symlink_to(sys.executable)
    monkeypatch.setenv("PATH", str(tmp_path))
    assert environment.find_python() == str(tmp_path / "python3.13")


def test_a_python_that_does_not_run_is_passed_over_and_what_to_install_is_said(monkeypatch, tmp_path):
    monkeypatch.setattr(sys, "version_info", (3, 11, 0))
    monkeypatch.setenv("PYENV_ROOT", str(tmp_path))
    shim = tmp_path / "python3.13"
    shim.write_text("#!/bin/sh\nexit 127\n")
    shim.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(environment.SetupError, match=r"Python 3\.13(.|\n)*pyenv install 3\.13"):
        environment.find_python()


def test_uv_is_asked_last(monkeypatch, tmp_path):
    monkeypatch.setattr(sys, "version_info", (3, 11, 0))
    monkeypatch.setenv("PYENV_ROOT", str(tmp_path))
    uv = tmp_path / "uv"
    uv.write_text(f'#!/bin/sh\n[ "$1 $2 $3" = "python find 3.13" ] && echo {sys.executable}\n')
    uv.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path))
    assert environment.find_python() == sys.executable


def test_a_linked_venv_is_not_emptied(monkeypatch, tmp_path):
    there = tmp_path / "there"
    there.mkdir()
    (tmp_path / ".venv").symlink_to(there)
    monkeypatch.setattr(environment, "VENV", tmp_path / ".venv")
    monkeypatch.setattr(environment, "PYTHON", tmp_path / ".venv" / "python")
    with pytest.raises(environment.SetupError, match="is a link"):
        environment._make_venv()


def test_a_failed_step_says_what_ran_and_what_it_said():
    with pytest.raises(environment.SetupError, match=r"(?s)no such thing.*This command failed: .*-c"):
        environment._quietly([sys.executable, "-c", "raise SystemExit('no such thing')"])


def test_a_stamp_holds_until_the_lock_changes(tmp_path):
    lock, stamp = tmp_path / "lock.txt", tmp_path / "stamp"
    lock.write_text("a==1")
    assert not environment.fresh(stamp, lock)
    stamp.write_text(environment.digest(lock))
    assert environment.fresh(stamp, lock)
    lock.write_text("a==2")
    assert not environment.fresh(stamp, lock)


def test_help_names_the_commands():
    text = subprocess.run(
        [sys.executable, str(environment.ROOT / "build"), "--help"], capture_output=True, text=True, check=True
    ).stdout
    assert all(command in text for command in ("serve", "test", "bench"))
