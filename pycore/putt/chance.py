"""How often a player holes a putt: the player's spread laid over the window, by quadrature."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, fields, replace
from math import cos, erf, exp, hypot, pi, radians, sin, sqrt

from pycore.putt.doubt import Doubt, Meant, meant
from pycore.putt.putt import Putt
from pycore.putt.solve import Read
from pycore.putt.window import Window


@dataclass(frozen=True)
class Player:
    """How a player strikes and reads: normal spreads and biases.

    Start line in rad, biases to the left positive; pace as a fraction of the roll's length. ``slope_sd`` (rise over run)
    is how far each of the two parts of the tilt is misread, along the line and across it.
    """

    start_line_sd: float
    pace_sd: float
    slope_sd: float = 0.0
    start_line_bias: float = 0.0
    pace_bias: float = 0.0


# Start line and pace: M. Bansal and M. Broadie, "A simulation model to analyze the impact of hole size on putting in
# golf", Proc. Winter Simulation Conf. 2008; as quoted elsewhere (secondary). Misread: calibrated with this model to the
# shares that M. Broadie, Every Shot Counts, 2014, has for tour players and for players who take 90 strokes (secondary)
TOUR = Player(radians(1.0), 0.065, 0.0031)
AMATEUR = Player(radians(1.5), 0.085, 0.0061)

REACH = 6.0  # standard deviations; nothing worth counting lies farther out
PACES = 32  # points over the paces that hole


def make_probability(putt: Putt, found: Read, holes: Window, player: Player, doubt: Doubt | None = None) -> float:
    """Share of putts holed, 0 to 1, by a player who means to play the read ``found``.

    The green is misread by one tilt along the whole putt, and perhaps in its speed, as ``doubt`` says or else as the player
    does it; the misread putt is then struck as read. A misread green that has no read counts as a miss.
    """
    told = doubt if doubt is not None else Doubt(player.slope_sd)
    return made_of(meant(putt, found, told, player.pace_sd), found, holes, player)


def interval(share: Callable[[Player], float], player: Player, low: Player, high: Player) -> tuple[float, float]:
    """Ends of the share holed, from the ends of each skill's own interval: what each moves it by, as roots of sums of squares.

    The skills are taken to be known independently of each other.
    """
    middle = share(player)
    down = up = 0.0
    for skill in fields(Player):
        ends = {getattr(each, skill.name) for each in (low, high)} - {getattr(player, skill.name)}
        moved = [share(replace(player, **{skill.name: end})) - middle for end in ends]
        down, up = hypot(down, min([0.0, *moved])), hypot(up, max([0.0, *moved]))
    return max(0.0, middle - down), min(1.0, middle + up)


def made_of(strikes: Iterable[Meant], found: Read, holes: Window, player: Player) -> float:
    """Share holed of all ``strikes`` that are meant, 0 to 1."""
    return sum(struck(each, found, holes, player) for each in strikes)


def struck(strikes: Meant, found: Read, holes: Window, player: Player) -> float:
    """Share holed of ``strikes`` that are meant, times their weight."""
    middle, sd = length_of(strikes, player)

    def share(length: float, shift: float, aim_sd: float) -> float:
        """Share holed of the balls of one length, whose aims are spread about ``shift``."""
        edges = holes.edges(found.launch * sqrt(length))
        return max(0.0, _below(edges[1] - shift, aim_sd) - _below(edges[0] - shift, aim_sd)) if edges else 0.0

    aim = strikes.aim + player.start_line_bias
    variance = strikes.aim_variance + player.start_line_sd**2
    if not sd:
        return strikes.weight * share(middle, aim, sqrt(variance)) if middle > 0 else 0.0
    shortest, longest = ((launch / found.launch) ** 2 for launch in (holes.launch[0], holes.launch[-1]))
    low, high = max(shortest, middle - REACH * sd), min(longest, middle + REACH * sd)
    if low >= high:
        return 0.0
    # of the balls of one length the aims are normal again: conditioned on it
    by = strikes.shared * (1 + player.pace_bias) / sd**2
    aim_sd = sqrt(max(0.0, variance - (by * sd) ** 2))
    total = 0.0
    for i in range(PACES):
        # spaced like the sides of a half circle, at whose ends the window closes
        turn = pi * (i + 0.5) / PACES
        length = (low + high) / 2 - (high - low) / 2 * cos(turn)
        total += share(length, aim + by * (length - middle), aim_sd) * _bell(length - middle, sd) * sin(turn)
    return strikes.weight * total * (high - low) / 2 * pi / PACES


def length_of(strikes: Meant, player: Player) -> tuple[float, float]:
    """Mean and spread of the lengths that come of ``strikes``, of the read's."""
    varied = strikes.length_variance
    return (
        strikes.length * (1 + player.pace_bias),
        hypot(sqrt(varied) * (1 + player.pace_bias), player.pace_sd * sqrt(strikes.length**2 + varied)),
    )


def _below(limit: float, sd: float) -> float:
    """Share of a normal spread about 0 that lies below ``limit``."""
    if not sd:
        return 1.0 if limit >= 0 else 0.0
    return (1 + erf(limit / (sd * sqrt(2)))) / 2


def _bell(x: float, sd: float) -> float:
    return exp(-((x / sd) ** 2) / 2) / (sd * sqrt(2 * pi))
