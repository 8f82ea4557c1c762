"""What the figures of a whole time ask, which no single entry could: beside the queries, until its period is closed.

They are worked out from the flows, so a late entry changes them, and they go by themselves when the figures are right.
An answer would hide them: it is closing the period that says somebody has seen them.
"""

from __future__ import annotations

from datetime import datetime
from weakref import WeakKeyDictionary

from webapp.book.fold.registry_rows import load_site
from webapp.book.periods import periods, season
from webapp.book.periods.warnings import Notice, tank_loss
from webapp.book.record import months
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

_held: WeakKeyDictionary[Book, tuple[tuple[object, ...], list[Notice]]] = WeakKeyDictionary()


def notices(book: Book, now: datetime) -> list[Notice]:
    """Return the notices of the book: tank losses of the last full quarter, and seasons that do not close."""
    zone = str(load_site(book).get("time_zone") or "UTC")
    this = months.month_at(utc_text(now), zone)
    state = book.one("SELECT (SELECT value FROM settings WHERE name = 'turn') AS turn, count(*) AS n FROM closes")
    assert state is not None
    key = (state["turn"], state["n"], zone, this)
    held = _held.get(book)
    if not held or held[0] != key:
        held = (key, [*_last_quarter(book, now, this), *_season(book, now)])
        _held[book] = held
    return held[1]


def _last_quarter(book: Book, now: datetime, this: str) -> list[Notice]:
    first = months.months_of(months.quarter_of(this))[0]
    before = f"{int(first[:4]) - 1}-12" if first.endswith("-01") else f"{first[:4]}-{int(first[5:]) - 1:02d}"
    try:
        period = periods.period(book, months.quarter_of(before), now)
    except BookError:
        return []
    if period.is_closed:
        return []
    href = f"/desk/periods/{period.name}"
    return [Notice(one.code, one.weight, f"{period.name}: {one.words}", href) for one in tank_loss(book, period)]


def _season(book: Book, now: datetime) -> list[Notice]:
    """A whole season: fruit, wash, and where its pure alcohol is. Of this season and the last."""
    found = [one for one in season.seasons(book, now, 2) if one.wash and one.is_odd]
    return [Notice("season", "ask", f"Season {one.name}: {one.verdict}", "/desk/seasons") for one in found]
