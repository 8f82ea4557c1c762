"""Damage to the book's file: how SQLite tells of it, how it is looked for, and the sentence for whoever is there.

A page whose structure is broken is told of by SQLite as soon as it is read (SQLITE_CORRUPT, SQLITE_NOTADB: rescode.html
of sqlite.org). A text that reads well and is another one than was written is found by the digests alone.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from webapp.book.record.errors import BookError

TROUBLES_MOST = 20
_CODES = (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB)
_SENTENCE = (
    "The book's file is damaged: nothing more is taken in, and what is on the phones stays there. Stop the server and "
    "make a new book of what is left and of the last good backup: cellarslate salvage. The phones hand in again what "
    "it has not got. ({})"
)


class BookDamaged(BookError):
    """The book's file is damaged; `str(error)` says what to do."""

    def __init__(self, why: object) -> None:
        super().__init__(_SENTENCE.format(" ".join(str(why).split())[:200]))


def is_damage(error: BaseException) -> bool:
    """Return whether an error of SQLite's says that the file is damaged, or is no database at all."""
    # Extended codes have the plain one in their low byte. [sqlite.org/rescode.html]
    code = getattr(error, "sqlite_errorcode", None)
    return isinstance(error, sqlite3.DatabaseError) and code is not None and code & 0xFF in _CODES


@contextmanager
def damage_said() -> Iterator[None]:
    """Turn what SQLite raises over a damaged file inside into BookDamaged; other errors pass."""
    try:
        yield
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        if isinstance(error, UnicodeDecodeError) or is_damage(error):  # words of SQLite about a schema that is no text
            raise BookDamaged(error) from error
        raise


def examine(path: Path, *, is_quick: bool) -> list[str]:
    """Return the faults of the file's pages, as SQLite finds them; an empty list where they are whole.

    Every page is read. is_quick: without holding each index against its table, which takes some times as long.
    Others may read and write meanwhile. Raises BookError where the file cannot be read at all.
    """
    check = "quick_check" if is_quick else "integrity_check"
    try:
        with closing(sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)) as conn:
            found = [str(row[0]) for row in conn.execute(f"PRAGMA {check}({TROUBLES_MOST})")]
    except (sqlite3.DatabaseError, UnicodeDecodeError) as error:
        if isinstance(error, UnicodeDecodeError) or is_damage(error):
            return [str(error)]
        raise BookError(f"{path} cannot be read: {error}. Look at the disk and its rights.") from error
    return [] if found == ["ok"] else found
