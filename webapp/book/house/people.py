"""People: who may sign in at the desk, and who may be picked on a shared phone."""

from __future__ import annotations

import base64
import functools
import hashlib
import hmac
import json
import secrets
from collections.abc import Collection, Mapping
from functools import partial
from typing import Any, TypedDict

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError

from webapp.book.fold import unjudged
from webapp.book.house import passkeys
from webapp.book.house.hashing import in_turn
from webapp.book.record.changes import note_change
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book
from webapp.kinds.key import person_key
from webapp.kinds.rows import PersonRow

ACCESS = ("floor", "distiller", "office")
PASSWORD_LEAST, PASSWORD_MOST = 10, 200
# OWASP, "Password Storage Cheat Sheet": PBKDF2 with HMAC-SHA256, 600,000 (from memory). 0.2 to 1 s on a phone.
PIN_ROUNDS = 600_000
_MARK_DIGITS = 16
CODE_MOST = 12
PIN_MOST = 8
_hasher = PasswordHasher()


class Pin(TypedDict):
    """A short code as data that a phone can check: salt and hash in Base64."""

    salt: str
    rounds: int
    hash: str


class PersonOnPhone(TypedDict):
    """A person as phones get them."""

    code: str
    name: str
    roles: list[str]
    access: str
    pin: Pin | None
    has_pin: bool
    language: str


class Person(PersonOnPhone):
    """A person as the book's own pages see them."""

    has_password: bool
    retired: bool
    language: str


def people(book: Book, *, with_retired: bool = True) -> list[Person]:
    """Return people by code: code, name, roles, access, pin (data for phones or None), has_password, retired."""
    rows = book.rows(PersonRow, "SELECT * FROM people WHERE retired = 0 OR ? ORDER BY retired, code", (with_retired,))
    return [without_password(row) for row in rows]


def person(book: Book, code: str) -> Person | None:
    """Return a person by code, or None."""
    row = book.row(PersonRow, "SELECT * FROM people WHERE code = ?", (code,))
    return without_password(row) if row else None


def put_person(book: Book, row: Mapping[str, object], by: str) -> Person:
    """Add a person or change one; return them. BookError says what is wrong."""
    code = str(row.get("code") or "").strip().upper()
    if not code or len(code) > CODE_MOST or not code.isalnum():
        raise BookError(f"A person's code has 1 to {CODE_MOST} letters and digits, such as NS. Type it.")
    with book.write() as database:
        before = person(book, code)
        said: dict[str, Any] = {"name": code, "roles": [], "access": "floor", "retired": False}
        said |= (before or {}) | dict(row)
        if said["access"] not in ACCESS:
            raise BookError("Access is floor, distiller or office. Pick one.")
        after = {
            "code": code, "name": str(said["name"]).strip()[:80] or code, "access": said["access"],
            "roles": json.dumps([str(role)[:40] for role in said["roles"]][:20]), "retired": int(bool(said["retired"])),
        }
        database.conn.execute(
            "INSERT INTO people (code, name, roles, access, retired) VALUES (:code, :name, :roles, :access, :retired) "
            "ON CONFLICT (code) DO UPDATE SET name = :name, roles = :roles, access = :access, retired = :retired",
            after,
        )
        found = person(book, code)
        assert found is not None
        note_change(book, by, "person", code, before, found)
        if found["retired"]:
            passkeys.end_passkeys(book, code, by)
        unjudged.note_keys(book, person_key(code))
        unjudged.judge_slice(book)
        return found


def set_password(book: Book, code: str, password: str, by: str = "") -> None:
    """Set a password, kept as an argon2 hash. BookError where it is too short or there is no such person."""
    if not PASSWORD_LEAST <= len(password) <= PASSWORD_MOST:
        raise BookError(f"A password has {PASSWORD_LEAST} to {PASSWORD_MOST} characters. Take a few words.")
    _set_column(book, code, "password", _hasher.hash(password), by)


def check_password(book: Book, code: str, password: str) -> Person | None:
    """Return the person whose password this is, or None. TooManyAtOnce where too many are looked at already."""
    row = book.one("SELECT password FROM people WHERE code = ? AND retired = 0", (code.strip().upper(),))
    kept, nobody = (row or {}).get("password"), _nobodys_password()
    try:
        in_turn(partial(_hasher.verify, kept or nobody, password[:PASSWORD_MOST]))
    except (VerificationError, InvalidHashError):
        return None
    if not kept:
        return None
    if _hasher.check_needs_rehash(kept):
        _set_column(book, code.strip().upper(), "password", _hasher.hash(password), "")
    return person(book, code.strip().upper())


def set_pin(book: Book, code: str, pin: str, by: str = "") -> None:
    """Set the short code by which a person is picked on a shared phone; an empty one takes it away.

    It is kept as data that a phone can check offline (PBKDF2), and goes only to phones where it was typed.
    """
    if pin and not (pin.isascii() and pin.isdigit() and 3 <= len(pin) <= PIN_MOST):
        raise BookError("A PIN has 3 to 8 digits. Type another.")
    if not pin:
        _put_pin(book, code, None, by)
        return
    _put_pin(book, code, _hashed_pin(pin), by)


