"""The registry as the fold sees it: read once, held in memory, forgotten when it changes."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any

from webapp.book.before.limits import Ranges
from webapp.book.record.store import Book

VESSELS_HELD_MOST = 20_000
VESSEL_FLAGS = ("in_zone", "curved", "retired")


class Known:
    """Vessels, instruments, people, limits and the site. Inside a write only."""

    def __init__(self, book: Book) -> None:
        self._book = book
        self._held = book.memory.registry

    def vessel(self, mark: str) -> Mapping[str, Any] | None:
        """Return the vessel's row, or None."""
        held = self._held.setdefault("vessels", {})
        if mark not in held:
            if len(held) >= VESSELS_HELD_MOST:
                held.clear()
            row = self._book.one("SELECT * FROM vessels WHERE mark = ?", (mark,))
            held[mark] = with_flags(row) if row else None
        found: Mapping[str, Any] | None = held[mark]
        return found

    def like(self, vessel: Mapping[str, Any], most: int) -> Sequence[Mapping[str, Any]]:
        """Return other casks of the same size class, those of the same area, wood and use first, then by name."""
        held = self._held.setdefault("like", {})
        key = (vessel["mark"], most)
        if key not in held:
            area = f"{vessel['place'].partition('-')[0]}%"
            held[key] = self._book.query(
                "SELECT * FROM vessels WHERE sort = 'cask' AND size_class = ? AND mark <> ? AND NOT retired "
                "ORDER BY (place LIKE ?) + (wood = ?) + (use = ?) DESC, name, mark LIMIT ?",
                (vessel["size_class"], vessel["mark"], area, vessel["wood"], vessel["use"], most),
            )
        found: Sequence[Mapping[str, Any]] = held[key]
        return found

    def instrument(self, instrument_id: str) -> Mapping[str, Any] | None:
        """Return the instrument's row, or None."""
        found: Mapping[str, Any] | None = self._all("instruments", "id").get(instrument_id)
        return found

    def person(self, code: str) -> Mapping[str, Any] | None:
        """Return the person's row, or None."""
        found: Mapping[str, Any] | None = self._all("people", "code").get(code)
        return found

    def site(self) -> Mapping[str, Any]:
        """Return the site's settings."""
        if "site" not in self._held:
            self._held["site"] = load_site(self._book)
        site: Mapping[str, Any] = self._held["site"]
        return site

    def limits(self) -> Ranges:
        """Return all limits that somebody has set."""
        if "limits" not in self._held:
            self._held["limits"] = load_limits(self._book)
        limits: Ranges = self._held["limits"]
        return limits

    def _all(self, table: str, key: str) -> dict[str, Any]:
        if table not in self._held:
            rows = self._book.query(f"SELECT * FROM {table}")  # noqa: S608
            self._held[table] = {row[key]: row for row in rows}
        rows_by_key: dict[str, Any] = self._held[table]
        return rows_by_key


def with_flags(row: dict[str, Any]) -> dict[str, Any]:
    """Return a vessel's row with its flags as true and false."""
    return row | {name: bool(row[name]) for name in VESSEL_FLAGS}


def load_site(book: Book) -> dict[str, Any]:
    """Return the site's settings, with the default of each that nobody has set."""
    said = {row["name"]: json.loads(row["value"]) for row in book.query("SELECT name, value FROM site")}
    return {
        "name": "", "units": "metric", "decimal_mark": ".", "height_m": None, "areas": [], "time_zone": "UTC"
    } | said  # fmt: skip


def load_limits(book: Book) -> Ranges:
    """Return the limits keyed by (scope, key, kind), each a mapping of field to ranges."""
    found: dict[tuple[str, str, str], dict[str, dict[str, Any]]] = {}
    for row in book.query("SELECT * FROM limits"):
        ranges = {name: json.loads(row[name]) for name in ("usual", "possible") if row[name]}
        found.setdefault((row["scope"], row["key"], row["kind"]), {})[row["field"]] = ranges
    return found
