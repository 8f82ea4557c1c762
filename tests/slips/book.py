"""A book that a season is handed in to by its real path, and copies of it before an entry."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from webapp.book.intake import hand_in
from webapp.book.opening import open_book
from webapp.book.record.store import Book

Asked = dict[tuple[str, str], str]  # (entry, code) -> weight


def tell(book: Book, entries: Sequence[dict[str, Any]], skew_s: float = 0.0) -> list[Any]:
    """Hand entries in, in batches; return the receipts of intake."""
    results: list[Any] = []
    for at in range(0, len(entries), 150):
        batch = list(entries[at : at + 150])
        typed = max(datetime.fromisoformat(entry["typed_at"]) for entry in batch)
        now = typed + timedelta(seconds=30) - timedelta(seconds=skew_s)
        told = {"now": (now + timedelta(seconds=skew_s)).isoformat(), "device": batch[-1]["device"], "entries": batch}
        results += hand_in(book, told, via="phone", now=now)["results"]
    return results


def asked(book: Book) -> Asked:
    """Return what the book now asks of its entries."""
    return {(row["entry"], row["name"]): row["weight"] for row in book.query("SELECT entry, name, weight FROM queries")}


@contextmanager
def copy_of(book: Book, path: Path) -> Iterator[Book]:
    """Give a copy of a book as it stands, opened, and throw it away afterwards."""
    with closing(sqlite3.connect(path)) as into:
        book.db.conn.backup(into)
    opened = open_book(path)
    try:
        yield opened
    finally:
        opened.close()
        for name in (path, path.with_name(path.name + "-wal"), path.with_name(path.name + "-shm")):
            name.unlink(missing_ok=True)
