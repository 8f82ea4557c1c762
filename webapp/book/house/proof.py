"""Does the registry say what its changes say? Each change notes what it changed to: the last of them must stand there.

So is found who was given a right, or a vessel another tare, behind the book's back. A column that no change has ever
named (of a book from before changes were noted) cannot be held against anything.
"""

from __future__ import annotations

import json
from collections.abc import Mapping

from webapp.book.house import parties, people, registry
from webapp.book.record.store import Book

TROUBLES_MOST = 20
# Secrets are noted as "(set)"; whether there is one is no column of its own.
_NOT_HELD = ("password", "pin", "secret_sha256", "has_password", "has_pin")
Rows = Mapping[str, Mapping[str, object]]


def verify(book: Book) -> list[str]:
    """Return a sentence for each row of the registry that is not what its changes have made of it."""
    troubles: list[str] = []
    for what, rows in _registry(book).items():
        for key, told in _told(book, what).items():
            row = rows.get(key)
            if row is None:
                troubles.append(f"The {what} {key} is no longer in the registry, and no change has taken it out.")
                continue
            odd = [name for name, value in told.items() if name in row and not _is_same(row[name], value)]
            if odd:
                troubles.append(f"The {what} {key} is not as its changes say: {', '.join(odd)}.")
    return troubles[:TROUBLES_MOST]


def _registry(book: Book) -> dict[str, Rows]:
    """Return the rows of the registry by what the changes call them, and by their keys."""
    return {
        "person": {one["code"]: {**one} for one in people.people(book)},
        "vessel": {row["mark"]: {**row} for row in registry.vessels(book)},
        "instrument": {row["id"]: {**row} for row in registry.instruments(book)},
        "party": {f"{one['name']}, {one['role']}": {**one} for one in parties.parties(book)},
    }


def _told(book: Book, what: str) -> dict[str, dict[str, object]]:
    """Return each row as all changes together have made it."""
    found: dict[str, dict[str, object]] = {}
    for key, after in book.db.conn.execute("SELECT key, after FROM changes WHERE what = ? ORDER BY no", (what,)):
        told = json.loads(after or "{}")
        found.setdefault(key, {}).update({k: v for k, v in told.items() if k not in _NOT_HELD})
    return found


def _is_same(kept: object, told: object) -> bool:
    if isinstance(kept, bool | int | float) and isinstance(told, bool | int | float):
        return float(kept) == float(told)
    return _plain(kept) == _plain(told)


def _plain(value: object) -> object:
    return "" if value is None else value
