"""What a book says, as plain data: its questions word for word, stock, sums, periods, and the head of its chain."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from webapp.book.fold import fold
from webapp.book.fold.queries import for_entry
from webapp.book.periods import accounts, closes, periods
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.words.travel import with_words

LATER = datetime(2026, 9, 1, tzinfo=UTC)  # as of when periods are told

_ASKED = ("name", "code", "weight", "field", "words", "suggestions", "answer", "mark", "kind", "person", "at")
_SUGGESTED = ("field", "raw", "unit", "words")


def said(book: Book) -> dict[str, Any]:
    """Return what a book says that has nothing left to judge."""
    entries, digest = log.load_head(book)
    return {
        "head": {"entries": entries, "digest": digest}, "questions": questions(book), "standing": standing(book),
        **sums(book),
    }


def questions(book: Book) -> dict[str, list[dict[str, Any]]]:
    """Return the questions to each entry, with their words as people read them, suggestions and answers."""
    asked = {}
    for row in book.query("SELECT DISTINCT entry FROM queries ORDER BY entry"):
        # In metric units, whatever the house has: 0.1.0 said no others.
        lines = [with_words(line) for line in sorted(for_entry(book, row["entry"]), key=lambda one: str(one["name"]))]
        asked[row["entry"]] = [{name: line[name] for name in _ASKED} for line in lines]
        for line in asked[row["entry"]]:
            line["suggestions"] = [{name: one[name] for name in _SUGGESTED} for one in line["suggestions"]]
    return asked


def standing(book: Book) -> dict[str, list[str]]:
    """Return of each family which entry has effect, and how it stands; by its root."""
    rows = book.query("SELECT root, entry, standing FROM folded ORDER BY root")
    return {row["root"]: [row["entry"], row["standing"]] for row in rows}


def sums(book: Book) -> dict[str, Any]:
    """Return all that is a sum: what stands in vessels and bottlings, accounts, months, periods, what was signed."""
    marks = [row["mark"] for row in book.query("SELECT mark FROM vessels ORDER BY mark")]
    bottlings = [row["id"] for row in book.query("SELECT id FROM bottlings ORDER BY id")]
    lines = book.query("SELECT * FROM month_sums ORDER BY month, a, b, reason, sort")
    return {
        "stock": {mark: _held((fold.load_state(book, f"v:{mark}") or {}).get("holds")) for mark in marks},
        "bottles": {each: _held(fold.load_state(book, f"b:{each}")) for each in bottlings},
        "flows": {name: list(amount) for name, amount in sorted(accounts.balances(book).items())},
        "flows_by_entry": _by_entry(book),
        "months": [list(line.values()) for line in lines],
        "periods": {made.name: _period(made) for made in periods.periods(book, LATER)},
        "closes": [[row["month"], row["digest"]] for row in closes.closes(book)],
    }


def _held(holder: Any) -> dict[str, Any] | None:
    """Return what is held, as amounts and the names people know it by."""
    keep = ("what", "lpa_ul", "volume_ml", "mass_g", "bottles", "on_hand")
    return {name: holder[name] for name in keep if name in holder} if holder else None


def _by_entry(book: Book) -> dict[str, list[Any]]:
    rows = book.query("SELECT entry, source, target, lpa_ul, volume_ml, mass_g, reason FROM flows ORDER BY entry, n")
    found: dict[str, list[Any]] = {}
    for row in rows:
        found.setdefault(row.pop("entry"), []).append(list(row.values()))
    return found


def _period(made: periods.Period) -> dict[str, Any]:
    """Return a period's totals, as stated and as now known. [uL]"""
    return {
        how: [[one.name, one.opening, one.total_in, one.total_out, one.closing] for one in lines]
        for how, lines in (("stated", made.accounts), ("known", made.known))
    }
