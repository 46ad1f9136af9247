"""One line of the table of faults."""

from dataclasses import dataclass, field


@dataclass
class Fault:
    """What went wrong, in how many rounds, and what that cost: each loss in words, and what else there is to tell."""

    what: str
    rounds: int = 0
    losses: list[str] = field(default_factory=list)
    told: str = ""

    def cells(self) -> tuple[str, ...]:
        return self.what, str(self.rounds), str(len(self.losses)), self.told
