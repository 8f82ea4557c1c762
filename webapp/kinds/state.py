"""The shape of what the fold keeps, and how an entry is remembered in it. Times are the fold's own, UTC.

State of a vessel, key `v:<mark>`:
    holds: None, or the fill that stands in it (below)
    recent: {kind: [{entry, at, person, device, seq, values, figures}, ...]} the last RECENT of each kind, oldest first
    run: id of the run now on this still, or None; runs: the last RUNS run ids, oldest first
    place: where it was last put by an entry, or None: then the registry's place holds
    emptied: while it is empty, the entry that emptied it: {entry, kind, at, device, person}; else None
A fill: {fill, what, material, name, since, og, sources, account, mash, lpa_ul, volume_ml, mass_g, volume_l,
    strength_pct, lpa_l, mass_kg} and facts of its own (closed, charged, lot, use, fill_strength_pct, tare_kg, ...).
    lpa_ul and mass_g are the sums of its flows, kept by stock.py alone; what is named in litres and kilograms follows.
What is known of a fill for good, key `f:<fill>`: mark, its facts (stock.FACTS), ended_at
State of a run, key `r:<run>` (a run's id is the root of its charge entry, so amending the charge keeps the run):
    still, name, from, what, batch, charge {...}, started_at, receivers {heads, hearts, tails}, receiver, readings,
    cuts, fractions, ended_at, and lpa_ul, volume_ml, mass_g: what of the charge is not accounted for yet
State of an instrument, key `i:<id>`: checks (the last CHECKS), last_good_at, failed_at
State of the round that a person is on, key `h:<code>`: figure -> [value, how many vessels running, at, mark]
State of a bottling, a batch or lot mark, a removal, keys `b:`, `l:`, `o:`: effects/goods.py
State of a place, key `p:<place>`: the vessel last found there at a stock count
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from webapp.kinds.read import Read

RECENT = 20
RUNS = 12
READINGS = 400
CHECKS = 20

EMPTY_VESSEL: dict[str, Any] = {"holds": None, "recent": {}, "run": None, "runs": [], "place": None, "emptied": None}


def vessel(view: Any, mark: str) -> dict[str, Any]:
    """Return the vessel's state before this entry, or an empty one."""
    return view.get(f"v:{mark}") or EMPTY_VESSEL


def remember(state: Mapping[str, Any], read: Read, view: Any) -> dict[str, Any]:
    """Return the vessel's state with this entry among its recent ones."""
    entry, kind = read.entry, read.kind.name
    line = {
        "entry": entry["id"], "at": view.at, "person": entry["person"], "device": entry["device"],
        "seq": entry["seq"], "values": dict(read.values), "figures": dict(read.figures),
    }  # fmt: skip
    lines = [*state["recent"].get(kind, []), line][-RECENT:]
    return {**state, "recent": {**state["recent"], kind: lines}}
