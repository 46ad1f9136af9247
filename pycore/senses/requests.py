"""What may be asked of the senses: the fields, and what each takes."""

from dataclasses import dataclass
from typing import Annotated

from pycore.fields import Length, Range
from pycore.senses import feel as feet

Percent = Annotated[float, Range(0.0, 20.0, "%")]


@dataclass(frozen=True, kw_only=True)
class ReadingFields:
    """What the phone showed for a while, turned clockwise from its first position."""

    beta_deg: Annotated[float, Range(-180.0, 180.0, "degrees")]
    gamma_deg: Annotated[float, Range(-90.0, 90.0, "degrees")]
    turned_deg: Annotated[float, Range(0.0, 270.0, "degrees")]
    weight_s: Annotated[float, Range(0.001, 600.0, "s")]


@dataclass(frozen=True, kw_only=True)
class LevelFields:
    """Readings in one position or more; ``bias_deg`` (about x, about y) found earlier is used where there is only one."""

    readings: Annotated[tuple[ReadingFields, ...], Length(1, 2000)]
    bias_deg: Annotated[tuple[Annotated[float, Range(-10.0, 10.0, "degrees")], ...], Length(2, 2)] | None = None


@dataclass(frozen=True, kw_only=True)
class FloorFields:
    """A floor, and how high the eye is over it."""

    slope_percent: Percent
    slope_sd_percent: Percent
    eye_m: Annotated[float, Range(0.5, 2.2, "m")]


@dataclass(frozen=True, kw_only=True)
class TrialFields:
    """A slope as felt and as measured."""

    felt_percent: Percent
    measured_percent: Percent
    fall: feet.Fall


@dataclass(frozen=True, kw_only=True)
class FeelFields:
    """Trials, none included."""

    trials: Annotated[tuple[TrialFields, ...], Length(0, 5000)]

    def known(self) -> list[feet.Trial]:
        """The trials in the engine's terms."""
        return [feet.Trial(trial.felt_percent, trial.measured_percent, trial.fall) for trial in self.trials]


@dataclass(frozen=True, kw_only=True)
class FeltFields(FeelFields):
    """A slope felt, to be corrected by the trials."""

    felt_percent: Annotated[float, Range(0.0, 8.0, "%")]
    fall: feet.Fall


@dataclass(frozen=True, kw_only=True)
class LookFields:
    """The number of a picture; the same number gives the same picture."""

    case: Annotated[int, Range(0, 1_000_000_000)]
