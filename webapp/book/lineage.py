"""The trace over the book's own flows: what is traced, what the nodes are called, and the two directions together."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Any

from webapp.book.log import root_of
from webapp.book.runs import run as run_of
from webapp.book.states import load_newest
from webapp.book.store import Book
from webapp.book.trace import LAST, REST, Lineage, Order, Reader, Seed, Spread, Step, back, forth
from webapp.trade.marks import BadMark, parse_mark

CHUNK = 500
RUN_NAMES_MOST = 300
LOAD = "load-"  # before the id of a load of fruit, whose id is also that of the fill that it began
_COLUMNS = (
    "SELECT f.entry, f.n, f.source, f.target, f.source_fill, f.target_fill, f.lpa_ul, f.mass_g, f.at, "
    "coalesce(d.order_key, f.at || '|' || f.entry) FROM flows f "
    "LEFT JOIN amendments a ON a.id = f.entry LEFT JOIN folded d ON d.root = coalesce(a.root, f.entry) "
)
_OF_FILL = (
    f"{_COLUMNS} WHERE f.source_fill = ?1 AND f.source_fill <> '' AND f.target_fill <> ?1 UNION ALL "
    f"{_COLUMNS} WHERE f.target_fill = ?1 AND f.target_fill <> '' AND f.source_fill <> ?1"
)


@dataclass(frozen=True, slots=True)
class Subject:
    """What is traced: a load of fruit, a fill (or run), or a bottling; `id` is that of its root entry."""

    sort: str  # load, fill, bottling
    id: str
    entry: str = ""  # of a load or bottling: the entry that has effect

    @property
    def key(self) -> str:
        """What names it in an address."""
        return f"{LOAD}{self.id}" if self.sort == "load" else self.id


@dataclass(slots=True)
class Node:
    """One thing in a trace, as people know it."""

    id: str
    sort: str  # fruit, opening, found, no_fruit, rest, ferment, run, receiver, can, tank, cask, bottling
    name: str
    words: str = ""
    mark: str = ""
    key: str = ""  # its own trace, where it has one
    entry: str = ""
    at: str = ""
    facts: dict[str, Any] = field(default_factory=dict)


@dataclass(slots=True)
class Trace:
    """A subject, what it was made of, and where it went. Amounts are pure alcohol. [uL]"""

    subject: Subject
    lpa_ul: float  # what the shares are of: what stands there, what was bottled, or all that has left
    stands: bool
    origin: Lineage
    spread: Spread
    nodes: dict[str, Node]


def reader(book: Book) -> Reader:
    """Return what reads the flows of a fill out of the book, oldest first."""

    def read(fill: str) -> list[Step]:
        return _steps(book.db.conn.execute(_OF_FILL, (fill,)))

    return read


def _steps(rows: Iterable[Sequence[Any]]) -> list[Step]:
    return sorted(Step((order, n), entry, *rest) for entry, n, *rest, order in rows)


def steps_of(book: Book, entry_id: str) -> list[Step]:
    """Return the flows of an entry that has effect, in their order."""
    return _steps(book.db.conn.execute(f"{_COLUMNS} WHERE f.entry = ?", (entry_id,)))


def find_subject(book: Book, key: str) -> Subject | None:
    """Return what a key names: an id of a load (after `load-`), fill, run, bottling or entry, or a mark; or None."""
    key = key.strip()
    is_load, wanted = key.startswith(LOAD), key.removeprefix(LOAD)
    root = root_of(book, wanted.lower())
    folded = book.one("SELECT entry, mark FROM folded WHERE root = ? AND standing = 'entered'", (root,))
    if is_load:
        return Subject("load", root, folded["entry"]) if folded else None
    if book.one("SELECT id FROM bottlings WHERE id = ?", (root,)):
        return Subject("bottling", root, folded["entry"]) if folded else None
    for table in ("runs", "fills"):
        if book.one(f"SELECT id FROM {table} WHERE id = ?", (root,)):  # noqa: S608
            return Subject("fill", root)
    if folded:
        return _moved_by(book, folded["entry"])
    return _of_mark(book, wanted)


def subjects_of(book: Book, entry_id: str) -> list[Subject]:
    """Return what an entry leads to in the trace: its load, run or bottling, else the fills that it moved."""
    root = root_of(book, entry_id)
    folded = book.one("SELECT entry FROM folded WHERE root = ? AND standing = 'entered'", (root,))
    steps = steps_of(book, folded["entry"]) if folded else []
    if any(step.source == "out:grower" for step in steps):
        return [Subject("load", root, folded["entry"])] if folded else []
    if any(step.target == "out:bottled" for step in steps):
        return [Subject("bottling", root, folded["entry"])] if folded else []
    fills = dict.fromkeys(fill for step in steps for fill in (step.target_fill, step.source_fill) if fill)
    return [Subject("fill", fill) for fill in fills]


def _moved_by(book: Book, entry_id: str) -> Subject | None:
    found = subjects_of(book, entry_id)
    return found[0] if found else None


def _of_mark(book: Book, text: str) -> Subject | None:
    """Return what stands in a vessel, or stood there last; of a still, its last run."""
    try:
        mark = parse_mark(text)
    except BadMark:
        return None
    held = (load_newest(book, f"v:{mark}") or {}).get("holds")
    if held:
        return Subject("fill", str(held["fill"]))
    row = book.one("SELECT id FROM fills WHERE mark = ? ORDER BY since DESC, id DESC LIMIT 1", (mark,))
    row = row or book.one("SELECT id FROM runs WHERE still = ? ORDER BY started_at DESC, id DESC LIMIT 1", (mark,))
    return Subject("fill", str(row["id"])) if row else None


def trace(book: Book, subject: Subject) -> Trace:
    """Return the trace of a subject, both ways."""
    read = reader(book)
    if subject.sort == "load":
        loads = [step for step in steps_of(book, subject.entry) if step.source == "out:grower"]
        origin, spread = Lineage(leaves={f"i:{subject.entry}": 1.0}), forth(read, loads=loads)
        origin.steps = {f"i:{step.entry}": step for step in loads}
        amount, stands = spread.started_ul, False
    elif subject.sort == "bottling":
        steps = [step for step in steps_of(book, subject.entry) if step.target == "out:bottled"]
        amount, stands = float(sum(step.lpa_ul for step in steps)), False
        origin = back(read, [Seed(step.source_fill, step.order, 1.0) for step in steps if step.source_fill])
        for step in steps:
            origin.links[f"f:{step.source_fill}", f"b:{subject.entry}"] = 1.0
        spread = Spread()
    else:
        seeds, amount, stands = _seeds(read, subject.id)
        origin, spread = back(read, seeds), forth(read, fill=subject.id)
    return Trace(subject, amount, stands, origin, spread, _nodes(book, subject, origin, spread))


def _seeds(read: Reader, fill: str) -> tuple[list[Seed], float, bool]:
    """Return what of a fill is traced: what stands there, or else everything that left it, each part when it left."""
    stock, left = 0, []
    for step in read(fill):
        if step.source_fill == fill:
            left.append(step)
        stock += step.lpa_ul if step.target_fill == fill else -step.lpa_ul
    out = sum(step.lpa_ul for step in left)
    if stock > 0 or not out:
        return [Seed(fill, LAST, 1.0)], float(max(stock, 0)), True
    seeds = [Seed(fill, step.order, step.lpa_ul / out) for step in left if step.lpa_ul]
    return seeds, float(out), False


def _nodes(book: Book, subject: Subject, origin: Lineage, spread: Spread) -> dict[str, Node]:
    ids = {node for links in (origin.links, spread.links) for pair in links for node in pair} | set(origin.leaves)
    ids |= {f"f:{fill}" for fill in (*spread.standing, *spread.mash)} | {f"b:{entry}" for entry in spread.bottled}
    ids.add({"load": "i:", "bottling": "b:"}.get(subject.sort, "f:") + (subject.entry or subject.id))
    by_sort: dict[str, list[str]] = {}
    for node in sorted(ids):
        by_sort.setdefault(node[:2], []).append(node[2:])
    nodes = _fills(book, by_sort.get("f:", []))
    nodes |= _entries(book, [node for node in sorted(ids) if node[:2] in ("i:", "o:", "u:")], origin)
    nodes |= _bottlings(book, by_sort.get("b:", []))
    for fill in by_sort.get("n:", []):
        words = "alcohol came from this ferment; no load of fruit is in the book"
        nodes[f"n:{fill}"] = Node(f"n:{fill}", "no_fruit", "no fruit on record", words)
    if REST in ids:
        nodes[REST] = Node(REST, "rest", "not followed", "parts under a billionth, or more than one trace can hold")
    return nodes


def _chunks(ids: Sequence[str]) -> Iterable[tuple[str, list[str]]]:
    for at in range(0, len(ids), CHUNK):
        some = list(ids[at : at + CHUNK])
        yield ", ".join("?" * len(some)), some


def _fills(book: Book, ids: Sequence[str]) -> dict[str, Node]:
    nodes = {f"f:{fill}": Node(f"f:{fill}", "tank", "a fill", key=fill) for fill in ids}
    for marks, some in _chunks(ids):
        rows = book.query(
            "SELECT f.*, coalesce(v.sort, '') AS sort, coalesce(v.title, '') AS title FROM fills f "
            f"LEFT JOIN vessels v ON v.mark = f.mark WHERE f.id IN ({marks})", some  # noqa: S608
        )  # fmt: skip
        for row in rows:
            sort = {"fermenter": "ferment", "place": "tank", "": "tank"}.get(row["sort"], row["sort"])
            words = ", ".join(part for part in (row["what"], row["name"], row["lot"]) if part)
            node = nodes[f"f:{row['id']}"]
            node.sort, node.name, node.words, node.mark, node.at = sort, row["mark"], words, row["mark"], row["since"]
            node.facts = {"ended_at": row["ended_at"]}
        for n, row in enumerate(book.query(f"SELECT * FROM runs WHERE id IN ({marks})", some)):  # noqa: S608
            state = (run_of(book, row["id"]) if n < RUN_NAMES_MOST else None) or {}
            node = nodes[f"f:{row['id']}"]
            node.sort, node.name, node.mark = "run", state.get("name") or f"run {row['started_at'][:10]}", row["still"]
            node.words = ", ".join(part for part in (row["what"], state.get("batch"), row["still"]) if part)
            node.at = row["started_at"]
    return nodes


def _entries(book: Book, ids: Sequence[str], origin: Lineage) -> dict[str, Node]:
    """Return loads of fruit, opening stock and what gauges found, with what their entries say."""
    nodes = {}
    for marks, some in _chunks([node[2:] for node in ids]):
        rows = book.query(f"SELECT id, kind, mark, read_at, body FROM entries WHERE id IN ({marks})", some)  # noqa: S608
        found = {row["id"]: row for row in rows}
        for node in (node for node in ids if node[2:] in set(some)):
            nodes[node] = _entry_node(node, found.get(node[2:]), origin.steps.get(node))
    return nodes


def _entry_node(node: str, row: dict[str, Any] | None, step: Step | None) -> Node:
    body = json.loads(row["body"]) if row else {}
    said = {name: str((value or {}).get("raw") or "") for name, value in body.get("values", {}).items()}
    made = Node(node, "found", "", entry=node[2:], mark=row["mark"] if row else "", at=step.at if step else "")
    parts = []
    if node[:2] == "i:":
        made.sort, made.key, made.name = "fruit", f"{LOAD}{node[2:]}", said.get("grower_lot") or "fruit"
        mass = f"{step.mass_g / 1000:.0f} kg" if step else ""
        parts = [mass, said.get("variety") or said.get("material", ""), said.get("batch", "")]
    elif node[:2] == "o:":
        made.sort, made.name = "opening", "before this book began"
        parts = [said.get("what", ""), made.mark, body.get("remark", "")]
    else:
        made.name = "not on record"
        source = step.source[4:].replace("_", " ") if step else "flow"
        parts = [f"{made.mark}: the book had nothing there ({source})", body.get("remark", "")]
    made.words = ", ".join(part for part in parts if part)
    return made


def _bottlings(book: Book, entries: Sequence[str]) -> dict[str, Node]:
    nodes = {}
    for entry in entries:
        root = root_of(book, entry)
        row = book.one("SELECT * FROM bottlings WHERE id = ?", (root,)) or {}
        state = load_newest(book, f"b:{root}") or {}
        cases = " to ".join(part for part in (row.get("case_from"), row.get("case_to")) if part)
        parts = [f"cases {cases}" if cases else "", f"odd case {row['odd_case']}" if row.get("odd_case") else ""]
        words = ", ".join([part for part in parts if part] + ([row["lot_mark"]] if row.get("lot_mark") else []))
        name = row.get("batch") or f"bottling {str(row.get('at', ''))[:10]}"
        facts = {**row, **{part: state.get(part) for part in ("good", "size_l", "what", "strength_pct", "lpa_ul")}}
        nodes[f"b:{entry}"] = Node(f"b:{entry}", "bottling", name, words, str(row.get("tank") or ""), root, entry,
                                   str(row.get("at") or ""), facts)  # fmt: skip
    return nodes


__all__ = ["Node", "Order", "Subject", "Trace", "find_subject", "reader", "steps_of", "subjects_of", "trace"]
