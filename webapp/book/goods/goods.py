"""Goods in bottles for readers: each bottling with what is on hand, and where its cases went."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.fold.reader_rows import DispatchRow
from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.kinds.goods_state import Bottling, Cases
from webapp.kinds.key import bottling_key

LIST_MOST = 500
PHONE_MOST = 200  # bottlings that a phone keeps
SOLD_OUT_MOST = 20  # of them without a bottle left: some may come back
GONE_MOST = 40  # ranges of cases
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


class GoodsOnPhone(TypedDict):
    """What a phone needs of a bottling to offer it, and to say what is left of it. `size_l` [L]"""

    id: str
    batch: str
    lot_mark: str
    what: str
    at: str
    tank: str
    label_strength_pct: float | None
    size_l: float
    per_case: int
    good: int
    on_hand: int
    case_from: str
    case_to: str
    odd_case: str
    gone: list[Cases]
    counted_at: str


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


def for_phones(book: Book) -> list[GoodsOnPhone]:
    """Return the bottlings that a phone offers, newest first: those with bottles, then the last without."""
    every = [_on_phone(one) for one in bottlings(book)]
    return [*[one for one in every if one["on_hand"]][:PHONE_MOST - SOLD_OUT_MOST],
            *[one for one in every if not one["on_hand"]][:SOLD_OUT_MOST]]


def _on_phone(one: BottlingOnHand) -> GoodsOnPhone:
    counted = one.get("counted")
    return {
        "id": one["id"], "batch": one["batch"], "lot_mark": one["lot_mark"] or "", "what": one["what"],
        "at": one["at"], "tank": one["tank"], "label_strength_pct": one["label_strength_pct"],
        "size_l": one["size_l"], "per_case": max(round(one["per_case"] or 0), 0), "good": one["good"],
        "on_hand": one["on_hand"], "case_from": one["case_from"] or "", "case_to": one["case_to"] or "",
        "odd_case": one["odd_case"] or "", "gone": one["gone"][-GONE_MOST:],
        "counted_at": counted["at"] if counted else "",
    }


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
