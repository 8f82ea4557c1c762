"""What the figures of a whole time ask, which no single entry could: beside the queries, until its period is closed.

They are worked out from the flows, so a late entry changes them, and they go by themselves when the figures are right.
An answer would hide them: it is closing the period that says somebody has seen them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from weakref import WeakKeyDictionary

from webapp.book.fold.registry_rows import load_site
from webapp.book.periods import periods, season
from webapp.book.periods.ledger import Ledger, load_ledger
from webapp.book.periods.warnings import Notice, tank_loss
from webapp.book.record import months
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings

_held: WeakKeyDictionary[Book, Whole] = WeakKeyDictionary()
SEASONS_MOST = 2  # this one and the last


@dataclass(frozen=True, slots=True)
class Whole:
    """What the figures of whole times say: the ledger, the notices, the last seasons, newest first."""

    ledger: Ledger
    notices: list[Notice]
    seasons: list[season.Season]


def notices(book: Book, now: datetime, site: SiteSettings | None = None) -> list[Notice]:
    """Return the notices of the book: tank losses of the last full quarter, and seasons that do not close.

    site: the settings, where they have been read already.
    """
    return load_whole(book, now, site or load_site(book)).notices


def load_whole(book: Book, now: datetime, site: SiteSettings) -> Whole:
    """Return the notices of whole quarters and seasons, held until the book, a close or the month changes."""
    # The ledger is another one as soon as the book, its closes, or the month has changed.
    ledger = load_ledger(book, now, site)
    held = _held.get(book)
    if not held or held.ledger is not ledger:
        last = season.seasons(book, now, SEASONS_MOST, site)
        held = Whole(ledger, [*_last_quarter(book, ledger, now, site), *_season(last)], last)
        _held[book] = held
    return held


def _last_quarter(book: Book, ledger: Ledger, now: datetime, site: SiteSettings) -> list[Notice]:
    this = months.month_at(utc_text(now), str(site.get("time_zone") or "UTC"))
    first = months.months_of(months.quarter_of(this))[0]
    before = f"{int(first[:4]) - 1}-12" if first.endswith("-01") else f"{first[:4]}-{int(first[5:]) - 1:02d}"
    try:
        period = periods.period_in(ledger, months.quarter_of(before), periods.accounts_of(site))
    except BookError:
        return []
    if period.is_closed:
        return []
    href = f"/desk/periods/{period.name}"
    return [Notice(one.code, one.weight, f"{period.name}: {one.words}", href) for one in tank_loss(book, period)]


def _season(last: Sequence[season.Season]) -> list[Notice]:
    """A whole season: fruit, wash, and where its pure alcohol is. Of this season and the last."""
    found = [one for one in last if one.wash and one.is_odd]
    return [Notice("season", "ask", f"Season {one.name}: {one.verdict}", "/desk/seasons") for one in found]
