"""The tables that readers ask, written at the end of a settling: flows, queries, standings, runs, and the cards that
have changed.
"""

from __future__ import annotations

import json
from typing import cast

import webapp.kinds
from webapp.book.fold.differences import Watch
from webapp.book.fold.evaluate import Outcome
from webapp.book.fold.families import Plan
from webapp.book.fold.judgings import Judging
from webapp.book.fold.month_sums import MonthSums
from webapp.book.fold.states import load_newest
from webapp.book.record.kept_json import to_text
from webapp.book.record.log import canonical
from webapp.book.record.rows import FoldedRow
from webapp.book.record.store import Book
from webapp.kinds.key import Key, is_run, is_vessel, is_wish, name_in, run_key
from webapp.kinds.message import to_json
from webapp.kinds.run_state import Run
from webapp.kinds.state import Body, State
from webapp.words.travel import keep_suggestions

FlowRow = tuple[str, int, str, str, int, int, int, str, str, str, str, str, str, str]
NAMED = {
    "f:": ("fills", ("mark", "what", "name", "lot", "since", "ended_at")),
    "b:": ("bottlings", ("tank", "fill", "batch", "lot_mark", "case_from", "case_to", "odd_case", "at")),
    "o:": ("dispatches", ("bottling", "at", "why", "document", "to_whom", "case_from", "case_to", "cases", "bottles")),
}


# Kinds that may put a vessel somewhere: those with a box for a place.
PLACING = frozenset(kind.name for kind in webapp.kinds.ALL if any(field.is_place for field in kind.fields))


