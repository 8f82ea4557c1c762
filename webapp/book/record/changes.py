"""Who changed what of the registry, when, from what, to what. Written with the change itself; never taken out."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, datetime
from typing import TypedDict

from webapp.book.record import seals
from webapp.book.record.clock import utc_text
from webapp.book.record.store import Book

_NEVER_SHOWN = ("password", "pin", "secret_sha256")


class _About(TypedDict):
    no: int
    at: str
    person: str
    what: str
    key: str


class _Row(_About):
    before: str
    after: str


class Change(_About):
    """A change of the registry: when, by whom, of what, from what, to what."""

    before: dict[str, object]
    after: dict[str, object]


def note_change(
    book: Book, by: str, what: str, key: str, before: Mapping[str, object] | None, after: Mapping[str, object] | None,
    now: datetime | None = None,
) -> None:
    """Note a change inside its write: only what differs is kept, and no secret."""
    old, new = _shown(before), _shown(after)
    if old and new:
        old, new = ({k: v for k, v in a.items() if b.get(k, ...) != v} for a, b in ((old, new), (new, old)))
        if not old and not new:
            return
    book.db.conn.execute(
        "INSERT INTO changes (at, person, what, key, before, after) VALUES (?, ?, ?, ?, ?, ?)",
        (utc_text(now or datetime.now(UTC)), by, what, key, json.dumps(old), json.dumps(new)),
    )
    seals.carry_on(book, "changes")


def changes(book: Book, limit: int = 200) -> list[Change]:
    """Return the last changes, newest first: at, person, what, key, before, after (both mappings)."""
    rows = book.rows(_Row, "SELECT * FROM changes ORDER BY no DESC LIMIT ?", (max(1, min(limit, 1000)),))
    return [
        {
            "no": row["no"], "at": row["at"], "person": row["person"], "what": row["what"], "key": row["key"],
            "before": json.loads(row["before"]), "after": json.loads(row["after"]),
        }
        for row in rows
    ]


def _shown(row: Mapping[str, object] | None) -> dict[str, object]:
    return {k: v if k not in _NEVER_SHOWN else "(set)" for k, v in (row or {}).items()}
