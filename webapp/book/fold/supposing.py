"""What an entry would come to with another figure in it, or as if nothing had stopped it. Nothing is written.

The entry is worked out as the fold does it, at its own place, from the states before it. What follows from it later is
not worked out: that is for the fold, once somebody has said that the figure was meant.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping

from webapp.book.before.view import BookView
from webapp.book.fold.evaluate import Outcome, evaluate
from webapp.book.fold.families import Plan
from webapp.book.fold.queries import Question
from webapp.book.fold.registry_rows import Known
from webapp.book.fold.states import load_before, load_before_each
from webapp.book.record.clock import correct_time, order_skew, utc_text
from webapp.book.record.memory import Registry
from webapp.book.record.rows import Logged
from webapp.book.record.store import Book
from webapp.book.record.upcast import upcast
from webapp.kinds.entry import Entry
from webapp.kinds.key import Key, stored_key
from webapp.kinds.state import State

EVERY_QUESTION = {"": "supposed"}  # as an answer that lets the whole entry stand


class Supposing:
    """Works out one entry of the book under other suppositions; what it needs is read once for all of them."""

    def __init__(self, book: Book, row: Logged, asked: Iterable[Question]) -> None:
        """row: the entry that has effect; asked: every question to it, one at least, answered or open."""
        self._book, self._row = book, row
        questions = list(asked)
        self._at = questions[0]["at"]
        self._answered = {one["name"]: one["answer"] for one in questions if one["answer"]}
        self._known = Known(book, Registry())
        self._states: Mapping[tuple[str, str], State | None] = {}
        keys = book.db.conn.execute("SELECT keys FROM folded WHERE root = ?", (row["root"],)).fetchone()
        self._keys = {stored_key(key) for key in json.loads(keys[0])} if keys else set()
        self._states = load_before_each(book, ((key, row["order_key"]) for key in self._keys))

    def outcome(self, entry: Entry, *, is_all_answered: bool = False) -> Outcome:
        """Return the effect that the entry would have. is_all_answered: as if every question had been let stand."""
        row = self._row
        typed_at = utc_text(correct_time(row["typed_at"], order_skew(row["skew_s"])))
        plan = Plan(
            row["root"], upcast(entry), row["order_key"], self._at, typed_at, row["received_at"], row["skew_s"],
            via=row["via"], stands=EVERY_QUESTION if is_all_answered else self._answered,
        )
        view = BookView(
            plan.at, plan.typed_at, plan.received_at, plan.skew_s, plan.root, self._known, self._before, via=plan.via
        )
        return evaluate(plan, view, self._known)

    def _before(self, key: Key) -> State | None:
        if key in self._keys:
            return self._states.get((key, self._row["order_key"]))
        return load_before(self._book, key, self._row["order_key"])
