"""Reading a row of the log as the fold read it: with the facts of its vessel and instruments at its place in time."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any, TypeVar

import webapp.kinds
from webapp.book.before.corrections import corrections_for
from webapp.book.before.reading_context import context_for
from webapp.book.fold.registry_rows import load_limits
from webapp.book.fold.states import load_before, load_newest
from webapp.book.record.store import Book
from webapp.kinds.key import KeyOf, vessel_key
from webapp.kinds.read import Read, read_entry
from webapp.kinds.rows import InstrumentRow, VesselRow
from webapp.kinds.state import State

S = TypeVar("S", bound=State)


def read_as_folded(book: Book, row: Mapping[str, Any]) -> Read | None:
    """Return a log row, read with the state of its vessel at its place; None for an unknown kind."""
    kind = webapp.kinds.get(row["kind"])
    if kind is None:
        return None
    entry = json.loads(row["body"])
    mark = row["mark"]
    vessel = book.row(VesselRow, "SELECT * FROM vessels WHERE mark = ?", (mark,)) if mark else None
    place = book.one("SELECT order_key FROM folded WHERE root = ?", (row["root"],))

    def state_of(key: KeyOf[S]) -> S | None:
        return load_before(book, key, place["order_key"]) if place else load_newest(book, key)

    context = context_for(kind, vessel, state_of(vessel_key(mark)) if mark else None, load_limits(book))
    context["corrections"] = corrections_for(
        kind, entry, lambda name: book.row(InstrumentRow, "SELECT * FROM instruments WHERE id = ?", (name,)), state_of
    )
    return read_entry(kind, entry, context)
