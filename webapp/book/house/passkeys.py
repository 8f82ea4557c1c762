"""Passkeys: public keys by which people sign in at the desk; the private half never leaves the device that holds it.

A key that was ended stays in its row, with the day it ended, and opens nothing. Each is also on the record of changes,
which the registry is held against, so that none can be planted or revived behind the book's back.
"""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime
from typing import TypedDict

from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

NAME_MOST = 40
PASSKEYS_MOST = 10  # open ones of one person
_MOVES = ("sign_count", "used_at")  # with each use: of these nothing is noted


class Passkey(TypedDict):
    """A passkey. credential: its id; public_key: COSE, both base64url; rp_id: the host name it is good at; UTC times.

    sign_count: what the device said of its uses; many devices always say 0.
    """

    credential: str
    person: str
    name: str
    public_key: str
    sign_count: int
    rp_id: str
    made_at: str
    used_at: str | None
    ended_at: str | None


def add_passkey(
    book: Book, code: str, name: str, credential: str, public_key: str, sign_count: int, rp_id: str, now: datetime
) -> None:
    """Keep a new passkey of a person. `now` is aware. BookError where they have too many, or it is known."""
    row: Passkey = {
        "credential": credential, "person": code, "name": name.strip()[:NAME_MOST] or "Passkey",
        "public_key": public_key, "sign_count": sign_count, "rp_id": rp_id, "made_at": utc_text(now), "used_at": None,
        "ended_at": None,
    }
    with book.write() as database:
        if len(passkeys_of(book, code)) >= PASSKEYS_MOST:
            raise BookError(f"{PASSKEYS_MOST} passkeys are the most for one person. End one that is not used.")
        if book.one("SELECT 1 FROM passkeys WHERE credential = ?", (credential,)):
            raise BookError("The book has this passkey already. Make another one.")
        database.conn.execute(
            "INSERT INTO passkeys (credential, person, name, public_key, sign_count, rp_id, made_at) "
            "VALUES (:credential, :person, :name, :public_key, :sign_count, :rp_id, :made_at)", row,
        )
        note_change(book, code, "passkey", credential, None, held(row), now)


def passkeys_of(book: Book, code: str) -> list[Passkey]:
    """Return the open passkeys of a person, the oldest first."""
    return book.rows(
        Passkey, "SELECT * FROM passkeys WHERE person = ? AND ended_at IS NULL ORDER BY made_at, credential", (code,)
    )


def open_passkey(book: Book, credential: str) -> Passkey | None:
    """Return the passkey with this id; None where there is none, it was ended, or its person has left."""
    return book.row(
        Passkey,
        "SELECT k.* FROM passkeys k JOIN people p ON p.code = k.person "
        "WHERE k.credential = ? AND k.ended_at IS NULL AND p.retired = 0", (credential,),
    )


def note_use(book: Book, credential: str, sign_count: int, now: datetime) -> bool:
    """Note that a passkey was used; say whether it still may be. `now` is aware.

    Not where it was ended meanwhile, or another use with this count or a larger one came before.
    """
    with book.write() as database:
        done = database.conn.execute(
            "UPDATE passkeys SET sign_count = :count, used_at = :at WHERE credential = :credential "
            "AND ended_at IS NULL AND (:count > sign_count OR (:count = 0 AND sign_count = 0))",
            {"count": sign_count, "at": utc_text(now), "credential": credential},
        )
        return bool(done.rowcount)


def end_passkey(book: Book, code: str, credential: str, by: str, now: datetime) -> Passkey | None:
    """End a passkey of a person for good; return it, or None where they have none with this id. `now` is aware."""
    with book.write() as database:
        found = next((one for one in passkeys_of(book, code) if one["credential"] == credential), None)
        if found:
            at = utc_text(now)
            database.conn.execute("UPDATE passkeys SET ended_at = ? WHERE credential = ?", (at, credential))
            note_change(book, by, "passkey", credential, held(found), held(found) | {"ended_at": at}, now)
        return found


def end_passkeys(book: Book, code: str, by: str, now: datetime | None = None) -> int:
    """End every passkey of a person; return how many there were. `now` is aware; None: now."""
    with book.write():
        ended = [end_passkey(book, code, one["credential"], by, now or datetime.now(UTC))
                 for one in passkeys_of(book, code)]
    return len(ended)


def all_passkeys(book: Book) -> list[Passkey]:
    """Return every passkey, those that were ended too, by their ids."""
    return book.rows(Passkey, "SELECT * FROM passkeys ORDER BY credential")


def held(row: Passkey) -> dict[str, object]:
    """Return the columns that the record of changes holds: all but those that move with each use."""
    return {name: value for name, value in row.items() if name not in _MOVES}


def user_handle(book: Book, code: str) -> bytes:
    """Return the 32 bytes by which a person's devices know them: of this book, and with nothing about them inside.

    WebAuthn Level 3, 14.6.1: a handle holds no name.
    """
    row = book.one("SELECT value FROM settings WHERE name = 'book_id'")
    return hashlib.sha256(f"passkeys of {(row or {}).get('value')}: {code}".encode()).digest()
