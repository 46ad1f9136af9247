"""Short sounds in levels drawn by hand, a millisecond apart."""

import pytest

from pycore.hear.clicks import find

HUM = 0.1


def test_a_click_in_a_hum_is_as_short_as_in_a_quiet_room():
    """What was heard before it is taken off: the hum alone is nearly half of its peak."""
    bands = [[HUM] * 400 for _ in range(3)]
    for band in bands:
        band[200:206] = [0.22, 0.25, 0.2, 0.16, 0.13, 0.11]
    (click,) = find(bands, 1000)
    assert click.at == pytest.approx(0.2, abs=0.001)
    assert (click.kind, click.strike) == ("click", True)
