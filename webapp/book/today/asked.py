"""The questions that wait for an answer, each with what was typed, what is offered, and the figures before it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import NamedTuple

import webapp.kinds
from webapp.book.fold import queries
from webapp.book.fold.queries import Question
from webapp.book.record import log
from webapp.book.record.store import Book
from webapp.book.record.upcast import upcast
from webapp.book.today.typed import line_words
from webapp.kinds.entry import Entry
from webapp.kinds.spec import Field, Kind
from webapp.kinds.state import Line, Vessel, figure_in
from webapp.trade import units
from webapp.trade.errors import OutOfDomain
from webapp.words.houseunits import METRIC, House
from webapp.words.kindwords import kind_in
from webapp.words.language import language

READ_MOST = 30  # questions of a weight
SHOWN_MOST = 5
HISTORY_MOST = 8


class Point(NamedTuple):
    """A figure of the same field before. [s since 1970, the field's canonical unit]"""

    at_s: float
    value: float


class Slip(NamedTuple):
    """What is to be drawn of a question: figures before, the one typed, the one offered, or None. [canonical unit]"""

    before: tuple[Point, ...]
    at_s: float
    typed: float
    offered: float | None


@dataclass(frozen=True, slots=True)
class Asked:
    """The questions to one entry, the heaviest first. slip: None where there is nothing to draw."""

    questions: Sequence[Question]
    body: Entry | None
    house: House = METRIC
    slip: Slip | None = None
    line: Line | None = None

    @property
    def first(self) -> Question:
        """The heaviest of its questions."""
        return self.questions[0]

    @property
    def title(self) -> str:
        """What sort of entry it is, in the language that is read."""
        kind = self._kind()
        return kind.title if kind else self.first["kind"]

    @property
    def summary(self) -> str:
        """The entry in a line, in the language that is read."""
        return line_words(self._kind(), self.body, self.line, self.house)

    def _kind(self) -> Kind | None:
        kind = webapp.kinds.get(self.first["kind"])
        return kind_in(kind, language()) if kind else None

    @property
    def mark(self) -> str:
        """The vessel that the entry is about; may be empty."""
        return self.first["mark"]

    def with_history(self, state: Vessel) -> Asked:
        """Return it with what its vessel remembers: figures of the same field before it, and what it came to."""
        lines = state["recent"].get(self.first["kind"], [])
        own = next((line for line in lines if line["entry"] == self.first["entry"]), None)
        return replace(self, slip=_slip(self.first, self.body, lines), line=own)


def load_asked(book: Book, house: House) -> list[Asked]:
    """Return the open questions, an entry at a time, the heaviest first: at most SHOWN_MOST entries."""
    by_entry: dict[str, list[Question]] = {}
    for one in queries.heaviest(book, house, READ_MOST):
        by_entry.setdefault(one["entry"], []).append(one)
    shown = list(by_entry.items())[:SHOWN_MOST]
    bodies = log.get_all(book, (entry for entry, _ in shown)) if shown else {}
    return [
        Asked(some, upcast(json.loads(bodies[entry]["body"])) if entry in bodies else None, house)
        for entry, some in shown
    ]


def _slip(question: Question, body: Entry | None, lines: Sequence[Line]) -> Slip | None:
    kind = webapp.kinds.get(question["kind"])
    spec = kind.field(question["field"]) if kind else None
    raw = (body["values"].get(question["field"]) if body and spec else None) or {}
    typed = _canonical(spec, raw.get("raw"), raw.get("unit"))
    if typed is None:
        return None
    before = [
        Point(_seconds(line["at"]), value) for line in lines
        if line["at"] < question["at"] and line["entry"] != question["entry"]
        and (value := figure_in(line["values"], question["field"])) is not None
    ]
    offer = next((one for one in question["suggestions"] if one["field"] == question["field"]), None)
    likely = _canonical(spec, offer["raw"], offer["unit"]) if offer else None
    if likely is None and len(before) < 2:
        return None
    return Slip(tuple(before[-HISTORY_MOST:]), _seconds(question["at"]), typed, likely)


def _canonical(spec: Field | None, raw: str | None, unit: str | None) -> float | None:
    """Return a figure as it was typed in the canonical unit of its field; None where it is none."""
    if spec is None or unit not in spec.units:
        return None
    try:
        return float(units.to_canonical(units.parse_number(str(raw)), unit))
    except (ValueError, OutOfDomain):
        return None


def _seconds(at: str) -> float:
    return datetime.fromisoformat(at).timestamp()
