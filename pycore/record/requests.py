"""What may be asked about a record: the putts, and what each field takes."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from math import radians
from typing import Annotated, Literal

from pycore.errors import Refusal
from pycore.fields import Doc, Length, Range
from pycore.putt.requests import SD, PuttFields, TiltSd
from pycore.quantities import Fall, Launch, Slope
from pycore.record.by_ear import Block, block
from pycore.record.logged import Logged, Measured, Tallied, Unseen
from pycore.record.rounds import Hole, RoundPutt
from pycore.units import slope_from_percent

MOST_PUTTS = 100_000  # more than fit through the door (``api.MAX_REQUEST_CHARACTERS``)
MOST_ROUNDS = 2_000  # a round a day for five years
LINE_ERROR = "how far left of the line meant the ball's own line lay"
YEARS = (1900, 2199)  # as the file of the record has them
Against = Annotated[Literal["tour", "amateur"], Doc("against", "the players that faults and putts are measured by")]


@dataclass(frozen=True, kw_only=True)
class FinishFields:
    """Where a ball stopped, from the hole's centre: x on along the line, y to its left."""

    x_m: Annotated[float, Range(-30.0, 30.0, "m"), Doc("long", "beyond the hole; short is negative")]
    y_m: Annotated[float, Range(-30.0, 30.0, "m"), Doc("left", "of the hole; right is negative")]


@dataclass(frozen=True, kw_only=True)
class LoggedFields(PuttFields):
    """One putt: what was meant, and what came of it."""

    id: Annotated[str, Length(1, 64), Doc("id")]
    at: Annotated[str, Length(10, 40), Doc("time", "when it was struck, as ISO 8601 has it")]
    aim_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("aim", "start line meant, left of the hole")] | None = None
    read: Annotated[Literal["app", "own"], Doc("read", "whose aim was played; null where that is not known")] | None = None
    result: Annotated[Literal["holed", "missed"] | FinishFields, Doc("result", "or where the ball stopped")]
    side: Annotated[Literal["left", "right"], Doc("side", "of the hole, on which a miss stopped")] | None = None
    length: Annotated[Literal["short", "long"], Doc("length", "of a miss")] | None = None
    gate: Annotated[Literal["left", "right", "clean"], Doc("gate", "which post the ball touched, if any")] | None = None
    line_error_deg: Annotated[float, Range(-20.0, 20.0, "degrees"), Doc("line error", LINE_ERROR)] | None = None
    felt_percent: Annotated[Slope, Doc("felt", "the slope as the feet felt it")] | None = None
    start_deg: Annotated[float, Range(-90.0, 90.0, "degrees"), Doc("start", "measured, left of the hole")] | None = None
    start_sd_deg: Annotated[float, Range(0.0, 20.0, "degrees"), Doc("spread of the start", SD)] | None = None
    launch_mps: Annotated[Launch, Doc("launch", "measured, of the ball as it rolls")] | None = None
    launch_sd_mps: Annotated[float, Range(0.0, 5.0, "m/s"), Doc("spread of the launch", SD)] | None = None
    finish_sd_m: Annotated[float, Range(0.0, 30.0, "m"), Doc("spread of the finish", SD)] | None = None
    tilt_sd_percent: Annotated[TiltSd, Doc("doubt of a tilt that was measured", f"{SD} of each part")] | None = None

    def logged(self) -> Logged:
        """The putt in the engine's terms."""
        if self.survey is not None:
            raise Refusal("bad_field", "a kept putt takes the stations along its line, not the survey", "survey")
        line, felt = self.line_error_deg, self.felt_percent
        return Logged(
            self.id,
            _time(self.at),
            self.putt(),
            None if self.aim_deg is None else radians(self.aim_deg),
            self._stop(),
            self.gate,
            None if line is None else radians(line),
            None if felt is None else slope_from_percent(felt),
            self.read,
            self._measured(),
            self.finish_sd_m or 0.0,
            slope_from_percent(self.tilt_sd_percent or 0.0),
        )

    def _measured(self) -> Measured | None:
        told = (self.start_deg, self.start_sd_deg, self.launch_mps, self.launch_sd_mps)
        if self.start_deg is None or self.start_sd_deg is None or self.launch_mps is None or self.launch_sd_mps is None:
            names = ("start_deg", "start_sd_deg", "launch_mps", "launch_sd_mps")
            lacking = next(name for name, value in zip(names, told, strict=True) if value is None)
            if any(value is not None for value in told):
                raise Refusal(
                    "missing_field", f"{lacking} is missing; a measured strike takes all of {', '.join(names)}", lacking
                )
            return None
        return Measured(
            radians(self.start_deg), radians(self.start_sd_deg), self.launch_mps, self.launch_sd_mps / self.launch_mps
        )

    def _stop(self) -> complex | Unseen | None:
        if self.result == "missed":
            return Unseen(self.side, self.length)
        known = next((name for name in ("side", "length") if getattr(self, name) is not None), None)
        if known:
            raise Refusal("bad_field", f'{known} goes with a result of "missed" alone; leave it out', known)
        return None if isinstance(self.result, str) else complex(self.result.x_m, self.result.y_m)


