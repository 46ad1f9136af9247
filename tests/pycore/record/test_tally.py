"""What is counted: edges of bands and weeks, and what is called a change."""

from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from types import SimpleNamespace

import pytest
from scipy.stats import norm

from pycore.record import tally
from pycore.record.logged import Unseen
from pycore.stats.intervals import Estimate

FOOT = 0.3048
UNTIL = datetime(2026, 6, 29, 12, tzinfo=UTC)
HAIR = timedelta(microseconds=1)


def putt(distance=3.0, stop=None, at=UNTIL, past=0.3):
    return SimpleNamespace(distance=distance, past=past, stop=stop, at=at)


def test_a_band_holds_its_nearer_end_and_not_its_farther_one():
    edges = (0, 3, 5, 8, 12, 20, 40, 100)  # ft, as the page shows them
    for low, high in pairwise(edges):
        nearer, farther = low * FOOT, high * FOOT - 1e-9
        found = tally.by_distance([putt(nearer), putt(farther, 1 + 0j)], "tour")
        assert [(each[0], each[1]) for each in found] == [(pytest.approx(nearer), pytest.approx(high * FOOT))]
        assert (found[0][2].share.made, found[0][2].share.tries) == (1, 2)
        assert found[0][2].mean == pytest.approx((nearer + farther) / 2)


def test_weeks_begin_on_monday_and_come_in_order():
    days = [datetime(2026, 6, day, 23, 59, tzinfo=UTC) for day in (14, 15, 21, 8)]
    found = tally.by_week([putt(at=day, stop=None if day.day == 15 else 1 + 0j) for day in days])
    assert [(monday, share.made, share.tries) for monday, share in found] == [
        (date(2026, 6, 8), 0, 2),
        (date(2026, 6, 15), 1, 2),
    ]


def test_a_miss_level_with_the_hole_is_not_short_and_one_not_seen_counts_where_its_length_is_known():
    putts = [
        putt(stop=complex(0.0, 0.5)),
        putt(stop=complex(-0.001, 0.5)),
        putt(stop=complex(0.7, 0.1), past=0.2),
        putt(stop=Unseen("left", "short")),
        putt(stop=Unseen("left", "long")),
        putt(stop=Unseen("left", None)),
        putt(),
    ]
    share, beyond = tally.leaves(putts)
    assert (share.made, share.tries) == (2, 5)
    # 0 - 0.3, -0.001 - 0.3 and 0.7 - 0.2
    assert beyond.value == pytest.approx((-0.3 - 0.301 + 0.5) / 3)


def test_how_far_beyond_the_pace_wanted_needs_two_misses():
    assert tally.leaves([putt(stop=1 + 0j)])[1] is None
    assert tally.leaves([putt(stop=1 + 0j), putt(stop=2 + 0j)])[1].value == pytest.approx(1.2)


def test_four_weeks_are_28_days_to_the_moment():
    since = UNTIL - timedelta(days=28)
    putts = [putt(at=since)] * 20 + [putt(at=since - HAIR, stop=1 + 0j)] * 21
    before, now, _ = tally.made_change(putts, UNTIL)
    assert ((before.made, before.tries), (now.made, now.tries)) == ((0, 21), (20, 20))


@pytest.mark.parametrize(("earlier", "later"), [(19, 20), (20, 19), (0, 40)])
def test_fewer_than_twenty_on_either_side_tell_no_change(earlier, later):
    old = [putt(at=UNTIL - timedelta(days=40))] * earlier
    assert tally.made_change(old + [putt()] * later, UNTIL) is None


@pytest.mark.parametrize(("known", "wanted"), [(0, 100), (30, 70), (99, 1), (100, 0), (140, 0)])
def test_a_hundred_putts_are_wanted_from_before_the_last_four_weeks(known, wanted):
    since = UNTIL - timedelta(days=28)
    older = [putt(at=since - timedelta(days=200 - i)) for i in range(150)]
    latest = [putt(at=since - HAIR)] * known + [putt()]
    assert tally.wanted_before(older, latest) == older[len(older) - wanted :]


def test_no_older_putt_is_wanted_from_the_last_four_weeks():
    since = UNTIL - timedelta(days=28)
    assert tally.wanted_before([putt(at=since)], [putt()]) == []
    assert len(tally.wanted_before([putt(at=since - HAIR)], [putt()])) == 1
    assert tally.wanted_before([], [putt()]) == []


@pytest.mark.parametrize(("side", "called"), [(0.995, False), (1.005, True)])
@pytest.mark.parametrize("way", [-1, 1])
def test_a_change_is_called_beyond_what_eight_looks_at_once_find_by_chance(side, called, way):
    """Bonferroni: a false alarm in one of twenty records with eight differences looked at, by SciPy's normal quantile."""
    one, other = 0.03, 0.04  # standard errors
    limit = norm.ppf(1 - 0.05 / 8 / 2) * (one**2 + other**2) ** 0.5
    z = norm.ppf(0.975)
    moved = 0.1 + way * side * limit
    change = tally._change(
        "pace", "bias", Estimate(0.1, 0.1 - z * one, 0.1 + z * one), Estimate(moved, moved - z * other, moved + z * other)
    )
    assert change.beyond_chance == called
    assert (change.skill, change.what, change.before.value, change.now.value) == ("pace", "bias", 0.1, moved)
