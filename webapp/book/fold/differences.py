"""What came out otherwise under other rules: entries whose questions or sums are not what they were before.

Kept while a judging is under way (judgings.py), entry by entry: what the fold said of it before, and says now. An
entry that comes out as it was again is none in the end. A question counts by its code and weight, not by its words; a
sum by all flows of its entry. What people amend or answer meanwhile may be among it.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, NamedTuple

from webapp.book.fold.judgings import Judging, last_judging
from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

QUESTION = "name, code, weight"
FLOW = ("source, target, lpa_ul, volume_ml, mass_g, source_fill, target_fill, reason, source_account, "
        "target_account, at, sort")


class Asked(NamedTuple):
    """A question as far as it counts here."""

    name: str
    code: str
    weight: str


class Moved(NamedTuple):
    """A flow of an entry. [uL, mL, g]"""

    source: str
    target: str
    lpa_ul: int
    volume_ml: int
    mass_g: int
    source_fill: str
    target_fill: str
    reason: str
    source_account: str
    target_account: str
    at: str
    sort: str


@dataclass(frozen=True, slots=True)
class Said:
    """The fold's results for one entry: its questions, and the amounts that it moves."""

    asked: tuple[Asked, ...]
    moved: tuple[Moved, ...]

    def as_text(self) -> str:
        """Return it as JSON."""
        return json.dumps([self.asked, self.moved], ensure_ascii=False, separators=(",", ":"))


@dataclass(frozen=True, slots=True)
class Difference:
    """An entry whose results changed: its id, its kind, and the results before and after."""

    entry: str
    kind: str
    mark: str
    person: str
    read_at: str
    before: Said
    after: Said

    @property
    def is_sum_changed(self) -> bool:
        """Whether it moves another amount, or from or to elsewhere, or at another time."""
        return self.before.moved != self.after.moved

    @property
    def went(self) -> list[Asked]:
        """The questions that are asked no more, or weigh otherwise."""
        return [one for one in self.before.asked if one not in self.after.asked]

    @property
    def came(self) -> list[Asked]:
        """The questions that were not asked before, or weighed otherwise."""
        return [one for one in self.after.asked if one not in self.before.asked]


class Watch:
    """Keeps the differences that come up while a judging is under way. Inside a write only."""

    def __init__(self, book: Book, judging: Judging | None) -> None:
        self._conn = book.db.conn
        self._no = judging.no if judging and judging.done_at is None else 0

    def compare_results(
        self, entry_id: str, asked: Iterable[Sequence[Any]], moved: Iterable[Sequence[Any]], *, is_new: bool
    ) -> None:
        """Compare what an entry comes to with what stands in the file of it; a new one only where it is held."""
        if not is_new or self._before(entry_id) is not None:
            self.keep_difference(entry_id, said_of(self._conn, entry_id), _make_said(asked, moved))

    def hold_results(self, old_entry_id: str, new_entry_id: str) -> None:
        """Keep the results of an entry that leaves its place under these rules, until it or another of its family comes
        back.

        Before it is cleared. Where nothing comes, it says nothing any more.
        """
        if self._no:
            nothing = Said((), ()).as_text()
            rows = [(old_entry_id, said_of(self._conn, old_entry_id).as_text()), (new_entry_id, nothing)]
            lines = [(self._no, entry_id, said, nothing) for entry_id, said in rows]
            self._conn.executemany("INSERT INTO differences VALUES (?, ?, ?, ?) ON CONFLICT DO UPDATE SET "
                                   "after = excluded.after", lines)

    def keep_difference(self, entry_id: str, before: Said, after: Said) -> None:
        """Keep a difference; what was there before the judging began stays what it is compared with."""
        kept = self._before(entry_id)
        then, text = before.as_text() if kept is None else kept, after.as_text()
        if kept is not None or then != text:
            row = (self._no, entry_id, then, text)
            self._conn.execute("INSERT OR REPLACE INTO differences VALUES (?, ?, ?, ?)", row)

    def leave_out(self, entry_id: str) -> None:
        """Leave out an entry that a person has amended meanwhile."""
        if self._no:
            self._conn.execute("DELETE FROM differences WHERE rules = ? AND entry = ?", (self._no, entry_id))

    def _before(self, entry_id: str) -> str | None:
        sql = "SELECT before FROM differences WHERE rules = ? AND entry = ?"
        row = self._conn.execute(sql, (self._no, entry_id)).fetchone()
        return str(row[0]) if row else None

    def __bool__(self) -> bool:
        """Say whether a judging is under way."""
        return bool(self._no)


