"""One settling of the fold: a heap of places to work out, in their order, and what follows from each.

What a change of the registry concerns is worked out in slices. Where a slice ends with states that are no longer what
they were, it leaves a seam: right after its last place a version of each such state that says what it was. So up to
the seam everything is as it will be, beyond it everything as it was, and nobody sees a mixture; the next slice takes
the seam out, as if an entry were struck, and follows from there. What comes in meanwhile with a place before a seam
changes nothing beyond it. Every entry that is not on the list is what it comes to with the registry and the states
before it as they are: so when the list is empty, and with it the last seam gone, the fold is whole.

A hand-in works out its own entries, and what follows from them for a while; then it leaves seams too, one before each
stretch that it passes over, and its receipts need not wait for the past.
"""

from __future__ import annotations

import heapq
import time
from collections.abc import Iterable

from webapp.book.before.view import BookView
from webapp.book.fold import families, reader_tables
from webapp.book.fold.evaluate import Outcome, evaluate
from webapp.book.fold.families import Fresh, Plan
from webapp.book.fold.judgings import last_judging
from webapp.book.fold.registry_rows import Known
from webapp.book.fold.states import Versions
from webapp.book.record.kept_json import from_text
from webapp.book.record.log import root_of
from webapp.book.record.rows import FoldedRow
from webapp.book.record.store import Book
from webapp.kinds.key import Key, stored_key
from webapp.kinds.state import State

PLANS_HELD_MOST = 5_000
ID_LENGTH = 36  # an order key ends with the id of its entry
SEAM = "~"  # at the end of a place: right after it
LAST = "~"  # after every place
SLICE_S = 0.2  # a slice ends after so long,
SLICE_LEAST = 50  # but not before so many entries,
SLICE_MOST = 1_000  # and takes no more than this off the list
FOLLOW_S = 0.1  # a hand-in works out what follows from its late entries for so long, of processor time,
FOLLOW_LEAST = 50  # but not before so many entries


