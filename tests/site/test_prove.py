"""Each proof's short form; the long one is ``python3 build prove``."""

import pytest

import prove
from prove import Proof, Row


@pytest.mark.parametrize("name", prove.names())
def test_short_form(name: str) -> None:
    rows = prove.short(name)
    assert rows
    assert not [row for row in rows if not row.holds]


def test_a_bound_that_fails_fails_the_command(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    def proof() -> Proof:
        yield 0.5
        return [Row("missed", 2, high=1, unit="mm"), Row("cases", 7), Row("held", float("nan"), low=0)]

    monkeypatch.setattr("tests.prove.reads.prove", proof)
    assert prove.show(["reads"]) == 1
    table = capsys.readouterr().out.splitlines()[-5:-1]
    assert table[-3].split("|")[1:-1] == [" missed ", " 2 mm  ", " at most 1 mm ", " FAILS "]
    assert table[-2].split("|")[1:-1] == [" cases  ", " 7     ", "              ", "       "]
    assert "FAILS" in table[-1]
