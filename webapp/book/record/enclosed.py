"""Which entries name which enclosures: pictures, papers and voice notes, by the SHA-256 of their bytes.

An entry names them in its `enclosed`, which is part of its body, its digest and its signature. The files come later,
and lie beside the book (book/enclosures).
"""

from __future__ import annotations

from webapp.book.record.store import Book
from webapp.book.record.upcast import stored_mark
from webapp.kinds.entry import Entry

ADDED = "enclosure"  # the kind whose entries speak of another one


def note_enclosed(book: Book, entry: Entry) -> None:
    """Note the enclosures that an entry names, inside a write: each once."""
    mark = stored_mark(entry.get("mark") or "") or ""
    rows = [(entry["id"], name, about_of(entry), mark) for name in entry.get("enclosed", ())]
    book.db.conn.executemany("INSERT OR IGNORE INTO enclosed VALUES (?, ?, ?, ?)", rows)


def about_of(entry: Entry) -> str:
    """Return the id of the entry that the enclosures of an entry belong to."""
    if entry["kind"] != ADDED:
        return entry["id"]
    named = entry["values"].get("entry") or {}
    return str(named.get("raw") or "").strip().lower()
