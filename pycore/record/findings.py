"""The four skills behind a record: alignment, start line, pace and reading."""

from collections.abc import Generator, Sequence
from dataclasses import replace
from math import radians, sqrt

from pycore.putt.chance import AMATEUR, TOUR
from pycore.record import doubts
from pycore.record.by_ear import Block
from pycore.record.fixed_set import Name
from pycore.record.logged import Evidence, off_the_ball_line, partition
from pycore.record.player import Coarse, Miss, Prior, Skill, fit, fit_plain, fit_with_lines
from pycore.stats.intervals import Estimate

LINES_NEEDED = 10  # putts with the ball's line recorded, from which alignment is told from the stroke

# Spreads between the tour and the amateur preset. The bounds of a bias, and all of alignment and reading, are our own
# assumptions, wide enough that some twenty putts outweigh them
START_LINE = Prior(radians(1.5), sqrt(TOUR.start_line_sd * AMATEUR.start_line_sd), 0.6)
PACE = Prior(0.15, sqrt(TOUR.pace_sd * AMATEUR.pace_sd), 0.6)
ALIGNMENT = Prior(radians(1.5), radians(0.8), 0.8)
READING = Prior(0.5, 0.2, 0.8)
# The share of its break by which a putt starts off where the player's own read is not known: misread, or logged amiss
BREAK = Prior(0.3, 0.1, 0.7)
# The same of the tilt itself: the green as it was logged, along the line, and by chance in any direction
TILT = Prior(0.3, 0.03, 1.2)
SHOWN = 0.15  # half an interval of that share; a wider one says nothing


def lines_suffice(found: Sequence[Evidence]) -> bool:
    """Whether these putts tell alignment from the stroke."""
    return sum(each.logged.line_error is not None for each in found) >= LINES_NEEDED


def skills(
    found: Sequence[Evidence], with_lines: bool, done: float = 0.0, heard: Sequence[Block] = ()
) -> Generator[float, None, dict[Name, Skill]]:
    """The skills that these putts say something of, and of pace those that were ``heard`` too; alignment and start line are
    one, under the name of start line, unless they are told apart. Yields ``done``, how much of the findings is done, between
    parts that take long."""
    lines = [line for each in found if (line := each.logged.line_error) is not None]
    known: dict[Name, Skill] = {}
    if with_lines:
        unlined = partition([each.strike for each in found if each.logged.line_error is None])
        lined = partition([off_the_ball_line(each) for each in found if each.logged.line_error is not None])
        strokes = fit_with_lines(unlined, lined, lines, [START_LINE, PACE, BREAK, TILT, ALIGNMENT], heard)
        yield done
        known["alignment"] = replace(strokes.skill(4), n=len(lines))
    else:
        strokes = fit(partition([each.strike for each in found]), [START_LINE, PACE, BREAK, TILT], heard)
    misses = [each.strike for each in found if isinstance(each.strike, Miss | Coarse) and each.logged.line_error is None]
    why = doubts.untold(strokes, misses)
    names: tuple[Name, Name] = ("start_line", "pace")
    for i, name in enumerate(names):
        yield done
        known[name] = replace(strokes.skill(i), untold=why)
    known["pace"] = replace(known["pace"], heard=sum(block.n for block in heard))
    yield done
    read = [each.reading for each in found if each.reading is not None]
    if read:
        known["reading"] = fit_plain(read, READING)
    elif breaking := sum(each.strike.given.aim != 0 for each in found):
        share = strokes.about(2)
        if share.bias.high - share.bias.low < 2 * SHOWN:
            of_break = _of_the_green(share.bias, strokes.about(3).sd.high, found)
            known["reading"] = replace(share, bias=of_break, n=breaking, logged=True, untold=why)
    return known


def _of_the_green(share: Estimate, off: float, found: Sequence[Evidence]) -> Estimate:
    """The share of its break by which a putt starts off where no read was logged; tilts are off by a share ``off`` at the most.

    Who plays the app's aim plays what was logged: of putts logged as steep more are less steep than more so, and seem to be
    started too high, unless the start itself was seen. Of a tilt that was measured that is known: the variance of what
    measured it, beside that of the tilts. Of any other it may be as much, by the share by which tilts are off, or nothing,
    where what was logged was a round number near the truth.
    """
    whole = sum(each.logged.slope**2 for each in found)
    played = [each.logged for each in found if each.logged.read == "app" and each.strike.given.aside]
    high = 2 * sum(logged.tilt_sd**2 for logged in played) / whole if whole else 0.0
    most = 2 * off**2 * sum(logged.slope**2 for logged in played if not logged.tilt_sd) / whole if whole else 0.0
    return Estimate(share.value - high, share.low - most - high, share.high - high)
