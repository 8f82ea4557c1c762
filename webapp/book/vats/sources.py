"""Casks and tanks that could go into a vat, as the book has them now."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import TypedDict

from webapp.book.checks.cask_fill import soak_kg
from webapp.book.fold.states import load_newest_of
from webapp.book.record.store import Book
from webapp.book.vats.sum import Source
from webapp.kinds.key import vessel_key
from webapp.kinds.state import EMPTY_VESSEL, Vessel

LISTED_MOST = 2_000
DAYS_A_YEAR = 365.25
_STANDING = (
    "SELECT v.mark, v.name, v.sort, v.place, v.capacity_l FROM fills f JOIN vessels v ON v.mark = f.mark "
    "WHERE f.ended_at = '' AND NOT v.retired AND v.sort IN ('cask', 'tank') AND (:what = '' OR f.what = :what) "
    "ORDER BY f.since, length(v.name), v.name LIMIT :most"
)


class _Standing(TypedDict):
    mark: str
    name: str
    sort: str
    place: str
    capacity_l: float | None


def sorts_of_spirit(book: Book) -> list[str]:
    """Return the names of the spirits in casks and tanks now."""
    rows = book.query(
        "SELECT DISTINCT f.what FROM fills f JOIN vessels v ON v.mark = f.mark "
        "WHERE f.ended_at = '' AND v.sort IN ('cask', 'tank') ORDER BY f.what LIMIT 100"
    )
    return [row["what"] for row in rows if row["what"]]


def sources(book: Book, now: datetime, *, what: str = "", soak_200_kg: float = 0.0) -> list[Source]:
    """Return the casks and tanks with spirit in them, the oldest fill first. At most LISTED_MOST.

    `soak_200_kg` is what the wood of a 200 L cask keeps; other casks by their surface. A cask goes whole.
    """
    rows = book.rows(_Standing, _STANDING, {"what": what, "most": LISTED_MOST})
    states = load_newest_of(book, (vessel_key(row["mark"]) for row in rows))
    last_in = _last_in(book, [held["fill"] for state in states.values() if state and (held := state["holds"])])
    known = ((row, states.get(vessel_key(row["mark"])) or EMPTY_VESSEL) for row in rows)
    return [source for row, state in known if (source := _source(row, state, last_in, now, soak_200_kg))]


def _source(
    row: _Standing, state: Vessel, last_in: Mapping[str, str], now: datetime, soak_200_kg: float
) -> Source | None:
    held = state["holds"]
    if not held or held["mash"] or not held["mass_kg"] or not held["strength_pct"]:
        return None
    is_cask = row["sort"] == "cask"
    since, is_least = held.get("aged_since"), False
    if not since and is_cask:
        since, is_least = last_in.get(held["fill"]), True
    years = max((now - datetime.fromisoformat(since)).days, 0) / DAYS_A_YEAR if since else None
    return Source(
        mark=row["mark"], name=row["name"], mass_kg=held["mass_kg"], strength_pct=held["strength_pct"],
        what=held.get("what") or "", lot=held.get("lot") or held.get("name") or "",
        place=state.get("place") or row["place"] or "", years=years, is_least=is_least,
        papers=held.get("by_papers"),
        leave_kg=soak_kg(row["capacity_l"], soak_200_kg) if is_cask else 0.0, is_whole=is_cask,
    )


def _last_in(book: Book, fills: Sequence[str]) -> dict[str, str]:
    """Return by fill the time at which spirit last went into it.

    In a cask, the youngest part is in wood at least since then.
    """
    rows = book.query(
        "SELECT target_fill AS fill, max(at) AS at FROM flows WHERE target_fill IN (SELECT value FROM json_each(?)) "
        "AND target_fill <> '' AND source_fill <> target_fill "
        "AND source NOT IN ('out:gauge_difference', 'out:evaporation', 'out:not_accounted') GROUP BY target_fill",
        (json.dumps(list(fills)),),
    )
    return {row["fill"]: row["at"] for row in rows}