class Replay:
    """Settles what is put into it, all at once. Inside a write only."""

    def __init__(self, book: Book, fresh: Fresh | None = None, *, in_part: bool = False) -> None:
        self._book = book
        self._conn = book.db.conn
        self._fresh = fresh
        self._outcomes: dict[str, Outcome] = {}
        self._known = Known(book)
        self._versions = Versions(book)
        self._judging = last_judging(book)
        self._results = reader_tables.Results(book, self._judging)
        self._heap: list[str] = []
        self._places: set[str] = set()  # all that are or were on the heap
        self._in_part = in_part
        self._own: set[str] = set()  # places that are worked out whatever it takes
        self._waiting: set[str] = set()  # places that stay on the list
        self._moves: list[tuple[str, str]] = []  # families that go from one place to a later one
        self._memory = book.memory
        self._olds: dict[str, FoldedRow] = {}  # place -> the folded row of the family that had it
        self._done: set[str] = set()
        self._leaving: set[str] = set()
        self._arriving: set[str] = set()
        # Keys whose state here differs from what it was before this settling: what it was, what it is, its depth.
        self._changed: dict[Key, tuple[State | None, State | None, int]] = {}

    def plan(self, root: str) -> None:
        """Put a family's old and new place on the heap."""
        self._forget_plan(root)
        new = families.load_plan(self._book, root, self._fresh)
        old = self._results.folded(root)
        if old:
            self._olds[old["order_key"]] = old
            if new is None or new.order_key != old["order_key"]:
                self._leaving.add(old["order_key"])
            self._push_own(old["order_key"])
        if new and old and self._is_cut_off(old["order_key"], new.order_key):
            self._put_off(new.order_key)
        elif new:
            self._arriving.add(new.order_key)
            self._push_own(new.order_key)
            if old and old["order_key"] < new.order_key:
                self._moves.append((old["order_key"], new.order_key))
            self._hold_plan(new)

    def run(self) -> dict[str, Outcome]:
        """Work out every place on the heap, and those that follow from it; return what came of each, by its id."""
        have_seams = bool(self._conn.execute("SELECT EXISTS (SELECT 1 FROM seams)").fetchone()[0])
        last, followed, begun_s = "", 0, time.thread_time()
        while self._heap or (have_seams and self._changed):
            place = self._heap[0] if self._heap else LAST
            seam = self._seam_between(last, place) if have_seams and self._changed else None
            if seam:
                self._pass_over(seam)
                last = seam
                continue
            if not self._heap:
                break
            if place not in self._own and self._in_part and self._has_followed(followed, begun_s):
                self._pass_over(last.removesuffix(SEAM) + SEAM)
                continue
            followed += place not in self._own
            last = self._step()
        self._finish()
        return self._outcomes

    def _has_followed(self, many: int, begun_s: float) -> bool:
        """Whether a hand-in has worked out enough of what follows; where others wait behind it, that is nothing."""
        if self._book.line.is_waited_in:
            return True
        return many >= FOLLOW_LEAST and time.thread_time() - begun_s >= FOLLOW_S

    def _seam_between(self, place: str, later: str) -> str | None:
        between = "SELECT min(order_key) FROM seams WHERE order_key > ? AND order_key < ?"
        found: str | None = self._conn.execute(between, (place, later)).fetchone()[0]
        return found

    def _pass_over(self, seam: str) -> None:
        """Leave what follows after that place as it was, up to the next place that has to be worked out."""
        self._leave_seam(seam)
        for old, new in self._moves:
            # Beyond the seam it is still where it was: it waits on the list, or it would meet itself.
            if old < seam < new and new in self._arriving:
                self._arriving.discard(new)
                if new not in self._leaving:  # another family may have to leave that very place
                    self._own.discard(new)
                self._put_off(new)
        self._heap = sorted(self._own.intersection(self._heap))  # a sorted list is a heap
        self._places = self._done | self._own

    def _step(self) -> str:
        """Work out the first place on the heap, and return it."""
        place = heapq.heappop(self._heap)
        self._done.add(place)
        old = self._olds.pop(place, None)
        if place in self._leaving:
            # Its family has another place now, or has become part of another family (perhaps at this very place).
            assert old is not None
            self._results.remove(old)
            if place not in self._arriving:
                self._move(place, _keys(old), Outcome("struck"))
                return place
        plan = self._memory.plans.get(place) or self._plan_at(place)
        if plan.order_key != place:
            self._move_away(place, plan)
            return place
        if place not in self._arriving:
            stands = self._results.folded(plan.root)
            if stands and stands["order_key"] != place:
                self._meet_elsewhere(stands["order_key"], place)
                return place
            old = old or stands
        outcome = self._outcomes[plan.id] = evaluate(plan, self._view(plan), self._known)
        self._move(place, _keys(old), outcome)
        self._results.put(plan, outcome, is_new=old is None)
        return place

    def _leave_seam(self, place: str) -> None:
        """Let the states beyond that place be what they were."""
        for key, (then, now, depth) in self._changed.items():
            _, beyond = self._versions.at(key, place, then)
            self._versions.put(key, place, now, depth, beyond)
            self._conn.execute("INSERT OR IGNORE INTO seams VALUES (?, ?)", (place, key))
            self._results.note_card(key)
        if self._changed:
            self._conn.execute("INSERT OR IGNORE INTO unjudged VALUES (?)", (place,))
            self._done.discard(place)
        self._changed.clear()

    def _finish(self) -> None:
        self._versions.flush()
        self._results.finish()
        change = "DELETE FROM unjudged WHERE order_key = ?"
        if self._judging and not self._judging.is_by_me:
            # A program with other rules has opened the book since: it is the one that judges last.
            change = "INSERT OR IGNORE INTO unjudged SELECT order_key FROM folded WHERE order_key = ?"
        self._conn.executemany(change, ((place,) for place in self._done - self._waiting))

    def _put_off(self, place: str) -> None:
        """Let a place wait on the list, whatever else happens to it in this settling."""
        self._conn.execute("INSERT OR IGNORE INTO unjudged VALUES (?)", (place,))
        self._waiting.add(place)

    def _push(self, place: str) -> None:
        if place not in self._places:
            self._places.add(place)
            heapq.heappush(self._heap, place)

    def _push_own(self, place: str) -> None:
        self._own.add(place)
        self._push(place)

    def _plan_at(self, place: str) -> Plan:
        plan = families.load_plan(self._book, root_of(self._book, place[-ID_LENGTH:]), self._fresh)
        assert plan is not None, "the fold has an entry that the log has not"
        if plan.order_key == place:
            self._hold_plan(plan)
        return plan

    def _hold_plan(self, plan: Plan) -> None:
        """Keep a plan in memory until something of its family changes."""
        memory = self._memory
        if len(memory.plans) >= PLANS_HELD_MOST:
            _, gone = memory.plans.popitem(last=False)
            memory.plan_places.pop(gone.root, None)
        self._forget_plan(plan.root)
        memory.plans[plan.order_key] = plan
        memory.plan_places[plan.root] = plan.order_key

    def _forget_plan(self, root: str) -> None:
        place = self._memory.plan_places.pop(root, None)
        if place is not None:
            self._memory.plans.pop(place, None)

    def _move_away(self, place: str, plan: Plan) -> None:
        """Take a family from a place that it no longer has by these rules; its new place goes on the list.

        A new place that lies ahead is worked out on the way, if this settling gets there.
        """
        old = self._results.folded(plan.root)
        if old and old["order_key"] == place:  # else it was on its way here when the rules changed once more
            self._results.remove(old, plan)
            self._move(place, _keys(old), Outcome("struck"))
        self._conn.execute("INSERT OR IGNORE INTO unjudged VALUES (?)", (plan.order_key,))
        if plan.order_key > place and not self._is_cut_off(place, plan.order_key):
            self._push(plan.order_key)

    def _is_cut_off(self, place: str, later: str) -> bool:
        """Whether a seam lies between two places: what is taken from the first is beyond it still there.

        Then the later place waits on the list until the seam is taken out, or an entry would meet itself.
        """
        between = "SELECT EXISTS (SELECT 1 FROM seams WHERE order_key > ? AND order_key < ?)"
        return bool(self._conn.execute(between, (place, later)).fetchone()[0])

    def _meet_elsewhere(self, stands: str, place: str) -> None:
        """A family still stands at another place: that one is on the list, and brings it here after.

        So it is where the rules went to and fro: this place was put on the list under rules before the last.
        """
        self._conn.execute("INSERT OR IGNORE INTO unjudged VALUES (?)", (stands,))
        if stands > place:
            self._push(stands)

    def _view(self, plan: Plan) -> BookView:
        place = plan.order_key
        return BookView(
            plan.at, plan.typed_at, plan.received_at, plan.skew_s, plan.root, self._known,
            lambda key: self._before(key, place)[0], via=plan.via,
        )

    def _before(self, key: Key, place: str) -> tuple[State | None, int]:
        if key in self._changed:
            return self._changed[key][1:]
        return self._versions.before(key, place)

    def _move(self, place: str, old_keys: set[Key], outcome: Outcome) -> None:
        """Write the outcome's states at its place, and follow each key that is no longer what it was."""
        new_keys, written = outcome.keys, outcome.effect.states
        for key in sorted(old_keys | new_keys):
            now, depth = self._before(key, place)
            then = self._changed[key][0] if key in self._changed else now
            is_version = False
            if key in old_keys:
                is_version, then = self._versions.at(key, place, then)
            if key in written:
                depth = self._versions.put(key, place, now, depth, written[key])
                now = written[key]
            elif is_version:
                self._versions.drop(key, place)
            if key in new_keys and key not in old_keys:
                self._versions.touch(key, place)
            elif key not in new_keys and not place.endswith(SEAM):  # a seam has no entry that touches anything
                self._versions.untouch(key, place)
            self._results.key_moved(key, then, now)
            self._follow(key, place, then, now, depth)

    def _follow(self, key: Key, place: str, then: State | None, now: State | None, depth: int) -> None:
        if then == now or self._versions.is_last(key, place):
            self._changed.pop(key, None)
            return
        self._changed[key] = (then, now, depth)
        following = self._versions.touched_after(key, place)
        if following:
            self._push(following)


