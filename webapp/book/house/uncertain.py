"""Entries read with the uncertainty of their figures: by the class of their instruments as the registry has them now.

Nothing is kept: whoever sets the class of an instrument sees what it does to every figure read with it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from math import sqrt
from typing import NamedTuple

from webapp.book.fold.row_reader import PlacedRow, read_all_as_folded
from webapp.book.fold.states import NEWEST
from webapp.book.record.store import Book
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, Line, Vessel
from webapp.kinds.uncertainty import uncertain_as_read
from webapp.trade.uncertainty import Uncertain, combine

# What stands where a fill is measured as a whole; every other entry moves a part.
MEASURES = ("gauge", "distilled_gauge", "cask_regauge", "bottling_gauge", "opening", "fraction_gauge", "stock_count")
MOVES_MOST = 40
STOCK_MOST = 1000  # a millisecond each
JOINED = (  # by an entry or by the first of its family
    "LEFT JOIN amendments a ON a.id = w.value JOIN folded f ON f.root = coalesce(a.root, w.value) "
    "JOIN entries e ON e.id = f.entry"
)
_EFFECTIVE = (  # joins are ours, values are bound
    f"SELECT w.value AS asked, e.kind, e.mark, e.body, f.order_key FROM json_each(?) w {JOINED}"  # noqa: S608
)
# The entries that moved something of each fill since its last gauge, and that gauge, which moves nothing by itself. The
# second half of each condition is for the index, which holds what has a fill alone.
_MOVES = (
    "WITH asked AS (SELECT key AS mark, value ->> 0 AS fill, value ->> 1 AS since, value ->> 2 AS measured "  # noqa: S608
    "FROM json_each(:asked)), moved AS ("
    "SELECT mark, entry, at, since, lpa_ul FROM asked CROSS JOIN flows ON target_fill = fill AND target_fill <> '' "
    "UNION ALL "
    "SELECT mark, entry, at, since, -lpa_ul FROM asked CROSS JOIN flows ON source_fill = fill AND source_fill <> ''), "
    "w AS (SELECT mark AS holder, entry AS value, sum(lpa_ul) AS lpa_ul FROM moved WHERE at > since AND at < :until "
    "GROUP BY mark, entry HAVING sum(lpa_ul) <> 0 "
    "UNION ALL SELECT mark, measured, 0 FROM asked WHERE measured <> '' LIMIT :most) "
    f"SELECT w.holder, w.value AS asked, w.lpa_ul, e.kind, e.mark, e.body, f.order_key FROM w {JOINED}"
)


class Effective(PlacedRow):
    """A row of the log that has effect, and the id by which it was asked for."""

    asked: str


class Moved(Effective):
    """The same, with what it moved into the fill of a vessel or, negative, out of it. [uL]"""

    holder: str
    lpa_ul: int


def load_effective(book: Book, entries: Iterable[str]) -> list[Effective]:
    """Return the row that has effect of each family, asked for by any entry of it. One statement at most."""
    wanted = sorted(set(entries))
    return book.rows(Effective, _EFFECTIVE, (json.dumps(wanted),)) if wanted else []


def load_by_entry(book: Book, entries: Iterable[str]) -> dict[str, dict[str, Uncertain]]:
    """Return the figures of these entries with their uncertainty, by the id asked for."""
    rows = load_effective(book, entries)
    reads = read_all_as_folded(book, rows)
    return {row["asked"]: uncertain_as_read(read) for row, read in zip(rows, reads, strict=True) if read}


class Holding(NamedTuple):
    """What the pure alcohol in a vessel comes from: its last gauge, and what moved something since. [uL]"""

    held_ul: int
    measured: str
    rows: list[Moved]


def find_holding(book: Book, state: Vessel) -> Holding | None:
    """Return where the holding of a vessel comes from; None for a mash, and where more than MOVES_MOST entries moved
    something since its last gauge. One statement.
    """
    found = find_holdings(book, {"": state}, most=MOVES_MOST)
    return found[""] if found else None


def find_holdings(
    book: Book, states: Mapping[str, Vessel], until: str = NEWEST, most: int = STOCK_MOST
) -> dict[str, Holding]:
    """Return where the holdings of vessels come from, by their marks; a mash and what is empty are left out. One
    statement at most.

    until: UTC text without Z before which the states are. Nothing where more than `most` entries, gauges apart, moved
    something since the last gauges.
    """
    spirits = {mark: held for mark, state in states.items() if (held := state["holds"]) and not held["mash"]}
    lines = {mark: last_measured(states[mark]) for mark in spirits}
    measured = {mark: line["entry"] if line else "" for mark, line in lines.items()}
    asked = {
        mark: (held["fill"], line["at"] if (line := lines[mark]) else "", measured[mark])
        for mark, held in spirits.items()
    }
    if not asked:
        return {}
    bound = most + sum(1 for entry in measured.values() if entry)
    rows = book.rows(Moved, _MOVES, {"asked": json.dumps(asked), "until": until, "most": bound + 1})
    if len(rows) > bound:
        return {}
    by_mark: dict[str, list[Moved]] = {mark: [] for mark in spirits}
    for row in rows:
        by_mark[row["holder"]].append(row)
    return {mark: Holding(held["lpa_ul"], measured[mark], by_mark[mark]) for mark, held in spirits.items()}


def load_holdings(book: Book, states: Mapping[str, Vessel], until: str = NEWEST) -> dict[str, Uncertain]:
    """Return how well what each of these vessels holds is known, by its mark; what nobody measured is left out. [LPA]

    until: UTC text without Z before which the states are. Nothing where more than STOCK_MOST vessels hold something.
    """
    filled = {mark: state for mark, state in states.items() if state["holds"]}
    if len(filled) > STOCK_MOST:
        return {}
    holdings = find_holdings(book, filled, until)
    rows = {(row["asked"], row["order_key"]): row for one in holdings.values() for row in one.rows if row["order_key"]}
    reads = dict(zip(rows, read_all_as_folded(book, list(rows.values())), strict=True))
    found = {
        mark: uncertain_holding(one, [reads.get((row["asked"], row["order_key"])) for row in one.rows])
        for mark, one in holdings.items()
    }
    return {mark: known for mark, known in found.items() if known}


def uncertain_holding(holding: Holding, reads: Sequence[Read | None]) -> Uncertain | None:
    """Return the pure alcohol that a vessel holds with its uncertainty, by its rows as they were read. [LPA]

    None where nothing was measured. The own errors of entries keep their names, so that what two vessels have of one
    entry adds up.
    """
    known = {
        row["asked"]: own_of_entry(row, lpa)
        for row, read in zip(holding.rows, reads, strict=True) if read and (lpa := uncertain_as_read(read).get("lpa"))
    }
    first = known.get(holding.measured)
    if holding.measured and first is None:
        return None
    terms = [(1.0, first)] if first else []
    for row in holding.rows:
        lpa = known.get(row["asked"])
        if lpa and lpa.value > 0 and row["lpa_ul"]:
            terms.append((row["lpa_ul"] / 1e6 / lpa.value, lpa))
    return combine(terms)._replace(value=holding.held_ul / 1e6) if terms else None


def own_of_entry(row: Effective, known: Uncertain) -> Uncertain:
    """Return a figure of an entry whose own error is one and the same wherever the entry counts."""
    return Uncertain(known.value, {**known.shared, f"entry {row['order_key']}": sqrt(known.own)}, 0.0)


def sum_of(figures: Iterable[Uncertain | None]) -> Uncertain | None:
    """Return a sum with its uncertainty; None where one part has none."""
    parts = list(figures)
    terms = [(1.0, part) for part in parts if part]
    return combine(terms) if len(terms) == len(parts) else None


def last_measured(state: Vessel) -> Line | None:
    """Return the last entry that measured all that a vessel now holds, or None."""
    since = (state["holds"] or NO_FILL)["since"]
    lines = [line for kind in MEASURES for line in state["recent"].get(kind, ())[-1:]]
    known = [line for line in lines if line["at"] >= since and line["figures"].get("lpa") is not None]
    return max(known, key=lambda line: line["at"], default=None)


def measured_or_filled(state: Vessel) -> Line | None:
    """Return the last entry that measured all that a vessel now holds: a gauge, else what filled it as a cask."""
    since = (state["holds"] or NO_FILL)["since"]
    filled = [line for line in state["recent"].get("cask_fill", ()) if line["at"] == since]
    return last_measured(state) or next(iter(filled), None)
