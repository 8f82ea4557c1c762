"""Vats that were planned: the draws as they stand in an entry, and how the work went against them."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import TypedDict

from webapp.book.before.vat_draws import read_draws
from webapp.book.fold import row_reader
from webapp.book.record import log
from webapp.book.record.rows import Logged
from webapp.book.record.store import Book
from webapp.book.vats.sum import Draw
from webapp.kinds.read import Read
from webapp.kinds.state import Value, figure_in

LIST_MOST = 50
FLOWS_MOST = 100


class Plan(Logged):
    """A planned vat: its entry, what it said, and the draws by mark. [kg]"""

    values: dict[str, Value]
    draws: dict[str, float]


class SoFar(TypedDict):
    """A draw of a plan, with what has come out of that vessel since. [kg]"""

    mark: str
    planned_kg: float
    done_kg: float | None
    entry: str | None


class _Moved(TypedDict):
    source: str
    entry: str
    mass_g: int


def load_plans(book: Book, limit: int = LIST_MOST) -> list[Plan]:
    """Return the plans that stand, newest first: entry row, values, draws by mark."""
    rows = log.find_entries(book, kind="vat_plan", limit=limit)
    standing = [row for row in rows if row["standing"] == "entered"]
    reads = row_reader.read_all_as_folded(book, standing)
    return [_plan(row, read) for row, read in zip(standing, reads, strict=True) if read]


def load_plan(book: Book, entry_id: str) -> Plan | None:
    """Return one plan, or None where the book has no such plan."""
    row = log.load_entry(book, entry_id)
    read = row_reader.read_as_folded(book, row) if row and row["kind"] == "vat_plan" else None
    return _plan(row, read) if row and read else None


def _plan(row: Logged, read: Read) -> Plan:
    return {**row, "values": dict(read.values), "draws": read_draws(str(read.values.get("draws") or ""))[0]}


def so_far(book: Book, planned: Plan) -> list[SoFar]:
    """Return each draw with what has come out of that vessel into the tank since: mark, planned_kg, done_kg, entry.

    The water comes last, with an empty mark.
    """
    place = book.one("SELECT order_key FROM folded WHERE root = ?", (planned["root"],))
    after = f"{place['order_key'][:19]}Z" if place else str(planned["read_at"])
    tank = f"v:{planned['mark']}"
    wanted = [*planned["draws"].items(), ("", figure_in(planned["values"], "water") or 0.0)]
    sources = [f"v:{mark}" if mark else "out:water" for mark, _ in wanted]
    moved: dict[str, list[_Moved]] = {source: [] for source in sources}
    for row in book.rows(_Moved, _MOVED, {"sources": json.dumps(sources), "target": tank, "after": after}):
        moved[row["source"]].append(row)
    return [
        _line(mark, kg, moved[source][:FLOWS_MOST]) for (mark, kg), source in zip(wanted, sources, strict=True)
    ]


_MOVED = (
    "SELECT source, entry, mass_g FROM flows WHERE source IN (SELECT value FROM json_each(:sources)) "
    "AND target = :target AND at > :after ORDER BY at"
)


def _line(mark: str, planned_kg: float, rows: list[_Moved]) -> SoFar:
    done = sum(row["mass_g"] for row in rows) / 1000.0
    entry = rows[0]["entry"] if rows else None
    return {"mark": mark, "planned_kg": planned_kg, "done_kg": done if rows else None, "entry": entry}


def draws_text(draws: Iterable[Draw]) -> str:
    """Return draws as an entry carries them, legible as they stand: "C001-Z 153.7; C009-K 176.2"."""
    return "; ".join(f"{draw.source.mark} {draw.kg:.1f}" for draw in draws)