class Results:
    """Gathers rows while the fold runs, and writes them at its end. Inside a write only."""

    def __init__(self, book: Book, judging: Judging | None) -> None:
        self._book = book
        self._conn = book.db.conn
        self._months = MonthSums(book)
        self._watch = Watch(book, judging)
        self._folded: list[tuple[str, ...]] = []
        self._flows: list[FlowRow] = []
        self._queries: list[tuple[str, ...]] = []
        self._placings: list[tuple[str, ...]] = []
        self._marks: set[str] = set()
        self._runs: set[str] = set()
        self._named: set[Key] = set()

    def folded(self, root: str) -> FoldedRow | None:
        """Return the row of a family in the fold as it is now (root, entry, place, keys, standing), or None."""
        row = self._conn.execute(
            "SELECT root, entry, order_key, mark, keys, standing FROM folded WHERE root = ?", (root,)
        ).fetchone()
        if not row:
            return None
        root, entry, order_key, mark, keys, standing = row
        return {"root": root, "entry": entry, "order_key": order_key, "mark": mark, "keys": keys, "standing": standing}

    def remove(self, old: FoldedRow, moved_to: Plan | None = None) -> None:
        """Take out what a family left behind at a place that it no longer has; by other rules, it has another place."""
        self._conn.execute("DELETE FROM folded WHERE root = ?", (old["root"],))
        if moved_to:
            self._watch.hold_results(old["entry"], moved_to.id)
        else:
            self._watch.leave_out(old["entry"])
        self._clear(old["entry"])
        self._marks.add(old["mark"])

    def put(self, plan: Plan, outcome: Outcome, *, is_new: bool) -> None:
        """Keep the outcome of an entry, in place of its earlier outcome."""
        flows = self._flows_of(plan, outcome)
        if self._watch:
            asked = [(name, query.code, query.weight) for name, query, _ in outcome.questions]
            self._watch.compare_results(plan.id, asked, [flow[2:] for flow in flows], is_new=is_new)
        if not is_new:
            self._clear(plan.id)
        entry, mark = plan.entry, plan.entry["mark"]
        self._marks.add(mark)
        keys = to_text(sorted(outcome.keys))
        self._folded.append((plan.root, plan.id, plan.order_key, mark, keys, outcome.standing))
        for _, _, source, target, ul, _, _, _, _, reason, source_account, target_account, at, sort in flows:
            self._months.add(1, at, source, target, reason, source_account, target_account, sort, ul)
        self._flows += flows
        if entry["kind"] in PLACING:
            put = ((name_in(key), vessel["place"]) for key, vessel in outcome.effect.vessels())
            self._placings += [(plan.id, name, place, plan.order_key) for name, place in put if place]
        for name, query, answer in outcome.questions:
            suggestions = json.dumps(keep_suggestions(query.suggestions), ensure_ascii=False)
            what = (query.code, query.weight, query.field, canonical(to_json(query.message)), suggestions)
            self._queries.append((plan.id, name, *what, mark, entry["kind"], entry["person"], plan.at, answer))

    @staticmethod
    def _flows_of(plan: Plan, outcome: Outcome) -> list[FlowRow]:
        """Return an entry's flows as rows of the table. Flows that move nothing are left out."""
        rows: list[FlowRow] = []
        for n, flow in enumerate(outcome.effect.flows):
            amounts = (flow.lpa_ul, flow.volume_ml, flow.mass_g)
            about = (flow.source_fill, flow.target_fill, flow.reason, flow.source_account, flow.target_account)
            if any(amounts):
                rows.append((plan.id, n, flow.source, flow.target, *amounts, *about, plan.at, flow.sort))
        return rows

    def key_moved(self, key: Key, then: State | None, now: State | None) -> None:
        """Note the cards and the named rows that show this key."""
        if then is now:
            return
        if is_vessel(key):
            self._marks.add(name_in(key))
        elif is_run(key):
            self._runs.add(name_in(key))
            self._marks |= {cast(Run, run)["still"] for run in (then, now) if run}  # the key says that it is a run
        elif is_wish(key):  # every still may be shown the plan
            stills = self._conn.execute("SELECT mark FROM vessels WHERE sort = 'still'")
            self._marks |= {str(row[0]) for row in stills}
        elif key[:2] in NAMED and then != now:
            self._named.add(key)

    def note_card(self, key: Key) -> None:
        """Note the card of a vessel whose key is said to be still judged, or no more."""
        if is_vessel(key):
            self._marks.add(name_in(key))

    def finish(self) -> None:
        """Write it all."""
        many = self._conn.executemany
        many("INSERT OR REPLACE INTO folded VALUES (?, ?, ?, ?, ?, ?)", self._folded)
        many("INSERT INTO flows VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", self._flows)
        many("INSERT OR REPLACE INTO placings VALUES (?, ?, ?, ?)", self._placings)
        self._months.write()
        columns = "entry, name, code, weight, field, message, suggestions, mark, kind, person, at, answer"
        many(f"INSERT INTO queries ({columns}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", self._queries)  # noqa: S608
        for run_id in self._runs:
            run = load_newest(self._book, run_key(run_id))
            if run:
                line = (run_id, run["still"], run["what"] or "", run["started_at"])
                self._conn.execute("INSERT OR REPLACE INTO runs VALUES (?, ?, ?, ?)", line)
            else:
                self._conn.execute("DELETE FROM runs WHERE id = ?", (run_id,))
        self._finish_named()
        turn_cards(self._book, self._marks - {""})

    def _finish_named(self) -> None:
        """Write the fills and bottlings that changed, by what they can be found by."""
        for key in self._named:
            table, names = NAMED[key[:2]]
            found: Body | None = load_newest(self._book, key)
            self._conn.execute(f"DELETE FROM {table} WHERE id = ?", (name_in(key),))  # noqa: S608
            if found:
                line = (name_in(key), *(str(found.get(name) or "") for name in names))
                marks = ", ".join("?" * len(line))
                self._conn.execute(f"INSERT INTO {table} VALUES ({marks})", line)  # noqa: S608

    def _clear(self, entry_id: str) -> None:
        self._months.take(entry_id)
        self._conn.execute("DELETE FROM flows WHERE entry = ?", (entry_id,))
        self._conn.execute("DELETE FROM queries WHERE entry = ?", (entry_id,))
        self._conn.execute("DELETE FROM placings WHERE entry = ?", (entry_id,))


def turn_cards(book: Book, marks: set[str]) -> None:
    """Give each of these cards a new turn, so that phones fetch it again. Inside a write."""
    conn = book.db.conn
    turn = int(conn.execute("SELECT value FROM settings WHERE name = 'turn'").fetchone()[0])
    turns = [(mark, turn + n) for n, mark in enumerate(sorted(marks), 1)]
    conn.executemany("INSERT OR REPLACE INTO card_turns VALUES (?, ?)", turns)
    conn.execute("UPDATE settings SET value = ? WHERE name = 'turn'", (str(turn + len(turns)),))
