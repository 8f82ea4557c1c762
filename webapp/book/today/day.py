"""The day as a line: what ran on each still and when, the rounds that were walked, and what is expected."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo

from webapp.book.still.runs import KnownRun
from webapp.book.today.cuts import NextCut, first_drop, is_low_wines, last_read, next_cut
from webapp.book.today.facts import Facts
from webapp.book.today.standing import Standing
from webapp.kinds.rows import SiteSettings
from webapp.kinds.run_state import Run

ROUND_PAUSE_S = 5400.0  # readings further apart than this are two rounds; common practice, no source
ROUNDS = {"ferment_reading": "readings", "cask_regauge": "regauge", "sample": "samples", "tasting_note": "tasting"}
STILLS_MOST = 6


@dataclass(frozen=True, slots=True)
class Stretch:
    """A stretch of a run. part: heating, heads, hearts, tails or low wines. [s since 1970]"""

    part: str
    start_s: float
    end_s: float


@dataclass(frozen=True, slots=True)
class RunDay:
    """A run of the day. last: the last reading (UTC text, % vol); cut: the next one, while it is under way."""

    id: str
    name: str
    what: str
    stretches: tuple[Stretch, ...]
    is_over: bool
    last: tuple[str, float] | None
    cut: NextCut | None

    @property
    def part(self) -> str:
        """What runs now, or ran last."""
        return self.stretches[-1].part if self.stretches else ""


@dataclass(frozen=True, slots=True)
class StillDay:
    """A still: its runs of the day, oldest first, and when it was cleaned. [s since 1970]"""

    mark: str
    name: str
    runs: tuple[RunDay, ...]
    cleaned: tuple[tuple[float, str], ...]


@dataclass(frozen=True, slots=True)
class Round:
    """A round that somebody walked: what was done, when each vessel was read. [s since 1970]"""

    words: str
    person: str
    at_s: tuple[float, ...]
    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Day:
    """A day by the house's clock, from midnight to midnight. [s since 1970]; reads: when ferments are to be read."""

    start_s: float
    end_s: float
    now_s: float
    stills: tuple[StillDay, ...]
    rounds: tuple[Round, ...]
    reads: tuple[tuple[float, str, str], ...]  # when, mark, name


def day_of(
    facts: Facts, site: SiteSettings, now: datetime, zone: tzinfo, reads: Mapping[str, float]
) -> Day:
    """Return the day that now lies in. reads: by ferment when it is to be read next. [s since 1970]"""
    midnight = now.astimezone(zone).replace(hour=0, minute=0, second=0, microsecond=0)
    start_s, end_s = midnight.timestamp(), (midnight + timedelta(days=1)).timestamp()
    stills = sorted((one for one in facts.standings.values() if one.sort == "still"), key=lambda one: one.shown)
    days = [_still(one, facts, site, now, start_s) for one in stills]
    worked = [one for one in days if one.runs or one.cleaned]
    idle = [one for one in days if not (one.runs or one.cleaned)]
    due = sorted((at, mark, facts.standings[mark].shown) for mark, at in reads.items() if start_s <= at < end_s)
    return Day(
        start_s, end_s, now.timestamp(), tuple([*worked, *idle][:STILLS_MOST]),
        tuple(_rounds(facts.standings.values(), start_s, end_s)), tuple(due),
    )


def _still(one: Standing, facts: Facts, site: SiteSettings, now: datetime, start_s: float) -> StillDay:
    runs = [run for run in facts.runs if run["still"] == one.mark and _is_of(run, one, start_s, now)]
    cleaned = [
        (_seconds(line.at), line.person) for line in one.logged
        if line.kind == "cleaning" and start_s <= _seconds(line.at) <= now.timestamp()
    ]
    made = [_run(run, one, facts, site, now) for run in reversed(runs)]
    return StillDay(one.mark, one.shown, tuple(made), tuple(cleaned))


def _is_of(run: KnownRun, still: Standing, start_s: float, now: datetime) -> bool:
    """Whether a run is of this day: it is under way and not forgotten, or it went on after midnight."""
    begun, now_s = _seconds(run["started_at"]), now.timestamp()
    if run["ended_at"]:
        return _seconds(run["ended_at"]) >= start_s and begun <= now_s
    return still.run == run["id"] and now_s - 86_400 <= begun <= now_s


def _run(run: KnownRun, still: Standing, facts: Facts, site: SiteSettings, now: datetime) -> RunDay:
    last, is_over = last_read(run), bool(run["ended_at"])
    cut = None if is_over else next_cut(run, facts.past.get(still.mark, ()), facts.wishes, site)
    read = (last["at"], last["true_strength"]) if last and last["true_strength"] is not None else None
    return RunDay(run["id"], run["name"], run["what"], tuple(_stretches(run, now)), is_over, read, cut)


def _stretches(run: Run, now: datetime) -> Sequence[Stretch]:
    end_s = _seconds(run["ended_at"]) if run["ended_at"] else now.timestamp()
    begun_s = _seconds(run["started_at"])
    has_read = any(cut.get("event") == "first_drop" for cut in run["cuts"]) or last_read(run) is not None
    marks = [("heating", begun_s)]
    if has_read:
        marks.append(("low wines" if is_low_wines(run) else "heads", _seconds(first_drop(run))))
    for event, part in (("heads_cut", "hearts"), ("hearts_cut", "tails")):
        at = next((cut["at"] for cut in reversed(run["cuts"]) if cut.get("event") == event), None)
        if at:
            marks.append((part, _seconds(at)))
    ends = [at for _, at in marks[1:]] + [end_s]
    return [Stretch(part, at, until) for (part, at), until in zip(marks, ends, strict=True) if until > at]


def _rounds(standings: Iterable[Standing], start_s: float, end_s: float) -> list[Round]:
    """Return the rounds of a day: what one person read of one sort, without a long pause between."""
    every = sorted(
        (line.kind, line.person, _seconds(line.at), one.shown)
        for one in standings for line in one.logged
        if line.kind in ROUNDS and start_s <= _seconds(line.at) < end_s
    )
    groups: list[list[tuple[str, str, float, str]]] = []
    for line in every:
        last = groups[-1][-1] if groups else None
        if last and last[:2] == line[:2] and line[2] - last[2] <= ROUND_PAUSE_S:
            groups[-1].append(line)
        else:
            groups.append([line])
    found = [
        Round(ROUNDS[group[0][0]], group[0][1], tuple(line[2] for line in group), tuple(line[3] for line in group))
        for group in groups
    ]
    return sorted(found, key=lambda one: one.at_s)


def _seconds(at: str) -> float:
    return datetime.fromisoformat(at).timestamp()
