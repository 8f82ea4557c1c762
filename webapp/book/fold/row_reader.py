"""Reading rows of the log as the fold read them: with the facts of vessel and instruments at their places in time.

A list of rows is read together: vessels, instruments, limits and states each in one statement. A row has the columns
of the log and the place of its family in the order of the fold, as log.py gives them.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import TypedDict, TypeVar, cast

import webapp.kinds
from webapp.book.before.accuracy import accuracies_for
from webapp.book.before.corrections import corrections_for, instruments_in
from webapp.book.before.reading_context import context_for
from webapp.book.fold.registry_rows import load_limits
from webapp.book.fold.states import load_before_each
from webapp.book.record.store import Book
from webapp.kinds.key import InstrumentKey, KeyOf, VesselKey, instrument_key, vessel_key
from webapp.kinds.read import Read, read_entry
from webapp.kinds.rows import InstrumentRow, VesselRow
from webapp.kinds.state import State

R = TypeVar("R")
S = TypeVar("S", bound=State)

_VESSELS = "SELECT * FROM vessels WHERE mark IN (SELECT value FROM json_each(?))"
_INSTRUMENTS = "SELECT * FROM instruments WHERE id IN (SELECT value FROM json_each(?))"


class PlacedRow(TypedDict):
    """What of a row of the log reading it needs, with the place of its family in the order of the fold."""

    kind: str
    mark: str
    body: str
    order_key: str


def read_as_folded(book: Book, row: PlacedRow) -> Read | None:
    """Return a log row, read with the state of its vessel at its place; None for an unknown kind."""
    return read_all_as_folded(book, [row])[0]


def read_all_as_folded(book: Book, rows: Sequence[PlacedRow]) -> list[Read | None]:
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
    limits = load_limits(book)
    places = [row["order_key"] for row in rows]
    keys: list[tuple[VesselKey | InstrumentKey, str]] = []
    for row, names, place in zip(rows, named, places, strict=True):
        keys += [(vessel_key(row["mark"]), place)] if row["mark"] else []
        keys += [(instrument_key(name), place) for name in names]
    states = load_before_each(book, keys)
    found: list[Read | None] = []
    for row, kind, body, place in zip(rows, kinds, bodies, places, strict=True):
        if kind is None:
            found.append(None)
            continue
        mark = row["mark"] or ""
        state_of = _StatesAt(states, place)
        context = context_for(kind, vessels.get(mark), state_of(vessel_key(mark)), limits)
        context["corrections"] = corrections_for(kind, body, instruments.get, state_of)
        # Nothing is computed by these two: they say how far what is computed may be off.
        day = str(body.get("read_at") or "")[:10]
        context["accuracies"] = accuracies_for(instruments_in(kind, body), day, instruments.get, state_of)
        vessel = vessels.get(mark)
        context["capacity_l"] = vessel["capacity_l"] if vessel else None
        found.append(read_entry(kind, body, context))
    return found


class _StatesAt:
    """The states at one place, out of those that were read together."""

    def __init__(self, states: Mapping[tuple[str, str], State | None], place: str) -> None:
        self._states = states
        self._place = place

    def __call__(self, key: KeyOf[S]) -> S | None:
        """Return the state of a key."""
        return cast("S | None", self._states.get((key, self._place)))  # the key says which sort of state it is


def _rows_of(book: Book, of: type[R], sql: str, names: Iterable[str | None]) -> list[R]:
    """Return the rows of a statement that takes names as its one parameter; it is not asked where there are none."""
    wanted = sorted({name for name in names if name})
    return book.rows(of, sql, (json.dumps(wanted),)) if wanted else []
