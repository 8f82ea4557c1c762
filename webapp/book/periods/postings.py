"""What one entry did to the accounts: from where to where, how much pure alcohol, in which account, and why."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypedDict, cast

from webapp.book.fold.states import load_before_each
from webapp.book.periods.words import party_words, reason_words
from webapp.book.record.store import Book
from webapp.kinds.amount import Stock
from webapp.kinds.key import Key, is_bottling, is_outside, is_run, is_vessel, name_in, stored_key
from webapp.kinds.spec import Effect
from webapp.kinds.state import State, Vessel

SHOWN_MOST = 60


@dataclass(frozen=True, slots=True)
class Posting:
    """One movement. lpa_ul: pure alcohol [uL at 20 degC]; mass_g: [g]; account: in words, both where it changes."""

    source: str
    target: str
    source_mark: str  # of a vessel, to lead to its page; else empty
    target_mark: str
    account: str
    lpa_ul: int
    mass_g: int
    reason: str


@dataclass(frozen=True, slots=True)
class Balance:
    """What a vessel, a run or a bottling held before the entry and after it. [uL of pure alcohol at 20 degC]"""

    name: str
    mark: str
    before_ul: int
    after_ul: int


@dataclass(frozen=True, slots=True)
class Postings:
    """All movements of one entry, and what the accounts held before and after."""

    lines: list[Posting]
    balances: list[Balance]


class Moved(TypedDict):
    """A movement as it stands in the table of flows."""

    source: str
    target: str
    lpa_ul: int
    mass_g: int
    reason: str
    source_account: str
    target_account: str


def load_postings(book: Book, entry_id: str, order_key: str) -> Postings:
    """Return the movements of an entry that has effect, in their order; none where it moves nothing.

    order_key: its place in the order of the fold.
    """
    flows = book.rows(
        Moved, "SELECT source, target, lpa_ul, mass_g, reason, source_account, target_account FROM flows "
        "WHERE entry = ? ORDER BY n LIMIT ?", (entry_id, SHOWN_MOST),
    )
    return postings_of(book, flows, order_key)


def moved_by(effect: Effect) -> list[Moved]:
    """Return the flows of an effect; those that move nothing are left out."""
    moving = [flow for flow in effect.flows if flow.lpa_ul or flow.mass_g or flow.volume_ml]
    return [
        Moved(
            source=flow.source, target=flow.target, lpa_ul=flow.lpa_ul, mass_g=flow.mass_g, reason=flow.reason,
            source_account=flow.source_account, target_account=flow.target_account,
        )
        for flow in moving[:SHOWN_MOST]
    ]


def postings_of(book: Book, flows: Sequence[Moved], order_key: str) -> Postings:
    """Return the movements with the names of their sides, and what the accounts held before that place and after."""
    if not flows:
        return Postings([], [])
    keys = sorted({side for flow in flows for side in (flow["source"], flow["target"])})
    names = _names(book, keys)
    lines = [
        Posting(
            _side("in", flow["source"], names), _side("out", flow["target"], names), _mark(flow["source"]),
            _mark(flow["target"]), _account(flow["source_account"], flow["target_account"]), flow["lpa_ul"],
            flow["mass_g"], reason_words(flow["reason"]),
        )
        for flow in flows
    ]
    return Postings(lines, _balances(book, flows, keys, names, order_key))


def _balances(
    book: Book, flows: Sequence[Moved], keys: Sequence[str], names: dict[str, str], order_key: str
) -> list[Balance]:
    own = [stored_key(key) for key in keys if not is_outside(stored_key(key))]
    states = load_before_each(book, ((key, order_key) for key in own))
    made = []
    for key in own:
        state = states.get((key, order_key))
        before = _lpa_ul(key, state)
        change = sum(
            flow["lpa_ul"] * ((flow["target"] == key) - (flow["source"] == key)) for flow in flows
        )
        made.append(Balance(names.get(key, name_in(key)), _mark(key), before, before + change))
    return made


def _lpa_ul(key: Key, state: State | None) -> int:
    """Return the pure alcohol in a vessel, a run or a bottling. [uL]"""
    if state is None:
        return 0
    # The key says which sort of state it is.
    held = cast(Vessel, state)["holds"] if is_vessel(key) else cast(Stock, state)
    return held["lpa_ul"] if held else 0


def _names(book: Book, keys: Sequence[str]) -> dict[str, str]:
    """Return the names of vessels, runs and bottlings by key, in one statement."""
    rows = book.query(
        "SELECT 'v:' || mark AS key, name FROM vessels WHERE 'v:' || mark IN (SELECT value FROM json_each(:keys)) "
        "UNION ALL SELECT 'b:' || id, CASE WHEN batch <> '' THEN batch ELSE lot_mark END FROM bottlings "
        "WHERE 'b:' || id IN (SELECT value FROM json_each(:keys)) "
        "UNION ALL SELECT 'r:' || r.id, v.name FROM runs r JOIN vessels v ON v.mark = r.still "
        "WHERE 'r:' || r.id IN (SELECT value FROM json_each(:keys))",
        {"keys": json.dumps(list(keys))},
    )
    found = {row["key"]: str(row["name"] or "") for row in rows}
    for key in keys:
        if is_bottling(stored_key(key)):
            found[key] = f"bottles of {found.get(key) or 'a bottling'}"
        elif is_run(stored_key(key)):
            found[key] = f"the run on {found.get(key) or 'a still'}"
    return found


def _side(side: str, key: str, names: dict[str, str]) -> str:
    if is_outside(stored_key(key)):
        return party_words(side, key).removeprefix("from ").removeprefix("to ")
    return names.get(key) or name_in(stored_key(key))


def _mark(key: str) -> str:
    return name_in(stored_key(key)) if is_vessel(stored_key(key)) else ""


def _account(source: str, target: str) -> str:
    if source and target and source != target:
        return f"{source} to {target}"
    return source or target
