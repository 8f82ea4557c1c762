"""Phones: let in by a one-time token or typed code, known by a secret, heard from, and put out again.

Token and secret have 256 random bits and are kept as SHA-256 only: nobody can guess one, so a slow hash gains nothing.
A code to type is shorter (codes.py): it lives for minutes, and using it or its token uses up both.
"""

from __future__ import annotations

import secrets
from datetime import UTC, datetime, timedelta
from typing import NamedTuple, TypedDict

from webapp.book.house import codes
from webapp.book.record import counters
from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.log import sha256
from webapp.book.record.store import Book

TOKEN_HOURS = 24
NAME_MOST = 40
DESK = "desk"
_ALPHABET = "23456789abcdefghjkmnpqrstuvwxyz"  # no lookalikes: people read these ids to each other
_COLUMNS = "id, name, enrolled_at, enrolled_by, revoked_at, heard_at, skew_s"


class Device(TypedDict):
    """A phone: when and by whom it was let in, when it was put out, when it was last heard, how its clock was off."""

    id: str
    name: str
    enrolled_at: str | None
    enrolled_by: str | None
    revoked_at: str | None
    heard_at: str | None
    skew_s: float | None


class _Given(TypedDict):
    entries: int
    given_twice: int


class DeviceReport(Device, counters.Seen, _Given):
    """A phone with the book's figures about it."""


class _Counted(_Given):
    device: str


class Grant(NamedTuple):
    """Leave for one phone: the token that a QR carries, and a code for a phone whose camera does not scan."""

    token: str
    code: str


def new_grant(book: Book, by: str, name: str, now: datetime | None = None) -> Grant:
    """Return leave for one phone: a token good for 24 hours, and a code to type good for 15 minutes.

    Whichever is used first uses up both.
    """
    grant = Grant(secrets.token_urlsafe(32), codes.make_code())
    line = (sha256(grant.token), name.strip()[:NAME_MOST], by, utc_text(now or datetime.now(UTC)), _kept(grant.code))
    with book.write() as database:
        database.conn.execute(
            "INSERT INTO tokens (token_sha256, name, made_by, made_at, code_sha256) VALUES (?, ?, ?, ?, ?)", line
        )
    return grant


def new_token(book: Book, by: str, name: str, now: datetime | None = None) -> str:
    """Return a one-time token that lets one phone in within 24 hours."""
    return new_grant(book, by, name, now).token


def _kept(code: str) -> str:
    return sha256(f"typed {code}")


def enrol_device(book: Book, token: str, name: str, now: datetime) -> tuple[Device, str]:
    """Use a token or a typed code up; return the new device and its secret, which is shown this once.

    BookError where it is no good, BadCode (a BookError) where it is mistyped.
    """
    is_typed = codes.is_typed(token)
    column, kept = ("code", _kept(codes.parse_code(token))) if is_typed else ("token", sha256(token.strip()))
    life = timedelta(minutes=codes.MINUTES) if is_typed else timedelta(hours=TOKEN_HOURS)
    with book.write() as database:
        found = book.one(f"SELECT * FROM tokens WHERE {column}_sha256 = ?", (kept,))  # noqa: S608
        if found is None:
            raise BookError("This code lets nobody in. Ask the office for a new one.")
        if found["used_at"]:
            raise BookError("This code has been used already. Ask the office for a new one.")
        if found["made_at"] < utc_text(now - life):
            age = f"{codes.MINUTES} minutes" if is_typed else "a day"
            raise BookError(f"This code is older than {age}. Ask the office for a new one.")
        secret = secrets.token_urlsafe(32)
        device_id = "d-" + "".join(secrets.choice(_ALPHABET) for _ in range(8))
        called = name.strip()[:NAME_MOST] or found["name"] or device_id
        at = utc_text(now)
        database.conn.execute("UPDATE tokens SET used_at = ? WHERE token_sha256 = ?", (at, found["token_sha256"]))
        database.conn.execute(
            "INSERT INTO devices (id, name, secret_sha256, enrolled_at, enrolled_by, shows) VALUES (?, ?, ?, ?, ?, 1)",
            (device_id, called, sha256(secret), at, found["made_by"]),
        )
        note_change(book, found["made_by"], "device", device_id, None, {"name": called}, now)
        device = device_by_id(book, device_id)
        assert device is not None
        return device, secret


def by_secret(book: Book, secret: str) -> Device | None:
    """Return the device that has this secret and has not been put out, or None."""
    return book.row(
        Device,
        f"SELECT {_COLUMNS} FROM devices WHERE secret_sha256 = ? AND revoked_at IS NULL",  # noqa: S608
        (sha256(secret),),
    )


def device_by_id(book: Book, device_id: str) -> Device | None:
    """Return a device, or None."""
    return book.row(Device, f"SELECT {_COLUMNS} FROM devices WHERE id = ?", (device_id,))  # noqa: S608


def revoke_device(book: Book, device_id: str, by: str, now: datetime | None = None) -> None:
    """Put a device out: its secret opens nothing any more. What it logged stays. BookError where there is none."""
    now = now or datetime.now(UTC)
    with book.write() as database:
        if device_by_id(book, device_id) is None:
            raise BookError("There is no such phone. Look at the list again.")
        database.conn.execute("UPDATE devices SET revoked_at = ? WHERE id = ?", (utc_text(now), device_id))
        note_change(book, by, "device", device_id, None, {"revoked_at": utc_text(now)}, now)


def devices(book: Book) -> list[Device]:
    """Return all devices but the desk, those in use first, by name."""
    return book.rows(
        Device,
        f"SELECT {_COLUMNS} FROM devices WHERE id <> ? ORDER BY revoked_at IS NOT NULL, name, id",  # noqa: S608
        (DESK,),
    )


def report_devices(book: Book) -> list[DeviceReport]:
    """Return each device with the book's figures about it: `seen`, `gaps`, `heard_at`, `skew_s`, `entries`.

    `given_twice` counts the numbers of its counter that more than one entry has: there are two phones of one name, or
    one that was set up from an older copy. All of their entries are in the book.
    """
    counted = "count(*) AS entries, count(*) - count(DISTINCT seq) AS given_twice"
    sql = f"SELECT device, {counted} FROM entries GROUP BY device"  # noqa: S608
    many = {row["device"]: row for row in book.rows(_Counted, sql)}
    known = devices(book)
    seen = counters.report_all_seen(book, (device["id"] for device in known))
    return [_report(device, seen[device["id"]], many.get(device["id"])) for device in known]


def _report(device: Device, seen: counters.Seen, counted: _Counted | None) -> DeviceReport:
    return {
        **device, **seen, "entries": counted["entries"] if counted else 0,
        "given_twice": counted["given_twice"] if counted else 0,
    }


def note_heard(book: Book, device_id: str, at: str, skew_s: float) -> None:
    """Note the time at which a device was heard and the skew of its clock, inside a write."""
    if device_id:
        book.db.conn.execute(
            "INSERT INTO devices (id, name, heard_at, skew_s) VALUES (?1, ?1, ?2, ?3) "
            "ON CONFLICT (id) DO UPDATE SET heard_at = ?2, skew_s = ?3",
            (device_id, at, skew_s),
        )


def last_skew(book: Book, device_id: str) -> float:
    """Return the skew of a device's clock when it was last heard. [s], 0 where it never was"""
    row = book.one("SELECT skew_s FROM devices WHERE id = ?", (device_id,))
    return float(row["skew_s"] or 0.0) if row else 0.0