class Slice(Replay):
    """Settles some of what is unjudged: the earliest, and what follows from it, for a fraction of a second."""

    def __init__(self, book: Book, together: int = 0) -> None:
        """together: so many entries of the list are worked out however long that takes; 0: as many as a slice takes."""
        super().__init__(book)
        self._least, self._most = (together, together) if together else (SLICE_LEAST, SLICE_MOST)

    def run(self) -> dict[str, Outcome]:
        """Work off one slice of the list; return what came of each, by its id."""
        # Seams stand in the list too, and are taken besides.
        most = self._most + self._conn.execute("SELECT count(DISTINCT order_key) FROM seams").fetchone()[0]
        rows = self._conn.execute("SELECT order_key FROM unjudged ORDER BY order_key LIMIT ?", (most + 1,))
        places = [str(row[0]) for row in rows]
        until = places.pop() if len(places) > most else LAST
        for place in places:
            self._push(place)
        self._read_together(places)
        end_s, done, last = time.perf_counter() + SLICE_S, 0, ""
        while self._heap:
            if self._heap[0] >= until or (done >= self._least and time.perf_counter() >= end_s):
                self._leave_seam(last.removesuffix(SEAM) + SEAM)
                break
            last = self._step()
            done += not last.endswith(SEAM)  # else a slice might do nothing but move a seam
        self._finish()
        return self._outcomes

    def _read_together(self, places: Iterable[str]) -> None:
        """Read the plans of entries that are families by themselves in one statement, as most are."""
        wanted = {place[-ID_LENGTH:] for place in places if place not in self._memory.plans and place[-1:] != SEAM}
        fresh = families.load_together(self._book, wanted) if wanted else Fresh()
        for root in fresh.alone:
            if (plan := families.load_plan(self._book, root, fresh)) is not None:
                self._hold_plan(plan)

    def _step(self) -> str:
        if not self._heap[0].endswith(SEAM):
            return super()._step()
        seam = heapq.heappop(self._heap)
        self._come_to_seam(seam)
        return seam

    def _is_cut_off(self, place: str, later: str) -> bool:
        """A slice takes out every seam on its way."""
        return False

    def _come_to_seam(self, place: str) -> None:
        """Take the seam out: what was put off there goes on."""
        keys = {stored_key(row[0]) for row in self._conn.execute("SELECT key FROM seams WHERE order_key = ?", (place,))}
        self._conn.execute("DELETE FROM seams WHERE order_key = ?", (place,))
        for key in keys:
            self._results.note_card(key)  # it says what is still being judged
        self._move(place, keys, Outcome("struck"))
        self._done.add(place)


def _keys(folded: FoldedRow | None) -> set[Key]:
    keys: set[Key] = set(from_text(folded["keys"])) if folded else set()
    return keys
