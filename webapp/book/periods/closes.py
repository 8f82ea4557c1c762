"""Closed months: signed figures, kept for good, each digest covering the one before.

Months are closed in their order: a close takes every open month up to its end. What comes to light later about
a closed month does not change it: the difference is an adjustment of the first month that is still open.
"""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, TypedDict

from webapp.book.fold import unjudged
from webapp.book.house import people
from webapp.book.periods.ledger import Adjustments, Ledger, Month, load_ledger, stock_lines
from webapp.book.periods.lines import Line
from webapp.book.periods.open_questions import OpenQuestion, key_of, open_between, refuse_unread
from webapp.book.record import months
from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import canonical, sha256
from webapp.book.record.store import Book

MAY_SIGN = ("distiller", "office")


class LateEntry(TypedDict):
    """An entry that came after the last close and speaks of a time before its end."""

    id: str
    kind: str
    mark: str
    person: str
    read_at: str
    received_at: str
    book_no: int


@dataclass(frozen=True, slots=True)
class Draft:
    """What a close would sign: the months, their figures as canonical text, their digest, and what is open yet."""

    months: tuple[str, ...]
    figures: tuple[str, ...]
    digest: str
    questions: tuple[OpenQuestion, ...]

    @property
    def question_keys(self) -> list[str]:
        """Return the keys of the open questions."""
        return [key_of(one) for one in self.questions]


def draft_close(book: Book, period: str, now: datetime) -> Draft:
    """Return the figures that closing a period now would sign: the period, and every open month before it.

    BookError says why it cannot be closed yet.
    """
    return draft_of(book, load_ledger(book, now), period, now)


def draft_of(book: Book, ledger: Ledger, period: str, now: datetime) -> Draft:
    """Return the draft of a close, where the book's ledger has been read already."""
    if words := unjudged.describe_progress(book):
        raise BookError(f"{words} Close {period} when they are.")
    last = months.months_of(period)[-1]
    if last in ledger.closed:
        raise BookError(f"{period} is closed already. What comes to light now falls into the first open month.")
    first = ledger.first_open
    if first is None or last < first:
        raise BookError(f"The book has nothing in {period}. There is nothing to close.")
    ended = [_ended(ledger, name, now) for name in months.months_between(first, last)]
    asked = open_between(book, ended[0].start, ended[-1].until)
    texts, digest = [], ledger.head_digest
    adjustments, opening = ledger.adjustments, Counter(ledger.stated_closing)
    for month in ended:
        closing = stock_lines(opening, month.lines, adjustments)
        questions = [one for one in asked if month.start <= one["at"] < month.until]
        texts.append(_text(month, opening, closing, adjustments, questions))
        digest = sha256(digest + texts[-1])
        opening, adjustments = closing, {}
    return Draft(tuple(month.name for month in ended), tuple(texts), digest, tuple(asked))


def _ended(ledger: Ledger, name: str, now: datetime) -> Month:
    month = ledger.month(name)
    if month is None or month.until > utc_text(now)[:19]:
        raise BookError(f"{name} has not ended. Close it when it has.")
    return month


def close_period(
    book: Book, period: str, by: str, seen_digest: str, now: datetime, read: Iterable[str] = ()
) -> str:
    """Close a period as a person has seen it; return its digest. read: the open questions they have read, by key.

    BookError where the person may not sign, the period cannot be closed, the figures are no longer those seen, or a
    question is open that was not read.
    """
    with book.write() as database:
        person = people.person(book, by)
        if not person or person["retired"] or person["access"] not in MAY_SIGN:
            raise BookError("Only a distiller or the office closes a period. Ask one of them.")
        made = draft_close(book, period, now)
        if made.digest != seen_digest:
            raise BookError("The figures changed while you looked at them. Look again, then close.")
        refuse_unread(made.questions, read)
        head = database.conn.execute("SELECT coalesce(max(book_no), 0) FROM entries").fetchone()[0]
        digest = load_ledger(book, now).head_digest
        for text in made.figures:
            figures, digest = json.loads(text), sha256(digest + text)
            database.conn.execute(
                "INSERT INTO closes (month, period, start, until, zone, figures, digest, book_no, person, signed_at) "
                "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                (figures["month"], period, figures["start"], figures["until"], figures["zone"], text, digest, head, by,
                 utc_text(now)),
            )
        note_change(book, by, "close", period, None, {"digest": digest}, now)
        return digest


