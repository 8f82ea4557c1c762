"""The state of a vessel before an entry, and the same with the entry among its recent ones."""

from __future__ import annotations

from webapp.kinds.key import vessel_key
from webapp.kinds.read import Read
from webapp.kinds.state import EMPTY_VESSEL, RECENT, Line, Vessel
from webapp.kinds.view import View


def vessel(view: View, mark: str) -> Vessel:
    """Return the vessel's state before this entry, or an empty one."""
    return view.get(vessel_key(mark)) or EMPTY_VESSEL


def with_entry(state: Vessel, read: Read, view: View) -> Vessel:
    """Return the vessel's state with this entry among its recent ones."""
    entry, kind = read.entry, read.kind.name
    line: Line = {
        "entry": entry["id"], "at": view.at, "person": entry["person"], "device": entry["device"],
        "seq": entry["seq"], "values": dict(read.values), "figures": dict(read.figures),
    }
    lines = [*state["recent"].get(kind, []), line][-RECENT:]
    return {**state, "recent": {**state["recent"], kind: lines}}
