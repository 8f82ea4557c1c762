"""Opening a book: begin one, or bring an older one up to date.

It is folded anew at once where a step of the tables asks for it. Where it was last judged by other rules, all of it is
put on the list of what is to be judged again.
"""

from __future__ import annotations

import os
import sqlite3
from contextlib import suppress
from pathlib import Path

from webapp.book.fold.families import retime_answers
from webapp.book.fold.fold import rebuild
from webapp.book.fold.judgings import adopt_rules
from webapp.book.house import proof
from webapp.book.record import schema
from webapp.book.record.damage import BookDamaged, damage_said, is_damage
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.book.search import keeping
from webapp.durable import sync_folder

# Its write-ahead log lies beside the name by which it was opened: by the other name the last entries are missing, and
# two programs, one by each, spoil the file. [sqlite.org, howtocorrupt.html, "Multiple links to the same file"]
_TWO_NAMES = (
    "{} has a second name on this disk (a hard link), by which entries would be lost. Stop the server, and give the "
    "book a file of its own in its place: copy it beside itself, then rename the copy to the old name. Leave the files "
    "beside it (-wal, -shm) where they are."
)


def open_book(path: Path | str) -> Book:
    """Open the book at that path, or begin one there; bring an older one up to date.

    Raises BookError with a sentence if the file is no book, or is of a newer program, or cannot be opened.
    """
    path = Path(path)
    try:
        path.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
        # It holds password hashes. SQLite gives the files beside it the rights of the book itself.
        with suppress(FileExistsError):
            os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
            sync_folder(path.parent)
            sync_folder(path.parent.parent)
        if path.stat().st_nlink > 1:
            raise BookError(_TWO_NAMES.format(path))
        book = Book(path)
    except (OSError, sqlite3.Error, UnicodeDecodeError) as error:
        if isinstance(error, UnicodeDecodeError) or is_damage(error):  # SQLite quotes a schema that is no text
            raise BookDamaged(f"{path}: {error}") from error
        raise BookError(f"{path} cannot be opened as a book: {error}. Look at the path and its rights.") from error
    try:
        with damage_said(), book.write() as database:
            schema.bring_up_to_date(database, path)
            if adopt_rules(book):
                retime_answers(book)
            if book.one("SELECT value FROM settings WHERE name = 'fold_anew'"):
                rebuild(book)
                database.conn.execute("DELETE FROM settings WHERE name = 'fold_anew'")
            keeping.prepare(book)
            proof.state_registry(book)
    except BaseException as error:
        book.close()
        # Nothing of anybody's typing is written here, and the schema is one that was made here.
        if isinstance(error, sqlite3.IntegrityError) or str(error).startswith(("no such column", "no such table")):
            raise BookDamaged(error) from error
        raise
    return book
