"""What an instrument shows, put right by its correction: pure, the same on the phone (static/kinds/corrections.js).

A correction is added to what the instrument shows, in its own unit. `table` is that of its certificate, points (shown,
add) between which is gone straight, with the end values beyond; `offset` is what a later check found at one point and
moves the whole of it: a zero that has drifted has drifted all along the scale (common practice for ice points of glass
thermometers, no source).
"""

from __future__ import annotations

from itertools import pairwise

from webapp.kinds.entry import Correction, Table
from webapp.trade import units


def of_table(table: Table, shown: float) -> float:
    """Return the correction of a certificate's table where the instrument shows this. [its own unit]; 0 without one."""
    if not table:
        return 0.0
    if shown <= table[0][0]:
        return table[0][1]
    for (low, at_low), (high, at_high) in pairwise(table):
        if shown <= high:
            return at_low + (at_high - at_low) * ((shown - low) / (high - low))
    return table[-1][1]


def offset_of(table: Table, found: float | None, add: float | None) -> float:
    """Return by how much a check moves the table: what it says to add, less what the table adds at that point."""
    if add is None:
        return 0.0
    return add - (of_table(table, found) if found is not None else 0.0)


def put_right(typed: float, unit: str, first_unit: str, correction: Correction) -> float:
    """Return a typed figure with its correction, in the unit typed; OutOfDomain as in units.

    Where the instrument's own unit is none that the field is read in, the field's first unit is taken for it.
    """
    own = correction.get("unit") or first_unit
    if not _alike(own, unit):
        own = first_unit if _alike(first_unit, unit) else unit
    is_same = own == unit
    shown = typed if is_same else float(units.from_canonical(units.to_canonical(typed, unit), own))
    right = shown + (of_table(correction["table"], shown) + correction["offset"])
    return right if is_same else float(units.from_canonical(units.to_canonical(right, own), unit))


def _alike(one: str, other: str) -> bool:
    try:
        return units.canonical_unit(one) == units.canonical_unit(other)
    except KeyError:
        return False
