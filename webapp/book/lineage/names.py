"""What the nodes of a trace are called: vessels and runs by name, loads by grower, bottlings by batch and cases."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import TypedDict

from webapp.book.fold.states import load_newest_of
from webapp.book.lineage.trace import REST, Step
from webapp.book.record.store import Book
from webapp.book.record.units import house_units
from webapp.book.still.runs import runs_by_id
from webapp.kinds.key import bottling_key
from webapp.kinds.state import Body
from webapp.trade import units
from webapp.words.houseunits import House, text_in, unit_in

RUN_NAMES_MOST = 2_000  # of one trace; those above it go by their day
GONE = {
    "gauge_difference": "less by gauge", "filter_loss": "filter, line and heel", "soakage": "kept by the wood",
    "sample": "samples", "stillage": "in stillage", "removed": "left the premises", "bottled": "in bottles",
    "transit": "lost in transit", "returned": "came back", "not_followed": "not followed",
}
LOAD = "load-"  # before the id of a load of fruit, whose id is also that of the fill that it began


class _EntryRow(TypedDict):
    id: str
    kind: str
    mark: str
    read_at: str
    body: str


@dataclass(slots=True)
class Node:
    """One thing in a trace, as people know it."""

    id: str
    sort: str  # fruit, opening, received, found, no_fruit, rest, ferment, run, receiver, can, tank, cask, bottling, ...
    name: str
    words: str = ""
    mark: str = ""
    key: str = ""  # its own trace, where it has one
    entry: str = ""
    at: str = ""
    facts: dict[str, object] = field(default_factory=dict)


def names_of(book: Book, ids: Iterable[str], steps: Mapping[str, Step]) -> dict[str, Node]:
    """Return the nodes of these ids (trace.Lineage); `steps` are the flows by which the leaves came in."""
    by_sort: dict[str, list[str]] = {}
    for node in sorted(ids):
        by_sort.setdefault(node[:2], []).append(node[2:])
    nodes = _fills(book, by_sort.get("f:", []))
    nodes |= _entries(book, [node for node in sorted(ids) if node[:2] in ("i:", "o:", "c:", "u:")], steps)
    nodes |= _bottlings(book, by_sort.get("b:", []))
    for fill in by_sort.get("n:", []):
        words = "alcohol came from this ferment; no load of fruit is in the book"
        nodes[f"n:{fill}"] = Node(f"n:{fill}", "no_fruit", "no fruit on record", words)
    for name in by_sort.get("g:", []):
        nodes[f"g:{name}"] = Node(f"g:{name}", "gone", GONE.get(name, name.replace("_", " ")))
    if "x:" in by_sort:
        words = "parts under a billionth, or too far back for one page: the files go further"
        nodes[REST] = Node(REST, "rest", "not followed", words)
    return nodes


def _fills(book: Book, ids: Sequence[str]) -> dict[str, Node]:
    nodes = {f"f:{fill}": Node(f"f:{fill}", "tank", "a fill", key=fill) for fill in ids}
    if not ids:
        return nodes
    rows = book.query(
        "SELECT f.*, coalesce(v.sort, '') AS sort FROM fills f LEFT JOIN vessels v ON v.mark = f.mark "
        "WHERE f.id IN (SELECT value FROM json_each(?))",
        (json.dumps(ids),),
    )
    for row in rows:
        sort = {"fermenter": "ferment", "place": "tank", "": "tank"}.get(row["sort"], row["sort"])
        words = ", ".join(part for part in (row["what"], row["name"], row["lot"]) if part)
        node = nodes[f"f:{row['id']}"]
        node.sort, node.name, node.words, node.mark, node.at = sort, row["mark"], words, row["mark"], row["since"]
        node.facts = {"ended_at": row["ended_at"]}
    rows = book.query("SELECT * FROM runs WHERE id IN (SELECT value FROM json_each(?)) ORDER BY id", (json.dumps(ids),))
    states = runs_by_id(book, (row["id"] for row in rows[:RUN_NAMES_MOST]))
    for row in rows:
        state = states.get(row["id"])
        node = nodes[f"f:{row['id']}"]
        node.sort, node.name, node.mark = "run", "", row["still"]
        node.name = (state.get("name") if state else "") or f"run {row['started_at'][:10]}"
        batch = state.get("batch") if state else ""
        node.words = ", ".join(part for part in (row["what"], batch, row["still"]) if part)
        node.at = row["started_at"]
    return nodes


def _entries(book: Book, ids: Sequence[str], steps: Mapping[str, Step]) -> dict[str, Node]:
    """Return loads of fruit, opening stock and what gauges found, with what their entries say."""
    if not ids:
        return {}
    rows = book.rows(
        _EntryRow,
        "SELECT id, kind, mark, read_at, body FROM entries WHERE id IN (SELECT value FROM json_each(?))",
        (json.dumps([node[2:] for node in ids]),),
    )
    found = {row["id"]: row for row in rows}
    house = house_units(book)
    return {node: _entry_node(node, found.get(node[2:]), steps.get(node), house) for node in ids}


def _entry_node(node: str, row: _EntryRow | None, step: Step | None, house: House) -> Node:
    body = json.loads(row["body"]) if row else {}
    said = {name: str((value or {}).get("raw") or "") for name, value in body.get("values", {}).items()}
    made = Node(node, "found", "", entry=node[2:], mark=row["mark"] if row else "", at=step.at if step else "")
    parts = []
    if node[:2] == "i:":
        made.sort, made.key, made.name = "fruit", f"{LOAD}{node[2:]}", said.get("grower_lot") or "fruit"
        net = text_in(f"{step.mass_g / 1000:.0f}", "kg", house) if step else ""
        mass = f"{net} {units.symbol(unit_in('kg', house))}" if step else ""
        parts = [mass, said.get("variety") or said.get("material", ""), said.get("batch", "")]
    elif node[:2] == "o:":
        made.sort, made.name = "opening", "before this book began"
        filled, papers = said.get("filled_on"), said.get("papers")
        parts = [
            said.get("spirit") or said.get("what", ""), said.get("lot", ""), said.get("origin", ""), made.mark,
            f"filled {filled}" if filled else "", f"by papers: {papers}" if papers else "", body.get("remark", ""),
        ]
    elif node[:2] == "c:":
        made.sort, made.name = "received", said.get("consignor") or "another site"
        parts = [said.get("spirit", ""), said.get("lot", ""), said.get("document", ""), made.mark]
    else:
        made.name = "not on record"
        source = step.source[4:].replace("_", " ") if step else "flow"
        parts = [f"{made.mark}: the book had nothing there ({source})", body.get("remark", "")]
    made.words = ", ".join(part for part in parts if part)
    return made


def _bottlings(book: Book, entries: Sequence[str]) -> dict[str, Node]:
    nodes = {}
    rows = book.query(
        "SELECT w.value AS entry, coalesce(a.root, w.value) AS root, b.* FROM json_each(?) w "
        "LEFT JOIN amendments a ON a.id = w.value LEFT JOIN bottlings b ON b.id = coalesce(a.root, w.value)",
        (json.dumps(list(entries)),),
    ) if entries else []
    states = load_newest_of(book, (bottling_key(row["root"]) for row in rows))
    for about in rows:
        entry, root = about.pop("entry"), about.pop("root")
        row = about if about["id"] else {}
        state: Body = states.get(bottling_key(root)) or {}
        cases = " to ".join(part for part in (row.get("case_from"), row.get("case_to")) if part)
        parts = [f"cases {cases}" if cases else "", f"odd case {row['odd_case']}" if row.get("odd_case") else ""]
        parts += [row.get("lot_mark") or ""]
        is_received = bool(state.get("document"))
        parts += [f"received from {state['consignor']}, {state['document']}" if is_received else ""]
        is_opened = bool(state.get("opened"))
        told = [str(text) for text in (state.get("origin"), state.get("papers")) if text]
        parts += [", ".join(["from before this book", *told])] if is_opened else []
        words = ", ".join(part for part in parts if part)
        name = row.get("batch") or f"bottling {str(row.get('at', ''))[:10]}"
        facts = {**row, **{part: state.get(part) for part in ("good", "size_l", "what", "strength_pct", "lpa_ul")}}
        sort = "goods" if is_received or is_opened else "bottling"
        nodes[f"b:{entry}"] = Node(f"b:{entry}", sort, name, words, str(row.get("tank") or ""), root, entry,
                                   str(row.get("at") or ""), facts)
    return nodes
