"""How an entry was handed in: by which phone, and whether it bears the signature that it should. Settled at intake.

It is kept in the entry's `via`, which the chain covers and which travels with it: `phone d-7f3k2m9q s`. The first word
says how it came; from a phone the second says which phone brought it, and the third has a letter for each finding.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

from webapp.book.house import phone_keys
from webapp.book.record.signing import PublicKey, is_signed_by, name_of_key
from webapp.book.record.store import Book
from webapp.kinds.entry import Entry
from webapp.kinds.message import message
from webapp.kinds.problem import Problem

SIGNED = "s"  # by a key of the phone that the entry names
UNSIGNED = "u"  # although that phone signs what it logs
PHONE = "phone"


class Way(NamedTuple):
    """A `via` in its parts. `carrier` is the id of the phone that brought it; empty where it is not on record."""

    how: str
    carrier: str
    findings: str


def read_way(via: str) -> Way:
    """Return the parts of a `via`; entries of earlier versions have the first alone."""
    how, _, rest = via.partition(" ")
    carrier, _, findings = rest.partition(" ")
    return Way(how, carrier, findings)


class Handed:
    """One batch, and what is known of the phones whose entries are in it. Made before the write door is opened:
    looking at signatures takes time, and holds nobody up.
    """

    def __init__(self, book: Book, entries: Iterable[object], via: str, phone: str) -> None:
        self._via, self._phone = via, phone
        sent = [entry for entry in entries if isinstance(entry, dict)]
        names = {name for entry in sent if (name := name_of_key(entry))}
        keys = phone_keys.load_keys(book, sorted(names)) if names else {}
        self._keys = keys
        self._forged = {id(entry) for entry in sent if (key := keys.get(name_of_key(entry))) and not _is_of(key, entry)}
        self._signs_from = phone_keys.first_signed(book) if phone else {}

    def problems(self, entry: Entry) -> list[Problem]:
        """Return the reason against an entry whose signature is not what it says it is."""
        if id(entry) not in self._forged:
            return []
        return [Problem("bad_signature", "refuse", "signature", message("bad_signature"))]

    @property
    def how(self) -> str:
        """How the batch came and by which phone: what is kept of an entry that is put aside."""
        return f"{PHONE} {self._phone}" if self._via == PHONE and self._phone else self._via

    def via(self, entry: Entry) -> str:
        """Return how an entry of this batch came, as it is kept."""
        return self.how if self.how == self._via else f"{self.how} {self._signature(entry)}".rstrip()

    def _signature(self, entry: Entry) -> str:
        if name_of_key(entry) in self._keys:
            return SIGNED
        is_due = entry["seq"] > self._signs_from.get(entry["device"], entry["seq"])
        return UNSIGNED if is_due else ""


def _is_of(key: phone_keys.PhoneKey, entry: dict[str, object]) -> bool:
    try:
        return key["device"] == entry.get("device") and is_signed_by(PublicKey(key["x"], key["y"]), entry)
    except (ValueError, RecursionError):
        return False  # not to be written as JSON: it is refused for that as well
