"""The fold: from the log to states, flows and queries, brought up to date entry by entry.

Entries have their place by order key (when they were read). A new, amended, struck or answered entry is worked out at
its place; a key whose state right after that place is not what it was makes the next entry that touches the key be
worked out again, and so on until the state is the same as before. So a late entry costs what it changes, and the result
is what folding all entries in their order would give (`rebuild`, and the tests).
"""

from __future__ import annotations

import heapq
import json
from typing import Any

from webapp.book import families, results
from webapp.book.evaluate import Outcome, evaluate
from webapp.book.families import Fresh, Plan
from webapp.book.known import Known
from webapp.book.log import canonical, root_of
from webapp.book.states import Versions, load_newest, patched
from webapp.book.store import Book
from webapp.book.view import View

PLANS_HELD_MOST = 5_000
ID_LENGTH = 36  # an order key ends with the id of its entry
DERIVED = ("amendments", "answers", "folded", "touches", "states", "flows", "queries", "runs", "bottlings", "fills",
           "dispatches", "month_sums")  # fmt: skip


def note(book: Book, row: dict[str, Any], entry: dict[str, Any]) -> None:
    """Note a new entry for the next `settle`, inside a write."""
    book.memory.dirty_roots |= families.note(book, row, entry)


def note_clash(book: Book, entry_id: str) -> None:
    """Note that another body came under an id, inside a write: a person has to look."""
    book.memory.dirty_roots.add(root_of(book, entry_id))


def settle(book: Book, fresh: Fresh | None = None) -> dict[str, Outcome]:
    """Fold what is dirty, inside a write. Return what came of each entry that was worked out, by its id."""
    memory = book.memory
    if not memory.dirty_roots and not memory.dirty_keys:
        return {}
    replay = _Replay(book, fresh)
    for root in memory.dirty_roots:
        replay.plan(root)
    for key in memory.dirty_keys:
        replay.again(key)
    memory.dirty_roots.clear()
    memory.dirty_keys.clear()
    return replay.run()


def rebuild(book: Book) -> None:
    """Throw the fold away and make it again from the log."""
    with book.write() as database:
        for table in DERIVED:
            database.conn.execute(f"DELETE FROM {table}")  # noqa: S608
        book.memory.clear()
        for row in database.conn.execute(
            "SELECT id, kind, typed_at, person, skew_s, body FROM entries ORDER BY book_no"
        ):
            names = ("id", "kind", "typed_at", "person", "skew_s")
            note(book, dict(zip(names, row, strict=False)), json.loads(row[-1]))
        settle(book)


def state(book: Book, key: str) -> Any:
    """Return the newest state of a key (kinds/state.py), or None."""
    return load_newest(book, key)


def dump(book: Book) -> bytes:
    """Return the whole fold as canonical bytes: equal folds give equal bytes, however the entries arrived."""
    keys = [row["key"] for row in book.query("SELECT DISTINCT key FROM states ORDER BY key")]
    whole = {
        "states": {key: load_newest(book, key) for key in keys},
        "flows": book.query("SELECT * FROM flows ORDER BY entry, n"),
        "queries": book.query("SELECT * FROM queries ORDER BY entry, name"),
        "standing": book.query("SELECT root, entry, order_key, mark, standing FROM folded ORDER BY root"),
        "runs": book.query("SELECT * FROM runs ORDER BY id"),
        "fills": book.query("SELECT * FROM fills ORDER BY id"),
        "dispatches": book.query("SELECT * FROM dispatches ORDER BY id"),
        "month_sums": book.query("SELECT * FROM month_sums ORDER BY month, a, b, reason, sort"),
        "bottlings": book.query("SELECT * FROM bottlings ORDER BY id"),
    }
    return canonical(whole).encode()


