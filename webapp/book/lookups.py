"""What lists and pages look up beside one entry or one vessel. Reads only."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Mapping
from typing import Any

import webapp.kinds
from webapp.book.context import context_for
from webapp.book.corrections import corrections_for
from webapp.book.known import load_limits, with_flags
from webapp.book.states import load_before, load_newest
from webapp.book.store import Book
from webapp.kinds.read import Read, read_entry

IDS_MOST = 500


def find_vessels(
    book: Book, *, sort: str | None = None, text: str = "", limit: int = 200, offset: int = 0
) -> list[dict[str, Any]]:
    """Return vessels in use first, by sort and name, whose mark, name, title or place holds the text."""
    like = "%" + text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%"
    rows = book.query(
        "SELECT * FROM vessels WHERE (:sort IS NULL OR sort = :sort) AND (:text = '' OR mark LIKE :like ESCAPE '\\' "
        "OR title LIKE :like ESCAPE '\\' OR place LIKE :like ESCAPE '\\') "
        "ORDER BY retired, sort, length(name), name LIMIT :limit OFFSET :offset",
        {"sort": sort, "text": text, "like": like, "limit": limit, "offset": offset},
    )
    return [with_flags(row) for row in rows]


def holds(book: Book, mark: str) -> Mapping[str, Any] | None:
    """Return what a vessel holds now, or None."""
    state = load_newest(book, f"v:{mark}")
    held: Mapping[str, Any] | None = state["holds"] if state else None
    return held


def queries_by_entry(book: Book, ids: Iterable[str]) -> dict[str, list[dict[str, Any]]]:
    """Return open queries by entry id: code, weight, words."""
    wanted, found = list(ids), {}  # type: ignore[var-annotated]
    for at in range(0, len(wanted), IDS_MOST):
        some = wanted[at : at + IDS_MOST]
        marks = ", ".join("?" * len(some))
        rows = book.query(
            f"SELECT entry, code, weight, words FROM queries WHERE answer = '' AND entry IN ({marks})",  # noqa: S608
            some,
        )
        for row in rows:
            found.setdefault(row["entry"], []).append(row)
    return found


def read_as_folded(book: Book, row: Mapping[str, Any]) -> Read | None:
    """Return a log row read with what the book knew of the vessel at its place; None for an unknown kind."""
    kind = webapp.kinds.get(row["kind"])
    if kind is None:
        return None
    entry = json.loads(row["body"])
    mark = row["mark"]
    vessel = book.one("SELECT * FROM vessels WHERE mark = ?", (mark,)) if mark else None
    place = book.one("SELECT order_key FROM folded WHERE root = ?", (row["root"],))

    def state_of(key: str) -> Any:
        return load_before(book, key, place["order_key"]) if place else load_newest(book, key)

    context = context_for(kind, vessel, state_of(f"v:{mark}") if mark else None, load_limits(book))
    context["corrections"] = corrections_for(
        kind, entry, lambda name: book.one("SELECT * FROM instruments WHERE id = ?", (name,)), state_of
    )
    return read_entry(kind, entry, context)


def password_stamp(book: Book, code: str) -> str:
    """Return what changes with a person's password and tells nothing of it: a session made before it ends."""
    row = book.one("SELECT password FROM people WHERE code = ?", (code,))
    return hashlib.sha256(str((row or {}).get("password")).encode()).hexdigest()[:24]
