"""The desk: pages in the office, server-rendered, which need the server. One module a room of pages."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from flask import Blueprint

from webapp.access import current
from webapp.trade import units

bp = Blueprint("desk", __name__, url_prefix="/desk")

ROOMS = [
    ("queries", "Queries", "/desk/"),
    ("entries", "Entries", "/desk/entries"),
    ("vessels", "Vessels", "/desk/vessels"),
    ("runs", "Runs", "/desk/runs"),
    ("trace", "Trace", "/desk/trace"),
    ("periods", "Periods", "/desk/periods"),
    ("labels", "Labels", "/desk/labels"),
    ("settings", "Settings", "/desk/settings"),
]


@bp.context_processor
def for_every_page() -> dict[str, Any]:
    """Give every desk page its rooms, the count of open queries, the site and who is signed in."""
    if current.person is None:
        return {"side": "desk", "rooms": [], "site": {}, "person": None}
    from webapp.book import queries, registry

    site = registry.site(current.book)
    asked = sum(n for weight, n in queries.counts(current.book).items() if weight != "note")
    rooms = [(*room, asked if room[0] == "queries" else None) for room in ROOMS]
    return {
        "side": "desk",
        "rooms": rooms,
        "site": site,
        "zone": site.get("time_zone"),
        "decimal_mark": site.get("decimal_mark"),
        "person": current.person,
        "may": current.may,
    }


@bp.app_template_filter("unit_symbol")
def unit_symbol(unit: str) -> str:
    """Return the sign of a unit code, or the code itself where it has none."""
    try:
        return units.symbol(unit)
    except ValueError:
        return unit


@bp.app_template_filter("change")
def change(row: dict[str, Any] | None) -> str:
    """Return one side of a change of the registry in a line."""
    return ", ".join(f"{name} {value}" for name, value in (row or {}).items() if value not in (None, ""))


@bp.app_template_filter("local_time")
def local_time(stamp: str | None) -> str:
    """Return a UTC time as the house's clock shows it, to the minute."""
    return _at_house(stamp).strftime("%Y-%m-%d %H:%M") if stamp else ""


@bp.app_template_filter("local_clock")
def local_clock(stamp: str | None) -> str:
    """Return the minute of a UTC time as the house's clock shows it."""
    return _at_house(stamp).strftime("%H:%M") if stamp else ""


def _at_house(stamp: str) -> datetime:
    from webapp.book import registry

    zone = registry.site(current.book).get("time_zone") or "UTC"
    try:
        return datetime.fromisoformat(stamp).astimezone(ZoneInfo(zone))
    except (ZoneInfoNotFoundError, ValueError):
        return datetime.fromisoformat(stamp)


# The rooms register their views on bp; imported last because they need it.
from webapp.desk import (  # noqa: E402
    check_limits,
    entries,
    goods,
    instruments,
    labels,
    people,
    periods,
    phones,
    queries,
    records,
    runs,
    settings,
    trace,
    vessels,
)

__all__ = [
    "bp", "check_limits", "entries", "goods", "instruments", "labels", "people", "periods", "phones", "queries",
    "records", "runs", "settings", "trace", "vessels",
]  # fmt: skip
