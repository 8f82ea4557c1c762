"""The rows of the registry and of the fold that have names, read as lines of the search."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from webapp.book.record.search_tables import SOURCES
from webapp.book.record.store import Book
from webapp.book.search.lines import Line, make_line, order_of_name, order_of_time

Row = dict[str, Any]  # of the table that the sort names
PARTY = "|"  # between the name and the role in the key of a customer or grower


def load_lines(book: Book, sort: str, keys: Iterable[str]) -> Iterator[Line]:
    """Yield the lines of these rows of a sort, as they are now; one that has no name, or is gone, has none."""
    table, key, _ = SOURCES[sort]
    if sort == "party":
        pairs = [key.rpartition(PARTY)[::2] for key in keys]
        wanted, where = json.dumps(pairs), "t.name = w.value ->> 0 AND t.role = w.value ->> 1"
    else:
        wanted, where = json.dumps(list(keys)), f"t.{key} = w.value"
    for row in book.query(f"SELECT t.* FROM json_each(?) w CROSS JOIN {table} t ON {where}", (wanted,)):  # noqa: S608
        if line := _MAKERS[sort](row):
            yield line


def _vessel(row: Row) -> Line | None:
    names = (row["name"], row["mark"])
    facts = {name: row[name] for name in ("sort", "title", "place", "wood", "use", "note", "retired")}
    return make_line("vessel", row["mark"], names, facts, order_of_name(row["name"]))


def _person(row: Row) -> Line | None:
    facts = {"code": row["code"], "retired": row["retired"]}
    return make_line("person", row["code"], (row["name"], row["code"]), facts, order_of_name(row["name"]))


def _instrument(row: Row) -> Line | None:
    facts = {name: row[name] for name in ("sort", "title", "state")}
    return make_line("instrument", row["id"], (row["id"],), facts, order_of_name(row["id"]))


def _party(row: Row) -> Line | None:
    facts = {name: row[name] for name in ("role", "number", "address", "note", "retired")}
    return make_line("party", f"{row['name']}{PARTY}{row['role']}", (row["name"],), facts, order_of_name(row["name"]))


def _fill(row: Row) -> Line | None:
    facts = {"what": row["what"], "lot": row["lot"] if row["name"] else "", "mark": row["mark"], "at": row["since"],
             "until": row["ended_at"]}
    return make_line("fill", row["id"], (row["name"], row["lot"]), facts, order_of_time(row["since"]))


def _bottling(row: Row) -> Line | None:
    facts = {"lot_mark": row["lot_mark"] if row["batch"] else "", "case_from": row["case_from"],
             "case_to": row["case_to"], "odd_case": row["odd_case"], "mark": row["tank"], "at": row["at"]}
    return make_line("bottling", row["id"], (row["batch"], row["lot_mark"]), facts, order_of_time(row["at"]))


_MAKERS: dict[str, Callable[[Row], Line | None]] = {
    "vessel": _vessel, "person": _person, "instrument": _instrument, "party": _party, "fill": _fill,
    "bottling": _bottling,
}