def set_language(book: Book, code: str, language: str, by: str) -> None:
    """Set the language that a person reads in; empty: their browser's, or the house's."""
    with book.write() as database:
        before = person(book, code)
        if before is None:
            raise BookError(f"There is nobody with the code {code[:CODE_MOST]}. Add them first.")
        database.conn.execute("UPDATE people SET language = ? WHERE code = ?", (language, code))
        note_change(book, by, "person", code, {"language": before["language"]}, {"language": language})
        book.memory.registry.clear()


def check_pin(book: Book, code: str, pin: str) -> Pin | None:
    """Return what a phone looks at a PIN by, where this is the person's PIN; else None. TooManyAtOnce as for passwords.

    One that was set with fewer rounds is hashed anew.
    """
    row = book.one("SELECT pin FROM people WHERE code = ? AND retired = 0", (code.strip().upper(),))
    if not row or not row["pin"] or len(pin) > PIN_MOST:
        return None
    kept: Pin = json.loads(row["pin"])
    salt, rounds = base64.b64decode(kept["salt"]), kept["rounds"]
    made = in_turn(lambda: hashlib.pbkdf2_hmac("sha256", pin.encode(), salt, rounds))
    if not hmac.compare_digest(made, base64.b64decode(kept["hash"])):
        return None
    if rounds < PIN_ROUNDS:
        kept = _hashed_pin(pin)
        _set_column(book, code.strip().upper(), "pin", json.dumps(kept), "")
    return kept


def codes_with_pin(book: Book) -> set[str]:
    """Return the codes of those who have a PIN."""
    return {str(row[0]) for row in book.db.conn.execute("SELECT code FROM people WHERE pin IS NOT NULL")}


def _hashed_pin(pin: str) -> Pin:
    salt = secrets.token_bytes(16)
    made = hashlib.pbkdf2_hmac("sha256", pin.encode(), salt, PIN_ROUNDS)
    return {"salt": base64.b64encode(salt).decode(), "rounds": PIN_ROUNDS, "hash": base64.b64encode(made).decode()}


def _put_pin(book: Book, code: str, pin: Pin | None, by: str) -> None:
    """Keep another PIN, or none; on every phone it has to be typed anew."""
    with book.write() as database:
        _set_column(book, code, "pin", json.dumps(pin) if pin else None, by)
        database.conn.execute("DELETE FROM hands WHERE person = ?", (code,))


def for_phones(book: Book, hands: Collection[str] = ()) -> list[PersonOnPhone]:
    """Return the people as a phone gets them: code, name, roles, access, has_pin, language; `pin` of those there."""
    return [
        {
            "code": one["code"], "name": one["name"], "roles": one["roles"], "access": one["access"],
            "pin": one["pin"] if one["code"] in hands else None, "has_pin": one["has_pin"],
            "language": one["language"],
        }
        for one in people(book, with_retired=False)
    ]


def password_mark(kept: str) -> str:
    """Return 16 hex digits by which a change names a kept password: of its salted hash, so that it tells nothing."""
    return hashlib.sha256(kept.encode()).hexdigest()[:_MARK_DIGITS]


@functools.cache
def _nobodys_password() -> str:
    """Return a hash to check against where there is no such person, so that an answer takes as long either way."""
    return _hasher.hash(secrets.token_hex(16))


def _set_column(book: Book, code: str, column: str, value: str | None, by: str) -> None:
    with book.write() as database:
        if person(book, code) is None:
            raise BookError(f"There is nobody with the code {code[:CODE_MOST]}. Add them first.")
        database.conn.execute(f"UPDATE people SET {column} = ? WHERE code = ?", (value, code))  # noqa: S608
        told = {column: "(set)" if value else "(taken away)"}
        if column == "password":
            told["password_mark"] = password_mark(value) if value else ""
        note_change(book, by or code, "person", code, {}, told)
        book.memory.registry.clear()


def without_password(row: PersonRow) -> Person:
    """Return a person's row as pages and phones see it: without the password."""
    return {
        "code": row["code"], "name": row["name"], "roles": json.loads(row["roles"]), "access": row["access"],
        "pin": json.loads(row["pin"]) if row["pin"] else None, "has_pin": bool(row["pin"]),
        "has_password": bool(row["password"]), "retired": bool(row["retired"]), "language": row["language"],
    }


def password_stamp(book: Book, code: str) -> str:
    """Return a stamp that changes with a person's password and tells nothing of it.

    Sessions made with an older stamp end.
    """
    return stamp_of(book.one("SELECT password FROM people WHERE code = ?", (code,)))


def stamp_of(row: Mapping[str, object] | None) -> str:
    """Return the stamp of the password in a person's row."""
    return hashlib.sha256(str((row or {}).get("password")).encode()).hexdigest()[:24]
