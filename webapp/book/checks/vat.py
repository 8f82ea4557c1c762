"""A planned vat: every draw names a vessel of the book and a weight, and none more than stands there."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.vat_draws import read_draws
from webapp.book.before.view import Query
from webapp.book.checks.instruments import dipped_kg_off_by, weighed_off_by
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.words import rounded
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW, VesselRow
from webapp.kinds.state import NO_FILL, Fill
from webapp.kinds.view import View


def vat_draws(read: Read, view: View) -> Iterable[Query]:
    """Parts of a plan that nobody can read, vessels that the book does not have, and draws of more than there is."""
    draws, odd = read_draws(str(read.text("draws") or ""))
    if odd:
        yield Query("vat_draws", "ask", "draws", message("vat_draws", part=odd[0]))
    for mark, kg in draws.items():
        if view.vessel(mark) is None:
            yield Query("vat_vessel", "ask", "draws", message("vat_vessel", mark=mark))
            return
        held = view.state(mark)["holds"] or NO_FILL
        there = held["mass_g"] / 1000.0
        if kg > there + max(0.05, _off_by(held, view.vessel(mark) or NO_ROW)):
            planned, booked = rounded(kg, 1, "kg"), rounded(there, 1, "kg")
            said = message("vat_short", planned=planned, vessel=vessel_name(mark, view), booked=booked)
            yield Query("vat_short", "ask", "draws", said)
            return


def _off_by(held: Fill, row: VesselRow) -> float:
    """Return twice the standard uncertainty of what stands in a vessel, which casks are weighed for. [kg]"""
    kg = held["mass_g"] / 1000.0
    if row.get("sort") == "cask":
        return weighed_off_by(kg, held.get("tare_kg") or row.get("tare_kg") or 0.0)
    return dipped_kg_off_by(kg, held["volume_l"] or 0.0, row.get("capacity_l"))
