"""Entries read with the uncertainty of their figures: by the class of their instruments as the registry has them now.

Nothing is kept: whoever sets the class of an instrument sees what it does to every figure read with it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from webapp.book.fold.row_reader import PlacedRow, read_all_as_folded
from webapp.book.record.store import Book
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, Line, Vessel
from webapp.kinds.uncertainty import uncertain_as_read
from webapp.trade.uncertainty import Uncertain, combine

# What stands where a fill is measured as a whole; every other entry moves a part.
MEASURES = ("gauge", "distilled_gauge", "cask_regauge", "bottling_gauge", "opening", "fraction_gauge", "stock_count")
MOVES_MOST = 40
JOINED = (  # by an entry or by the first of its family
    "LEFT JOIN amendments a ON a.id = w.value JOIN folded f ON f.root = coalesce(a.root, w.value) "
    "JOIN entries e ON e.id = f.entry"
)
_EFFECTIVE = (  # joins are ours, values are bound
    f"SELECT w.value AS asked, e.kind, e.mark, e.body, f.order_key FROM json_each(?) w {JOINED}"  # noqa: S608
)
# The entries that moved something of a fill since its last gauge, and that gauge, which moves nothing by itself.
_MOVES = (
    "WITH w AS (SELECT entry AS value, sum(lpa_ul) AS lpa_ul FROM ("  # noqa: S608
    "SELECT entry, at, lpa_ul FROM flows WHERE target_fill = :fill "
    "UNION ALL SELECT entry, at, -lpa_ul FROM flows WHERE source_fill = :fill) WHERE at > :since "
    "GROUP BY entry HAVING sum(lpa_ul) <> 0 UNION ALL SELECT :measured, 0 WHERE :measured <> '' LIMIT :most) "
    f"SELECT w.value AS asked, w.lpa_ul, e.kind, e.mark, e.body, f.order_key FROM w {JOINED}"
)


class Effective(PlacedRow):
    """A row of the log that has effect, and the id by which it was asked for."""

    asked: str


class Moved(Effective):
    """The same, with what it moved into the fill or, negative, out of it. [uL]"""

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
    held = state["holds"]
    if not held or held["mash"]:
        return None
    line = last_measured(state)
    measured, since = (line["entry"], line["at"]) if line else ("", "")
    asked = {"fill": held["fill"], "since": since, "measured": measured, "most": MOVES_MOST + 1}
    rows = book.rows(Moved, _MOVES, asked)
    return Holding(held["lpa_ul"], measured, rows) if len(rows) <= MOVES_MOST else None


def uncertain_holding(holding: Holding, reads: Sequence[Read | None]) -> Uncertain | None:
    """Return the pure alcohol that a vessel holds with its uncertainty, by its rows as they were read. [LPA]

    None where nothing was measured.
    """
    known = {
        row["asked"]: uncertain_as_read(read).get("lpa")
        for row, read in zip(holding.rows, reads, strict=True) if read
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
