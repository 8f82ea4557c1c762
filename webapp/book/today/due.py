"""What is due: ferments to read, casks to look at, tanks that stand, bottling begun, instruments, phones.

Each is told with the facts behind it; the words are the page's. Nothing here asks a question of an entry.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from webapp.book.before.limits import Limit, declare, site_limit
from webapp.book.cellar.due import MONTH_DAYS, interval
from webapp.book.house.instruments import standing_word
from webapp.book.today.facts import Facts, Phone, Registry
from webapp.book.today.standing import Standing, days_since
from webapp.kinds.rows import SiteSettings

LIMITS = declare(
    Limit("stands_days", 30, "days", "Spirit may stand in a tank or receiver without an entry for"),
    Limit("bottling_days", 3, "days", "A tank gauged for bottling may wait for its close for"),
    Limit("run_open_h", 24, "h", "A run without an end is asked for after"),
    Limit("near_end_days", 1.5, "days", "A ferment is near its end when that is expected within"),
    Limit("phone_silent_h", 36, "h", "A phone that was not heard is called silent after"),
    Limit("disk_free_gb", 2, "GB", "The server's disk is called nearly full where less is free than"),
)
# Rounds of the casks: the interval of the house, and what is done.
CASK_ROUNDS = {"regauge": ("regauge_months", "gauged"), "sample": ("sample_months", "sample"),
               "taste": ("taste_months", "tasting_note")}
HOUR_S = 3600.0


@dataclass(frozen=True, slots=True)
class Due:
    """One thing that is due. days: for how long it has been, below nothing where it is still to come.

    key: read, close, still, stuck, regauge, sample, taste, stands, bottling, open_run, instrument; last: UTC text of
    when it was last done, empty for never.
    """

    key: str
    mark: str
    name: str
    days: float
    last: str = ""
    what: str = ""


def all_due(facts: Facts, registry: Registry, site: SiteSettings, now: datetime, today: str) -> list[Due]:
    """Return the things due, the longest first within each sort. today: the day by the house's clock, `2026-03-02`."""
    standings = sorted(facts.standings.values(), key=lambda one: (one.place, one.name, one.mark))
    return [
        *_ferments(standings, site, now), *_open_runs(facts, site, now), *_bottlings(standings, site, now),
        *_tanks(standings, site, now),
        *(one for key in CASK_ROUNDS for one in casks_due(standings, key, site, now)),
        *instruments_due(facts, registry, site, today),
    ]


def _ferments(standings: Iterable[Standing], site: SiteSettings, now: datetime) -> list[Due]:
    found: list[Due] = []
    every_h = interval("ferment_h", site)
    for one in standings:
        if one.sort != "fermenter" or not one.holds or one.holds.charged:
            continue
        last = one.last.get("ferment_reading", "")
        late = days_since(last or one.holds.since, now) - every_h / 24
        if one.holds.closed:
            found.append(_due("still", one, days_since(one.last.get("any") or one.holds.since, now), last))
        elif one.end_state == "ended":
            found.append(_due("close", one, days_since(last, now), last))
        elif one.end_state == "stuck":
            found.append(_due("stuck", one, max(late, 0.0), last))
        elif every_h and late >= 0:
            found.append(_due("read", one, late, last))
    return _longest(found)


def _due(key: str, one: Standing, days: float, last: str) -> Due:
    return Due(key, one.mark, one.shown, days, last, one.holds.what if one.holds else "")


def _open_runs(facts: Facts, site: SiteSettings, now: datetime) -> list[Due]:
    """A run that began long ago and has no end: somebody forgot to say so."""
    most = site_limit("run_open_h", site) / 24
    found: list[Due] = []
    for run in facts.runs:
        still = facts.standings.get(run["still"])
        if run["ended_at"] or still is None or still.run != run["id"]:
            continue
        days = days_since(run["started_at"], now)
        if days >= most:
            found.append(Due("open_run", run["id"], still.shown, days, run["started_at"], run["name"] or run["what"]))
    return found


