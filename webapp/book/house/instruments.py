"""The record of one instrument: its checks, its correction, its due day, and the readings that a failed check casts
doubt on.

Every entry that names an instrument touches its key `i:<id>` in the fold; so the list is exact and found by an index.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from webapp.book.fold.states import load_newest
from webapp.book.record.log import JOIN_FOLDED, root_of
from webapp.book.record.store import Book
from webapp.kinds.key import instrument_key

LISTED_MOST = 500


@dataclass(frozen=True, slots=True)
class Check:
    """One check in the order of the fold. doubtful: how many readings a failed one casts doubt on."""

    entry: str
    order_key: str
    at: str
    good: bool
    against: str
    expected: float | None
    found: float | None
    correction: float | None
    in_use: str
    until: str | None
    person: str
    doubtful: int = 0

    @property
    def off(self) -> float | None:
        """The reading less the true value. [the instrument's own unit]"""
        return None if self.found is None or self.expected is None else round(self.found - self.expected, 9)


@dataclass(frozen=True, slots=True)
class Record:
    """The book's facts about an instrument. standing: good, failed, out of use, due or unchecked."""

    row: dict[str, Any]
    checks: tuple[Check, ...]  # newest first
    standing: str
    due_on: str | None
    correction: float | None
    last_good_at: str | None
    readings: int

    @property
    def failed(self) -> Check | None:
        """The last check that failed, or None."""
        return next((check for check in self.checks if not check.good), None)


def record(book: Book, instrument_id: str, today: str) -> Record | None:
    """Return the record of an instrument, or None where the book has none of that id. today: `2026-03-02`."""
    row = book.one("SELECT * FROM instruments WHERE id = ?", (instrument_id,))
    if row is None:
        return None
    checks = _checks(book, instrument_id)
    last = checks[0] if checks else None
    good = next((check for check in checks if check.good), None)
    due = last.until if last and last.in_use == "until" else row["due_on"]
    return Record(
        row, checks, _standing(row, last, good, due, today), due, last.correction if last else None,
        good.at if good else None, _count(book, instrument_id, "", "~"),
    )


def in_doubt(book: Book, instrument_id: str, check_entry: str) -> tuple[list[dict[str, Any]], int]:
    """Return (log rows, count of all) of the readings taken with it between its last good check and a failed one.

    Newest first, at most LISTED_MOST rows. A check that was good, or is none of this instrument, casts no doubt.
    """
    checks = _checks(book, instrument_id)
    for n, check in enumerate(checks):
        if check.entry == check_entry and not check.good:
            since = next((one.order_key for one in checks[n + 1 :] if one.good), "")
            rows = book.query(
                f"SELECT e.*, f.root, f.standing {_READ_WITH} ORDER BY t.order_key DESC LIMIT ?",
                (f"i:{instrument_id}", since, check.order_key, instrument_id, LISTED_MOST),
            )
            return rows, check.doubtful
    return [], 0


_READ_WITH = (  # joins and names are ours, values are bound
    f"FROM touches t JOIN entries e ON e.id = substr(t.order_key, -36) {JOIN_FOLDED} "  # noqa: S608
    "WHERE t.key = ? AND t.order_key > ? AND t.order_key < ? AND EXISTS (SELECT 1 FROM json_each(e.body, '$.values') v "
    "WHERE json_extract(v.value, '$.instrument') = ?)"
)


def _count(book: Book, instrument_id: str, since: str, until: str) -> int:
    row = book.one(
        f"SELECT count(*) AS n {_READ_WITH}",
        (f"i:{instrument_id}", since, until, instrument_id),
    )
    return int(row["n"]) if row else 0


def _checks(book: Book, instrument_id: str) -> tuple[Check, ...]:
    """Return the checks newest first, as far back as the fold keeps them."""
    state = load_newest(book, instrument_key(instrument_id))
    made: list[Check] = []
    since = ""
    for line in state["checks"] if state else ():
        row = book.one(
            "SELECT f.order_key, e.person FROM folded f JOIN entries e ON e.id = f.entry WHERE f.root = ?",
            (root_of(book, line["entry"]),),
        )
        if row is None:
            continue
        doubtful = 0 if line["good"] else _count(book, instrument_id, since, row["order_key"])
        made.append(
            Check(line["entry"], row["order_key"], line["at"], line["good"], str(line.get("against") or ""),
                  in_use=str(line.get("in_use") or ""), person=row["person"], doubtful=doubtful,
                  expected=line["expected"], found=line["found"], correction=line["correction"], until=line["until"])
        )
        since = row["order_key"] if line["good"] else since
    return tuple(reversed(made))


def _standing(row: dict[str, Any], last: Check | None, good: Check | None, due: str | None, today: str) -> str:
    if row["state"] == "out of use" or (last and last.in_use == "no"):
        return "out of use"
    if last and not last.good:
        return "failed"
    if due and due < today:
        return "due"
    return "good" if good else "unchecked"
