"""Taking an export into an empty data folder: the same entries, the same chain, the same fold to the byte."""

from __future__ import annotations

import json
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from webapp import __version__
from webapp.backups import BOOK_NAME
from webapp.book import verification
from webapp.book.enclosures import shelf
from webapp.book.fold import fold
from webapp.book.house import proof
from webapp.book.opening import open_book
from webapp.book.periods import closes
from webapp.book.record import log
from webapp.book.record.errors import BookError
from webapp.book.record.schema import REGISTRY_STATED
from webapp.book.record.store import Book
from webapp.keeping.export import FORMAT, MANIFEST, MARKER, enclosure_name, file_digest, fold_digest
from webapp.keeping.tables import ENTRIES, record_tables

ROWS_AT_ONCE = 500
_WANTED = {"format", "version", "entries", "last_digest", "fold_sha256", "rows", "files"}
# What a line can raise that no exporter wrote: of another shape, of figures without end, nested without end.
_UNREADABLE = (ValueError, TypeError, LookupError, AttributeError, ArithmeticError, RecursionError, sqlite3.Error)


def take_in(folder: Path, data_dir: Path) -> dict[str, object]:
    """Make a book of an export in an empty data folder, verified; return its book.json with `is_same_fold`.

    Nothing is left behind if it does not verify. Raises BookError with a sentence.
    """
    if data_dir.exists() and (not data_dir.is_dir() or any(data_dir.iterdir())):
        raise BookError(f"{data_dir} is not empty. Import into a new folder, then serve that one with --data.")
    manifest = _read_manifest(folder)
    data_dir.parent.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=data_dir.parent, prefix=".import-") as scratch:
        made = Path(scratch) / "data"
        made.mkdir(mode=0o700)
        with open_book(made / BOOK_NAME) as book:
            _fill(book, folder, manifest)
            _bring_enclosures(book, folder, manifest)
            manifest["is_same_fold"] = _look_over(book, manifest)
        if data_dir.exists():
            data_dir.rmdir()
        shutil.move(made, data_dir)
    return manifest


def _read_manifest(folder: Path) -> dict[str, object]:
    try:
        manifest = json.loads((folder / MANIFEST).read_text("utf-8"))
        if not isinstance(manifest, dict) or manifest.get("marker") != MARKER:
            raise BookError(f"{folder} is no export of a book. Name the folder that holds {MANIFEST}.")
        if not manifest.keys() >= _WANTED:
            raise BookError(f"{MANIFEST} of this export is not whole. Take another copy of the export.")
        if manifest["format"] > FORMAT:
            raise BookError("This export was written by a newer Cellarslate. Update the program, then import it.")
        for name, digest in manifest["files"].items():
            if name.startswith("tables/") and file_digest(_inside(folder, name)) != digest:
                raise BookError(f"{name} is not as it was written. Take another copy of the export.")
    except (OSError, *_UNREADABLE) as error:
        raise BookError(f"{folder} cannot be read as an export: {error}. Name the folder that holds it.") from error
    return manifest


def _inside(folder: Path, name: str) -> Path:
    path = (folder / name).resolve()
    if not path.is_relative_to(folder.resolve()):
        raise BookError(f"{name} leads out of the export. It is no export of ours.")
    if not path.is_file():  # a pipe would keep us waiting
        raise BookError(f"{name} is missing, or is no file. Take another copy of the export.")
    return path


def _fill(book: Book, folder: Path, manifest: dict[str, Any]) -> None:
    try:
        with book.write() as database:
            database.conn.execute("DELETE FROM settings WHERE name = ?", (REGISTRY_STATED,))  # as the export says
            for table, columns in record_tables(book).items():
                name = f"tables/{table}.jsonl"
                path = folder / name
                if name not in manifest["files"]:
                    if path.exists():  # nobody has looked at its sum
                        raise BookError(f"{name} is not in {MANIFEST}. Take another copy of the export.")
                    continue  # a table that the exporting program did not know
                marks = ", ".join(f":{column}" for column in columns)
                sql = f"INSERT OR REPLACE INTO {table} ({', '.join(columns)}) VALUES ({marks})"  # noqa: S608
                for rows in _in_parts(path, table, columns):
                    database.conn.executemany(sql, rows)
                (count,) = database.conn.execute(f"SELECT count(*) FROM {table}").fetchone()  # noqa: S608
                if count != manifest["rows"][table]:
                    raise BookError(f"{name} lacks lines, or has one twice. Take another copy of the export.")
            _refuse(_proofs(book, manifest))  # before it is folded: the fold believes the log
            fold.rebuild(book)
            proof.state_registry(book)
    except _UNREADABLE as error:
        raise BookError(f"A line of the export cannot be read: {error}. Take another copy of it.") from error


def _bring_enclosures(book: Book, folder: Path, manifest: dict[str, Any]) -> None:
    """Copy the pictures and papers; what the exporting book had lost is lost here too."""
    for file in shelf.walk_files(book):
        name = enclosure_name(file)
        if name not in manifest["files"]:
            continue
        if not shelf.adopt(book, file["sha256"], _inside(folder, name), via=file["via"], now=datetime.now(UTC)):
            raise BookError(f"{name} is not as it was written. Take another copy of the export.")


def _in_parts(path: Path, table: str, columns: list[str]) -> Iterator[list[dict[str, object]]]:
    part: list[dict[str, object]] = []
    with path.open(encoding="utf-8") as file:
        for line in file:
            row = json.loads(line)
            if table == ENTRIES:
                row["body"] = log.canonical(row["body"])
            part.append(dict.fromkeys(columns) | row)
            if len(part) >= ROWS_AT_ONCE:
                yield part
                part = []
    yield part


def _proofs(book: Book, manifest: dict[str, object]) -> list[str]:
    """Return sentences about faults of the record, before anything is folded from it."""
    troubles = log.verify(book) + closes.verify(book)
    if [manifest["entries"], manifest["last_digest"]] != list(log.load_head(book)):
        troubles.append(f"Its last entry is not the one that {MANIFEST} names.")
    return troubles


def _look_over(book: Book, manifest: dict[str, object]) -> bool:
    """Return whether the fold equals the exported one; raise BookError where accounts or chain do not add up."""
    troubles = verification.verify(book)
    is_same: bool = fold_digest(book) == manifest["fold_sha256"]
    if not is_same and manifest["version"] == __version__:
        troubles.append("Stock and queries do not come out as they were.")
    _refuse(troubles)
    return is_same


def _refuse(troubles: list[str]) -> None:
    if troubles:
        raise BookError(f"The export does not verify, and nothing was imported. {troubles[0]}")
