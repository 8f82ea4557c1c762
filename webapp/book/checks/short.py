"""What the flows of an entry took that the book did not have: asked about, whatever its kind.

A stock never falls below nothing: the effect books what is missing first. This is where somebody hears of it.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.instruments import apart, dipped_off_by
from webapp.book.checks.words import figure
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.spec import Effect
from webapp.kinds.view import View

LIMITS = declare(
    Limit("source_short_pct", 0.5, "%", "Taken out of a vessel above what the book has there"),
)

LEAST_UL = 20_000  # what rounding of a dip may pretend


def shortfalls(effect: Effect, read: Read, view: View) -> Iterable[Query]:
    """Ask where more pure alcohol was taken from a vessel than it held, or where nobody knows what it came from."""
    taken: dict[str, int] = {}
    for flow in effect.flows:
        taken[flow.source] = taken.get(flow.source, 0) + flow.lpa_ul
    for flow in effect.flows:
        if flow.lpa_ul < LEAST_UL:
            continue
        if flow.source == "out:gauge_difference" and flow.reason == "more_than_booked":
            most = taken[flow.target] * limit("source_short_pct", view) / 100
            if flow.lpa_ul > most and flow.lpa_ul / 1e6 > _may_differ(read, view, taken[flow.target] / 1e6):
                had, name = (taken[flow.target] - flow.lpa_ul) / 1e6, _name(view, flow.target)
                out, booked = figure(taken[flow.target] / 1e6, 2, "LPA"), figure(had, 2, "LPA")
                yield Query("stock_short", "ask", "", message("stock_short", taken=out, vessel=name, booked=booked))
        elif flow.source == "out:not_accounted" and flow.reason not in ("more_than_booked", "run_balance"):
            yield Query("from_nothing", "ask", "", message("from_nothing", came=figure(flow.lpa_ul / 1e6, 2, "LPA")))


def _may_differ(read: Read, view: View, taken_l: float) -> float:
    """Return by how much what was taken may differ from what was gauged there before, by instruments alone. [L]"""
    mark = {"charge": read.text("feints_from"), "bottling_close": read.mark}.get(read.kind.name)
    if not mark:
        return apart(read, view, "lpa")
    # No instrument of this entry speaks of it; the vessel was dipped when it was gauged, and is read once more now.
    volume = max(read.number("feints") or read.figures.get("in_bottles") or 0.0, 0.0)
    capacity_l = (view.vessel(mark) or NO_ROW).get("capacity_l")
    return sqrt(2.0) * dipped_off_by(volume, min(taken_l, volume), is_read=True, capacity_l=capacity_l)


def _name(view: View, account: str) -> str:
    row = view.vessel(account[2:])
    return str(row["name"]) if row else account[2:]
