"""Copies of enclosures in a folder beside a backup: each file once, however many backups lie there; and back again.

Where backups are closed to a key, each file is closed by itself. Nothing is ever taken out of such a folder: an entry
that names a picture stays, and older backups name it too.
"""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from webapp.book.enclosures import shelf
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.durable import sync_file, sync_folder

CLOSED = ".age"
Change = Callable[[Path, Path], None]  # makes the second file of the first: closes it, or opens it


class Brought(NamedTuple):
    """How many files were brought, and how many that have come once are in none of the folders, whole."""

    brought: int
    missing: int


def copy_out(book: Book, source: Path, folder: Path, close: Change | None = None) -> int:
    """Copy what a book names and has from its folder of enclosures into another, where it is not yet; return how many.

    `book` may be a copy of the one that `source` belongs to. BookError where the disk takes no more.
    """
    count = 0
    try:
        for file in shelf.walk_files(book):
            name = file["sha256"]
            path = shelf.path_in(source, name)
            kept = shelf.path_in(folder, name)
            kept = kept.with_name(kept.name + CLOSED) if close else kept
            if kept.is_file() or not path.is_file():
                continue
            kept.parent.mkdir(parents=True, exist_ok=True, mode=0o700)
            aside = kept.with_name(f".{kept.name}")
            if close:
                close(path, aside)
            else:
                _copy(path, aside)
            aside.chmod(0o600)
            aside.replace(kept)
            sync_folder(kept.parent)
            count += 1
    except OSError as error:
        raise BookError(
            f"The pictures could not be copied into {folder}: {error.strerror}. Look at the disk and its rights."
        ) from error
    return count


def bring_in(book: Book, folders: Iterable[Path], opened: Change | None = None) -> Brought:
    """Copy what a book's entries name out of the first of several folders that has it whole into its own.

    `opened` opens a file that is closed; without it such files are passed by.
    """
    folders = list(folders)
    named = {row["sha256"] for row in book.query("SELECT DISTINCT sha256 FROM enclosed")}
    came = {file["sha256"]: file for file in shelf.walk_files(book)}
    brought = 0
    for name in sorted(named | came.keys()):
        via = came[name]["via"] if name in came else "copy"
        if any(_adopt(book, name, folder, opened, via) for folder in folders):
            brought += 1
    return Brought(brought, sum(shelf.find_path(book, name) is None for name in came))


def _adopt(book: Book, name: str, folder: Path, opened: Change | None, via: str) -> bool:
    now = datetime.now(UTC)
    path = shelf.path_in(folder, name)
    if shelf.adopt(book, name, path, via=via, now=now):
        return True
    closed = path.with_name(path.name + CLOSED)
    if opened is None or not closed.is_file():
        return False
    with tempfile.TemporaryDirectory(dir=book.path.parent, prefix=".opened-") as scratch:
        plain = Path(scratch) / name
        opened(closed, plain)
        return shelf.adopt(book, name, plain, via=via, now=now)


def _copy(path: Path, aside: Path) -> None:
    with path.open("rb") as source, os.fdopen(os.open(aside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "wb") as to:
        while part := source.read(1 << 20):
            to.write(part)
        sync_file(to)
