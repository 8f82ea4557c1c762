"""What the book knows of a vessel that the reading of an entry needs: the same on the card of a phone."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.book.before.limits import Ranges, held_ranges, range_scopes
from webapp.kinds.spec import Kind
from webapp.kinds.state import EMPTY_VESSEL

# Share of a mash that is juice and ferments [%]; common practice, no source: 75 to 90 for whole fruit.
JUICE_SHARE_PCT = 85.0
_WHOLLY_LIQUID = ("rye",)


def context_for(
    kind: Kind, vessel_row: Mapping[str, Any] | None, vessel_state: Mapping[str, Any] | None, limits: Ranges
) -> dict[str, Any]:
    """Return the context of `read_entry`: og, tare_kg, juice_share, what the vessel holds (volume_l, strength_pct,
    mass_kg, lpa_l), last figures of that kind, and limits.

    Last figures are those of the fill that the vessel holds now; of an empty vessel and of a still all that are known.
    `limits` are the ranges that somebody has set; the narrowest scope wins.
    """
    state = vessel_state or EMPTY_VESSEL
    holds = state["holds"] or {}
    material = holds.get("material") or ""
    return {
        "og": holds.get("og"),
        "tare_kg": holds.get("tare_kg") or (vessel_row or {}).get("tare_kg"),  # as weighed at its fill, else as listed
        **{name: holds.get(name) for name in ("volume_l", "strength_pct", "mass_kg", "lpa_l")},
        "juice_share": 100.0 if material in _WHOLLY_LIQUID else JUICE_SHARE_PCT,
        "last": {name: value for name, (value, _) in last_values(kind, state).items()},
        "limits": {
            field: {which: span for which, (span, _, _) in own.items()}
            for field, own in held_ranges(kind.name, range_scopes(vessel_row, material), limits).items()
        },
    }


def last_values(kind: Kind, state: Mapping[str, Any]) -> dict[str, tuple[Any, Mapping[str, Any]]]:
    """Return per field the last canonical value of this kind, with the line it stands in."""
    since = (state["holds"] or {}).get("since") or ""
    found: dict[str, tuple[Any, Mapping[str, Any]]] = {}
    for line in reversed(state["recent"].get(kind.name, ())):
        if line["at"] < since:
            break
        for name, value in line["values"].items():
            found.setdefault(name, (value, line))
    return found
