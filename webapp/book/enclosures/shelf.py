"""The files of enclosures, each once, under its SHA-256 in the folder of the book; and how they come, piece by piece.

A file is taken only where an entry of the book names its digest, and from then on never changed. What has come so far
of one lies apart, and a sender goes on from there; the whole is held against its digest and its content before it
takes its name. The row in `enclosures` is written after that: a file without its row is found again.
"""

from __future__ import annotations

import hashlib
import os
import shutil
import threading
import time
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import NamedTuple, TypedDict

from webapp.book.enclosures.content import BYTES_MOST, Refused, check_content, make_thumb
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.durable import sync_file, sync_folder, write_whole
from webapp.kinds.as_schema import DIGEST

FOLDER = "enclosures"
FREE_LEAST = 300_000_000  # of the disk: what is left below it is for entries [bytes]
_COMING = ".coming"
_THUMBS = ".thumbs"
_COMING_KEPT_S = 30 * 86_400
_locks = [threading.Lock() for _ in range(16)]
_NO_ROOM = "The server's disk is nearly full: the room left is kept for entries. Make room there; the picture waits."
_TOO_LARGE = f"Nothing larger than {BYTES_MOST // 1_000_000} MB is kept. Make it smaller, then add it again."
_SPOILT = "It did not arrive as it was when its entry was logged. It is sent once more, from its beginning."


class Here(NamedTuple):
    """How much of an enclosure the book has [bytes], and whether that is all of it."""

    has: int
    is_whole: bool


class File(TypedDict):
    """A file that has come."""

    sha256: str
    type: str
    size: int
    arrived_at: str
    via: str


class NotNamed(BookError):
    """No entry of the book names it: its entry comes first."""


class Spoilt(BookError):
    """The bytes that came are not those of its digest."""


def folder_of(book: Book) -> Path:
    """Return the folder of a book's enclosures. It is made with the first."""
    return book.path.parent / FOLDER


def path_in(folder: Path, name: str) -> Path:
    """Return where the file of a digest lies in a folder of enclosures."""
    return folder / name[:2] / name


def is_digest(text: str) -> bool:
    """Say whether a text is a SHA-256 as entries name one."""
    return DIGEST.match(text) is not None


def find_file(book: Book, name: str) -> File | None:
    """Return the row of a file that has come, or None."""
    return book.row(File, "SELECT * FROM enclosures WHERE sha256 = ?", (name,))


def find_path(book: Book, name: str) -> Path | None:
    """Return where the file of a digest lies, or None where it has not come or is lost."""
    path = path_in(folder_of(book), name)
    return path if path.is_file() else None


def is_named(book: Book, name: str) -> bool:
    """Say whether an entry of the book names this digest."""
    return book.one("SELECT 1 FROM enclosed WHERE sha256 = ? LIMIT 1", (name,)) is not None


def how_much(book: Book, name: str) -> Here:
    """Return how much of an enclosure is here. Raises NotNamed where no entry names it."""
    _refuse_unnamed(book, name)
    known = find_file(book, name)
    if known and find_path(book, name):
        return Here(known["size"], is_whole=True)
    part = _part(book, name)
    return Here(part.stat().st_size if part.is_file() else 0, is_whole=False)


def take_piece(book: Book, name: str, at: int, total: int, piece: bytes, *, via: str, now: datetime) -> Here:
    """Add a piece that begins at byte `at` of `total`; return how much is here now. A piece of elsewhere changes
    nothing: the sender goes on from where the book is.

    `via` says who brought it; `now` is aware. Raises NotNamed, Spoilt, Refused, or BookError where there is no room.
    """
    with _locks[int(name[:2], 16) % len(_locks)]:
        here = how_much(book, name)
        if here.is_whole:
            return here
        if not 0 < total <= BYTES_MOST or at + len(piece) > total:
            raise Refused(_TOO_LARGE)
        if (path := find_path(book, name)) and _digest(path) == name:
            return _keep(book, name, path, via, now)  # it came, and its row did not: the server was killed in between
        if here.has > total:
            _part(book, name).unlink()  # of another length: begun anew
            here = Here(0, is_whole=False)
        if here.has != at or not piece:
            return here
        part = _part(book, name)
        try:
            _make_folder(part.parent)
            if shutil.disk_usage(part.parent).free < FREE_LEAST + total - at:
                raise BookError(_NO_ROOM)
            with os.fdopen(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600), "ab") as file:
                file.write(piece)
            if at + len(piece) < total:
                return Here(at + len(piece), is_whole=False)
            return _keep(book, name, _finish(book, name, part), via, now)
        except OSError as error:
            raise BookError(f"The picture could not be kept: {error.strerror}. Look at the server's disk.") from error


