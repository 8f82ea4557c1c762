"""Where somebody is signed in: a list to look at, of which each can be ended. The cookie itself is signed elsewhere."""

from __future__ import annotations

import logging
import sqlite3
from datetime import datetime, timedelta
from pathlib import Path
from typing import TypedDict

from webapp.book.house.beside import opened
from webapp.book.record.clock import utc_text
from webapp.book.record.log import sha256

IDLE = timedelta(hours=12)
# However much it is used, a session ends after a day. An absolute end: OWASP ASVS 5.0.0, 7.3.2; its length is ours.
ABSOLUTE = timedelta(hours=24)
_BROWSER_MOST = 120


class Session(TypedDict):
    """A session on the list. sha256: of its id; times in UTC; origin: the network address it began from."""

    sha256: str
    began_at: str
    seen_at: str
    origin: str
    browser: str


def begin(data_dir: Path, session_id: str, person: str, now: datetime, origin: str, browser: str) -> None:
    """Put a new session on the list. `now` is aware. A list that cannot be written keeps nobody out."""
    at = utc_text(now)
    try:
        with opened(data_dir) as conn:
            conn.execute("DELETE FROM sessions WHERE began_at < ?", (utc_text(now - ABSOLUTE),))
            conn.execute(
                "INSERT OR REPLACE INTO sessions VALUES (?, ?, ?, ?, ?, ?)",
                (sha256(session_id), person, at, at, origin, browser[:_BROWSER_MOST]),
            )
    except (sqlite3.Error, OSError) as error:
        logging.getLogger(__name__).warning("The list of sessions could not be written: %s.", error)


def seen(data_dir: Path, session_id: str, now: datetime) -> None:
    """Note that a session was used. `now` is aware. Never raises for a disk in trouble."""
    try:
        with opened(data_dir) as conn:
            conn.execute(
                "UPDATE sessions SET seen_at = ? WHERE session_sha256 = ?", (utc_text(now), sha256(session_id))
            )
    except (sqlite3.Error, OSError) as error:
        logging.getLogger(__name__).warning("The list of sessions could not be written: %s.", error)


def listed(data_dir: Path, person: str, now: datetime) -> list[Session]:
    """Return a person's sessions that may still be open, the last used first. `now` is aware."""
    with opened(data_dir) as conn:
        rows = conn.execute(
            "SELECT session_sha256, began_at, seen_at, origin, browser FROM sessions "
            "WHERE person = ? AND seen_at >= ? AND began_at >= ? ORDER BY seen_at DESC, session_sha256",
            (person, utc_text(now - IDLE), utc_text(now - ABSOLUTE)),
        ).fetchall()
    return [
        {"sha256": digest, "began_at": began, "seen_at": used, "origin": origin, "browser": browser}
        for digest, began, used, origin, browser in rows
    ]


def take_off(data_dir: Path, session_sha256: str) -> None:
    """Take a session off the list, because it was ended. Never raises for a disk in trouble."""
    try:
        with opened(data_dir) as conn:
            conn.execute("DELETE FROM sessions WHERE session_sha256 = ?", (session_sha256,))
    except (sqlite3.Error, OSError) as error:
        logging.getLogger(__name__).warning("The list of sessions could not be written: %s.", error)


def name_of(browser: str) -> str:
    """Return in words what a browser says of itself, such as "Firefox, Windows"; it may say what it likes."""
    kinds = (("Edg/", "Edge"), ("Firefox/", "Firefox"), ("Chrome/", "Chrome"), ("CriOS/", "Chrome"),
             ("FxiOS/", "Firefox"), ("Safari/", "Safari"))
    systems = (("Android", "Android"), ("iPhone", "iPhone"), ("iPad", "iPad"), ("Windows", "Windows"),
               ("Macintosh", "Mac"), ("Linux", "Linux"))
    said = [next((words for sign, words in group if sign in browser), "") for group in (kinds, systems)]
    return ", ".join(word for word in said if word) or "unknown browser"
