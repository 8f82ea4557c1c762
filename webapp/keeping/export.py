"""The whole book as open files: JSON lines of its record, a CSV for each kind, a README, no secret.

What is written here can be read without this program, and taken into an empty book again (take_in.py).
"""

from __future__ import annotations

import csv
import hashlib
import json
import shutil
import tempfile
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import webapp.kinds
from webapp import __version__
from webapp.book.enclosures import shelf
from webapp.book.enclosures.content import SORTS
from webapp.book.fold import fold, queries, row_reader, unjudged
from webapp.book.intake import book_id
from webapp.book.opening import open_book
from webapp.book.record import log
from webapp.book.record.backup import backup as copy_book
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.durable import sync_below
from webapp.keeping.readme import README
from webapp.keeping.tables import ENTRIES, primary_key, record_tables
from webapp.kinds import as_data
from webapp.kinds.spec import Kind

MARKER = "cellarslate-export"
FORMAT = 1
MANIFEST = "book.json"


def export_book(book_path: Path, folder: Path) -> dict[str, object]:
    """Write the book to a new folder; return what book.json says. The server may go on meanwhile.

    Raises BookError with a sentence if the folder is not empty or cannot be written.
    """
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise BookError(f"{folder} is not empty. Name a new folder for the export.")
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=folder.parent, prefix=".export-") as scratch:
            # A copy is the book as of one moment.
            with open_book(book_path) as book:
                copy_book(book, Path(scratch) / "book.sqlite")
            made = Path(scratch) / "export"
            (made / "tables").mkdir(parents=True)
            (made / "csv").mkdir()
            with open_book(Path(scratch) / "book.sqlite") as book:
                unjudged.judge_all(book)
                manifest = _write(book, made, book_path.parent / shelf.FOLDER)
            if folder.exists():
                folder.rmdir()
            shutil.move(made, folder)
            sync_below(folder)
    except OSError as error:
        raise BookError(f"The export could not be written: {error}. Look at the disk and its rights.") from error
    return manifest


def fold_digest(book: Book) -> str:
    """Return the SHA-256 of the whole fold. [64 hexadecimal digits]"""
    return hashlib.sha256(fold.dump(book)).hexdigest()


def _write(book: Book, folder: Path, enclosures: Path) -> dict[str, object]:
    counts = {table: _write_table(book, table, columns, folder) for table, columns in record_tables(book).items()}
    for kind in webapp.kinds.ALL:
        _write_csv(book, kind, folder / "csv" / f"{kind.name}.csv")
    _write_enclosures(book, enclosures, folder)
    (folder / "README.txt").write_text(README, "utf-8", newline="\n")
    entry_count, digest = log.load_head(book)
    manifest = {
        "marker": MARKER, "format": FORMAT, "version": __version__, "written_at": utc_text(datetime.now(UTC)),
        "book_id": book_id(book), "entries": entry_count, "last_digest": digest, "fold_sha256": fold_digest(book),
        "rows": counts,
        "files": {f.relative_to(folder).as_posix(): file_digest(f) for f in sorted(folder.rglob("*")) if f.is_file()},
    }
    (folder / MANIFEST).write_text(json.dumps(manifest, indent=1) + "\n", "utf-8", newline="\n")
    return manifest


def _write_enclosures(book: Book, enclosures: Path, folder: Path) -> None:
    for file in shelf.walk_files(book):
        path = shelf.path_in(enclosures, file["sha256"])
        if path.is_file():  # one that is lost is told by verify
            (folder / shelf.FOLDER).mkdir(exist_ok=True)
            shutil.copyfile(path, folder / enclosure_name(file))


def enclosure_name(file: shelf.File) -> str:
    """Return the name of a picture or paper in an export."""
    return f"{shelf.FOLDER}/{file['sha256']}.{SORTS[file['type']].ending}"


def file_digest(path: Path) -> str:
    """Return the SHA-256 of a file. [64 hexadecimal digits]"""
    with path.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _write_table(book: Book, table: str, columns: list[str], folder: Path) -> int:
    count = 0
    with (folder / "tables" / f"{table}.jsonl").open("w", encoding="utf-8", newline="\n") as file:
        for row in _rows(book, table, columns):
            if table == ENTRIES:
                row["body"] = json.loads(row["body"])
            file.write(json.dumps(row, ensure_ascii=False, separators=(",", ":")) + "\n")
            count += 1
    return count


def _rows(book: Book, table: str, columns: list[str]) -> Iterator[dict[str, Any]]:
    # Names of our own schema, not of anybody's typing.
    cursor = book.db.conn.execute(f"SELECT {', '.join(columns)} FROM {table} ORDER BY {primary_key(book, table)}")  # noqa: S608
    for row in cursor:
        yield dict(zip(columns, row, strict=True))


def _write_csv(book: Book, kind: Kind, path: Path) -> None:
    with path.open("w", encoding="utf-8-sig", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(as_data.csv_heads(kind))
        for rows in log.walk_pages(book, kind=kind.name):
            asked = queries.queries_by_entry(book, [row["id"] for row in rows])
            for row, read in zip(rows, row_reader.read_all_as_folded(book, rows), strict=True):
                if read:
                    codes = " ".join(query["code"] for query in asked.get(row["id"], []))
                    writer.writerow(as_data.csv_row(kind, read, {**row, "queries": codes}))