def take_whole(book: Book, name: str, content: bytes, *, via: str, now: datetime) -> Here:
    """Take a whole file at once, in the place of whatever had come of it so far."""
    _part(book, name).unlink(missing_ok=True)
    return take_piece(book, name, 0, len(content), content, via=via, now=now)


def adopt(book: Book, name: str, source: Path, *, via: str, now: datetime) -> bool:
    """Copy a file of this digest out of another folder; say whether it was whole. Its entry must be in the book."""
    if not source.is_file() or _digest(source) != name:
        return False
    path = path_in(folder_of(book), name)
    if not path.is_file() or _digest(path) != name:
        _make_folder(path.parent)
        aside = path.with_name(f"{name}.new")
        shutil.copyfile(source, aside)
        aside.chmod(0o600)
        with aside.open("rb+") as file:
            sync_file(file)
        aside.replace(path)
        sync_folder(path.parent)
    if not find_file(book, name):
        _keep(book, name, path, via, now)
    return True


def thumb_of(book: Book, name: str) -> bytes | None:
    """Return a small picture of a picture, made once; None of what is no picture, or has not come."""
    file, path = find_file(book, name), find_path(book, name)
    if not file or not path or not file["type"].startswith("image/"):
        return None
    thumb = path_in(folder_of(book) / _THUMBS, name)
    if thumb.is_file():
        return thumb.read_bytes()
    try:
        made = make_thumb(path)
    except Refused:
        return None  # damaged since: verify says so
    try:
        _make_folder(thumb.parent)
        write_whole(thumb, made)
    except OSError:
        pass  # a full disk: it is made anew the next time
    return made


def walk_files(book: Book) -> Iterator[File]:
    """Yield every file that has come, by digest."""
    yield from book.rows(File, "SELECT * FROM enclosures ORDER BY sha256")


def verify(book: Book) -> list[str]:
    """Return a sentence for each file that is lost or is not what its digest says. Reads all of them."""
    troubles = []
    for file in walk_files(book):
        path = path_in(folder_of(book), file["sha256"])
        short = file["sha256"][:16]
        if not path.is_file():
            troubles.append(f"The picture or paper {short}… came {file['arrived_at'][:10]} and is lost from {FOLDER}.")
        elif path.stat().st_size != file["size"] or _digest(path) != file["sha256"]:
            troubles.append(f"The picture or paper {short}… is no longer as it came. Fetch it from a backup.")
    return troubles


def count_lost(book: Book) -> int:
    """Return how many files that have come once are not in the folder."""
    return sum(find_path(book, file["sha256"]) is None for file in walk_files(book))


def sweep(book: Book) -> None:
    """Let go what came of files whose sender has not gone on for a month."""
    for part in (folder_of(book) / _COMING).glob("*"):
        if time.time() - part.stat().st_mtime > _COMING_KEPT_S:
            part.unlink(missing_ok=True)


def _refuse_unnamed(book: Book, name: str) -> None:
    if not is_digest(name) or not is_named(book, name):
        raise NotNamed("No entry of the book names this picture yet. Hand in its entry first.")


def _finish(book: Book, name: str, part: Path) -> Path:
    """Put a file that has come to its end under its name; one that is not what it should be is thrown away."""
    try:
        if _digest(part) != name:
            raise Spoilt(_SPOILT)
        check_content(part)
    except BookError:
        part.unlink()
        raise
    with part.open("rb+") as file:
        sync_file(file)
    path = path_in(folder_of(book), name)
    _make_folder(path.parent)
    part.replace(path)
    sync_folder(path.parent)
    return path


def _keep(book: Book, name: str, path: Path, via: str, now: datetime) -> Here:
    sort, size = check_content(path), path.stat().st_size
    with book.write() as database:
        database.conn.execute(
            "INSERT OR IGNORE INTO enclosures VALUES (?, ?, ?, ?, ?)", (name, sort.type, size, utc_text(now), via)
        )
    return Here(size, is_whole=True)


def _make_folder(folder: Path) -> None:
    if not folder.is_dir():
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        sync_folder(folder.parent)
        sync_folder(folder.parent.parent)


def _part(book: Book, name: str) -> Path:
    return folder_of(book) / _COMING / name


def _digest(path: Path) -> str:
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()
