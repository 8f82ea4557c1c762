"""The rows that travel beside a site's entries, because its fold needs them. Sender and group both know this list."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from webapp.book.record.log import canonical, sha256
from webapp.book.record.store import Book


class Sort(NamedTuple):
    """One table of the registry: its key, and the columns that travel. `where` picks its rows."""

    table: str
    key: tuple[str, ...]
    columns: tuple[str, ...]
    where: str = "1"


# No password, no PIN, no secret of a phone. Of what was put aside only clashes: the fold asks about them.
SORTS: dict[str, Sort] = {
    "vessel": Sort("vessels", ("mark",), (
        "mark", "name", "title", "sort", "place", "capacity_l", "working_l", "tare_kg", "wood", "toast", "use",
        "size_class", "in_zone", "curved", "note", "retired", "dips")),
    "instrument": Sort("instruments", ("id",), (
        "id", "sort", "title", "low", "high", "unit", "due_on", "state", "corrections")),
    "limit": Sort("limits", ("scope", "key", "kind", "field"), ("scope", "key", "kind", "field", "usual", "possible")),
    "site": Sort("site", ("name",), ("name", "value"), "name <> 'group'"),
    "person": Sort("people", ("code",), ("code", "name", "roles", "access", "retired")),
    "close": Sort("closes", ("month",), (
        "no", "month", "period", "start", "until", "zone", "figures", "digest", "book_no", "person", "signed_at")),
    "clash": Sort("aside", ("settled", "body_sha256"), (
        "id", "device", "seq", "settled", "body", "body_sha256", "problems", "received_at", "via"),
        "settled = 'clash'"),
}


def read_registry(book: Book) -> dict[tuple[str, str], str]:
    """Return every row that travels, by sort and key, as canonical text."""
    found = {}
    for name, sort in SORTS.items():
        for row in book.query(f"SELECT {', '.join(sort.columns)} FROM {sort.table} WHERE {sort.where}"):  # noqa: S608
            found[name, key_of(name, row)] = canonical(row)
    return found


def key_of(name: str, row: Mapping[str, object]) -> str:
    """Return the key of a row within its sort."""
    return "/".join(str(row[part]) for part in SORTS[name].key)


def digest_of(rows: dict[tuple[str, str], str]) -> str:
    """Return one digest over a whole registry: equal registries give equal digests."""
    return sha256("\n".join(f"{sort} {key} {sha256(body)}" for (sort, key), body in sorted(rows.items())))
