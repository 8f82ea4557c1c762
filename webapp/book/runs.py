"""Still runs, as the fold has them."""

from __future__ import annotations

from typing import Any

from webapp.book.states import load_newest
from webapp.book.store import Book

LIST_MOST = 500


def run(book: Book, run_id: str) -> dict[str, Any] | None:
    """Return a run's state with its `id`; its shape is that of docs/hand-in.md. None where there is no such run."""
    found = load_newest(book, f"r:{run_id}")
    return {"id": run_id, **found} if found else None


def runs(book: Book, *, still: str | None = None, what: str | None = None, limit: int = 50) -> list[dict[str, Any]]:
    """Return runs, newest first; of one still, of one fruit, where asked."""
    rows = book.query(
        "SELECT id FROM runs WHERE (?1 IS NULL OR still = ?1) AND (?2 IS NULL OR what = ?2) "
        "ORDER BY started_at DESC, id DESC LIMIT ?3",
        (still, what, max(1, min(limit, LIST_MOST))),
    )
    return [found for row in rows if (found := run(book, row["id"]))]
