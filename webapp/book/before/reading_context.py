"""What the book knows of a vessel that the reading of an entry needs: the same on the card of a phone."""

from __future__ import annotations

from collections.abc import Mapping

from webapp.book.before.limits import HeldRange, held_ranges, range_scopes
from webapp.kinds.entry import Context, Limits, Ranges
from webapp.kinds.rows import VesselRow
from webapp.kinds.spec import Kind
from webapp.kinds.state import EMPTY_VESSEL, NO_FILL, Line, Value, Vessel

# Share of a mash that is juice and ferments [%]; common practice, no source: 75 to 90 for whole fruit.
JUICE_SHARE_PCT = 85.0
_WHOLLY_LIQUID = ("rye",)


def context_for(
    kind: Kind, vessel_row: VesselRow | None, vessel_state: Vessel | None, limits: Limits
) -> Context:
    """Return the context of `read_entry`: og, tare_kg, juice_share, what the vessel holds (volume_l, strength_pct,
    mass_kg, lpa_l), last figures of that kind, and limits.

    Last figures are those of the fill that the vessel holds now; of an empty vessel and of a still all that are known.
    `limits` are the ranges that somebody has set; the narrowest scope wins.
    """
    state = vessel_state or EMPTY_VESSEL
    holds = state["holds"] or NO_FILL
    material = holds["material"] or ""
    dips = vessel_row.get("dips") or "" if vessel_row else ""
    is_cask = "bung_cm" in dips
    listed_kg = vessel_row.get("tare_kg") if vessel_row else None
    return {
        "og": holds["og"],
        "tare_kg": holds.get("tare_kg") or listed_kg,  # as weighed at its fill, else as listed
        "volume_l": holds["volume_l"], "strength_pct": holds["strength_pct"], "mass_kg": holds["mass_kg"],
        "lpa_l": holds["lpa_l"],
        "juice_share": 100.0 if material in _WHOLLY_LIQUID else JUICE_SHARE_PCT,
        "dips": None if is_cask else dips, "cask_dips": dips if is_cask else None,
        "last": {name: value for name, (value, _) in last_values(kind, state).items()},
        "limits": {
            field: _as_ranges(own)
            for field, own in held_ranges(kind.name, range_scopes(vessel_row, material), limits).items()
        },
    }


def last_values(kind: Kind, state: Vessel) -> dict[str, tuple[Value, Line]]:
    """Return per field the last canonical value of this kind, with the line it stands in."""
    since = (state["holds"] or NO_FILL)["since"]
    found: dict[str, tuple[Value, Line]] = {}
    for line in reversed(state["recent"].get(kind.name, ())):
        if line["at"] < since:
            break
        for name, value in line["values"].items():
            found.setdefault(name, (value, line))
    return found


def _as_ranges(own: Mapping[str, HeldRange]) -> Ranges:
    """Return the ranges of a field without where they come from."""
    ranges: Ranges = {}
    if "usual" in own:
        ranges["usual"] = own["usual"][0]
    if "possible" in own:
        ranges["possible"] = own["possible"][0]
    return ranges
