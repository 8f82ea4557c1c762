"""The account of a month or a quarter: opening, in and out by reason, closing, as stated and as now known.

A closed month is stated as it was signed. The first open month carries what has come to light about closed months
since, as adjustments in plain sight; so its opening is the last closing, and every later figure is right.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from decimal import ROUND_HALF_UP, Decimal

from webapp.book.fold.registry_rows import load_site
from webapp.book.periods.ledger import Adjustments, Closed, Ledger, Month, load_ledger, stock_lines
from webapp.book.periods.lines import ACCOUNTS, WAREHOUSE, Line, Lines, as_warehouse
from webapp.book.record import months
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.trade.proof import lpa_per_proof_gallon

UL_PER_L = 1_000_000
_TENTH, _HUNDREDTH = Decimal("0.1"), Decimal("0.01")


@dataclass(frozen=True, slots=True)
class Shown:
    """One line of an account. side: of the line in question, in or out; ul: microlitres, above nothing.

    `of` is the closed month that an adjustment is about. One that takes back what was stated too high stands on the
    other side of its account than `side` says.
    """

    side: str
    party: str
    reason: str
    sort: str
    ul: int
    of: str = ""


@dataclass(frozen=True, slots=True)
class Account:
    """One account of a period. All amounts in microlitres of pure alcohol at 20 degC."""

    name: str
    opening: int
    ins: tuple[Shown, ...]
    outs: tuple[Shown, ...]
    closing: int

    @property
    def total_in(self) -> int:
        """Return all that came in, adjustments with it."""
        return sum(line.ul for line in self.ins)

    @property
    def total_out(self) -> int:
        """Return all that went out, adjustments with it."""
        return sum(line.ul for line in self.outs)


@dataclass(frozen=True, slots=True)
class Period:
    """A month or a quarter, both as stated and as now known."""

    name: str
    months: tuple[str, ...]
    start: str
    until: str
    zone: str
    accounts: tuple[Account, ...]
    known: tuple[Account, ...]
    closed: tuple[Closed, ...]

    @property
    def is_closed(self) -> bool:
        """Say whether all of it is closed."""
        return len(self.closed) == len(self.months)

    @property
    def differs(self) -> bool:
        """Say whether anything about it has changed since it was stated."""
        return self.accounts != self.known


def accounts_of(site: Mapping[str, object]) -> str:
    """Return the form of a site's accounts: `us` (three) or `warehouse` (one), as set or else by its units."""
    return str(site.get("accounts") or ("us" if site.get("units") == "us" else "warehouse"))


def litres(ul: int) -> Decimal:
    """Return microlitres as litres for showing. [L at 20 degC], to 0.01, half up"""
    return (Decimal(ul) / UL_PER_L).quantize(_HUNDREDTH, ROUND_HALF_UP)


def proof_gallons(ul: int) -> Decimal:
    """Return microlitres of pure alcohol at 20 degC as proof gallons. [proof gal], to 0.1, 0.05 and over goes up

    Source: 27 CFR 19.289 and 30.64 (to the nearest tenth); webapp.trade.proof for the factor.
    """
    gallons = Decimal(ul) / UL_PER_L / Decimal(lpa_per_proof_gallon())
    return gallons.quantize(_TENTH, ROUND_HALF_UP)


def period(book: Book, name: str, now: datetime, accounts: str = "") -> Period:
    """Return a period. accounts: `us` or `warehouse`, else as the site says. BookError if outside the book."""
    site = load_site(book)
    return period_in(load_ledger(book, now, site), name, accounts or accounts_of(site))


def periods(book: Book, now: datetime, accounts: str = "") -> list[Period]:
    """Return every month and every quarter of the book, newest first, a quarter before its months."""
    site = load_site(book)
    return periods_in(load_ledger(book, now, site), accounts or accounts_of(site))


def periods_in(ledger: Ledger, how: str) -> list[Period]:
    """Return every month and every quarter of a ledger, newest first. how: `us` or `warehouse`."""
    found, last = [], ""
    for month in reversed(ledger.months):
        quarter = months.quarter_of(month.name)
        if quarter != last:
            found.append(period_in(ledger, quarter, how))
            last = quarter
        found.append(period_in(ledger, month.name, how))
    return found


def period_in(ledger: Ledger, name: str, how: str) -> Period:
    """Return a period of a ledger. how: `us` or `warehouse`. BookError if outside the book."""
    wanted = months.months_of(name)
    spanned = [month for month in ledger.months if month.name in wanted]
    if not spanned:
        raise BookError(f"The book has nothing in {name}. Pick a period from the list.")
    closed = tuple(ledger.closed[month.name] for month in spanned if month.name in ledger.closed)
    stated: Counter[Line] = Counter()
    known: Counter[Line] = Counter()
    adjusted: Counter[tuple[str, Line]] = Counter()
    for month in spanned:
        known.update(month.lines)
        one = ledger.closed.get(month.name)
        stated.update(one.lines if one else month.lines)
        adjusted.update(one.adjustments if one else ledger.adjustments if month.name == ledger.first_open else {})
    opening = _opening(ledger, spanned[0])
    return Period(
        name, tuple(month.name for month in spanned), spanned[0].start, spanned[-1].until, spanned[0].zone,
        _accounts(opening, stated, adjusted, how), _accounts(spanned[0].opening, known, {}, how), closed,
    )


def _opening(ledger: Ledger, first: Month) -> Mapping[str, int]:
    if first.name in ledger.closed:
        return ledger.closed[first.name].opening
    return ledger.stated_closing if first.name == ledger.first_open else first.opening


def _accounts(opening: Mapping[str, int], lines: Lines, adjusted: Adjustments, how: str) -> tuple[Account, ...]:
    closing = stock_lines(opening, lines, adjusted)
    names: tuple[str, ...] = ACCOUNTS
    if how == WAREHOUSE:
        names, lines = (WAREHOUSE,), as_warehouse(lines)
        opening, closing = {WAREHOUSE: sum(opening.values())}, Counter({WAREHOUSE: sum(closing.values())})
        merged: Counter[tuple[str, Line]] = Counter()
        for (month, line), ul in adjusted.items():
            merged.update({(month, inner): ul for inner in as_warehouse({line: 1})})
        adjusted = merged
    sides: dict[tuple[str, str], list[Shown]] = {}
    for line, ul in sorted(lines.items()):
        if ul:
            shown = Shown(line.side, line.party, line.reason, line.sort, ul)
            sides.setdefault((line.account, line.side), []).append(shown)
    for (month, line), ul in sorted(adjusted.items()):
        if ul:
            # Less in than was stated stands with what went out, and the other way round: no figure is negative.
            side = line.side if ul > 0 else {"in": "out", "out": "in"}[line.side]
            shown = Shown(line.side, line.party, line.reason, line.sort, abs(ul), month)
            sides.setdefault((line.account, side), []).append(shown)
    return tuple(
        Account(
            name, opening.get(name, 0), tuple(sides.get((name, "in"), ())), tuple(sides.get((name, "out"), ())),
            closing[name],
        )
        for name in names
    )
