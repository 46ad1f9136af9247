"""How often a player holes a putt: the player's spread laid over the window, by quadrature."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import erf, exp, pi, radians, sqrt

from pycore.green.surface import Surface
from pycore.putt.putt import Putt
from pycore.putt.solve import Read, solve
from pycore.putt.window import Window


@dataclass(frozen=True)
class Player:
    """How a player strikes and reads: normal spreads and biases.

    Start line in rad, biases to the left positive; pace as a fraction of the roll's length; felt slope as rise over run.
    """

    start_line_sd: float
    pace_sd: float
    slope_sd: float = 0.0
    start_line_bias: float = 0.0
    pace_bias: float = 0.0


# Start line and pace: M. Bansal and M. Broadie, "A simulation model to analyze the impact of hole size on putting in
# golf", Proc. Winter Simulation Conf. 2008; as quoted elsewhere (secondary)
TOUR = Player(radians(1.0), 0.065)
AMATEUR = Player(radians(1.5), 0.085)

REACH = 6.0  # standard deviations; nothing worth counting lies farther out
PACES = 48  # points over the paces that hole

# Gauss-Hermite points and weights for a normal spread, five points; Abramowitz and Stegun, table 25.10
_MISREADS: Sequence[tuple[float, float]] = (
    (-2.856970013872806, 0.011257411327721),
    (-1.355626179974266, 0.222075922005613),
    (0.0, 0.533333333333333),
    (1.355626179974266, 0.222075922005613),
    (2.856970013872806, 0.011257411327721),
)


def make_probability(putt: Putt, found: Read, holes: Window, player: Player) -> float:
    """Share of putts holed, 0 to 1, by a player who means to play the read ``found``.

    The slope is misread by the same amount along the whole putt, and the misread putt is then struck as read. Spreads
    are independent and normal; a misread slope for which there is no putt counts as a miss.
    """
    if not player.slope_sd:
        return _struck(found, holes, player)
    total = 0.0
    for deviation, weight in _MISREADS:
        misread = _steeper(putt, deviation * player.slope_sd)
        meant = solve(misread)
        if meant:
            total += weight * _struck(meant, holes, player)
    return total


def _steeper(putt: Putt, change: float) -> Putt:
    stations = (replace(station, slope=station.slope + change) for station in putt.surface.stations)
    return replace(putt, surface=Surface(*stations))


def _struck(meant: Read, holes: Window, player: Player) -> float:
    """Share holed when the strike of ``meant`` is what the player tries."""

    def share(length: float) -> float:
        """Share holed of the balls whose roll is off by a fraction ``length``."""
        edges = holes.edges(meant.launch * sqrt(1 + length))
        if edges is None:
            return 0.0
        low, high = (edge - meant.aim - player.start_line_bias for edge in edges)
        return max(0.0, _below(high, player.start_line_sd) - _below(low, player.start_line_sd))

    if not player.pace_sd:
        return share(player.pace_bias)
    shortest, longest = ((launch / meant.launch) ** 2 - 1 for launch in (holes.launch[0], holes.launch[-1]))
    low = max(shortest, player.pace_bias - REACH * player.pace_sd)
    high = min(longest, player.pace_bias + REACH * player.pace_sd)
    if low >= high:
        return 0.0
    # midpoints suit a bell that is all but nothing at both ends, and edges that end within the interval
    step = (high - low) / PACES
    lengths = [low + (i + 0.5) * step for i in range(PACES)]
    return sum(share(length) * _bell(length - player.pace_bias, player.pace_sd) for length in lengths) * step


def _below(limit: float, sd: float) -> float:
    """Share of a normal spread about 0 that lies below ``limit``."""
    if not sd:
        return 1.0 if limit >= 0 else 0.0
    return (1 + erf(limit / (sd * sqrt(2)))) / 2


def _bell(x: float, sd: float) -> float:
    return exp(-((x / sd) ** 2) / 2) / (sd * sqrt(2 * pi))
