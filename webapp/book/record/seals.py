"""A running digest over the records beside the log: what was refused, and what was changed in the registry.

Each new row carries the digest on, so that a row taken out, put between or written over behind the book's back is
found. It has no key: whoever rewrites the file can rewrite this too, as the chain of the log.
"""

from __future__ import annotations

import hashlib
import json

from webapp.book.record.store import Book

FIRST = "0" * 64
_NAMES = {"changes": "changes", "aside": "refused and clashing entries"}
_ROWS = {
    "changes": "SELECT no, at, person, what, key, before, after FROM changes WHERE no > ? ORDER BY no",
    "aside": "SELECT no, id, device, seq, settled, body_sha256, problems, received_at, via FROM aside WHERE no > ? "
             "ORDER BY no",
}


def carry_on(book: Book, table: str) -> None:
    """Take the rows since the last time into the digest; inside the write that has put them in."""
    last, digest = _load(book, table) or (0, FIRST)
    last, digest = _over(book, table, last, digest)
    book.db.conn.execute(
        "INSERT OR REPLACE INTO settings VALUES (?, ?)", (f"seal_{table}", json.dumps([last, digest]))
    )


def verify(book: Book) -> list[str]:
    """Return a sentence for each of the two records that is not what it was; none where no row was ever sealed."""
    troubles = []
    for table, name in _NAMES.items():
        kept = _load(book, table)
        if kept and _over(book, table, 0, FIRST) != kept:
            troubles.append(f"The record of {name} is not what it was: a line was changed or taken out.")
    return troubles


def _over(book: Book, table: str, last: int, digest: str) -> tuple[int, str]:
    for row in book.db.conn.execute(_ROWS[table], (last,)):
        text = json.dumps([digest, *row], ensure_ascii=False, separators=(",", ":"))
        last, digest = row[0], hashlib.sha256(text.encode()).hexdigest()
    return last, digest


def _load(book: Book, table: str) -> tuple[int, str] | None:
    found = book.db.conn.execute("SELECT value FROM settings WHERE name = ?", (f"seal_{table}",)).fetchone()
    if found is None:
        return None
    last, digest = json.loads(found[0])
    return int(last), str(digest)
