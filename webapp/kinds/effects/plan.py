"""What the distiller wants of a fruit: cut plans and the best run, kept under `c:<fruit>`. No stock moves."""

from __future__ import annotations

import re
from typing import TypedDict

from webapp.kinds.key import Key, run_key, vessel_key, wish_key
from webapp.kinds.read import Read
from webapp.kinds.remember import vessel, with_entry
from webapp.kinds.run_state import BestRun, CutPlan, Wish
from webapp.kinds.spec import NOTHING, Effect
from webapp.kinds.state import State, Vessel
from webapp.kinds.view import View

ANY_STILL = "*"
_FRACTIONS = re.compile(r"^((low wines|heads|hearts|tails) )+")


def fruit_of(what: str | None) -> str:
    """Return the name under which a fruit is found again: lower case, one space, low wines of it are of it too."""
    return _FRACTIONS.sub("", " ".join((what or "").lower().split()))


def cut_plan(read: Read, view: View) -> Effect:
    """A plan for a fruit, on one still or on any. The last one holds."""
    what = read.text("what") or ""
    fruit = fruit_of(what)
    if not fruit:
        return NOTHING
    wish = _wish(fruit, view)
    said = _line(read, view)
    line: CutPlan = {
        "entry": said["entry"], "at": said["at"], "person": said["person"], "why": said["why"],
        "heads_l": read.number("heads"), "hearts_to_pct": read.number("hearts_to"),
        "tails_to_pct": read.number("tails_to"), "still": read.mark,
    }
    if tasting := read.text("tasting"):
        line["tasting"] = tasting
    plans = {**wish["plans"], read.mark or ANY_STILL: line}
    wish = {**wish, "what": what.strip(), "plans": plans}
    states: dict[Key, State] = {wish_key(fruit): wish}
    if read.mark:
        states[vessel_key(read.mark)] = with_entry(vessel(view, read.mark), read, view)
    return Effect(states)


def best_run(read: Read, view: View) -> Effect:
    """A run is named the best of its fruit on its still; found by its id, or by its name among the still's last."""
    still = vessel(view, read.mark)
    states: dict[Key, State] = {vessel_key(read.mark): with_entry(still, read, view)}
    run_id = _find(str(read.text("run") or "").strip(), still, view)
    run = view.get(run_key(run_id)) if run_id else None
    fruit = fruit_of(run["what"]) if run else ""
    if run_id is None or run is None or not fruit:
        return Effect(states)
    wish = _wish(fruit, view)
    line: BestRun = {**_line(read, view), "run": run_id, "name": run["name"]}
    wish = {**wish, "what": wish["what"] or run["what"], "best": {**wish["best"], run["still"]: line}}
    states[wish_key(fruit)] = wish
    return Effect(states)


def _find(named: str, still: Vessel, view: View) -> str | None:
    if view.get(run_key(named)):
        return named
    for run_id in reversed(still["runs"]):
        run = view.get(run_key(run_id))
        if run and run["name"].lower() == named.lower():
            return run_id
    return None


def _wish(fruit: str, view: View) -> Wish:
    return view.get(wish_key(fruit)) or {"what": "", "plans": {}, "best": {}}


class _Said(TypedDict):
    entry: str
    at: str
    person: str
    why: str


def _line(read: Read, view: View) -> _Said:
    return {
        "entry": read.entry["id"], "at": view.at, "person": read.entry["person"], "why": read.text("why") or "",
    }
