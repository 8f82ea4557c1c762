"""What a change of the registry concerns is judged again, a little at a time: a list in the book, worked off in slices.

The change itself is written at once, and whatever is judged from then on is judged by it. Which entries have to be
judged again stands in the book's own file, so nothing is forgotten when the program ends. A slice is a write of its own
of a fraction of a second; hand-ins come in between. What it leaves is what a rebuild gives (fold.py says why).
"""

from __future__ import annotations

import time
from collections.abc import Sequence

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
    sql = "SELECT count(*), (SELECT count(DISTINCT order_key) FROM seams) FROM unjudged"
    listed, seams = book.db.conn.execute(sql).fetchone()
    return max(int(listed - seams), min(int(listed), 1))


def describe_progress(book: Book) -> str:
    """Return the progress of the judging in a sentence; empty where nothing is left."""
    many = count_left(book)
    if not many:
        return ""
    entries = book.db.conn.execute("SELECT max(book_no) FROM entries").fetchone()[0]
    are = "is" if many == 1 else "are"
    judging = judgings.last_judging(book)
    by = "the limits and settings as they are now"
    if judging and not judging.done_at:
        by = f"the rules of version {judging.version}"
    return f"{many:,} of {entries:,} entries {are} still to be judged by {by}."


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
