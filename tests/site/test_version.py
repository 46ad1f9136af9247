"""A release is counted in one place and told in one, and both say the same."""

import re
import tomllib

from environment import ROOT


def test_the_changes_begin_with_the_version_that_pyproject_counts() -> None:
    version = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]["version"]
    told = re.findall(r"version: '(.*)'", (ROOT / "webapp" / "changes.js").read_text())
    assert told[0] == version
    counted = [tuple(map(int, each.split("."))) for each in told]
    assert counted == sorted(set(counted), reverse=True)
