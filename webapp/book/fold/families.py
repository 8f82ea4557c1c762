"""Families: an entry, the entries that amend it, and the answers to any of them. One member at most has effect.

The rules look at the family as a set, so the order in which its members arrive makes no difference:
- the root is the start of the chain of amendments, even while that entry itself has not arrived yet;
- of the members that nothing amends, the one typed last has effect;
- the answers are heard in the order they were typed: `struck` strikes the family, `stands` for the whole lifts it;
- an amendment that keeps the time of what it amends keeps its skew too: the same clock told it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from webapp.book.record.clock import correct_time, order_skew, sort_text, utc_text
from webapp.book.record.kept_json import from_text
from webapp.book.record.log import root_of
from webapp.book.record.rows import EntryRow, NotedRow
from webapp.book.record.store import Book
from webapp.book.record.upcast import upcast
from webapp.kinds.entry import Entry

AFTER_STRIKE = "amended_after_strike"
PLACED_TOGETHER = 5_000  # entries whose places are found together where the book is folded anew
Member = tuple[EntryRow, Entry]  # of a family: its row in the log, its body


@dataclass(slots=True)
class Plan:
    """What of a family goes into the fold, and where."""

    root: str
    entry: Entry  # of the member that has effect
    order_key: str
    at: str
    typed_at: str
    received_at: str
    skew_s: float
    struck: bool = False
    amended_after_strike: bool = False
    via: str = ""
    clashed: bool = False  # another body came under the same id
    stands: dict[str, str] = field(default_factory=dict)  # query name or code (empty: all) -> id of the answer

    @property
    def id(self) -> str:
        """The id of the entry that has effect."""
        return str(self.entry["id"])

    def answer_to(self, name: str, code: str) -> str:
        """Return the id of the answer that lets this query stand, or an empty text."""
        return self.stands.get(name) or self.stands.get(code) or self.stands.get("") or ""


def walk_places(book: Book) -> Iterator[tuple[str, str]]:
    """Yield the place of every family of the book, with its root, once the ties of all are noted."""
    after = 0
    while numbers := book.db.conn.execute(
        "SELECT book_no, id FROM entries WHERE book_no > ? ORDER BY book_no LIMIT ?", (after, PLACED_TOGETHER)
    ).fetchall():
        after = numbers[-1][0]
        fresh = load_together(book, (entry_id for _, entry_id in numbers))
        roots = {one if one in fresh.alone else root_of(book, one) for one in fresh}
        for root in roots:
            if plan := load_plan(book, root, fresh):
                yield plan.order_key, root


def typed_key(row: NotedRow) -> str:
    """Return a sorting key for entries by the time they were typed."""
    return f"{sort_text(correct_time(row['typed_at'], order_skew(row['skew_s'])))}|{row['id']}"


def note_family(book: Book, row: NotedRow, entry: Entry) -> set[str]:
    """Note a new entry's family ties, inside a write; return the roots whose plan may have changed."""
    if row["kind"] == "answer":
        return _note_answer(book, row, entry)
    amends = entry.get("amends")
    return _note_amendment(book, row["id"], amends) if amends else {row["id"]}


def _note_answer(book: Book, row: NotedRow, entry: Entry) -> set[str]:
    said = {name: str((value or {}).get("raw") or "").strip() for name, value in entry["values"].items()}
    target = said.get("entry", "").lower()
    line = (row["id"], target, said.get("query", ""), said.get("verdict", ""), said.get("reason", ""), row["person"])
    book.db.conn.execute("INSERT OR REPLACE INTO answers VALUES (?, ?, ?, ?, ?, ?, ?)", (*line, typed_key(row)))
    return {root_of(book, target)}


def retime_answers(book: Book) -> None:
    """Work out anew when each answer was typed, inside a write: other rules may correct clocks otherwise."""
    rows = book.rows(NotedRow, "SELECT id, kind, typed_at, person, skew_s FROM entries WHERE kind = 'answer'")
    keys = [(typed_key(row), row["id"]) for row in rows]
    book.db.conn.executemany("UPDATE answers SET typed_key = ? WHERE id = ?", keys)


def _note_amendment(book: Book, entry_id: str, amends: str) -> set[str]:
    conn = book.db.conn
    root = root_of(book, amends)
    conn.execute("INSERT OR REPLACE INTO amendments VALUES (?, ?, ?)", (entry_id, amends, root))
    if root == entry_id:  # A ring: no honest phone makes one. Its lowest id stands for its start.
        root = min(_ids_of_ring(book, entry_id))
    conn.execute("UPDATE amendments SET root = ? WHERE root = ? OR id = ?", (root, entry_id, entry_id))
    return {entry_id, root}


def _ids_of_ring(book: Book, start: str) -> list[str]:
    ring, at = [start], start
    while True:
        at = book.db.conn.execute("SELECT amends FROM amendments WHERE id = ?", (at,)).fetchone()[0]
        if at == start:
            return ring
        ring.append(at)


