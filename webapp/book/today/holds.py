"""What the house holds in pure alcohol: by account and by spirit, over the years, and what came and went this season.

Accounts and years are those of the periods, out of the sums of months; spirits are those of the vessels and bottlings
that hold something. What stands in mash and in runs under way has no spirit yet.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from webapp.book.periods.ledger import Ledger, stock_lines
from webapp.book.periods.lines import ACCOUNTS
from webapp.book.periods.season import Season
from webapp.book.today.facts import Facts
from webapp.kinds.effects.plan import fruit_of

POINTS_MOST = 60  # of the line over the years; a longer one has a point a quarter, then a year
LOSSES = (
    "out:evaporation", "out:soakage", "out:leak", "out:spill", "out:missing", "out:gauge_difference",
    "out:filter_loss", "out:shortage", "out:transit", "out:not_accounted",
)


@dataclass(frozen=True, slots=True)
class Spirit:
    """A spirit: pure alcohol in vessels and in bottles [uL at 20 degC], and the year of its oldest fill, or empty."""

    name: str
    in_vessels: int
    bottled: int
    oldest: str

    @property
    def ul(self) -> int:
        """Return all of it. [uL]"""
        return self.in_vessels + self.bottled


@dataclass(frozen=True, slots=True)
class Moved:
    """What a season brought and took: fruit [g], the rest pure alcohol [uL at 20 degC]."""

    season: str
    fruit_g: int
    made: int
    bottled: int
    left: int
    lost: int


@dataclass(frozen=True, slots=True)
class Holds:
    """What the house holds. accounts: [uL] by name, in the order of the periods; year_ago: since that month, or None.

    line: (s since 1970, [uL] by account) at the end of each time, oldest first. in_work: mash and runs, which have no
    spirit yet [uL].
    """

    total: int
    accounts: Mapping[str, int]
    year_ago: tuple[str, int] | None
    line: list[tuple[float, Mapping[str, int]]]
    spirits: list[Spirit]
    in_work: int
    moved: Moved | None


def holds(facts: Facts, ledger: Ledger, seasons: Iterable[Season], now: datetime) -> Holds:
    """Return the stock of the house now. now: aware."""
    months = ledger.months
    last = months[-1]
    stock = stock_lines(last.opening, last.lines, {})
    accounts = {name: stock[name] for name in ACCOUNTS}
    spirits = _spirits(facts)
    total = sum(accounts.values())
    return Holds(
        total, accounts, _year_ago(ledger, total), _line(ledger, accounts, now), spirits,
        total - sum(one.ul for one in spirits), _moved(ledger, next(iter(seasons), None)),
    )


def _year_ago(ledger: Ledger, total: int) -> tuple[str, int] | None:
    """Return the beginning of a month a year ago (`2025-12`), and how much more there is now. [uL]"""
    at = len(ledger.months) - 12
    if at < 1:
        return None
    month = ledger.months[at]
    return month.name, total - sum(month.opening.values())


def _line(ledger: Ledger, stock: Mapping[str, int], now: datetime) -> list[tuple[float, Mapping[str, int]]]:
    """Return the stock at the ends of months, thinned where they are many, and the stock now."""
    months = ledger.months
    step = next((one for one in (1, 3, 12) if len(months) / one <= POINTS_MOST), 12)
    # The first month takes all that came before it: what stood before is nothing.
    chosen = [month for month in months[1:] if (int(month.name[5:]) - 1) % step == 0]
    line: list[tuple[float, Mapping[str, int]]] = [(_seconds(month.start), month.opening) for month in chosen]
    return [*line, (now.timestamp(), stock)]


def _seconds(start: str) -> float:
    return datetime.fromisoformat(f"{start[:19]}+00:00").timestamp()


def _spirits(facts: Facts) -> list[Spirit]:
    in_vessels: Counter[str] = Counter()
    bottled: Counter[str] = Counter()
    oldest: dict[str, str] = {}
    for one in facts.standings.values():
        if not one.holds or one.holds.mash or one.holds.lpa_ul <= 0:
            continue
        name = fruit_of(one.holds.what) or "not named"
        in_vessels[name] += one.holds.lpa_ul
        if one.sort == "cask":
            year = (one.holds.aged_since or one.holds.since)[:4]
            oldest[name] = min(year, oldest.get(name, year))
    for bottling in facts.bottlings.values():
        bottled[fruit_of(bottling["what"]) or "not named"] += bottling["lpa_ul"]
    names = sorted({*in_vessels, *bottled}, key=lambda name: (-in_vessels[name] - bottled[name], name))
    return [Spirit(name, in_vessels[name], bottled[name], oldest.get(name, "")) for name in names]


def _moved(ledger: Ledger, season: Season | None) -> Moved | None:
    if season is None:
        return None
    bottled = left = lost = 0
    for month in ledger.months:
        if not season.start <= month.start < season.until:
            continue
        for line, ul in month.lines.items():
            way = 1 if line.side == "out" else -1
            if line.account == "finished" and line.party in ACCOUNTS:
                bottled -= way * ul
            elif line.party == "out:removed":
                left += way * ul
            elif line.party in LOSSES:
                lost += way * ul
    return Moved(season.name, season.fruit_g, season.fermented, bottled, left, lost)
