"""What the book says of the rows of a sheet: they are put in and undone again, so it says what it would say."""

from __future__ import annotations

from webapp.book.record.store import Book
from webapp.kinds.rows import SiteSettings
from webapp.sheets.entering import Stamp, put_rows
from webapp.sheets.lookover import Look, Told, read_parts
from webapp.sheets.prepare import prepare


class _Undo(Exception):
    """Leaves the write door without a change."""


def look_over(book: Book, name: str, content: bytes, told: Told, stamp: Stamp, site: SiteSettings) -> Look:
    """Return a file looked over: every row as it would stand. The book is as it was. Raises NoSheet."""
    look = read_parts(book, name, content, told, site, stamp.now)
    try:
        with book.write():
            prepare(book, look)
            put_rows(book, look, stamp)
            raise _Undo
    except _Undo:
        return look
