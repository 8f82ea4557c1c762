"""Goods in bottles for readers: each bottling with what is on hand, and where its cases went."""

from __future__ import annotations

import json
from collections.abc import Iterable

from webapp.book.fold.reader_rows import DispatchRow
from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.kinds.key import bottling_key
from webapp.kinds.state import Bottling

LIST_MOST = 500
# Bottles that are broken, destroyed or missing are called just that.
WHY = {
    "tax_paid": "left, duty determined", "in_bond": "left in bond", "export": "left for export",
    "sample": "samples and tastings", "dumped_back": "poured back into a tank", "returned": "came back",
}


class BottlingOnHand(Bottling):
    """A bottling with its id, and its bottles on hand as cases and loose ones."""

    id: str
    cases: int
    loose: int


class RemovalRow(DispatchRow):
    """A removal, and the entry of it that has effect."""

    entry: str


class Removal(RemovalRow):
    """A removal or return, with what happened in words."""

    happened: str


def bottlings(book: Book, limit: int = LIST_MOST) -> list[BottlingOnHand]:
    """Return bottlings with their stock, newest first: the state of `b:<root>`, its `id`, cases and loose on hand."""
    rows = book.query("SELECT id FROM bottlings ORDER BY at DESC, id DESC LIMIT ?", (max(1, min(limit, LIST_MOST)),))
    states = load_newest_of(book, (bottling_key(row["id"]) for row in rows))
    return [_bottling(row["id"], state) for row in rows if (state := states.get(bottling_key(row["id"])))]


def bottling(book: Book, root: str) -> BottlingOnHand | None:
    """Return one bottling with its stock, or None."""
    state = load_newest_of(book, [bottling_key(root)]).get(bottling_key(root))
    return None if state is None else _bottling(root, state)


def _bottling(root: str, state: Bottling) -> BottlingOnHand:
    in_case = max(round(state.get("per_case") or 0), 0)
    cases, loose = divmod(state["on_hand"], in_case) if in_case else (0, state["on_hand"])
    return {"id": root, **state, "cases": cases, "loose": loose}


def removals(book: Book, roots: Iterable[str]) -> list[Removal]:
    """Return the removals and returns of these bottlings, oldest first: `why` in words as `happened`."""
    rows = book.rows(
        RemovalRow,
        "SELECT d.*, f.entry FROM json_each(?) w CROSS JOIN dispatches d ON d.bottling = w.value "
        "JOIN folded f ON f.root = d.id ORDER BY w.key, d.at, d.id",
        (json.dumps(list(roots)),),
    )
    return [{**row, "happened": WHY.get(row["why"], row["why"])} for row in rows]
