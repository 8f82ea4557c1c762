"""Customers and growers: names, addresses and the numbers by which papers call them. Changed at the desk, on record."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypedDict

from webapp.book.record.changes import note_change
from webapp.book.record.errors import BookError
from webapp.book.record.store import Book

ROLES = ("customer", "supplier")
TEXT_MOST = 300
LISTED_MOST = 5_000


class Party(TypedDict):
    """Somebody that the house buys from or sells to. role: customer or supplier; retired: 1 where out of use."""

    name: str
    role: str
    address: str
    number: str
    note: str
    retired: int


def parties(book: Book) -> list[Party]:
    """Return customers and growers by role and name, those in use first."""
    return book.rows(Party, "SELECT * FROM parties ORDER BY retired, role, name LIMIT ?", (LISTED_MOST,))


def party(book: Book, name: str, role: str) -> Party | None:
    """Return one by name and role, or None."""
    return book.row(Party, "SELECT * FROM parties WHERE name = ? AND role = ?", (name, role))


def put_party(book: Book, row: Mapping[str, object], by: str) -> Party:
    """Add somebody, or change the given columns; return them. BookError names the fault."""
    name, role = str(row.get("name") or "").strip()[:TEXT_MOST], str(row.get("role") or "")
    if not name:
        raise BookError("A customer or grower needs a name. Type it.")
    if role not in ROLES:
        raise BookError(f"Say whether {name} is a customer or a supplier.")
    with book.write() as database:
        before = party(book, name, role)
        said: dict[str, object] = {**(before or {"address": "", "number": "", "note": "", "retired": 0}), **row}
        after: Party = {
            "name": name, "role": role, "address": str(said["address"] or "").strip()[:TEXT_MOST],
            "number": str(said["number"] or "").strip()[:TEXT_MOST],
            "note": str(said["note"] or "").strip()[:TEXT_MOST], "retired": int(bool(said["retired"])),
        }
        database.table("parties").upsert({**after}, pk=("name", "role"))
        note_change(book, by, "party", f"{name}, {role}", before, after)
        return after
