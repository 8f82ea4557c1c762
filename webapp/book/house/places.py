"""Where vessels stand: where an entry put each last, else what the registry says; and which places a house has."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from typing import TypedDict

from webapp.book.record.store import Book
from webapp.kinds.rows import VesselRow
from webapp.trade.placenames import room_of, sort_key

VESSELS_MOST = 5_000
OFFERED_MOST = 1_000
# The last of each vessel: of an aggregate max(), SQLite takes the other columns from the same row.
LAST_PUT = "SELECT mark, place, entry, max(order_key) AS order_key FROM placings GROUP BY mark"


class _PlacedRow(TypedDict):
    mark: str
    place: str


class PlacedVessel(VesselRow):
    """A vessel with where it stands: an empty text where nobody knows it. Its flags are 1 or 0."""

    stands: str


class Placing(TypedDict):
    """An entry that put a vessel somewhere."""

    place: str
    entry: str
    at: str


def stands_at(book: Book, marks: Iterable[str]) -> dict[str, str]:
    """Return the place of each of these vessels by its mark, in one statement; an empty text where nobody knows it."""
    wanted = list(marks)
    sql = (
        "SELECT v.mark, coalesce((SELECT p.place FROM placings p WHERE p.mark = v.mark "
        "ORDER BY p.order_key DESC LIMIT 1), v.place) AS place "
        "FROM vessels v WHERE v.mark IN (SELECT value FROM json_each(?))"
    )
    return dict.fromkeys(wanted, "") | {
        row["mark"]: row["place"] for row in book.rows(_PlacedRow, sql, (json.dumps(wanted),))
    }


def last_placing(book: Book, mark: str) -> Placing | None:
    """Return the entry that put a vessel where it stands, or None where only the registry says its place."""
    sql = (
        "SELECT place, entry, substr(order_key, 1, 19) || 'Z' AS at FROM placings WHERE mark = ? "
        "ORDER BY order_key DESC LIMIT 1"
    )
    return book.row(Placing, sql, (mark,))


def standing_vessels(book: Book, sorts: Sequence[str] = ()) -> list[PlacedVessel]:
    """Return the vessels in use, each with its place, in the order of places; those without one first.

    Some thousands at most, by name.
    """
    sql = (
        f"SELECT v.*, coalesce(p.place, v.place) AS stands FROM vessels v LEFT JOIN ({LAST_PUT}) p "  # noqa: S608
        "ON p.mark = v.mark WHERE NOT v.retired AND (?1 = '[]' OR v.sort IN (SELECT value FROM json_each(?1))) "
        "ORDER BY v.name LIMIT ?2"
    )
    found = book.rows(PlacedVessel, sql, (json.dumps(list(sorts)), VESSELS_MOST))
    return sorted(found, key=lambda one: (sort_key(one["stands"]), one["stands"], sort_key(one["name"])))


def known_places(book: Book, limit: int = OFFERED_MOST) -> list[str]:
    """Return the places that entries or the registry name, in their order; those of vessels out of use are left out."""
    sql = (
        "SELECT DISTINCT place FROM (SELECT place FROM placings UNION "
        "SELECT place FROM vessels WHERE place <> '' AND NOT retired) LIMIT ?"
    )
    found = [str(row["place"]) for row in book.query(sql, (VESSELS_MOST,))]
    return sorted(found, key=lambda one: (sort_key(one), one))[:limit]


def rooms_of(names: Iterable[str]) -> list[str]:
    """Return the rooms that places are in, each once, in their order; the spelling is that of the first."""
    rooms: dict[str, str] = {}
    for name in names:
        room = room_of(name)
        rooms.setdefault(sort_key(room), room)
    return [rooms[key] for key in sorted(rooms)]
