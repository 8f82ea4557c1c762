"""What is found about who logged the entries of a batch: their signatures, and whether their people showed themselves.

It is settled once, at intake, and kept in the `via` of each entry (record/way.py).
"""

from __future__ import annotations

from collections.abc import Iterable

import webapp.kinds
from webapp.book.house import hands, people, phone_keys, registry
from webapp.book.record import way
from webapp.book.record.signing import PublicKey, is_signed_by, name_of_key
from webapp.book.record.store import Book
from webapp.kinds.entry import Entry
from webapp.kinds.message import message
from webapp.kinds.problem import Problem

_TYPED = ("pin", "now")


class Handed:
    """One batch, and what is known of the phones and people in it. Made before the write door is opened: looking at
    signatures takes time, and holds nobody up.
    """

    def __init__(self, book: Book, entries: Iterable[object], via: str, phone: str, signed_in: str) -> None:
        who = phone if via == way.PHONE else signed_in if via == way.PAGE else ""
        self.how = f"{via} {who}" if who else via  # what is kept of an entry that is put aside
        self._is_phone, self._signed_in = bool(who) and via == way.PHONE, signed_in
        self._is_told = bool(who)
        sent = [entry for entry in entries if isinstance(entry, dict)]
        names = {name for entry in sent if (name := name_of_key(entry))}
        self._keys = phone_keys.load_keys(book, sorted(names)) if names else {}
        self._forged = {
            id(entry) for entry in sent if (key := self._keys.get(name_of_key(entry))) and not _is_of(key, entry)
        }
        if self._is_told:
            self._signs_from = phone_keys.first_signed(book)
            self._showing, self._hands = hands.showing_phones(book), hands.load_hands(book)
            self._with_pin = people.codes_with_pin(book)
            self._wants_now = bool(registry.site(book).get("pin_at_tax"))

    def problems(self, entry: Entry) -> list[Problem]:
        """Return the reason against an entry whose signature is not what it says it is."""
        if id(entry) not in self._forged:
            return []
        return [Problem("bad_signature", "refuse", "signature", message("bad_signature"))]

    def via(self, entry: Entry) -> str:
        """Return how an entry of this batch came, as it is kept."""
        if not self._is_told:
            return self.how
        found = f"{self._signature(entry)}{self._person(entry)}{self._witness(entry)}"
        return f"{self.how} {found}".rstrip()

    def _signature(self, entry: Entry) -> str:
        if name_of_key(entry) in self._keys:
            return way.SIGNED
        is_due = entry["seq"] > self._signs_from.get(entry["device"], entry["seq"])
        return way.UNSIGNED if is_due else ""

    def _person(self, entry: Entry) -> str:
        code, typed = entry["person"], entry.get("shown")
        if not self._is_phone:
            return way.NOT_SHOWN if code != self._signed_in and code in self._with_pin else ""
        if typed is None and entry["device"] not in self._showing:
            return ""  # a phone of an earlier version says nothing of it
        has_typed = typed in _TYPED and (entry["device"], code) in self._hands
        kind = webapp.kinds.get(entry["kind"])
        if self._wants_now and kind and kind.taxed:
            return way.SHOWN_NOW if has_typed and typed == "now" else way.NOT_SHOWN_NOW
        if has_typed:
            return way.SHOWN
        return way.NOT_SHOWN if code in self._with_pin else ""

    def _witness(self, entry: Entry) -> str:
        code = entry.get("seen_by") or ""
        is_odd = code in self._with_pin and (entry["device"], code) not in self._hands
        return way.WITNESS_NOT_SHOWN if is_odd else ""


def _is_of(key: phone_keys.PhoneKey, entry: dict[str, object]) -> bool:
    try:
        return key["device"] == entry.get("device") and is_signed_by(PublicKey(key["x"], key["y"]), entry)
    except (ValueError, RecursionError):
        return False  # not to be written as JSON: it is refused for that as well
