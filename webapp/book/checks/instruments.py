"""No alarm finer than the instruments: how far a figure of an entry may be off by the class of what it was read with.

Asked only where a check has found something already: following a figure through its sums takes about a millisecond.
"""

from __future__ import annotations

from math import sqrt

from webapp.book.before.accuracy import accuracies_for
from webapp.book.before.corrections import instruments_in
from webapp.book.checks.words import local_time
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.uncertainty import uncertain_figures
from webapp.kinds.view import View
from webapp.trade.datafiles import load_data
from webapp.trade.error_limits import dip_limits_l, glass_limit_pct, scale_interval_kg, scale_limit_kg
from webapp.trade.uncertainty import COVERAGE, standard_from_interval, standard_from_limit


def off_by(read: Read, view: View, name: str) -> float:
    """Return twice the standard uncertainty of a figure of this entry; 0 where no instrument speaks of it. [its unit]

    Source: JCGM 100:2008, 6.2, with coverage factor 2.
    """
    capacity_l = (view.vessel(read.mark) or NO_ROW).get("capacity_l")
    day = local_time(view.at, read).date().isoformat()
    named = instruments_in(read.kind, read.entry)
    found = uncertain_figures(read, accuracies_for(named, day, view.instrument, view.get), capacity_l).get(name)
    return COVERAGE * found.standard if found else 0.0


def apart(read: Read, view: View, name: str) -> float:
    """Return by how much a figure may differ from one that was measured alike, by instruments alone. [its unit]"""
    return sqrt(2.0) * off_by(read, view, name)


def held_off_pct() -> float:
    """Return twice the standard uncertainty of a strength that a glass of the prescribed class gave. [% vol]"""
    limit, interval = glass_limit_pct("", None), load_data("instruments")["alcoholometer"]["interval_pct"]
    return COVERAGE * sqrt(standard_from_limit(limit) ** 2 + standard_from_interval(interval) ** 2)


def dip_apart(litres: float, capacity_l: float | None) -> float:
    """Return by how much two dips of one vessel may differ, by prescribed classes alone. [L]"""
    table, surface = dip_limits_l(litres, capacity_l)
    return sqrt(2.0) * COVERAGE * sqrt(standard_from_limit(table) ** 2 + standard_from_limit(surface) ** 2)


def dipped_off_by(volume_l: float, lpa_l: float, *, is_read: bool, capacity_l: float | None = None) -> float:
    """Return twice the standard uncertainty of pure alcohol that was dipped before, by prescribed classes. [L]

    is_read: with a strength off a glass; that of a wash is none.
    """
    if volume_l <= 0:
        return 0.0
    table, surface = dip_limits_l(volume_l, capacity_l)
    volume = sqrt(standard_from_limit(table) ** 2 + standard_from_limit(surface) ** 2)
    glass = standard_from_limit(glass_limit_pct("", None)) if is_read else 0.0
    return COVERAGE * sqrt((lpa_l / volume_l * volume) ** 2 + (volume_l * glass / 100.0) ** 2)


def weighed_off_by(net_kg: float, tare_kg: float) -> float:
    """Return twice the standard uncertainty of a net weight, gross and tare by scales of the prescribed class. [kg]"""
    square = 0.0
    for load in (net_kg + tare_kg, tare_kg):
        interval = scale_interval_kg(load)
        limit = scale_limit_kg(load, interval, "")
        square += standard_from_limit(limit) ** 2 + standard_from_interval(interval) ** 2
    return COVERAGE * sqrt(square)


def dipped_kg_off_by(mass_kg: float, volume_l: float, capacity_l: float | None) -> float:
    """Return twice the standard uncertainty of a mass that was dipped, by the prescribed class. [kg]

    The glass is left out: 0.1 % vol is 0.02 % of a density, a tenth of what the tank's table leaves open.
    """
    if volume_l <= 0:
        return 0.0
    table, surface = dip_limits_l(volume_l, capacity_l)
    return COVERAGE * sqrt(standard_from_limit(table) ** 2 + standard_from_limit(surface) ** 2) * mass_kg / volume_l
