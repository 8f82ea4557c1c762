"""The trace over the book's own flows: what is traced, what the nodes are called, and the two directions together."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from webapp.book.fold.states import holds
from webapp.book.lineage.names import LOAD, Node, names_of
from webapp.book.lineage.trace import LAST, STEPS_MOST, Lineage, Reader, Seed, Spread, Step, back, forth
from webapp.book.record.log import root_of
from webapp.book.record.store import Book
from webapp.trade.marks import BadMark, parse_mark

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

    @property
    def node(self) -> str:
        """Its own node in the trace."""
        return {"load": "i:", "bottling": "b:"}.get(self.sort, "f:") + (self.entry or self.id)


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
    """Return a function that reads the flows of a fill out of the book, oldest first."""

    def read(fill: str) -> list[Step]:
        return _steps(book.db.conn.execute(_OF_FILL, (fill,)))

    return read


def _steps(rows: Iterable[Sequence[Any]]) -> list[Step]:
    return sorted(Step((order, n), entry, *rest) for entry, n, *rest, order in rows)


def steps_of(book: Book, entry_id: str) -> list[Step]:
    """Return the flows of an entry that has effect, in their order."""
    return _steps(book.db.conn.execute(f"{_COLUMNS} WHERE f.entry = ?", (entry_id,)))


def find_subject(book: Book, key: str) -> Subject | None:
    """Return the subject that a key names: a load (after `load-`), fill, run, bottling or entry by id, or a mark; or
    None.
    """
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
    """Return the subjects that an entry leads to: its load, run or bottling, else the fills that it moved."""
    root = root_of(book, entry_id)
    folded = book.one("SELECT entry FROM folded WHERE root = ? AND standing = 'entered'", (root,))
    steps = steps_of(book, folded["entry"]) if folded else []
    if any(step.source == "out:grower" for step in steps):
        return [Subject("load", root, folded["entry"])] if folded else []
    if any(step.target[:2] == "b:" for step in steps):
        return [Subject("bottling", root, folded["entry"])] if folded else []
    fills = dict.fromkeys(fill for step in steps for fill in (step.target_fill, step.source_fill) if fill)
    return [Subject("fill", fill) for fill in fills]


def _moved_by(book: Book, entry_id: str) -> Subject | None:
    found = subjects_of(book, entry_id)
    return found[0] if found else None


def _of_mark(book: Book, text: str) -> Subject | None:
    """Return the fill in a vessel, or the last one there; of a still, its last run."""
    try:
        mark = parse_mark(text)
    except BadMark:
        return None
    held = holds(book, mark)
    if held:
        return Subject("fill", held["fill"])
    row = book.one("SELECT id FROM fills WHERE mark = ? ORDER BY since DESC, id DESC LIMIT 1", (mark,))
    row = row or book.one("SELECT id FROM runs WHERE still = ? ORDER BY started_at DESC, id DESC LIMIT 1", (mark,))
    return Subject("fill", str(row["id"])) if row else None


def trace(book: Book, subject: Subject, *, back_most: int = STEPS_MOST) -> Trace:
    """Return the trace of a subject, both ways; at most `back_most` flows are looked at on the way back.

    The way on is never cut short for haste: it is the recall list.
    """
    made = trace_over(subject, reader(book), lambda entry: steps_of(book, entry), back_most=back_most)
    made.nodes = names_of(book, nodes_in(made), made.origin.steps)
    return made


def trace_over(
    subject: Subject, read: Reader, steps_of: Callable[[str], list[Step]], *, back_most: int = STEPS_MOST
) -> Trace:
    """Return the trace of a subject over whatever flows these two read, its nodes not yet named."""
    if subject.sort == "load":
        loads = [step for step in steps_of(subject.entry) if step.source == "out:grower"]
        origin, spread = Lineage(leaves={f"i:{subject.entry}": 1.0}), forth(read, loads=loads)
        origin.steps = {f"i:{step.entry}": step for step in loads}
        amount, stands = spread.started_ul, False
    elif subject.sort == "bottling":
        steps = [step for step in steps_of(subject.entry) if step.target[:2] == "b:"]
        amount, stands = float(sum(step.lpa_ul for step in steps)), False
        seeds = [Seed(step.source_fill, step.order, 1.0) for step in steps if step.source_fill]
        origin = back(read, seeds, most=back_most)
        for step in steps:
            source = f"f:{step.source_fill}" if step.source_fill else f"c:{step.entry}"
            origin.links[source, f"b:{subject.entry}"] = 1.0
            if not step.source_fill:  # it came in bottles from elsewhere
                origin.leaves[source], origin.steps[source] = 1.0, step
        spread = Spread()
    else:
        seeds, amount, stands = _seeds(read, subject.id)
        origin, spread = back(read, seeds, most=back_most), forth(read, fill=subject.id)
    return Trace(subject, amount, stands, origin, spread, {})


def _seeds(read: Reader, fill: str) -> tuple[list[Seed], float, bool]:
    """Return the parts of a fill to trace: its remaining spirit, or else every part that left it, at the time it left.

    Of a run it is always what left it: nothing stands in a still after its run.
    """
    stock, left, is_run = 0, [], False
    for step in read(fill):
        is_run = is_run or step.target == f"r:{fill}"
        if step.source_fill == fill:
            left.append(step)
        stock += step.lpa_ul if step.target_fill == fill else -step.lpa_ul
    out = sum(step.lpa_ul for step in left)
    if not out or (stock > 0 and not is_run):
        return [Seed(fill, LAST, 1.0)], float(max(stock, 0)), True
    seeds = [Seed(fill, step.order, step.lpa_ul / out) for step in left if step.lpa_ul]
    return seeds, float(out), False


def nodes_in(made: Trace) -> set[str]:
    """Return the ids of all nodes of a trace."""
    origin, spread = made.origin, made.spread
    ids = {node for links in (origin.links, spread.links) for pair in links for node in pair} | set(origin.leaves)
    ids |= {f"f:{fill}" for fill in (*spread.standing, *spread.mash)} | {f"b:{entry}" for entry in spread.bottled}
    return ids | {made.subject.node}


__all__ = [
    "Node", "Subject", "Trace", "find_subject", "nodes_in", "reader", "steps_of", "subjects_of", "trace", "trace_over",
]
