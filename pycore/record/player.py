"""How a player starts and paces the ball: biases and spreads most likely behind misses and holed putts.

A miss tells its errors of start and roll. A holed putt tells only that they lay in its opening: it is censored, and
counts by the share of the player's putts that lie there. Unknowns are bias and log of the spread, of start (rad) and of
roll (fraction of its length), each with a belief that holds few putts back towards the presets.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import exp, inf, log
from typing import NamedTuple

from pycore.record.likelihood import Hill, Look, Vector, climb, profile
from pycore.record.looks import added, as_one, normal, picked, strokes, through
from pycore.record.opening import Opening, Row
from pycore.stats.intervals import Estimate, Z

type Strikes = tuple[Sequence["Miss"], Sequence["Holed"]]


@dataclass(frozen=True)
class Belief:
    """What is believed of a skill before its first putt: a normal bias about nothing, and a spread about ``sd`` known to
    a factor of exp(``doubt``)."""

    bias: float
    sd: float
    doubt: float


@dataclass(frozen=True)
class Skill:
    """Bias and spread of a skill, each with its 95 % interval; ``held`` is the larger share that belief has in them."""

    bias: Estimate
    sd: Estimate
    n: int
    held: float


class Miss(NamedTuple):
    """Errors of start (rad) and of roll (fraction)."""

    start: float
    length: float


class Holed(NamedTuple):
    """A holed putt: its opening, the start meant (rad from the read's aim), and the errors of start between which a gate
    says that it lay."""

    opening: Opening
    meant: float
    least: float = -inf
    most: float = inf

    def rows(self, bias: float, sd: float) -> list[Row]:
        """The opening where the player's rolls may be, as errors of start from the start meant; no empty rows."""
        rows = (
            Row(length, weight, max(low, self.least), min(high, self.most))
            for length, weight, low, high in self.opening.rows(bias, sd, self.meant)
        )
        return [row for row in rows if row.low < row.high]


@dataclass(frozen=True)
class Found:
    """What is most likely behind some putts; each skill's intervals are found when it is asked for."""

    hill: Hill
    top: Vector
    beliefs: Sequence[Belief]
    n: int

    def skill(self, i: int) -> Skill:
        """Bias and spread of the skill that has the belief of index ``i``."""
        belief, bias, spread = self.beliefs[i], profile(self.hill, self.top, 2 * i), profile(self.hill, self.top, 2 * i + 1)
        doubts = ((bias, belief.bias), (spread, belief.doubt))
        held = max(((each.high - each.low) / (2 * Z * doubt)) ** 2 for each, doubt in doubts)
        return Skill(bias, Estimate(exp(spread.value), exp(spread.low), exp(spread.high)), self.n, min(1.0, held))


def fit(strikes: Strikes, start: Belief, pace: Belief) -> Found:
    """Start line (rad) and pace (fraction of the roll), the skills 0 and 1 of what is found."""
    return _laid_out([strikes], [start, pace], lambda hills: hills[0])


def fit_apart(strikes: Strikes, lined: Strikes, lines: Sequence[float], beliefs: Sequence[Belief]) -> Found:
    """As ``fit``, with alignment as the skill 2: of the putts ``lined`` the ball's line was known, ``lines`` off the line
    meant (rad), and their starts are measured from it; of the others the start holds both errors."""
    line = normal(lines)

    def whole(hills: Sequence[Hill]) -> Hill:
        one, apart = hills
        return lambda place: added(
            [
                as_one(one, place),
                through(apart(place[:4]), picked(6, 0, 1, 2, 3)),
                through(line(place[4:]), picked(6, 4, 5)),
            ]
        )

    return _laid_out([strikes, lined], beliefs, whole)


def fit_plain(values: Sequence[float], belief: Belief) -> Skill:
    """Bias and spread of errors that are all known."""
    hill = _believed(normal(values), [belief])
    top, _ = climb(hill, [0.0, log(belief.sd)])
    return Found(hill, top, [belief], len(values)).skill(0)


def _laid_out(putts: Sequence[Strikes], beliefs: Sequence[Belief], whole: Callable[[Sequence[Hill]], Hill]) -> Found:
    top = [each for belief in beliefs for each in (0.0, log(belief.sd))]
    for _ in range(2):
        # the second time the openings are laid where the first has found the player
        laid = [[rows for each in holed if (rows := each.rows(top[2], exp(top[3])))] for _, holed in putts]
        hills = [strokes(misses, rows) for (misses, _), rows in zip(putts, laid, strict=True)]
        hill = _believed(whole(hills), beliefs)
        top, _ = climb(hill, top)
    n = sum(len(misses) + len(rows) for (misses, _), rows in zip(putts, laid, strict=True))
    return Found(hill, top, beliefs, n)


def _believed(hill: Hill, beliefs: Sequence[Belief]) -> Hill:
    """The hill with the beliefs added to the data."""
    wanted = [each for belief in beliefs for each in ((0.0, belief.bias), (log(belief.sd), belief.doubt))]

    def believed(place: Sequence[float]) -> Look:
        look = hill(place)
        value = look.value
        for i, (middle, doubt) in enumerate(wanted):
            off = (place[i] - middle) / doubt
            value -= off * off / 2
            look.slopes[i] -= off / doubt
            look.information[i][i] += doubt**-2
            look.complete[i][i] += doubt**-2
        sizes = [each for spread in place[1::2] for each in (exp(spread), 1.0)]
        return look._replace(value=value, sizes=sizes)

    return believed
