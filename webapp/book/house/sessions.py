"""Sessions that were ended: a copy of their cookie must open nothing any more."""

from __future__ import annotations

from datetime import datetime, timedelta

from webapp.book.record.clock import utc_text
from webapp.book.record.log import sha256
from webapp.book.record.store import Book

# A session that is not used dies by itself after twelve hours; its end need not be remembered much longer.
KEPT = timedelta(days=2)


def end(book: Book, session_id: str, now: datetime) -> None:
    """Note that this session has been signed out of. `now` is aware."""
    with book.write() as database:
        database.conn.execute("DELETE FROM ended_sessions WHERE at < ?", (utc_text(now - KEPT),))
        database.conn.execute("INSERT OR IGNORE INTO ended_sessions VALUES (?, ?)", (sha256(session_id), utc_text(now)))


def is_ended(book: Book, session_id: str) -> bool:
    """Say whether somebody signed out of this session."""
    return book.one("SELECT 1 FROM ended_sessions WHERE session_sha256 = ?", (sha256(session_id),)) is not None
