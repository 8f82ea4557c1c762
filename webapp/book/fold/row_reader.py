"""Reading rows of the log as the fold read them: with the facts of vessel and instruments at their places in time.

A list of rows is read together: vessels, instruments, limits, places and states each in one statement.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import TypedDict, TypeVar

import webapp.kinds
from webapp.book.before.corrections import corrections_for, instruments_in
from webapp.book.before.reading_context import context_for
from webapp.book.fold.registry_rows import load_limits
from webapp.book.fold.states import NEWEST, load_before_each
from webapp.book.record.store import Book
from webapp.kinds.key import InstrumentKey, instrument_key, vessel_key
from webapp.kinds.read import Read, read_entry
from webapp.kinds.rows import InstrumentRow, VesselRow
from webapp.kinds.state import Instrument

R = TypeVar("R")

_VESSELS = "SELECT * FROM vessels WHERE mark IN (SELECT value FROM json_each(?))"
_INSTRUMENTS = "SELECT * FROM instruments WHERE id IN (SELECT value FROM json_each(?))"
_PLACES = "SELECT root, order_key FROM folded WHERE root IN (SELECT value FROM json_each(?))"


class RootedRow(TypedDict):
    """What of a row of the log reading it needs, with the root of its family."""

    kind: str
    mark: str
    body: str
    root: str


class _Place(TypedDict):
    root: str
    order_key: str


def read_as_folded(book: Book, row: RootedRow) -> Read | None:
    """Return a log row, read with the state of its vessel at its place; None for an unknown kind."""
    return read_all_as_folded(book, [row])[0]


def read_all_as_folded(book: Book, rows: Sequence[RootedRow]) -> list[Read | None]:
    """Return each log row, read with the states of its vessel and instruments at its place.

    None stands for a row of an unknown kind.
    """
    kinds = [webapp.kinds.get(row["kind"]) for row in rows]
    if not any(kinds):
        return [None] * len(rows)
    bodies = [json.loads(row["body"]) for row in rows]
    named = [instruments_in(kind, body) if kind else [] for kind, body in zip(kinds, bodies, strict=True)]
    vessels = {row["mark"]: row for row in _rows_of(book, VesselRow, _VESSELS, (row["mark"] for row in rows))}
    wanted = (name for names in named for name in names)
    instruments = {row["id"]: row for row in _rows_of(book, InstrumentRow, _INSTRUMENTS, wanted)}
    roots = _rows_of(book, _Place, _PLACES, (row["root"] for row in rows))
    folded = {row["root"]: row["order_key"] for row in roots}
    limits = load_limits(book)
    places = [folded.get(row["root"], NEWEST) for row in rows]
    states = load_before_each(
        book, ((vessel_key(row["mark"]), place) for row, place in zip(rows, places, strict=True) if row["mark"])
    )
    checked = load_before_each(
        book, ((instrument_key(name), place) for names, place in zip(named, places, strict=True) for name in names)
    )
    found: list[Read | None] = []
    for row, kind, body, place in zip(rows, kinds, bodies, places, strict=True):
        if kind is None:
            found.append(None)
            continue
        mark = row["mark"] or ""
        context = context_for(kind, vessels.get(mark), states.get((vessel_key(mark), place)), limits)
        context["corrections"] = corrections_for(kind, body, instruments.get, _states_at(checked, place))
        found.append(read_entry(kind, body, context))
    return found


def _states_at(
    checked: Mapping[tuple[str, str], Instrument | None], place: str
) -> Callable[[InstrumentKey], Instrument | None]:
    """Return a function that gives the state of an instrument at that place."""
    return lambda key: checked.get((key, place))


def _rows_of(book: Book, of: type[R], sql: str, names: Iterable[str | None]) -> list[R]:
    """Return the rows of a statement that takes names as its one parameter; it is not asked where there are none."""
    wanted = sorted({name for name in names if name})
    return book.rows(of, sql, (json.dumps(wanted),)) if wanted else []
