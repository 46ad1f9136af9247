"""What may be asked of the senses: the fields, and what each takes."""

from dataclasses import dataclass
from typing import Annotated

from pycore.fields import Doc, Length, Range
from pycore.quantities import Slope, Tilt
from pycore.senses import feel as feet

Bias = Annotated[float, Range(-10.0, 10.0, "degrees"), Doc("bias", "what the phone shows on the level")]
Fall = Annotated[feet.Fall, Doc("falls", "where the ground runs down to, as the feet stand on it")]


@dataclass(frozen=True, kw_only=True)
class ReadingFields:
    """What the phone showed for a while, turned clockwise from its first position."""

    beta_deg: Annotated[float, Range(-180.0, 180.0, "degrees"), Doc("beta", "about the phone's x")]
    gamma_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("gamma", "about the phone's y")]
    turned_deg: Annotated[float, Range(0.0, 270.0, "degrees"), Doc("turned", "clockwise from the first position")]
    weight_s: Annotated[float, Range(0.001, 600.0, "s"), Doc("time", "for which the phone showed it")]


@dataclass(frozen=True, kw_only=True)
class LevelFields:
    """Readings in one position or more; ``bias_deg`` (about x, about y) found earlier is used where there is only one."""

    readings: Annotated[tuple[ReadingFields, ...], Length(1, 2000), Doc("readings")]
    bias_deg: Annotated[tuple[Bias, ...], Length(2, 2), Doc("bias", "about x, about y")] | None = None
    bias_age_days: Annotated[float, Range(0.0, 36_500.0, "days"), Doc("age of the bias", "since it was found")] = 0.0


@dataclass(frozen=True, kw_only=True)
class FloorFields:
    """A floor, and how high the eye is over it."""

    slope_percent: Tilt
    slope_sd_percent: Annotated[float, Range(0.0, 20.0, "%"), Doc("slope spread", "standard deviation")]
    eye_m: Annotated[float, Range(0.5, 2.2, "m"), Doc("eye height", "over the floor")]


@dataclass(frozen=True, kw_only=True)
class FeltTrialFields:
    """A slope as felt and as measured."""

    felt_percent: Annotated[Tilt, Doc("felt")]
    measured_percent: Annotated[Tilt, Doc("measured")]
    fall: Fall


@dataclass(frozen=True, kw_only=True)
class FeelFields:
    """Trials, none included."""

    trials: Annotated[tuple[FeltTrialFields, ...], Length(0, 5000), Doc("trials")]

    def known(self) -> list[feet.Trial]:
        """The trials in the engine's terms."""
        return [feet.Trial(trial.felt_percent, trial.measured_percent, trial.fall) for trial in self.trials]


@dataclass(frozen=True, kw_only=True)
class FeltFields(FeelFields):
    """A slope felt, to be corrected by the trials."""

    felt_percent: Annotated[Slope, Doc("felt")]
    fall: Fall


@dataclass(frozen=True, kw_only=True)
class LookFields:
    """The number of a picture; the same number gives the same picture."""

    case: Annotated[int, Range(0, 1_000_000_000), Doc("case")]
