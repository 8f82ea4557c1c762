"""What the distiller wants of a fruit: cut plans and the best run, kept under `c:<fruit>`. No stock moves."""

from __future__ import annotations

import re
from typing import Any

from webapp.kinds.read import Read
from webapp.kinds.spec import NOTHING, Effect
from webapp.kinds.state import remember, vessel

ANY_STILL = "*"
_FRACTIONS = re.compile(r"^((low wines|heads|hearts|tails) )+")


def fruit_of(what: str | None) -> str:
    """Return the name under which a fruit is found again: lower case, one space, low wines of it are of it too."""
    return _FRACTIONS.sub("", " ".join((what or "").lower().split()))


def cut_plan(read: Read, view: Any) -> Effect:
    """A plan for a fruit, on one still or on any. The last one holds."""
    fruit = fruit_of(read.values.get("what"))
    if not fruit:
        return NOTHING
    wish = _wish(fruit, view)
    line = _line(read, view) | {
        "heads_l": read.values.get("heads"), "hearts_to_pct": read.values.get("hearts_to"),
        "tails_to_pct": read.values.get("tails_to"), "still": read.mark,
    }  # fmt: skip
    plans = {**wish["plans"], read.mark or ANY_STILL: line}
    states = {f"c:{fruit}": {**wish, "what": read.values["what"].strip(), "plans": plans}}
    if read.mark:
        states[f"v:{read.mark}"] = remember(vessel(view, read.mark), read, view)
    return Effect(states)


def best_run(read: Read, view: Any) -> Effect:
    """A run is named the best of its fruit on its still; found by its id, or by its name among the still's last."""
    still = vessel(view, read.mark)
    states = {f"v:{read.mark}": remember(still, read, view)}
    run_id = _find(str(read.values.get("run") or "").strip(), still, view)
    run = view.get(f"r:{run_id}") if run_id else None
    fruit = fruit_of(run["what"]) if run else ""
    if run is None or not fruit:
        return Effect(states)
    wish = _wish(fruit, view)
    line = _line(read, view) | {"run": run_id, "name": run["name"]}
    states[f"c:{fruit}"] = {**wish, "what": wish["what"] or run["what"], "best": {**wish["best"], run["still"]: line}}
    return Effect(states)


def _find(named: str, still: dict[str, Any], view: Any) -> str | None:
    if view.get(f"r:{named}"):
        return named
    for run_id in reversed(still["runs"]):
        run = view.get(f"r:{run_id}")
        if run and run["name"].lower() == named.lower():
            return str(run_id)
    return None


def _wish(fruit: str, view: Any) -> dict[str, Any]:
    found: dict[str, Any] | None = view.get(f"c:{fruit}")
    return found or {"what": "", "plans": {}, "best": {}}


def _line(read: Read, view: Any) -> dict[str, Any]:
    return {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"], "why": read.values.get("why") or "",
    }  # fmt: skip
