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

BATCH_MOST = 150
HANDED_IN_WITHIN = timedelta(days=2)
Asked = dict[tuple[str, str], str]  # (entry, code) -> weight


def tell(book: Book, entries: Sequence[dict[str, Any]], skew_s: float = 0.0) -> list[Any]:
    """Hand entries in, in batches, each within two days of its typing; return the receipts of intake."""
    results: list[Any] = []
    for batch in _batches(entries):
        typed = max(datetime.fromisoformat(entry["typed_at"]) for entry in batch)
        now = typed + timedelta(seconds=30) - timedelta(seconds=skew_s)
        told = {"now": (now + timedelta(seconds=skew_s)).isoformat(), "device": batch[-1]["device"], "entries": batch}
        results += hand_in(book, told, via="phone", now=now)["results"]
    return results


def _batches(entries: Sequence[dict[str, Any]]) -> Iterator[list[dict[str, Any]]]:
    batch: list[dict[str, Any]] = []
    for entry in entries:
        times = [datetime.fromisoformat(one["typed_at"]) for one in (*batch, entry)]
        if batch and (len(batch) == BATCH_MOST or max(times) - min(times) > HANDED_IN_WITHIN):
            yield batch
            batch = []
        batch.append(entry)
    if batch:
        yield batch


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
