"""The table says plainly what holds and what does not."""

from bench.row import Row
from bench.table import text


def test_text():
    rows = [Row("window", "12 ms", "limit 60 ms", 0.2, 1), Row("first start", "900 ms", "plain 1000 ms", 0.9, 0.6)]
    assert text(rows).split("\n") == [
        "| what        | ours   | against       | ratio | at most |       |",
        "| ----------- | ------ | ------------- | ----- | ------- | ----- |",
        "| window      | 12 ms  | limit 60 ms   | 0.2   | 1       | holds |",
        "| first start | 900 ms | plain 1000 ms | 0.9   | 0.6     | FAILS |",
    ]
