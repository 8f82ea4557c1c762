"""The months of a book side by side: what is now known of each, and what was stated when it was closed."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from weakref import WeakKeyDictionary

from webapp.book.fold.month_sums import Reading
from webapp.book.fold.registry_rows import load_site
from webapp.book.periods.lines import ACCOUNTS, Line, Lines, lines_between
from webapp.book.periods.open_questions import OpenQuestion
from webapp.book.record import months
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings

EARLIEST = "0000"
Adjustments = Mapping[tuple[str, Line], int]  # (closed month, line) -> what it is more, or less, than was stated [uL]


@dataclass(frozen=True, slots=True)
class Month:
    """One month as is now known. start and until: UTC texts without Z (months.month_start)."""

    name: str
    start: str
    until: str
    zone: str
    lines: Lines
    opening: Mapping[str, int]  # by account [uL]


@dataclass(frozen=True, slots=True)
class Closed:
    """One month as it was closed."""

    month: str
    period: str
    person: str
    signed_at: str
    digest: str
    lines: Lines
    adjustments: Adjustments
    opening: Mapping[str, int]
    closing: Mapping[str, int]
    questions: tuple[OpenQuestion, ...] = ()  # open when it was closed, each read by who closed it


@dataclass(frozen=True, slots=True)
class Ledger:
    """All months, oldest first, without a gap; those closed; what the first open one has to adjust."""

    months: tuple[Month, ...]
    closed: Mapping[str, Closed]
    adjustments: Adjustments
    head_digest: str = ""
    stated_closing: Mapping[str, int] = field(default_factory=lambda: dict.fromkeys(ACCOUNTS, 0))

    def month(self, name: str) -> Month | None:
        """Return a month, or None."""
        return next((month for month in self.months if month.name == name), None)

    @property
    def first_open(self) -> str | None:
        """The name of the first month that is open, or None in an empty book."""
        return next((month.name for month in self.months if month.name not in self.closed), None)


_held: WeakKeyDictionary[Book, tuple[tuple[object, ...], Ledger]] = WeakKeyDictionary()


def load_ledger(book: Book, now: datetime, site: SiteSettings | None = None) -> Ledger:
    """Return all months up to the present one. site: the settings, where they have been read already.

    They are worked out anew only when the book or its closes have changed.
    """
    zone = str((site or load_site(book)).get("time_zone") or "UTC")
    # The turn goes up with every card that changes. Goods have no card: that something was folded is told by the last
    # entry too, and by the oldest that is still to be judged.
    state = book.one(
        "SELECT (SELECT value FROM settings WHERE name = 'turn') AS turn, (SELECT min(at) FROM flows) AS first, "
        "(SELECT max(book_no) FROM entries) AS head, (SELECT min(order_key) FROM unjudged) AS unjudged, "
        "count(*) AS n FROM closes"
    )
    assert state is not None
    folded = (state["turn"], state["head"], state["unjudged"])
    key = (folded, state["n"], zone, months.month_at(utc_text(now), zone))
    held = _held.get(book)
    if held and held[0] == key:
        return held[1]
    ledger = _load(book, zone, state["first"], str(key[-1]))
    _held[book] = (key, ledger)
    return ledger


def stock_lines(opening: Mapping[str, int], lines: Lines, adjustments: Adjustments) -> Counter[str]:
    """Return the closing of every account: opening + in - out, with what is adjusted. [uL]"""
    stock = Counter({account: opening.get(account, 0) for account in ACCOUNTS})
    for line, ul in [*lines.items(), *((line, ul) for (_, line), ul in adjustments.items())]:
        stock[line.account] += ul if line.side == "in" else -ul
    return stock


def _load(book: Book, zone: str, begun: str | None, last: str) -> Ledger:
    rows = book.query("SELECT * FROM closes ORDER BY no")
    closed = {row["month"]: _closed(row) for row in rows}
    bounds = {row["month"]: (row["start"], row["until"], row["zone"]) for row in rows}
    first = next(iter(closed), None) or (months.month_at(begun, zone) if begun else last)
    made: list[Month] = []
    names = list(months.months_between(first, max(last, *closed, first)))
    ends = {
        name: bounds[name][1] if name in bounds else months.month_start(months.next_month(name), zone) for name in names
    }
    sums = Reading(book, [EARLIEST, *ends.values()])
    stock: Counter[str] = Counter(dict.fromkeys(ACCOUNTS, 0))
    for name, until in ends.items():
        # A month begins where the one before ended, whatever the zone is called since; the first takes all before it.
        start = made[-1].until if made else bounds[name][0] if name in bounds else months.month_start(name, zone)
        lines = lines_between(sums, start if made else EARLIEST, until)
        made.append(Month(name, start, until, bounds.get(name, ("", "", zone))[2], lines, dict(stock)))
        stock = stock_lines(stock, lines, {})
    head = rows[-1]["digest"] if rows else ""
    if not rows:
        return Ledger(tuple(made), {}, {})
    return Ledger(tuple(made), closed, _adjustments(made, closed), head, closed[rows[-1]["month"]].closing)


def _adjustments(made: list[Month], closed: Mapping[str, Closed]) -> dict[tuple[str, Line], int]:
    stated: Counter[tuple[str, Line]] = Counter()
    for name, one in closed.items():
        stated.update({(name, line): ul for line, ul in one.lines.items()})
        stated.update(one.adjustments)
    known = {(month.name, line): ul for month in made if month.name in closed for line, ul in month.lines.items()}
    both = {key: known.get(key, 0) - stated[key] for key in {*known, *stated}}
    return {key: ul for key, ul in sorted(both.items()) if ul}


def _closed(row: Mapping[str, str]) -> Closed:
    figures = json.loads(row["figures"])
    return Closed(
        row["month"], row["period"], row["person"], row["signed_at"], row["digest"],
        {Line(*line[:-1]): line[-1] for line in figures["lines"]},
        {(line[0], Line(*line[1:-1])): line[-1] for line in figures["adjustments"]},
        figures["opening"], figures["closing"], tuple(figures.get("questions", ())),
    )