def _bottlings(standings: Iterable[Standing], site: SiteSettings, now: datetime) -> list[Due]:
    """A tank that was gauged for bottling and still holds what was gauged."""
    found = [
        _due("bottling", one, days_since(at, now), at) for one in standings
        if one.sort == "tank" and one.holds and (at := one.last.get("bottling_gauge", ""))
    ]
    most = site_limit("bottling_days", site)
    return _longest(one for one in found if one.days >= most)


def _tanks(standings: Iterable[Standing], site: SiteSettings, now: datetime) -> list[Due]:
    most = site_limit("stands_days", site)
    found = [
        _due("stands", one, days_since(at, now), at) for one in standings
        if one.sort in ("tank", "receiver") and one.holds and not one.holds.mash
        and (at := one.last.get("any") or one.holds.since) and "bottling_gauge" not in one.last
    ]
    return _longest(one for one in found if one.days >= most)


def casks_due(standings: Iterable[Standing], key: str, site: SiteSettings, now: datetime) -> list[Due]:
    """Return the casks that are due in a round of CASK_ROUNDS, the longest first; KeyError where it is none."""
    name, kind = CASK_ROUNDS[key]
    every = interval(name, site) * MONTH_DAYS
    if not every:
        return []
    found = []
    for one in standings:
        if one.sort == "cask" and one.holds and one.holds.since:
            last = one.last.get(kind, "")
            days = days_since(max(last, one.holds.since), now) - every
            if days >= 0:
                found.append(_due(key, one, days, last))
    return _longest(found)


def instruments_due(facts: Facts, registry: Registry, site: SiteSettings, today: str) -> list[Due]:
    """Return instruments in use whose check is due soon or was, and those that failed theirs."""
    within = interval("instrument_days", site)
    found: list[Due] = []
    for row in registry.instruments:
        state = facts.checks.get(row["id"])
        standing, due_on = standing_word(row, state, today)
        if standing == "out of use":
            continue
        days = (date.fromisoformat(today) - date.fromisoformat(due_on[:10])).days if due_on else -1e9
        if standing == "failed" or days >= -within:
            key, what = "failed" if standing == "failed" else "instrument", row["title"] or row["sort"]
            found.append(Due(key, row["id"], row["id"], float(days), due_on or "", what))
    return _longest(found)


def _longest(found: Iterable[Due]) -> list[Due]:
    return sorted(found, key=lambda one: -one.days)


@dataclass(frozen=True, slots=True)
class PhoneState:
    """A phone: since when it is silent [h], and how many of its numbers have not come."""

    name: str
    heard_at: str | None
    is_silent: bool
    missing: int


def phone_states(phones: Sequence[Phone], site: SiteSettings, now: datetime) -> list[PhoneState]:
    """Return the phones that are let in, those that miss entries or are silent first."""
    most = site_limit("phone_silent_h", site)
    found = [
        PhoneState(
            phone["name"] or phone["id"], phone["heard_at"],
            phone["heard_at"] is None or days_since(phone["heard_at"], now) * 24 >= most, _missing(phone["seen"]),
        )
        for phone in phones
    ]
    return sorted(found, key=lambda one: (not one.missing, not one.is_silent, one.name))


def _missing(seen: Sequence[Sequence[int]]) -> int:
    """Return the count of numbers below the highest that have not come."""
    top = 0
    lost = 0
    for low, high in seen:
        lost += max(0, low - top - 1)
        top = high
    return lost


def near_ends(facts: Facts) -> list[Standing]:
    """Return ferments with a forecast of their end, the nearest first; then those that have ended."""
    told = [one for one in facts.standings.values() if one.is_fermenting and one.end_state in ("running", "ended")]
    return sorted(told, key=lambda one: (one.end_s.get("at", 0.0), one.mark))


def next_reading(facts: Facts, site: SiteSettings) -> Mapping[str, float]:
    """Return by ferment when it is to be read next. [s since 1970]"""
    every_s = interval("ferment_h", site) * HOUR_S
    return {
        one.mark: datetime.fromisoformat(one.last.get("ferment_reading") or one.holds.since).timestamp() + every_s
        for one in facts.standings.values() if one.is_fermenting and one.holds and every_s
        and one.end_state != "ended"
    }
