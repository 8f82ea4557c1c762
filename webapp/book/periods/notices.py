"""What the figures of a whole time ask, which no single entry could: beside the queries, until its period is closed.

They are worked out from the flows, so a late entry changes them, and they go by themselves when the figures are right.
An answer would hide them: it is closing the period that says somebody has seen them.
"""

from __future__ import annotations

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

_held: WeakKeyDictionary[Book, tuple[Ledger, list[Notice]]] = WeakKeyDictionary()


def notices(book: Book, now: datetime, site: SiteSettings | None = None) -> list[Notice]:
    """Return the notices of the book: tank losses of the last full quarter, and seasons that do not close.

    site: the settings, where they have been read already.
    """
    site = site or load_site(book)
    # The ledger is another one as soon as the book, its closes, or the month has changed.
    ledger = load_ledger(book, now, site)
    held = _held.get(book)
    if not held or held[0] is not ledger:
        held = (ledger, [*_last_quarter(book, ledger, now, site), *_season(book, now, site)])
        _held[book] = held
    return held[1]


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


def _season(book: Book, now: datetime, site: SiteSettings) -> list[Notice]:
    """A whole season: fruit, wash, and where its pure alcohol is. Of this season and the last."""
    found = [one for one in season.seasons(book, now, 2, site) if one.wash and one.is_odd]
    return [Notice("season", "ask", f"Season {one.name}: {one.verdict}", "/desk/seasons") for one in found]