@dataclass(frozen=True, kw_only=True)
class CountedFields:
    """A putt of which no more is known than from where, and what came of it: it is counted, and tells nothing of the skills."""

    at: Annotated[str, Length(10, 40), Doc("time", "when it was struck, as ISO 8601 has it")]
    distance_m: Annotated[float, Range(0.01, 60.0, "m"), Doc("distance", "from the ball to the hole")]
    result: Annotated[Literal["holed", "missed"], Doc("result")]
    length: Annotated[Literal["short", "long"], Doc("length", "of a miss")] | None = None


@dataclass(frozen=True, kw_only=True)
class HeardBlockFields:
    """Putts on a floor that were heard, all meant to run as far: they tell of pace alone."""

    at: Annotated[str, Length(10, 40), Doc("time", "when they were struck, as ISO 8601 has it")]
    meant_m: Annotated[float, Range(0.3, 40.0, "m"), Doc("meant", "how far the ball should run")]
    rolls_m: Annotated[
        tuple[Annotated[float, Range(0.0, 60.0, "m")], ...], Length(1, 2000), Doc("rolls", "as `heard` has them")
    ]
    roll_sd_m: Annotated[float, Range(0.0, 60.0, "m"), Doc("spread of a roll", "which all share: the floor's speed")] = 0.0


@dataclass(frozen=True, kw_only=True)
class FindingsFields:
    """A record of putts, in any order, those that are counted or heard alone, and the hand of the player."""

    putts: Annotated[tuple[LoggedFields, ...], Length(0, MOST_PUTTS), Doc("putts")]
    counted: Annotated[
        tuple[CountedFields, ...], Length(0, MOST_PUTTS), Doc("counted putts", "of which the green is not told")
    ] = ()
    heard: Annotated[
        tuple[HeardBlockFields, ...], Length(0, MOST_PUTTS), Doc("heard putts", "of which pace alone is told")
    ] = ()
    handedness: Annotated[Literal["right", "left"], Doc("handedness", "the hand that the player plays with")] = "right"
    against: Against = "tour"

    def logged(self) -> list[Logged]:
        """The putts in the order in which they were struck; refuses what does not fit, by its place in the list."""
        putts = []
        for i, fields in enumerate(self.putts):
            try:
                putts.append(fields.logged())
            except Refusal as refusal:
                field = f"putts[{i}].{refusal.field}"
                raise replace(refusal, field=field, message=f"putts[{i}]: {refusal.message}") from None
        return sorted(putts, key=lambda putt: putt.at)

    def by_ear(self, most: int) -> list[Block]:
        """The blocks that were heard, the newest first, until they hold ``most`` putts."""
        timed = []
        for i, each in enumerate(self.heard):
            try:
                timed.append((_time(each.at), each))
            except Refusal as refusal:
                raise replace(refusal, field=f"heard[{i}].at", message=f"heard[{i}]: {refusal.message}") from None
        blocks: list[Block] = []
        for _, each in sorted(timed, key=lambda pair: pair[0], reverse=True):
            if sum(each.n for each in blocks) < most:
                blocks.append(block(each.rolls_m, each.meant_m, each.roll_sd_m))
        return blocks

    def tallied(self, logged: Sequence[Logged]) -> list[Tallied]:
        """Those and the ``logged`` ones as they are counted, in the order in which they were struck."""
        counted = []
        for i, each in enumerate(self.counted):
            try:
                at = _time(each.at)
            except Refusal as refusal:
                field = f"counted[{i}].at"
                raise replace(refusal, field=field, message=f"counted[{i}]: {refusal.message}") from None
            counted.append(Tallied(at, each.distance_m, None if each.result == "holed" else Unseen(None, each.length), 0.0))
        putts = [Tallied(each.at, each.putt.distance, each.stop, each.putt.past) for each in logged]
        return sorted([*putts, *counted], key=lambda putt: putt.at)