def closes(book: Book) -> list[dict[str, object]]:
    """Return every close in its order, with figures as a mapping."""
    rows = book.query("SELECT * FROM closes ORDER BY no")
    return [row | {"figures": json.loads(row["figures"])} for row in rows]


def verify(book: Book) -> list[str]:
    """Return sentences about faults of the closed months; empty where digests, order and opening = last closing all
    hold.
    """
    wrong: list[str] = []
    digest, last = "", None
    for row in book.query("SELECT * FROM closes ORDER BY no"):
        digest = sha256(digest + row["figures"])
        if row["digest"] != digest:
            wrong.append(f"The figures of {row['month']} are not those that were signed.")
        try:
            figures = json.loads(row["figures"])
            wrong += _strayed(row, figures, last)
        except (ValueError, LookupError, TypeError, AttributeError, RecursionError):
            return [*wrong, f"The figures of {row['month']} cannot be read."]
        last = figures
    return wrong


def _strayed(row: Mapping[str, object], figures: dict[str, Any], last: dict[str, Any] | None) -> list[str]:
    """Return sentences about figures of a close that disagree with its own sums or with the close before it."""
    month, wrong = row["month"], []
    for name in ("month", "start", "until", "zone"):
        if figures[name] != row[name]:
            wrong.append(f"Column {name} of the close of {month} does not say what its figures say.")
    if last and (_some(figures["opening"]) != _some(last["closing"]) or figures["start"] != last["until"]):
        wrong.append(f"{month} does not begin where the month before it ended.")
    lines = {Line(*line[:-1]): line[-1] for line in figures["lines"]}
    moved = {(line[0], Line(*line[1:-1])): line[-1] for line in figures["adjustments"]}
    if _some(stock_lines(Counter(figures["opening"]), lines, moved)) != _some(figures["closing"]):
        wrong.append(f"The sums of {month} do not come to its closing.")
    return wrong


def _some(stock: Mapping[str, int]) -> dict[str, int]:
    """Return the accounts that hold anything: a close of an older program may not name them all."""
    return {account: ul for account, ul in stock.items() if ul}


def late_entries(book: Book, limit: int = 100) -> list[LateEntry]:
    """Return entries that came after the last close and speak of a time before its end, newest first.

    Amendments, answers and strikes count by what they speak of.
    """
    return book.rows(
        LateEntry,
        "SELECT e.id, e.kind, e.mark, e.person, e.read_at, e.received_at, e.book_no FROM entries e "
        "LEFT JOIN answers a ON a.id = e.id LEFT JOIN entries b ON b.id = a.entry "
        "LEFT JOIN amendments m ON m.id = coalesce(b.id, e.id) "
        "JOIN folded f ON f.root = coalesce(m.root, b.id, e.id) "
        "WHERE e.book_no > (SELECT book_no FROM closes ORDER BY no DESC LIMIT 1) "
        "AND f.order_key < (SELECT until FROM closes ORDER BY no DESC LIMIT 1) ORDER BY e.book_no DESC LIMIT ?",
        (limit,),
    )


def _text(
    month: Month, opening: Mapping[str, int], closing: Mapping[str, int], adjustments: Adjustments,
    questions: Sequence[OpenQuestion],
) -> str:
    return canonical({
        # Named only where there are any: so a close without is what it was before closes carried them.
        **({"questions": questions} if questions else {}),
        "month": month.name, "start": month.start, "until": month.until, "zone": month.zone,
        "unit": "uL of pure alcohol at 20 degC", "opening": dict(opening), "closing": dict(closing),
        "lines": [[*line, ul] for line, ul in sorted(month.lines.items())],
        "adjustments": [[name, *line, ul] for (name, line), ul in sorted(adjustments.items())],
    })