class Fresh(dict[str, Member]):
    """Rows and bodies of entries, by id, so that they need not be read back: just appended, or read together.

    `alone`: those that are known to amend nothing, to be amended by nothing and answered by nobody.
    """

    def __init__(self) -> None:
        super().__init__()
        self.alone: frozenset[str] = frozenset()

    def find_alone(self, book: Book) -> None:
        """Find those that are alone, in one statement for all of them."""
        ids = json.dumps(list(self))
        tied = {row[0] for row in book.db.conn.execute(_TIED, (ids,))}
        self.alone = frozenset(one for one, (row, _) in self.items() if one not in tied and row["kind"] != "answer")


_TIED = """
WITH asked AS (SELECT value AS id FROM json_each(?))
SELECT id FROM amendments WHERE id IN asked UNION ALL SELECT root FROM amendments WHERE root IN asked
UNION ALL SELECT entry FROM answers WHERE entry IN asked
UNION ALL SELECT id FROM aside WHERE settled = 'clash' AND id IN asked
"""


def load_together(book: Book, ids: Iterable[str]) -> Fresh:
    """Return the rows and bodies of these entries, in one statement."""
    found = Fresh()
    sql = f"SELECT {_MEMBER} FROM entries WHERE id IN (SELECT value FROM json_each(?))"  # noqa: S608
    for row in book.db.conn.execute(sql, (json.dumps(list(ids)),)):
        found[row[0]] = _as_member(row)
    found.find_alone(book)
    return found


def _plan_alone(row: EntryRow, body: Entry) -> Plan:
    """Return the plan of an entry that is a family by itself."""
    return _make_plan(row["id"], row, body, order_skew(row["skew_s"]))


def _make_plan(root: str, row: EntryRow, body: Entry, skew: int) -> Plan:
    at = correct_time(row["read_at"], skew)
    order_key = f"{sort_text(at)}|{row['device']}|{row['seq']:016d}|{row['id']}"
    typed = utc_text(correct_time(row["typed_at"], order_skew(row["skew_s"])))
    return Plan(root, upcast(body), order_key, utc_text(at), typed, row["received_at"], row["skew_s"], via=row["via"])


def load_plan(book: Book, root: str, fresh: Fresh | None = None) -> Plan | None:
    """Return the plan of a family for the fold; None where the book has no such family (any more)."""
    if fresh and root in fresh.alone:
        return _plan_alone(*fresh[root])
    if root_of(book, root) != root:
        return None  # It has become a member of another.
    conn = book.db.conn
    amends = dict(conn.execute("SELECT id, amends FROM amendments WHERE root = ?", (root,)).fetchall())
    found = {i: member for i in {root, *amends} if (member := _load_member(book, i, fresh))}
    members = {i: member for i, member in found.items() if member[0]["kind"] != "answer"}
    if not members:
        return None
    amended = {amends[i] for i in members if i in amends}
    leaves = [i for i in members if i not in amended] or list(members)
    effective = max(leaves, key=lambda i: typed_key(members[i][0]))
    row, body = members[effective]
    made = _make_plan(root, row, body, _order_skew(effective, members, amends))
    _hear_answers(book, made, members, {root, *amends})
    clash = conn.execute("SELECT 1 FROM aside WHERE id = ? AND settled = 'clash' LIMIT 1", (made.id,)).fetchone()
    made.clashed = clash is not None
    return made


def _hear_answers(book: Book, made: Plan, members: Mapping[str, Member], ids: set[str]) -> None:
    rows = [
        row
        for i in ids
        for row in book.db.conn.execute(
            "SELECT typed_key, id, entry, query, verdict FROM answers WHERE entry = ?", (i,)
        )
    ]
    struck_at = ""
    for key, answer_id, entry_id, query, verdict in sorted(rows):
        if verdict == "struck":
            struck_at = key
        elif query in ("", AFTER_STRIKE):
            struck_at = ""
        if verdict == "stands" and entry_id == made.id:
            made.stands[query] = answer_id
    made.struck = bool(struck_at)
    made.amended_after_strike = made.struck and made.id in members and made.id != made.root and (
        typed_key(members[made.id][0]) > struck_at
    )


def _order_skew(effective: str, members: Mapping[str, Member], amends: Mapping[str, str]) -> int:
    """Return the skew by which the order of the member that has effect is corrected. [s], whole minutes"""
    at, seen = effective, {effective}
    read_at = datetime.fromisoformat(members[at][0]["read_at"])
    while (earlier := amends.get(at, "")) in members and earlier not in seen:
        if datetime.fromisoformat(members[earlier][0]["read_at"]) != read_at:
            break
        at = earlier
        seen.add(at)
    return order_skew(members[at][0]["skew_s"])


def _load_member(book: Book, entry_id: str, fresh: Fresh | None) -> Member | None:
    if fresh and entry_id in fresh:
        return fresh[entry_id]
    found = book.db.conn.execute(f"SELECT {_MEMBER} FROM entries WHERE id = ?", (entry_id,)).fetchone()  # noqa: S608
    return _as_member(found) if found else None


_MEMBER = "id, kind, read_at, typed_at, person, device, seq, skew_s, received_at, via, body"


def _as_member(found: tuple[Any, ...]) -> Member:
    entry_id, kind, read_at, typed_at, person, device, seq, skew_s, received_at, via, body = found
    row: EntryRow = {
        "id": entry_id, "kind": kind, "read_at": read_at, "typed_at": typed_at, "person": person, "device": device,
        "seq": seq, "skew_s": skew_s, "received_at": received_at, "via": via,
    }
    return row, from_text(body)
