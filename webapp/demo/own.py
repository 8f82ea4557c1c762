"""Which book is the demo's own: the one that its loader began while nothing of anybody stood in it, and no other."""

from __future__ import annotations

import shutil
from datetime import datetime
from pathlib import Path

from webapp.backups import BOOK_NAME
from webapp.book.house import registry
from webapp.book.opening import open_book
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

BEGUN, WHOLE = "begun", "whole"
_FILES = (BOOK_NAME, f"{BOOK_NAME}-wal", f"{BOOK_NAME}-shm")
_WAITING = "sheets-waiting"  # what visitors looked over and did not put in


def is_whole(book: Book) -> bool:
    """Say whether the demo laid this book, all of it."""
    return _read(book, "demo") == WHOLE


def may_lay(book: Book) -> bool:
    """Say whether the demo may write into this book: it began it, or nobody has put anything into it."""
    if _read(book, "demo"):
        return True
    found = book.one("SELECT EXISTS (SELECT 1 FROM people) OR EXISTS (SELECT 1 FROM entries) AS is_used")
    return not registry.site(book)["name"] and not (found and found["is_used"])


def mark(book: Book, how_far: str, laid_at: datetime | None = None) -> None:
    """Note the progress of the loading. It is kept apart from the site's settings, which every entry may look at."""
    with book.write() as database:
        database.conn.execute("INSERT OR REPLACE INTO settings VALUES ('demo', ?)", (how_far,))
        if laid_at:
            database.conn.execute("INSERT OR REPLACE INTO settings VALUES ('demo_laid', ?)", (laid_at.isoformat(),))


def laid_at(book: Book) -> datetime | None:
    """Return the moment for which the demo was laid (aware), or None where it has no living moment."""
    text = _read(book, "demo_laid")
    return datetime.fromisoformat(text) if text else None


def clear(data_dir: Path) -> None:
    """Take the demo's book out of its folder, so that it is laid anew. BookError where the book is not the demo's."""
    if not (data_dir / BOOK_NAME).exists():
        return
    with open_book(data_dir / BOOK_NAME) as book:
        is_ours = bool(_read(book, "demo"))
    if not is_ours:
        raise BookError(f"{data_dir} holds a book of your own. Nothing was taken out of it.")
    for name in _FILES:
        (data_dir / name).unlink(missing_ok=True)
    shutil.rmtree(data_dir / _WAITING, ignore_errors=True)


def _read(book: Book, name: str) -> str:
    found = book.one("SELECT value FROM settings WHERE name = ?", (name,))
    return str(found["value"]) if found else ""
