"""Heads of the book signed by Ed25519, to be kept where a backup lies: what the book held, when, and by which key.

The key lies beside the book in a file of its own and is in no backup: a restored book makes itself another. Sources:
RFC 8032 (Ed25519), RFC 9162, 4.10 (a tree head is signed with its size, root and time).
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from datetime import datetime
from pathlib import Path
from typing import NamedTuple

from webapp.book.record import heads
from webapp.book.record.clock import utc_text
from webapp.book.record.errors import BookError
from webapp.book.record.heads import Head
from webapp.book.record.store import Book
from webapp.durable import sync_file, sync_folder, write_once

KEY_NAME = "heads.key"
SIDE_NAME = "heads.jsonl"
_KEY_BYTES = 32
_SHORT_DIGITS = 16


class SignedHead(NamedTuple):
    """A head with the book it is of, its UTC time, the public key (64 hex digits) and the signature (128)."""

    book: str
    head: Head
    time: str
    key: str
    signature: str

    def statement(self) -> bytes:
        """Return what is signed: JSON with sorted names, without spaces, in ASCII."""
        told = {"book": self.book, "key": self.key, "root": self.head.root, "size": self.head.size,
                "time": self.time, "tree": self.head.name}
        return json.dumps(told, sort_keys=True, separators=(",", ":")).encode("ascii")

    def line(self) -> str:
        """Return the signed head as one line of JSON."""
        return json.dumps(self.told(), sort_keys=True, separators=(",", ":"))

    def told(self) -> dict[str, object]:
        """Return the signed head as an object of JSON: the statement, and its signature."""
        return {**json.loads(self.statement()), "signature": self.signature}

    def is_signed(self) -> bool:
        """Was this statement signed with its key? Source: RFC 8032, 5.1.7."""
        from cryptography.exceptions import InvalidSignature
        from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey

        try:
            public = Ed25519PublicKey.from_public_bytes(bytes.fromhex(self.key))
            public.verify(bytes.fromhex(self.signature), self.statement())
        except (InvalidSignature, ValueError):
            return False
        return True


def shorten(digits: str) -> str:
    """Return the first 16 hex digits of a key or root in four groups, to be compared by eye."""
    return " ".join(digits[at : at + 4] for at in range(0, _SHORT_DIGITS, 4))


def sign_heads(data_dir: Path, book: Book, now: datetime) -> list[SignedHead]:
    """Sign the heads of this book, or of a copy of it, with the key of the folder, made where there is none."""
    return sign(data_dir, _book_id(book), heads.take_heads(book), now)


def sign(data_dir: Path, book_id: str, taken: Iterable[Head], now: datetime) -> list[SignedHead]:
    """Sign these heads of a book with the key of the folder, made where there is none."""
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

    key = Ed25519PrivateKey.from_private_bytes(_read_key(data_dir) or _make_key(data_dir))
    public = key.public_key().public_bytes_raw().hex()
    bare = [SignedHead(book_id, head, utc_text(now), public, "") for head in taken]
    return [one._replace(signature=key.sign(one.statement()).hex()) for one in bare]


def find_key(data_dir: Path) -> str:
    """Return the public key of the folder, 64 hex digits, or an empty text where none was needed yet."""
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

    secret = _read_key(data_dir)
    return Ed25519PrivateKey.from_private_bytes(secret).public_key().public_bytes_raw().hex() if secret else ""


def add_to(folder: Path, signed: Iterable[SignedHead]) -> None:
    """Add signed heads to the side file of a folder of backups, on the disk when this returns."""
    with (folder / SIDE_NAME).open("ab") as file:
        # A line that a power cut left half written must not take the next one with it.
        file.write(b"\n" if file.tell() else b"")
        file.writelines(one.line().encode("ascii") + b"\n" for one in signed)
        sync_file(file)
    sync_folder(folder)


def read_signed(text: str) -> list[SignedHead]:
    """Return the signed heads among the lines of a text; whether they are signed rightly is not looked at."""
    return [one for line in text.splitlines() if (one := _parse(line))]


def read_beside(folder: Path) -> list[SignedHead]:
    """Return the signed heads that lie in a folder of backups; none where it has no such file. OSError for its disk."""
    try:
        return read_signed((folder / SIDE_NAME).read_text("utf-8", errors="replace"))
    except FileNotFoundError:
        return []


def compare(book: Book, signed: Iterable[SignedHead]) -> list[str]:
    """Return a sentence for each signed head that does not hold: signature, book, or what the book then held."""
    troubles, sound = [], []
    for one in dict.fromkeys(signed):
        what = f"The head of {one.head.size} {one.head.name} of {one.time}"
        if not one.is_signed():
            troubles.append(f"{what} bears a signature that is not that of its key {shorten(one.key)}.")
        elif one.book != _book_id(book):
            troubles.append(f"{what} is of another book, {one.book}.")
        else:
            sound.append(one.head)
    return troubles + heads.compare(book, dict.fromkeys(sound))


def describe(signed: Iterable[SignedHead], where: str) -> list[str]:
    """Return a sentence for each key: from when to when its heads hold the book, and where they lie."""
    by_key: dict[str, list[SignedHead]] = {}
    for one in dict.fromkeys(signed):
        by_key.setdefault(one.key, []).append(one)
    return [
        f"The book still begins as {len(ones)} heads {where} say, of {min(ones, key=_time).time} to "
        f"{max(ones, key=_time).time}, signed with the key {shorten(key)}."
        for key, ones in by_key.items()
    ]


def _time(one: SignedHead) -> str:
    return one.time


def _parse(line: str) -> SignedHead | None:
    try:
        told = json.loads(line)
        head = Head(str(told["tree"]), int(told["size"]), str(told["root"]))
        one = SignedHead(str(told["book"]), head, str(told["time"]), str(told["key"]), str(told["signature"]))
    except (ValueError, KeyError, TypeError, OverflowError, RecursionError):
        return None
    return one if heads.read_heads(str(head)) == [head] else None


def _book_id(book: Book) -> str:
    return str((book.one("SELECT value FROM settings WHERE name = 'book_id'") or {"value": ""})["value"])


def _read_key(data_dir: Path) -> bytes:
    """Return the 32 secret bytes (RFC 8032, 5.1.5), or none where there is no file. BookError for another file."""
    path = data_dir / KEY_NAME
    try:
        secret = bytes.fromhex(path.read_text("ascii").strip())
    except FileNotFoundError:
        return b""
    except (OSError, ValueError) as error:
        raise BookError(f"The key {path} cannot be read: {error}. Look at its rights, or move it away.") from error
    if len(secret) != _KEY_BYTES:
        raise BookError(f"{path} holds no key of heads. Move it away; the next backup makes another.")
    return secret


def _make_key(data_dir: Path) -> bytes:
    from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey

    secret = Ed25519PrivateKey.generate().private_bytes_raw()
    write_once(data_dir / KEY_NAME, f"{secret.hex()}\n".encode())  # of two at once the first stands; both sign with it
    return _read_key(data_dir)
