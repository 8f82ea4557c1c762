"""A copy of the book while it is in use, and proof that the copy is whole."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from webapp.book.record import log
from webapp.book.record.damage import BookDamaged, is_damage
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book


def backup(book: Book, path: Path | str) -> Path:
    """Copy the book to a new file and verify the copy; return its path. BookError says what is wrong.

    The copy is the book as of one moment, written while others go on writing. It takes its name only when its
    pages and its chain have been found whole.
    """
    path = Path(path)
    if path.exists():
        raise BookError(f"{path} is there already. Name another file for the backup.")
    path.parent.mkdir(parents=True, exist_ok=True)
    unproved = path.with_name(path.name + ".unproved")
    unproved.unlink(missing_ok=True)
    try:
        # A connection of its own: a copy takes a while, and the readers must not wait for it.
        with closing(sqlite3.connect(book.path)) as source, closing(sqlite3.connect(unproved)) as target:
            source.backup(target, pages=1000)
            target.execute("PRAGMA journal_mode = DELETE")
        troubles = _look_over(unproved)
        if troubles:
            raise BookError(f"The backup is not whole: {' '.join(troubles[:3])} Make it again on another disk.")
        unproved.replace(path)
    except (OSError, sqlite3.Error) as error:
        if is_damage(error):
            raise BookDamaged(error) from error
        raise BookError(f"The backup could not be written: {error}. Look at the disk and its rights.") from error
    finally:
        for leftover in path.parent.glob(unproved.name + "*"):
            leftover.unlink()
    return path


def _look_over(path: Path) -> list[str]:
    with closing(sqlite3.connect(path)) as conn:
        found = conn.execute("PRAGMA integrity_check").fetchone()[0]
    if found != "ok":
        return [f"Its pages are damaged ({found})."]
    with Book(path) as copy:
        troubles = log.verify(copy, but_salvaged=True)
    with closing(sqlite3.connect(path)) as conn:  # one file, to be carried away
        conn.execute("PRAGMA journal_mode = DELETE")
    return troubles
