"""Invitations: a link, shown once and good once, by which a person sets a password that nobody else knows."""

from __future__ import annotations

import secrets
from datetime import datetime, timedelta
from pathlib import Path

from webapp.book.house import passkeys, people
from webapp.book.house.beside import opened
from webapp.book.house.passwords import choose_password
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import sha256
from webapp.book.record.store import Book

GOOD_FOR = timedelta(days=3)
_TOKEN_BYTES = 32


def invite(book: Book, data_dir: Path, code: str, by: str, now: datetime) -> str:
    """Return a token for the person of this code; earlier ones of theirs are void. BookError where there is nobody.

    Only its SHA-256 is kept. Their old password, if they have one, opens until the invitation is used. `now` is aware.
    """
    person = people.person(book, code)
    if person is None or person["retired"]:
        raise BookError(f"There is nobody with the code {code[:people.CODE_MOST]} to be invited. Add them first.")
    token = secrets.token_urlsafe(_TOKEN_BYTES)
    with opened(data_dir) as conn:
        conn.execute("DELETE FROM invitations WHERE person = ? OR until < ?", (person["code"], utc_text(now)))
        conn.execute("INSERT INTO invitations VALUES (?, ?, ?, ?)",
                     (sha256(token), person["code"], by, utc_text(now + GOOD_FOR)))
    return token


def invited(book: Book, data_dir: Path, token: str, now: datetime) -> people.Person | None:
    """Return whom a token invites, or None where it is none, was used, or has ended. `now` is aware."""
    with opened(data_dir) as conn:
        row = conn.execute("SELECT person FROM invitations WHERE token_sha256 = ? AND until >= ?",
                           (sha256(token), utc_text(now))).fetchone()
    person = people.person(book, row[0]) if row else None
    return person if person and not person["retired"] else None


def accept(book: Book, data_dir: Path, token: str, password: str, now: datetime) -> people.Person:
    """Set the password of whom the token invites, and use the token up. `now` is aware.

    BookError where the token is not good any more, or the password is refused; then the token stays good. Sessions
    under the old password end, and passkeys too: whoever has lost one is invited anew.
    """
    with opened(data_dir) as conn:  # one at a time: of two who come with the same token, the second finds it used
        row = conn.execute("SELECT person FROM invitations WHERE token_sha256 = ? AND until >= ?",
                           (sha256(token), utc_text(now))).fetchone()
        person = people.person(book, row[0]) if row else None
        if person is None or person["retired"]:
            raise BookError("This invitation was used, has ended, or was replaced. Ask the office for a new one.")
        with book.write():
            choose_password(book, person["code"], password, by=person["code"])
            passkeys.end_passkeys(book, person["code"], person["code"], now)
        conn.execute("DELETE FROM invitations WHERE token_sha256 = ?", (sha256(token),))
    return person


def open_invitations(data_dir: Path, now: datetime) -> dict[str, str]:
    """Return until when each person is invited, by their code. `now` is aware."""
    with opened(data_dir) as conn:
        return dict(conn.execute("SELECT person, until FROM invitations WHERE until >= ?", (utc_text(now),)).fetchall())
