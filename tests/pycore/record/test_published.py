"""The shares that stand beside a player's own are those that were published."""

import pytest

from pycore.record.published import BERRY, expected
from pycore.units import FOOT


@pytest.mark.parametrize("who", ["tour", "amateur"])
def test_one_putt_shares(published, who):
    shares = {row["distance_ft"]: row[who] for row in published("one_putt_share") if who in row}
    assert {feet: expected(feet * FOOT, who).one for feet in shares} == pytest.approx(shares)


def test_nearer_than_was_counted_hardly_any_is_missed():
    """No more than all; no fewer than from 2 ft, the nearest that was counted."""
    assert 0.99 <= expected(0.2 * FOOT, "tour").one <= expected(0.1 * FOOT, "tour").one <= 1


def test_three_putt_shares(published):
    shares = {row["distance_ft"]: row["tour"] for row in published("three_putt_share")}
    assert {feet: expected(feet * FOOT, "tour").three for feet in shares} == pytest.approx(shares)


def test_berrys_professionals(published):
    assert [(row["distance_ft"] * FOOT, row["made"] / row["tries"]) for row in published("berry")] == BERRY
