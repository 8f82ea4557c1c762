"""The desk: pages in the office, server-rendered, which need the server. One module a room of pages."""

from __future__ import annotations

from typing import Any

from flask import Blueprint

from webapp.access import current

bp = Blueprint("desk", __name__, url_prefix="/desk")

ROOMS = [
    ("queries", "Queries", "/desk/"),
    ("entries", "Entries", "/desk/entries"),
    ("vessels", "Vessels", "/desk/vessels"),
    ("runs", "Runs", "/desk/runs"),
    ("labels", "Labels", "/desk/labels"),
    ("phones", "Phones", "/desk/phones"),
    ("people", "People", "/desk/people"),
    ("settings", "Settings", "/desk/settings"),
]


@bp.context_processor
def for_every_page() -> dict[str, Any]:
    """Give every desk page its rooms, the count of open queries, the site and who is signed in."""
    if current.person is None:
        return {"side": "desk", "rooms": [], "site": {}, "person": None}
    from webapp.book import queries, registry

    asked = sum(n for weight, n in queries.counts(current.book).items() if weight != "note")
    rooms = [(*room, asked if room[0] == "queries" else None) for room in ROOMS]
    return {
        "side": "desk",
        "rooms": rooms,
        "site": registry.site(current.book),
        "person": current.person,
        "may": current.may,
    }


# The rooms register their views on bp; imported last because they need it.
from webapp.desk import entries, labels, people, phones, queries, runs, settings, vessels  # noqa: E402

__all__ = ["bp", "entries", "labels", "people", "phones", "queries", "runs", "settings", "vessels"]