def keep_fold(book: Book) -> Watch | None:
    """Keep the fold's results before the fold is thrown away, inside a write; None where no judging is under way."""
    conn, watch = book.db.conn, Watch(book, last_judging(book))
    if not watch:
        return None
    conn.execute(f"CREATE TEMP TABLE asked_before AS SELECT entry, {QUESTION} FROM queries")  # noqa: S608
    conn.execute(f"CREATE TEMP TABLE moved_before AS SELECT entry, n, {FLOW} FROM flows")  # noqa: S608
    return watch


def compare_fold(book: Book, watch: Watch) -> None:
    """Note every entry whose results differ between the new fold and the one that was kept, inside the same write."""
    conn = book.db.conn
    asked, moved = f"SELECT entry, {QUESTION} FROM", f"SELECT entry, n, {FLOW} FROM"
    changed = conn.execute(
        f"SELECT entry FROM ({asked} asked_before EXCEPT {asked} queries) UNION "  # noqa: S608
        f"SELECT entry FROM ({asked} queries EXCEPT {asked} asked_before) UNION "
        f"SELECT entry FROM ({moved} moved_before EXCEPT {moved} flows) UNION "
        f"SELECT entry FROM ({moved} flows EXCEPT {moved} moved_before)"
    ).fetchall()
    for (entry_id,) in changed:
        before = said_of(conn, entry_id, "asked_before", "moved_before")
        watch.keep_difference(entry_id, before, said_of(conn, entry_id))
    conn.execute("DROP TABLE temp.asked_before")
    conn.execute("DROP TABLE temp.moved_before")


def said_of(conn: sqlite3.Connection, entry_id: str, queries: str = "queries", flows: str = "flows") -> Said:
    """Return the results of an entry as the file has them."""
    asked = conn.execute(f"SELECT {QUESTION} FROM {queries} WHERE entry = ?", (entry_id,))  # noqa: S608
    moved = conn.execute(f"SELECT {FLOW} FROM {flows} WHERE entry = ? ORDER BY n", (entry_id,))  # noqa: S608
    return _make_said(asked, moved)


def list_differences(book: Book, judging: Judging) -> list[Difference]:
    """Return all that came out otherwise in a judging, in the order the entries were read."""
    rows = book.db.conn.execute(
        "SELECT e.id, e.kind, e.mark, e.person, e.read_at, d.before, d.after FROM differences d "
        "JOIN entries e ON e.id = d.entry WHERE d.rules = ? AND d.before <> d.after ORDER BY e.read_at, e.id",
        (judging.no,),
    )
    return [
        Difference(entry, kind, mark, person, read_at, _from_text(before), _from_text(after))
        for entry, kind, mark, person, read_at, before, after in rows
    ]


def count_unread(book: Book) -> dict[int, int]:
    """Return the count of unread differences of each finished judging, the last judging first."""
    return as_unread(book.db.conn.execute(UNREAD))


UNREAD = (
    "SELECT r.no, count(*) FROM rules r JOIN differences d ON d.rules = r.no "
    "WHERE r.done_at IS NOT NULL AND r.read_at IS NULL GROUP BY r.no"
)


def as_unread(rows: Iterable[tuple[int, int]]) -> dict[int, int]:
    """Return the rows of UNREAD as the count of each judging, the last judging first."""
    return dict(sorted(rows, reverse=True))


def note_read(book: Book, no: int, by: str, now: datetime) -> None:
    """Note that a person has read what came out otherwise. BookError where there is nothing to read."""
    with book.write() as database:
        if no not in count_unread(book):
            raise BookError("There is nothing to read of it. Look at the list again.")
        database.conn.execute("UPDATE rules SET read_by = ?, read_at = ? WHERE no = ?", (by, utc_text(now), no))
        note_change(book, by, "read", f"what other rules changed ({no})", None, None, now)


def _make_said(asked: Iterable[Sequence[Any]], moved: Iterable[Sequence[Any]]) -> Said:
    return Said(tuple(sorted(Asked(*one) for one in asked)), tuple(Moved(*one) for one in moved))


def _from_text(text: str) -> Said:
    return _make_said(*json.loads(text))
