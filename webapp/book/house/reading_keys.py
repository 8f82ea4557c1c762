"""Keys for other tools: each reads named parts of the book until a day, changes nothing, and is shown once.

A key has 256 random bits and is kept as its SHA-256 alone. Keys stand beside the book: no backup holds them, and
after a restore they are made anew.
"""

from __future__ import annotations

import secrets
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from webapp.book.house.beside import opened
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import sha256

SCOPES = ("entries", "stock", "periods", "trace", "cards", "calendar")
NAME_MOST = 40
DAYS_MOST = 731  # a key for ever is forgotten and goes on opening
KEYS_MOST = 100
_BEGINS = "reads-"  # so that whoever finds one somewhere knows what it is
_USED_EVERY = timedelta(minutes=5)


@dataclass(frozen=True, slots=True)
class ReadingKey:
    """A key: its number, the tool's name, what it reads, from when until when, and when it last did. UTC texts."""

    no: int
    name: str
    scopes: tuple[str, ...]
    made_by: str
    made_at: str
    until: str
    used_at: str


def make_key(data_dir: Path, name: str, scopes: Iterable[str], days: int, by: str, now: datetime) -> str:
    """Return a new key, which is shown this once. `now` is aware.

    BookError with what to do where the name is missing or long, nothing or something unknown is to be read, `days` is
    not within 1 and DAYS_MOST, or there are KEYS_MOST keys already.
    """
    name, wanted = name.strip(), tuple(one for one in SCOPES if one in set(scopes))
    if not name or len(name) > NAME_MOST or not name.isprintable():
        raise BookError(f"Name the tool that will read, in at most {NAME_MOST} characters.")
    if not wanted or set(scopes) - set(SCOPES):
        raise BookError("Tick what the tool may read.")
    if not 1 <= days <= DAYS_MOST:
        raise BookError(f"A key is good for 1 to {DAYS_MOST} days.")
    secret = _BEGINS + secrets.token_urlsafe(32)
    line = (sha256(secret), name, " ".join(wanted), by, utc_text(now), utc_text(now + timedelta(days=days)), "")
    with opened(data_dir) as conn:
        if conn.execute("SELECT count(*) FROM reading_keys").fetchone()[0] >= KEYS_MOST:
            raise BookError(f"There are {KEYS_MOST} keys already. End those that nobody uses.")
        conn.execute(
            "INSERT INTO reading_keys (key_sha256, name, scopes, made_by, made_at, until, used_at)"
            " VALUES (?, ?, ?, ?, ?, ?, ?)",
            line,
        )
    return secret


def find_key(data_dir: Path, secret: str, now: datetime) -> ReadingKey | None:
    """Return the key that a tool shows, or None where it is none, has ended or was ended. `now` is aware."""
    if not secret.isascii() or len(secret) > len(_BEGINS) + 64:
        return None
    with opened(data_dir) as conn:
        row = conn.execute(f"{_SELECT} WHERE key_sha256 = ? AND until >= ?", (sha256(secret), utc_text(now))).fetchone()
        found = _key(row) if row else None
        if found and found.used_at < utc_text(now - _USED_EVERY):
            conn.execute("UPDATE reading_keys SET used_at = ? WHERE no = ?", (utc_text(now), found.no))
    return found


def keys(data_dir: Path) -> list[ReadingKey]:
    """Return the keys that were not ended by hand, the newest first; those whose day has passed among them."""
    with opened(data_dir) as conn:
        return [_key(row) for row in conn.execute(f"{_SELECT} ORDER BY no DESC")]


def end_key(data_dir: Path, no: int) -> str | None:
    """End a key at once; return the name of its tool, or None where there is no such key."""
    with opened(data_dir) as conn:
        row = conn.execute("DELETE FROM reading_keys WHERE no = ? RETURNING name", (no,)).fetchone()
    return row[0] if row else None


_SELECT = "SELECT no, name, scopes, made_by, made_at, until, used_at FROM reading_keys"


def _key(row: tuple[int, str, str, str, str, str, str]) -> ReadingKey:
    no, name, scopes, *rest = row
    return ReadingKey(no, name, tuple(scopes.split()), *rest)
