"""The registry as the fold sees it: read once, held in memory, forgotten when it changes."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import cast

from webapp.book.record.memory import Registry
from webapp.book.record.store import Book
from webapp.kinds.entry import Limits, Ranges
from webapp.kinds.rows import InstrumentRow, PersonRow, SiteSettings, VesselRow

VESSELS_HELD_MOST = 20_000
VESSEL_FLAGS = ("in_zone", "curved", "retired")


class Known:
    """Vessels, instruments, people, limits and the site. Inside a write only, but for one with a memory of its own."""

    def __init__(self, book: Book, held: Registry | None = None) -> None:
        self._book = book
        self._held = book.memory.registry if held is None else held

    def vessel(self, mark: str) -> VesselRow | None:
        """Return the vessel's row, or None."""
        held = self._held.vessels
        if mark not in held:
            if len(held) >= VESSELS_HELD_MOST:
                held.clear()
            row = self._book.row(VesselRow, "SELECT * FROM vessels WHERE mark = ?", (mark,))
            held[mark] = with_flags(row) if row else None
        return held[mark]

    def like(self, vessel: VesselRow, most: int) -> Sequence[VesselRow]:
        """Return other casks of the same size class, those of the same area, wood and use first, then by name."""
        held, key = self._held.like, (vessel["mark"], most)
        if key not in held:
            area = f"{vessel['place'].partition('-')[0]}%"
            held[key] = self._book.rows(
                VesselRow,
                "SELECT * FROM vessels WHERE sort = 'cask' AND size_class = ? AND mark <> ? AND NOT retired "
                "ORDER BY (place LIKE ?) + (wood = ?) + (use = ?) DESC, name, mark LIMIT ?",
                (vessel["size_class"], vessel["mark"], area, vessel["wood"], vessel["use"], most),
            )
        return held[key]

    def instrument(self, instrument_id: str) -> InstrumentRow | None:
        """Return the instrument's row, or None."""
        if self._held.instruments is None:
            rows = self._book.rows(InstrumentRow, "SELECT * FROM instruments")
            self._held.instruments = {row["id"]: row for row in rows}
        return self._held.instruments.get(instrument_id)

    def person(self, code: str) -> PersonRow | None:
        """Return the person's row, or None."""
        if self._held.people is None:
            self._held.people = {row["code"]: row for row in self._book.rows(PersonRow, "SELECT * FROM people")}
        return self._held.people.get(code)

    def site(self) -> SiteSettings:
        """Return the site's settings."""
        if self._held.site is None:
            self._held.site = load_site(self._book)
        return self._held.site

    def limits(self) -> Limits:
        """Return all limits that somebody has set."""
        if self._held.limits is None:
            self._held.limits = load_limits(self._book)
        return self._held.limits


def with_flags(row: VesselRow) -> VesselRow:
    """Return a vessel's row with its flags as true and false."""
    flags = bool(row["in_zone"]), bool(row["curved"]), bool(row["retired"])
    return {**row, "in_zone": flags[0], "curved": flags[1], "retired": flags[2]}


def load_site(book: Book) -> SiteSettings:
    """Return the site's settings, with the default of each that nobody has set."""
    # What somebody has set is checked where it is set.
    said = cast(SiteSettings, {row["name"]: json.loads(row["value"]) for row in book.query("SELECT * FROM site")})
    return {
        "name": "", "units": "metric", "decimal_mark": ".", "height_m": None, "areas": [], "time_zone": "UTC", **said,
    }


def load_limits(book: Book) -> Limits:
    """Return the limits keyed by (scope, key, kind), each a mapping of field to ranges."""
    found: dict[tuple[str, str, str], dict[str, Ranges]] = {}
    for row in book.query("SELECT * FROM limits"):
        ranges: Ranges = {}
        if row["usual"]:
            ranges["usual"] = json.loads(row["usual"])
        if row["possible"]:
            ranges["possible"] = json.loads(row["possible"])
        found.setdefault((row["scope"], row["key"], row["kind"]), {})[row["field"]] = ranges
    return found
