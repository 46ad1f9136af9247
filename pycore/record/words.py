"""A finding as a coach would say it."""

from collections.abc import Mapping
from math import ceil, degrees

from pycore.record.doubts import Missing
from pycore.record.findings import LINES_NEEDED
from pycore.record.fixed_set import Name
from pycore.record.player import Skill

SHRUNK = 0.1  # share of prior in a finding, from which it is said
ENOUGH = {"alignment": 0.3, "start_line": 0.3, "pace": 3.0, "reading": 10.0}  # half an interval, degrees or per cent
STEP = 5  # putts, to which the number still wanting is rounded up
MOST = 500  # putts; whoever would need more needs other ones
PULLS = {("right", True): "a pull", ("right", False): "a push", ("left", True): "a push", ("left", False): "a pull"}
NOTHING: Mapping[Name, str] = {
    "alignment": "Not told apart from the start line: log where the ball's line pointed on "
    f"{LINES_NEEDED} putts, and how you line up can be told from how you stroke it.",
    "reading": "No read of your own yet: log the slope you felt, or the start line you chose before you looked.",
}
CLEAN = {
    "alignment": "You line it up with no lean that shows",
    "start_line": "You start it with no lean that shows",
    "pace": "Your pace is neither long nor short",
    "reading": "You allow the right break",
}
SIDES = {
    "alignment": ("You line it up", "left", "right"),
    "start_line": ("You start it", "left", "right"),
    "pace": ("You roll it", "long", "short"),
    "reading": ("You allow", "too much break", "too little break"),
}


LEANS = {
    "alignment": "on what is usual",
    "start_line": "on the tour and amateur presets",
    "pace": "on the tour and amateur presets",
    "reading": "on what is usual",
}


def words(name: Name, skill: Skill, handedness: str, lines: int) -> str:
    """The bias, how sure it is, and what it rests on; ``lines`` is how many ball's lines tell alignment from the stroke, 0
    where they do not."""
    said = [_as_logged(skill) if skill.logged else _bias(_Said(name, skill), handedness, lines)]
    if name == "start_line" and not lines:
        said.append("How you line up is in this too.")
    if skill.heard:
        said.append(f"{skill.heard} putts heard on a floor are in this.")
    if skill.untold:
        said.append(skill.untold)
    if skill.shrinkage > SHRUNK:
        said.append(f"With so few putts the finding leans {LEANS[name]}.")
    return " ".join(said)


def unlogged(record: Missing) -> str:
    """Why a record without its holed putts tells nothing."""
    return (
        f"{record.made} of these {record.tries} putts were holed; a player who scores 90 holes {record.usual:.0f} from the "
        "same distances. The holed ones seem not to be logged, and misses alone tell neither lean nor spread: log every putt."
    )


def _as_logged(share: Skill) -> str:
    """What starts that go with the break say where the player's own reads are not known."""
    bias = share.bias
    if bias.low <= 0 <= bias.high:
        return f"The greens break as you log them: {100 * -bias.high:.0f} to {100 * -bias.low:.0f} % more."
    more, low, high = ("more", -bias.high, -bias.low) if bias.value < 0 else ("less", bias.low, bias.high)
    return (
        f"The greens break {more} than you log: {100 * abs(bias.value):.0f} %, {100 * low:.0f} to {100 * high:.0f}. "
        "You may allow too "
        f"{'little' if bias.value < 0 else 'much'}, or the slopes are logged too {'low' if bias.value < 0 else 'high'}: "
        "measure ten with the level, or log reads of your own, and it can be told."
    )


class _Said:
    """The numbers of a skill as they are said: degrees with one digit, per cent with none."""

    def __init__(self, name: Name, skill: Skill) -> None:
        self.name, self.n = name, skill.n
        self.is_angle = name in ("alignment", "start_line")
        self.value, self.low, self.high = (
            degrees(each) if self.is_angle else 100 * each for each in (skill.bias.value, skill.bias.low, skill.bias.high)
        )

    def bare(self, value: float) -> str:
        return f"{abs(value):.{1 if self.is_angle else 0}f}"

    def size(self, value: float) -> str:
        return f"{self.bare(value)} {'degrees' if self.is_angle else '%'}"

    def side(self, value: float) -> str:
        return f"{self.size(value)} {SIDES[self.name][1 if value > 0 else 2]}"


def _bias(said: _Said, handedness: str, lines: int) -> str:
    if said.low > 0 or said.high < 0:
        low, high = sorted((abs(said.low), abs(said.high)))
        stroke = f", {PULLS[handedness, said.value > 0]}" if said.name == "start_line" else ""
        return f"{SIDES[said.name][0]} {said.side(said.value)}{stroke}: {said.bare(low)} to {said.bare(high)}."
    between = f"between {said.side(said.low)} and {said.side(said.high)}"
    half = (said.high - said.low) / 2
    if half <= ENOUGH[said.name]:
        return f"{CLEAN[said.name]}: {between}."
    # other putts say nothing of how the two share a start
    n, which = (lines, " with the ball's line logged") if lines and said.is_angle else (said.n, "")
    more = STEP * ceil(max(1, n) * ((half / ENOUGH[said.name]) ** 2 - 1) / STEP)
    how = f"About {more} more putts{which} would settle it." if more <= MOST else "Longer putts would tell more."
    return f"Not enough yet: {between}. {how}"
