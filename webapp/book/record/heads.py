"""Heads over what only grows: entries, what was put aside, changes, closes, sheets put in; every column of every row.

The registry is held by its changes, which name each row and column (webapp/book/house/proof.py).
A head noted outside the book holds it to that beginning: whoever rewrites the rows and all their digests in the book
still comes to another root. Source of the tree: RFC 9162, section 2.1. Bare, as here, a head is worth what its keeper
is; webapp/signed_heads.py signs it.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Mapping
from typing import NamedTuple

from webapp.book.record import merkle
from webapp.book.record.store import Book

# Key and columns by name: a column that a later update adds does not change the leaves.
_ROWS = {
    "entries": ("book_no", "book_no, id, kind, kind_version, mark, read_at, typed_at, person, role, device, seq, body, "
                "body_sha256, received_at, skew_s, via, digest"),
    "aside": ("no", "no, id, device, seq, settled, body, body_sha256, problems, received_at, via"),
    "changes": ("no", "no, at, person, what, key, before, after"),
    "closes": ("no", "no, month, period, start, until, zone, figures, digest, book_no, person, signed_at"),
    "takings": ("no", "no, sha256, at, person, told, rows"),
}
_FIRST = -(2**63)
_LINE = re.compile(r"\b(entries|aside|changes|closes|takings) (\d{1,12}) ([0-9a-f]{64})\b")


class Head(NamedTuple):
    """How many rows of a list (`entries`, `aside`, `changes`, `closes`, `takings`) a root of 64 hex digits is of."""

    name: str
    size: int
    root: str

    def __str__(self) -> str:
        return f"{self.name} {self.size} {self.root}"


def read_heads(text: str) -> list[Head]:
    """Return the heads that stand in a text, whatever stands around them."""
    return [Head(name, int(size), root) for name, size, root in _LINE.findall(text)]


class Growing:
    """The heads of a book as it grows: each row is hashed once. Not safe for threads."""

    def __init__(self, sizes: Mapping[str, Iterable[int]] | None = None) -> None:
        """Keep the roots at these sizes, by list."""
        self._wanted = {name: set((sizes or {}).get(name, ())) for name in _ROWS}
        self._trees = {name: merkle.Frontier() for name in _ROWS}
        self._last = dict.fromkeys(_ROWS, _FIRST)
        self.roots = {name: {0: merkle.Frontier().root().hex()} for name in _ROWS}

    def go_on(self, book: Book) -> list[Head]:
        """Take in the rows that came since; return the head of each list."""
        return [self._go_on(book, name) for name in _ROWS]

    def _go_on(self, book: Book, name: str) -> Head:
        key, columns = _ROWS[name]
        tree, wanted = self._trees[name], self._wanted[name]
        sql = f"SELECT {columns} FROM {name} WHERE {key} > ? ORDER BY {key}"  # noqa: S608 -- written in this file
        for row in book.db.conn.execute(sql, (self._last[name],)):
            tree.append(merkle.hash_leaf(json.dumps(list(row), separators=(",", ":")).encode("ascii")))
            self._last[name] = row[0]
            if tree.size in wanted:
                self.roots[name][tree.size] = tree.root().hex()
        return Head(name, tree.size, tree.root().hex())


def take_heads(book: Book) -> list[Head]:
    """Return the head of each list as it is now."""
    return Growing().go_on(book)


def compare(book: Book, noted: Iterable[Head]) -> list[str]:
    """Return a sentence for each noted head that the book no longer has as its beginning."""
    return list(find_lost(book, noted).values())


def find_lost(book: Book, noted: Iterable[Head]) -> dict[Head, str]:
    """Return the noted heads that the book no longer has as its beginning, each with a sentence."""
    noted = list(noted)
    growing = Growing({name: [head.size for head in noted if head.name == name] for name in _ROWS})
    now = {head.name: head for head in growing.go_on(book)}
    lost = {}
    for head in noted:
        if head.size > now[head.name].size:
            lost[head] = f"Of {head.name}, {head.size} were noted, and the book has only {now[head.name].size}."
        elif growing.roots[head.name][head.size] != head.root:
            lost[head] = f"The first {head.size} of {head.name} are not those that were noted."
    return lost
