"""Sessions that were ended: a copy of their cookie must open nothing any more."""

from __future__ import annotations

from datetime import datetime, timedelta

from webapp.book.house import people
from webapp.book.record.clock import utc_text
from webapp.book.record.log import sha256
from webapp.book.record.store import Book
from webapp.kinds.rows import PersonRow

# A session ends by itself after a day at most (signed_in.py); its end need not be remembered much longer.
KEPT = timedelta(days=2)


class _Asking(PersonRow):
    is_ended: int


def end_session(book: Book, session_sha256: str, now: datetime) -> None:
    """Note that a session has ended, by the SHA-256 of its id. `now` is aware."""
    with book.write() as database:
        database.conn.execute("DELETE FROM ended_sessions WHERE at < ?", (utc_text(now - KEPT),))
        database.conn.execute("INSERT OR IGNORE INTO ended_sessions VALUES (?, ?)", (session_sha256, utc_text(now)))


def find_person(book: Book, code: str, session_id: str) -> tuple[people.Person | None, str, bool]:
    """Return the person of a session, the stamp of their password, and whether somebody signed out of the session."""
    row = book.row(
        _Asking,
        "SELECT p.*, EXISTS (SELECT 1 FROM ended_sessions WHERE session_sha256 = ?) AS is_ended "
        "FROM people p WHERE p.code = ?",
        (sha256(session_id), code),
    )
    return (people.without_password(row) if row else None), people.stamp_of(row), bool(row and row["is_ended"])
