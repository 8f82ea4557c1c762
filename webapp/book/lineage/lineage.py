"""The trace over the book's own flows: what is traced, what the nodes are called, and the two directions together."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from webapp.book.fold.states import load_fill
from webapp.book.lineage.names import LOAD, Node, names_of
from webapp.book.lineage.trace import LAST, STEPS_MOST, Lineage, Reader, Seed, Spread, Step, trace_back, trace_forth
from webapp.book.record.store import Book
from webapp.trade.marks import BadMark, parse_mark

_COLUMNS = (
    "f.entry, f.n, f.source, f.target, f.source_fill, f.target_fill, f.lpa_ul, f.mass_g, f.at, "
    "coalesce(d.order_key, f.at || '|' || f.entry)"
)
_JOINS = "LEFT JOIN amendments a ON a.id = f.entry LEFT JOIN folded d ON d.root = coalesce(a.root, f.entry)"
AHEAD = 400  # fills read ahead of a trace at first; four times as many whenever that was not enough
# The fills from which one was made, or into which it went, the nearest first, with all flows of each. That a fill is
# not empty is said for the indices, which leave out the world outside.
_OF_FILLS = """
WITH RECURSIVE near(fill) AS (
    SELECT :fill UNION SELECT f.{next} FROM near CROSS JOIN flows f
    ON f.{this} = near.fill AND f.{this} <> '' AND f.{next} <> '' LIMIT :most
)
SELECT near.fill, {columns} FROM near CROSS JOIN flows f
ON f.source_fill = near.fill AND f.source_fill <> '' AND f.target_fill <> near.fill
{joins} UNION ALL
SELECT near.fill, {columns} FROM near CROSS JOIN flows f
ON f.target_fill = near.fill AND f.target_fill <> '' AND f.source_fill <> near.fill
{joins}
"""


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


def make_reader(book: Book, *, backward: bool = True) -> Reader:
    """Return a function that reads the flows of a fill out of the book, oldest first; those behind it are read ahead.

    backward: the trace will go on to what a fill was made of; else to where it went.
    """
    sql = flows_of_fills(backward=backward)
    known: dict[str, list[Step]] = {}
    ahead = AHEAD

    def read(fill: str) -> list[Step]:
        nonlocal ahead
        if fill not in known:
            found: dict[str, list[Sequence[object]]] = {fill: []}
            for near, *row in book.db.conn.execute(sql, {"fill": fill, "most": ahead}):
                if near not in known:
                    found.setdefault(near, []).append(row)
            known.update((near, _steps(rows)) for near, rows in found.items())
            ahead *= 4
        return known[fill]

    return read


def flows_of_fills(*, backward: bool) -> str:
    """Return the statement that reads the flows of a fill and of those behind it: before it, or after it."""
    this, following = ("target_fill", "source_fill") if backward else ("source_fill", "target_fill")
    return _OF_FILLS.format(columns=_COLUMNS, joins=_JOINS, this=this, next=following)


def _steps(rows: Iterable[Sequence[Any]]) -> list[Step]:
    return sorted(Step((order, n), entry, *rest) for entry, n, *rest, order in rows)


def steps_of(book: Book, entry_id: str) -> list[Step]:
    """Return the flows of an entry that has effect, in their order."""
    sql = f"SELECT {_COLUMNS} FROM flows f {_JOINS} WHERE f.entry = ?"  # noqa: S608
    return _steps(book.db.conn.execute(sql, (entry_id,)))


def find_subject(book: Book, key: str) -> Subject | None:
    """Return the subject that a key names: a load (after `load-`), fill, run, bottling or entry by id, or a mark; or
    None.
    """
    key = key.strip()
    is_load, wanted = key.startswith(LOAD), key.removeprefix(LOAD)
    about = book.one(_ABOUT, (wanted.lower(),))
    assert about
    root = about["root"]
    if is_load:
        return Subject("load", root, about["entry"]) if about["entry"] else None
    if about["is_bottling"]:
        return Subject("bottling", root, about["entry"]) if about["entry"] else None
    if about["is_fill"]:
        return Subject("fill", root)
    if about["entry"]:
        return next(iter(subjects_of(book, root, about["entry"])), None)
    return _of_mark(book, wanted)


_ABOUT = """
WITH named(root) AS MATERIALIZED (SELECT coalesce((SELECT root FROM amendments WHERE id = ?1), ?1))
SELECT root, (SELECT entry FROM folded f WHERE f.root = named.root AND standing = 'entered') AS entry,
EXISTS (SELECT 1 FROM bottlings WHERE id = root) AS is_bottling,
EXISTS (SELECT 1 FROM runs WHERE id = root) OR EXISTS (SELECT 1 FROM fills WHERE id = root) AS is_fill FROM named
"""


def subjects_of(book: Book, root: str, entry_id: str) -> list[Subject]:
    """Return the subjects that an entry leads to: its load, run or bottling, else the fills that it moved.

    root: the entry that its family goes back to; entry_id: the one of the family that has effect.
    """
    steps = steps_of(book, entry_id)
    if any(step.source == "out:grower" for step in steps):
        return [Subject("load", root, entry_id)]
    if any(step.target[:2] == "b:" for step in steps):
        return [Subject("bottling", root, entry_id)]
    fills = dict.fromkeys(fill for step in steps for fill in (step.target_fill, step.source_fill) if fill)
    return [Subject("fill", fill) for fill in fills]


def _of_mark(book: Book, text: str) -> Subject | None:
    """Return the fill in a vessel, or the last one there; of a still, its last run."""
    try:
        mark = parse_mark(text)
    except BadMark:
        return None
    held = load_fill(book, mark)
    if held:
        return Subject("fill", held["fill"])
    row = book.one(_LAST_THERE, (mark,))
    return Subject("fill", row["id"]) if row and row["id"] else None


_LAST_THERE = """
SELECT coalesce((SELECT id FROM fills WHERE mark = ?1 ORDER BY since DESC, id DESC LIMIT 1),
(SELECT id FROM runs WHERE still = ?1 ORDER BY started_at DESC, id DESC LIMIT 1)) AS id
"""


def trace_subject(book: Book, subject: Subject, *, back_most: int = STEPS_MOST) -> Trace:
    """Return the trace of a subject, both ways; at most `back_most` flows are looked at on the way back.

    The way on is never cut short for haste: it is the recall list.
    """
    made = trace_over(
        subject, make_reader(book), lambda entry: steps_of(book, entry), back_most=back_most,
        read_on=make_reader(book, backward=False),
    )
    made.nodes = names_of(book, nodes_in(made), made.origin.steps)
    return made


def trace_over(
    subject: Subject, read: Reader, steps_of: Callable[[str], list[Step]], *, back_most: int = STEPS_MOST,
    read_on: Reader | None = None,
) -> Trace:
    """Return the trace of a subject over whatever flows these read, its nodes not yet named.

    read_on: reads for the way on, where another reader does that sooner.
    """
    read_on = read_on or read
    if subject.sort == "load":
        loads = [step for step in steps_of(subject.entry) if step.source == "out:grower"]
        origin, spread = Lineage(leaves={f"i:{subject.entry}": 1.0}), trace_forth(read_on, loads=loads)
        origin.steps = {f"i:{step.entry}": step for step in loads}
        amount, stands = spread.started_ul, False
    elif subject.sort == "bottling":
        steps = [step for step in steps_of(subject.entry) if step.target[:2] == "b:"]
        amount, stands = float(sum(step.lpa_ul for step in steps)), False
        seeds = [Seed(step.source_fill, step.order, 1.0) for step in steps if step.source_fill]
        origin = trace_back(read, seeds, most=back_most)
        for step in steps:
            source = f"f:{step.source_fill}" if step.source_fill else f"c:{step.entry}"
            origin.links[source, f"b:{subject.entry}"] = 1.0
            if not step.source_fill:  # it came in bottles from elsewhere
                origin.leaves[source], origin.steps[source] = 1.0, step
        spread = Spread()
    else:
        seeds, amount, stands = _seeds(read, subject.id)
        origin, spread = trace_back(read, seeds, most=back_most), trace_forth(read_on, fill=subject.id)
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
    "Node",
    "Subject",
    "Trace",
    "find_subject",
    "make_reader",
    "nodes_in",
    "steps_of",
    "subjects_of",
    "trace_over",
    "trace_subject",
]
