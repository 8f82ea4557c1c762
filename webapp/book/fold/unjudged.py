"""What a change of the registry concerns is judged again, a little at a time: a list in the book, worked off in slices.
So is what follows from late entries, beyond what their hand-in has worked out itself.

The change itself is written at once, and whatever is judged from then on is judged by it. Which entries have to be
judged again stands in the book's own file, so nothing is forgotten when the program ends. A slice is a write of its own
of a fraction of a second; hand-ins come in between. What it leaves is what a rebuild gives (fold.py says why).
"""

from __future__ import annotations

import time
from collections.abc import Sequence
from typing import NamedTuple

from webapp.book.fold import fold, judgings
from webapp.book.record.store import Book

PAUSE_S = 0.1  # between two slices, so that whoever waits at the write door comes in

ALL = "SELECT order_key FROM folded"


def note_places(book: Book, places: str, params: Sequence[str] = ()) -> None:
    """Put places on the list, inside a write. `places` is a SELECT of order keys that are in the fold."""
    book.db.conn.execute(f"INSERT OR IGNORE INTO unjudged {places}", params)
    book.memory.registry.clear()


def note_keys(book: Book, *keys: str) -> None:
    """Put every entry on the list that has read or written one of these keys, inside a write."""
    marks = ", ".join("?" * len(keys))
    note_places(book, f"SELECT order_key FROM touches WHERE key IN ({marks})", keys)  # noqa: S608


def count_left(book: Book) -> int:
    """Return the number of entries on the list; 1 where only a seam is left (replay.py)."""
    return _left(book).many


LEFT = (
    "SELECT count(*), (SELECT count(DISTINCT order_key) FROM seams), (SELECT max(book_no) FROM entries), "
    "(SELECT CASE WHEN done_at IS NULL THEN version END FROM rules ORDER BY no DESC LIMIT 1) FROM unjudged"
)


class Left(NamedTuple):
    """The row of LEFT: what is on the list, the seams among it, the entries of the book, the version that judges."""

    listed: int
    seams: int
    entries: int
    version: str | None  # None where limits and settings have changed, not the rules

    @property
    def many(self) -> int:
        """The number of entries on the list."""
        return max(self.listed - self.seams, min(self.listed, 1))

    @property
    def words(self) -> str:
        """The progress of the judging in a sentence; empty where nothing is left."""
        if not self.many:
            return ""
        if self.listed == self.seams:
            where = "one place" if self.seams == 1 else f"{self.seams:,} places"
            return f"Consequences of late entries or changes are still to be worked out, from {where} in the past on."
        are = "is" if self.many == 1 else "are"
        by = f"the rules of version {self.version}" if self.version else "the limits and settings as they are now"
        return f"{self.many:,} of {self.entries:,} entries {are} still to be judged by {by}."


def _left(book: Book) -> Left:
    return Left(*book.db.conn.execute(LEFT).fetchone())


def describe_progress(book: Book) -> str:
    """Return the progress of the judging in a sentence; empty where nothing is left."""
    return _left(book).words


def is_being_judged(book: Book, *keys: str) -> bool:
    """Say whether something is still to be worked out that may change one of these states."""
    marks = ", ".join("?" * len(keys))
    sql = f"SELECT 1 FROM seams WHERE key IN ({marks}) LIMIT 1"  # noqa: S608
    return book.db.conn.execute(sql, keys).fetchone() is not None


def judge_slice(book: Book) -> bool:
    """Work off one slice; return whether anything is left."""
    judging = judgings.last_judging(book)
    if judging and not judging.is_by_me:
        return False  # a program with other rules has opened the book since: it goes on with the list
    if not _is_any(book) and (judging is None or judging.done_at):
        return False
    with book.write():
        fold.settle_slice(book)
        if _is_any(book):
            return True
        judgings.end_judging(book)
        return False


def judge_all(book: Book, pause_s: float = 0.0) -> None:
    """Work off the whole list, slice by slice, with a pause [s] between them where others wait for the book."""
    while judge_slice(book):
        time.sleep(pause_s)


def _is_any(book: Book) -> bool:
    return bool(book.db.conn.execute("SELECT EXISTS (SELECT 1 FROM unjudged)").fetchone()[0])
