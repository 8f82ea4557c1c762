"""The house of the demo before anything is logged: site, people, vessels, instruments, limits, phones."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Final

from webapp.book.house import devices, people, registry
from webapp.book.record.store import Book
from webapp.demo.phones import Phone
from webapp.demo.story import load
from webapp.demo.told import Cask, PersonTold
from webapp.trade.marks import make_mark

BY = "demo"
# Rye ferments warm and less sour than fruit; common practice, no source.
RYE_LIMITS = {"temp": (26, 33), "ph": (4.0, 5.6)}


def put_house(book: Book) -> None:
    """Put the house into the book, inside one write. Doing it twice changes nothing."""
    with book.write():
        registry.set_site(book, load("site"), BY)
        for row in load("instruments"):
            registry.put_instrument(book, row, BY)
        for row in load("vessels"):
            registry.put_vessel(book, {**row, "mark": make_mark(row["base"])}, BY)
        for cask in load("casks"):
            registry.put_vessel(book, _cask(cask), BY)
        for field, usual in RYE_LIMITS.items():
            registry.set_limit(book, "material", "rye", "ferment_reading", field, usual, None, BY)
        for row in load("people"):
            _put_person(book, row)


def _cask(cask: Cask) -> Mapping[str, object]:
    names: Final = ("name", "place", "capacity_l", "tare_kg", "wood", "toast", "use", "size_class")
    title = f"{cask['capacity_l']:.0f} L {cask['wood']}, {cask['toast']}, {cask['use']}"
    return {name: cask[name] for name in names} | {
        "mark": make_mark(cask["base"]), "title": title, "sort": "cask", "curved": True,
    }


def _put_person(book: Book, row: PersonTold) -> None:
    if people.person(book, row["code"]):
        return
    about = {"code": row["code"], "name": row["name"], "roles": row["roles"], "access": row["access"]}
    people.put_person(book, about, BY)
    people.set_pin(book, row["code"], row["pin"], BY)
    if "password" in row:
        people.set_password(book, row["code"], row["password"], BY)


def let_phones_in(book: Book, now: datetime) -> dict[str, Phone]:
    """Return the phones of the house by name, each let in once."""
    there = {row["name"]: row["id"] for row in devices.devices(book)}
    found = {}
    for row in load("phones"):
        if row["name"] not in there:
            token = devices.new_token(book, BY, row["name"], now)
            there[row["name"]] = devices.enrol_device(book, token, row["name"], now)[0]["id"]
        found[row["name"]] = Phone(row["name"], there[row["name"]], row["decimal_mark"], row["clock"])
    return found
