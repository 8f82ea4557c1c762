"""Public keys of phones: the private half is made on the phone and never leaves it.

A key is added and never taken away: what it signed stays signed. Each is also on the record of changes, which the
registry is held against, so that none can be swapped behind the book's back.
"""

from __future__ import annotations

from datetime import datetime
from typing import TypedDict

from webapp.book.house.devices import device_by_id
from webapp.book.record.changes import note_change
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.signing import PublicKey, is_key, is_signed_by, name_of_key, thumbprint
from webapp.book.record.store import Book
from webapp.kinds.entry import Entry

KEYS_MOST = 20  # of one phone: a browser that forgets makes a new one
TROUBLES_MOST = 20


class PhoneKey(TypedDict):
    """A public key (base64url), the phone it is of, and the number on that phone's counter after which it signs."""

    thumbprint: str
    device: str
    x: str
    y: str
    from_seq: int
    at: str


def introduce_key(book: Book, device_id: str, key: PublicKey, from_seq: int, now: datetime) -> str:
    """Keep a phone's public key; return its thumbprint. The same key again changes nothing.

    from_seq: what the phone's counter had reached when the key was made. BookError where it is no key, or one of
    another phone's, or the phone has too many.
    """
    if not is_key(key):
        raise BookError("This is no public key on the curve P-256. Send x and y as a JSON Web Key has them.")
    name = thumbprint(key)
    with book.write() as database:
        known = load_keys(book, [name]).get(name)
        if known:
            if known["device"] != device_id:
                raise BookError("This key is another phone's. Make a new one.")
            return name
        device = device_by_id(book, device_id)
        count = database.conn.execute("SELECT count(*) FROM device_keys WHERE device = ?", (device_id,)).fetchone()[0]
        if device is None or count >= KEYS_MOST:
            raise BookError("This phone has brought too many keys. Shut it out at the desk, and let it in anew.")
        row: PhoneKey = {
            "thumbprint": name, "device": device_id, "x": key.x, "y": key.y, "from_seq": from_seq, "at": utc_text(now),
        }
        database.conn.execute(
            "INSERT INTO device_keys (thumbprint, device, x, y, from_seq, at) "
            "VALUES (:thumbprint, :device, :x, :y, :from_seq, :at)", row,
        )
        database.conn.execute("UPDATE devices SET shows = 1 WHERE id = ?", (device_id,))  # it is brought up to date
        note_change(book, device["enrolled_by"] or "", "phone key", name, None, row, now)
        return name


def load_keys(book: Book, names: list[str]) -> dict[str, PhoneKey]:
    """Return these keys by their thumbprints; one that is not in the book is left out."""
    marks = ", ".join("?" * len(names))
    rows = book.rows(PhoneKey, f"SELECT * FROM device_keys WHERE thumbprint IN ({marks})", names)  # noqa: S608
    return {row["thumbprint"]: row for row in rows}


def first_signed(book: Book) -> dict[str, int]:
    """Return by phone the number on its counter after which everything it logs is signed."""
    rows = book.db.conn.execute("SELECT device, min(from_seq) FROM device_keys GROUP BY device")
    return {str(device): int(seq) for device, seq in rows}


def newest_key(book: Book, device_id: str) -> str:
    """Return the thumbprint of the key that a phone brought last, or an empty text."""
    row = book.one(
        "SELECT thumbprint FROM device_keys WHERE device = ? ORDER BY at DESC, from_seq DESC, thumbprint LIMIT 1",
        (device_id,),
    )
    return str(row["thumbprint"]) if row else ""


def all_keys(book: Book) -> list[PhoneKey]:
    """Return every key, by its thumbprint."""
    return book.rows(PhoneKey, "SELECT * FROM device_keys ORDER BY thumbprint")


def signer_of(book: Book, entry: Entry) -> PhoneKey | None:
    """Return the key that an entry is signed with; None where it is not signed, or with a key the book has not."""
    name = name_of_key(entry)
    key = load_keys(book, [name]).get(name) if name else None
    return key if key and is_signed_by(PublicKey(key["x"], key["y"]), entry) else None


def verify(book: Book) -> list[str]:
    """Return a sentence for each entry whose signature is not one of the key it names. One key's pace: some 10,000/s.

    Signatures with a key that the book has not are no fault: the phone brings its key when it is next heard.
    """
    import json

    keys = {key["thumbprint"]: PublicKey(key["x"], key["y"]) for key in all_keys(book)}
    troubles: list[str] = []
    if not keys:
        return troubles
    for number, body in book.db.conn.execute(
        "SELECT book_no, body FROM entries WHERE instr(body, '\"signature\":') ORDER BY book_no"
    ):
        try:
            entry = json.loads(body)
        except ValueError:
            continue  # the chain says so
        key = keys.get(name_of_key(entry)) if isinstance(entry, dict) else None
        if key and not is_signed_by(key, entry):
            troubles.append(f"Book number {number} does not bear the signature of the phone that it names.")
            if len(troubles) >= TROUBLES_MOST:
                break
    return troubles
