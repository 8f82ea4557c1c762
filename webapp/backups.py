"""A backup is one zip file: a consistent copy of the book, and the keys that phones and sessions know."""

import os
import shutil
import tempfile
import zipfile
from pathlib import Path

from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.backup import backup as copy_book
from webapp.book.record.errors import BookError

BOOK_NAME = "book.sqlite"
# Beside the book: without these, phones would have to trust a new certificate and people to sign in again.
_KEYS = ("session.key", "tls/authority.pem", "tls/authority.key", "tls/server.pem", "tls/server.key")


def write_backup(data_dir: Path, file_path: Path) -> int:
    """Write the backup, verified, and return how many entries it holds. The server may go on meanwhile.

    Raises BookError with a sentence if there is no book, the file exists or its folder does not, or the copy does not
    verify.
    """
    if not (data_dir / BOOK_NAME).is_file():
        raise BookError(f"There is no book in {data_dir}. Name its folder with --data.")
    if file_path.exists():
        raise BookError(f"{file_path} exists already and is left as it is. Give the backup another name.")
    if not file_path.parent.is_dir():
        raise BookError(f"There is no folder {file_path.parent}. Make it, or put in the disk, then back up again.")
    with tempfile.TemporaryDirectory(dir=file_path.parent, prefix=".backup-") as folder:
        copy_path = Path(folder) / BOOK_NAME
        with open_book(data_dir / BOOK_NAME) as book:
            copy_book(book, copy_path)
        with open_book(copy_path) as copy:
            entry_count = log.load_head(copy)[0]
        archive_path = Path(folder) / "archive.zip"
        with zipfile.ZipFile(archive_path, "w", zipfile.ZIP_DEFLATED) as archive:
            archive.write(copy_path, BOOK_NAME)
            for name in _KEYS:
                if (data_dir / name).is_file():
                    archive.write(data_dir / name, name)
        # It holds keys.
        archive_path.chmod(0o600)
        with archive_path.open("rb+") as file:
            os.fsync(file.fileno())
        archive_path.replace(file_path)
    return entry_count


def restore_backup(file_path: Path, data_dir: Path) -> int:
    """Put a backup into an empty data folder, verify it there, and return how many entries it holds.

    Nothing is left behind if it does not verify. Phones hand in again what this book has not got.
    """
    if data_dir.exists() and any(data_dir.iterdir()):
        raise BookError(
            f"{data_dir} is not empty. Restore into a new folder, then serve that one with --data."
        )
    data_dir.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=data_dir.parent, prefix=".restore-") as folder:
        restored = Path(folder) / "data"
        _unpack(file_path, restored)
        entry_count = _verify(restored / BOOK_NAME)
        if data_dir.exists():
            data_dir.rmdir()
        shutil.move(restored, data_dir)
    return entry_count


def _verify(path: Path) -> int:
    with open_book(path) as book:
        (answer,) = book.db.conn.execute("PRAGMA integrity_check(1)").fetchone()
        troubles = [] if answer == "ok" else [f"The file is damaged: {answer}."]
        troubles += log.verify(book)
        entry_count = log.load_head(book)[0]
    if troubles:
        raise BookError(f"The copy does not verify. {troubles[0]}")
    return entry_count


def _unpack(file_path: Path, folder: Path) -> None:
    try:
        with zipfile.ZipFile(file_path) as archive:
            names = set(archive.namelist())
            if BOOK_NAME not in names:
                raise BookError(f"{file_path} is no backup of a book: it holds no {BOOK_NAME}.")
            for name in (BOOK_NAME, *_KEYS):
                if name in names:
                    archive.extract(name, folder)
    except (zipfile.BadZipFile, OSError) as error:
        raise BookError(f"{file_path} cannot be read as a backup: {error}.") from error
    for path in folder.rglob("*"):
        path.chmod(0o700 if path.is_dir() else 0o600)
