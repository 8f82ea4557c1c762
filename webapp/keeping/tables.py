"""The tables of a book, by what happens to them in an export: the record travels, secrets and computed tables stay."""

from __future__ import annotations

from webapp.book.fold.fold import DERIVED
from webapp.book.record.search_tables import PREFIX
from webapp.book.record.store import Book

# Computed from the rest, or of no meaning elsewhere.
LEFT_BEHIND = frozenset((*DERIVED, "card_turns", "migrations", "ended_sessions", "rules", "differences"))
# So are the tables of the search, which all begin with PREFIX: FTS5 makes some of them itself.
# One-time codes are secrets whole; of people and phones only what lets them in is. A passkey is no secret, but one that
# came with an export of somebody else's would let its maker in.
SECRET_TABLES = frozenset(("tokens", "passkeys"))
SECRET_COLUMNS = {"people": ("password", "pin"), "devices": ("secret_sha256",)}
# Their lines say their body as it was logged, so that a person can read it and a digest can be taken of it.
ENTRIES = "entries"


def record_tables(book: Book) -> dict[str, list[str]]:
    """Return the tables that travel, by name, each with the columns that travel: no secret ones."""
    names = [row["name"] for row in book.query("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")]
    kept = [n for n in names if n not in LEFT_BEHIND | SECRET_TABLES and not n.startswith(("sqlite_", PREFIX))]
    return {name: [c for c in _columns(book, name) if c not in SECRET_COLUMNS.get(name, ())] for name in kept}


def all_columns(book: Book) -> dict[str, list[str]]:
    """Return every table of the record by name with all of its columns, secrets as well: for what never leaves."""
    return {name: _columns(book, name) for name in record_tables(book)}


def _columns(book: Book, table: str) -> list[str]:
    return [row["name"] for row in book.query("SELECT name FROM pragma_table_info(?)", (table,))]


def primary_key(book: Book, table: str) -> str:
    """Return the columns of a table's primary key, joined for an ORDER BY."""
    rows = book.query("SELECT name FROM pragma_table_info(?) WHERE pk > 0 ORDER BY pk", (table,))
    return ", ".join(row["name"] for row in rows)
