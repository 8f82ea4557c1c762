"""Who uses which phone: people who have typed their PIN there. Only those phones hold what their PIN is looked at by.

A PIN is looked at by the book the first time, with a signal; from then on by the phone, without one.
"""

from __future__ import annotations

from datetime import datetime

from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book


def note_shown(book: Book, device_id: str, code: str, now: datetime) -> None:
    """Note that a person has typed their PIN on a phone. `now` is aware. The first time counts."""
    with book.write() as database:
        done = database.conn.execute(
            "INSERT OR IGNORE INTO hands (device, person, since) VALUES (?, ?, ?)", (device_id, code, utc_text(now))
        )
        if done.rowcount:
            note_change(book, code, "hand", f"{device_id} {code}", None, {"since": utc_text(now)}, now)


def load_hands(book: Book) -> set[tuple[str, str]]:
    """Return each phone with each person who has typed their PIN there."""
    return {(str(device), str(code)) for device, code in book.db.conn.execute("SELECT device, person FROM hands")}


def on_phone(book: Book, device_id: str) -> set[str]:
    """Return the codes of those who have typed their PIN on a phone."""
    rows = book.db.conn.execute("SELECT person FROM hands WHERE device = ?", (device_id,))
    return {str(row[0]) for row in rows}


def showing_phones(book: Book) -> set[str]:
    """Return the phones whose program says with each entry whether its person has shown themselves."""
    return {str(row[0]) for row in book.db.conn.execute("SELECT id FROM devices WHERE shows = 1")}