class _Replay:
    """One settling: a heap of places to work out, in their order."""

    def __init__(self, book: Book, fresh: Fresh | None) -> None:
        self._book = book
        self._fresh = fresh
        self._known = Known(book)
        self._versions = Versions(book)
        self._results = results.Results(book)
        self._heap: list[str] = []
        self._places: set[str] = set()  # all that are or were on the heap
        self._plans: dict[str, Plan] = {}
        self._olds: dict[str, dict[str, Any]] = {}  # place -> the folded row of the family that had it
        self._leaving: set[str] = set()
        self._arriving: set[str] = set()
        # Keys whose state here differs from what it was before this settling: what it was, what it is, its depth.
        self._changed: dict[str, tuple[Any, Any, int]] = {}

    def plan(self, root: str) -> None:
        """Put a family's old and new place on the heap."""
        new = families.plan(self._book, root, self._fresh)
        old = self._results.folded(root)
        if old:
            self._olds[old["order_key"]] = old
            if new is None or new.order_key != old["order_key"]:
                self._leaving.add(old["order_key"])
            self._push(old["order_key"])
        if new:
            self._arriving.add(new.order_key)
            self._push(new.order_key)
            if len(self._plans) < PLANS_HELD_MOST:
                self._plans[new.order_key] = new

    def again(self, key: str) -> None:
        """Put every entry that touches the key on the heap."""
        for row in self._book.query("SELECT order_key FROM touches WHERE key = ?", (key,)):
            self._push(row["order_key"])

    def run(self) -> dict[str, Outcome]:
        """Work out every place on the heap, and those that follow from it."""
        outcomes: dict[str, Outcome] = {}
        while self._heap:
            place = heapq.heappop(self._heap)
            old = self._olds.pop(place, None)
            if place in self._leaving:
                # Its family has another place now, or has become part of another family (perhaps at this very place).
                assert old is not None
                self._results.remove(old)
                if place not in self._arriving:
                    self._move(place, _keys(old), Outcome("struck"))
                    continue
            plan = self._plans.pop(place, None) or self._plan_at(place)
            old = old or self._old(plan)
            outcome = outcomes[plan.id] = evaluate(plan, self._view(plan), self._known)
            self._move(place, _keys(old), outcome)
            self._results.put(plan, outcome, is_new=old is None)
        self._versions.flush()
        self._results.finish()
        return outcomes

    def _push(self, place: str) -> None:
        if place not in self._places:
            self._places.add(place)
            heapq.heappush(self._heap, place)

    def _plan_at(self, place: str) -> Plan:
        plan = families.plan(self._book, root_of(self._book, place[-ID_LENGTH:]), self._fresh)
        assert plan is not None, "the fold has an entry that the log has not"
        assert plan.order_key == place, "an entry is not where the fold has it"
        return plan

    def _old(self, plan: Plan) -> dict[str, Any] | None:
        """Return the folded row of an entry that is worked out because of a key, not because of its family."""
        if self._fresh and plan.id in self._fresh:
            return None
        row = self._results.folded(plan.root)
        return row if row and row["order_key"] == plan.order_key else None

    def _view(self, plan: Plan) -> View:
        place = plan.order_key
        return View(
            plan.at, plan.typed_at, plan.received_at, plan.skew_s, plan.root, self._known,
            lambda key: self._before(key, place)[0],
        )  # fmt: skip

    def _before(self, key: str, place: str) -> tuple[Any, int]:
        if key in self._changed:
            return self._changed[key][1:]
        return self._versions.before(key, place)

    def _move(self, place: str, old_keys: set[str], outcome: Outcome) -> None:
        """Write the outcome's states at its place, and follow each key that is no longer what it was."""
        new_keys, written = outcome.keys, outcome.effect.states
        for key in sorted(old_keys | new_keys):
            now, depth = self._before(key, place)
            then = self._changed[key][0] if key in self._changed else now
            old_version = self._versions.row(key, place) if key in old_keys else None
            if old_version:
                body = json.loads(old_version[3])
                then = body if old_version[2] else patched(then, body)
            if key in written:
                depth = self._versions.put(key, place, now, depth, written[key])
                now = written[key]
            elif old_version:
                self._versions.drop(key, place)
            if key in new_keys and key not in old_keys:
                self._versions.touch(key, place)
            elif key not in new_keys:
                self._versions.untouch(key, place)
            self._results.key_moved(key, then, now)
            self._follow(key, place, then, now, depth)

    def _follow(self, key: str, place: str, then: Any, now: Any, depth: int) -> None:
        if then == now:
            self._changed.pop(key, None)
            return
        self._changed[key] = (then, now, depth)
        following = self._versions.touched_after(key, place)
        if following:
            self._push(following)


def _keys(folded: dict[str, Any] | None) -> set[str]:
    return set(json.loads(folded["keys"])) if folded else set()