@dataclass(frozen=True, kw_only=True)
class RoundPuttFields:
    """One putt of a round: from where, and what came of it."""

    distance_m: Annotated[float, Range(0.01, 60.0, "m"), Doc("distance", "from the ball to the hole")] | None
    result: Annotated[Literal["holed", "missed"], Doc("result")]
    side: Annotated[Literal["left", "right"], Doc("side", "on which the ball missed")] | None = None
    length: Annotated[Literal["short", "long"], Doc("length", "of a miss")] | None = None
    fall_deg: Annotated[Fall, Doc("falls")] | None = None


@dataclass(frozen=True, kw_only=True)
class HoleFields:
    """One hole of a round; no putts where the ball was holed from off the green."""

    hole: Annotated[int, Range(1, 99), Doc("hole")]
    putts: Annotated[tuple[RoundPuttFields, ...], Length(0, 20), Doc("putts", "in their order")]

    def counted(self, path: str) -> Hole:
        """The hole in the engine's terms; refuses putts that cannot follow each other."""
        for i, putt in enumerate(self.putts):
            if putt.distance_m is None and not i:
                field = f"{path}.putts[0].distance_m"
                raise Refusal("bad_field", f"{field} is null; a first putt takes its distance, 0.01 to 60 m", field)
            if putt.result == "holed" and i + 1 < len(self.putts):
                field = f"{path}.putts[{i}].result"
                raise Refusal("bad_field", f"{field} is holed and another putt follows; the last putt alone is holed", field)
        putts = (RoundPutt(p.distance_m, p.result == "holed", p.side, p.length, p.fall_deg) for p in self.putts)
        return Hole(self.hole, tuple(putts))


@dataclass(frozen=True, kw_only=True)
class RoundFields:
    """A round: its holes in any order."""

    id: Annotated[str, Length(1, 64), Doc("id")]
    at: Annotated[str, Length(10, 40), Doc("time", "when it was played, as ISO 8601 has it")]
    holes: Annotated[tuple[HoleFields, ...], Length(0, 99), Doc("holes")]

    def day(self) -> date:
        """When it was played; ``counted`` refuses what is no time."""
        return _time(self.at).date()

    def counted(self, path: str) -> list[Hole]:
        """The holes in the engine's terms."""
        try:
            _time(self.at)
        except Refusal as refusal:
            raise replace(refusal, field=f"{path}.at", message=f"{path}.{refusal.message}") from None
        return [hole.counted(f"{path}.holes[{i}]") for i, hole in enumerate(self.holes)]


@dataclass(frozen=True, kw_only=True)
class RoundsFields:
    """Rounds, and against whom their putts are counted."""

    rounds: Annotated[tuple[RoundFields, ...], Length(0, MOST_ROUNDS), Doc("rounds")]
    against: Against = "tour"

    def counted(self) -> list[list[Hole]]:
        """The holes of each round."""
        return [each.counted(f"rounds[{i}]") for i, each in enumerate(self.rounds)]


def _time(text: str) -> datetime:
    try:
        time = datetime.fromisoformat(text)
    except ValueError:
        time = datetime.min
    if not YEARS[0] <= time.year <= YEARS[1]:
        wanted = f"a date and time as 2026-05-03T17:30:00Z, from {YEARS[0]} to {YEARS[1]}"
        raise Refusal("bad_field", f'at is "{text}"; it takes {wanted}', "at")
    return time if time.tzinfo else time.replace(tzinfo=UTC)
