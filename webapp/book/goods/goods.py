"""Goods in bottles for readers: each bottling with what is on hand, and where its cases went."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from webapp.book.fold.states import load_newest
from webapp.book.record.store import Book
from webapp.kinds.key import bottling_key

LIST_MOST = 500
WHY = {
    "tax_paid": "left, duty determined", "in_bond": "left in bond", "export": "left for export",
    "sample": "samples and tastings", "broken": "broken", "destroyed": "destroyed", "missing": "missing",
    "dumped_back": "poured back into a tank", "returned": "came back",
}


def bottlings(book: Book, limit: int = LIST_MOST) -> list[dict[str, Any]]:
    """Return bottlings with their stock, newest first: the state of `b:<root>`, its `id`, cases and loose on hand."""
    rows = book.query("SELECT id FROM bottlings ORDER BY at DESC, id DESC LIMIT ?", (max(1, min(limit, LIST_MOST)),))
    return [found for row in rows if (found := bottling(book, row["id"]))]


def bottling(book: Book, root: str) -> dict[str, Any] | None:
    """Return one bottling with its stock, or None."""
    state = load_newest(book, bottling_key(root))
    if state is None:
        return None
    in_case = max(round(state.get("per_case") or 0), 0)
    cases, loose = divmod(state["on_hand"], in_case) if in_case else (0, state["on_hand"])
    return {"id": root, **state, "cases": cases, "loose": loose}


def removals(book: Book, roots: Iterable[str]) -> list[dict[str, Any]]:
    """Return the removals and returns of these bottlings, oldest first: `why` in words as `happened`."""
    found: list[dict[str, Any]] = []
    for root in roots:
        rows = book.query(
            "SELECT d.*, f.entry FROM dispatches d JOIN folded f ON f.root = d.id WHERE d.bottling = ? "
            "ORDER BY d.at, d.id",
            (root,),
        )
        found += [row | {"happened": WHY.get(row["why"], row["why"])} for row in rows]
    return found
