"""Heads over what only grows: entries, what was put aside, changes and closes, every column of every row.

A head noted outside the book holds it to that beginning: whoever rewrites the rows and all their digests in the book
still comes to another root. Source of the tree: RFC 9162, section 2.1. Bare, as here, a head is worth what its keeper
is; webapp/signed_heads.py signs it.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from typing import NamedTuple

from webapp.book.record import merkle
from webapp.book.record.store import Book

# Columns by name: one that a later update adds does not change the leaves.
_ROWS = {
    "entries": "SELECT book_no, id, kind, kind_version, mark, read_at, typed_at, person, role, device, seq, body, "
    "body_sha256, received_at, skew_s, via, digest FROM entries ORDER BY book_no",
    "aside": "SELECT no, id, device, seq, settled, body, body_sha256, problems, received_at, via "
    "FROM aside ORDER BY no",
    "changes": "SELECT no, at, person, what, key, before, after FROM changes ORDER BY no",
    "closes": "SELECT no, month, period, start, until, zone, figures, digest, book_no, person, signed_at FROM closes "
    "ORDER BY no",
}
_LINE = re.compile(r"\b(entries|aside|changes|closes) (\d{1,12}) ([0-9a-f]{64})\b")


class Head(NamedTuple):
    """How many rows of a list (`entries`, `aside`, `changes` or `closes`) a root stands for: 64 hex digits."""

    name: str
    size: int
    root: str

    def __str__(self) -> str:
        return f"{self.name} {self.size} {self.root}"


def read_heads(text: str) -> list[Head]:
    """Return the heads that stand in a text, whatever stands around them."""
    return [Head(name, int(size), root) for name, size, root in _LINE.findall(text)]


def take_heads(book: Book) -> list[Head]:
    """Return the head of each list as it is now."""
    return [_walk(book, name, ())[0] for name in _ROWS]


def compare(book: Book, noted: Iterable[Head]) -> list[str]:
    """Return a sentence for each noted head that the book no longer has as its beginning."""
    noted = list(noted)
    troubles: list[str] = []
    for name in _ROWS:
        sought = [head for head in noted if head.name == name]
        now, roots = _walk(book, name, [head.size for head in sought])
        for head in sought:
            if head.size > now.size:
                troubles.append(f"Of {name}, {head.size} were noted, and the book has only {now.size}.")
            elif roots[head.size] != head.root:
                troubles.append(f"The first {head.size} of {name} are not those that were noted.")
    return troubles


def _walk(book: Book, name: str, sizes: Iterable[int]) -> tuple[Head, dict[int, str]]:
    """Return the head of a list, and the roots that it had at these sizes."""
    wanted, tree, roots = set(sizes), merkle.Frontier(), {}
    if 0 in wanted:
        roots[0] = tree.root().hex()
    for row in book.db.conn.execute(_ROWS[name]):
        tree.append(merkle.hash_leaf(json.dumps(list(row), separators=(",", ":")).encode("ascii")))
        if tree.size in wanted:
            roots[tree.size] = tree.root().hex()
    return Head(name, tree.size, tree.root().hex()), roots
