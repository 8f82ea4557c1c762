"""Checks of a vessel: more than it holds, nothing in it, and a wash stronger than a ferment gives."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from webapp.book.before.limits import limit
from webapp.book.before.view import Query, View
from webapp.book.checks.moves import emptied_by
from webapp.book.checks.words import plain, slips, typed
from webapp.kinds.read import Read


def over_capacity(read: Read, view: View) -> Iterable[Query]:
    """Above the brim cannot be; above the working level is asked about."""
    vessel = view.vessel(read.mark)
    if not vessel:
        return
    litres, words, at = _contents(read, view, vessel)
    if litres is None:
        return
    brim, working = vessel.get("capacity_l"), vessel.get("working_l")
    if brim and vessel.get("sort") == "cask":
        brim = brim * limit("cask_brim", view)
    if litres <= min(brim or litres, working or litres) + 0.05:
        return
    found = slips(read, at, 0.05 * brim, working or brim) if brim else ()
    if brim and litres > brim + 0.05:
        said = f"{words} does not fit into {vessel['name']}, which holds {plain(brim, 0)} L. Look again."
        yield Query("over_capacity", "stop", at, said, found)
    elif working and litres > working + 0.05:
        said = f"{words} is above the working level of {vessel['name']}, {plain(working, 0)} L. Look again."
        yield Query("over_working_level", "ask", at, said, found)


def _contents(read: Read, view: View, vessel: Mapping[str, Any]) -> tuple[float | None, str, str]:
    kind = read.kind.name
    if kind == "fruit_intake":
        held = view.state(read.mark)["holds"] or {}
        before = 0.0 if held.get("charged") or held.get("lpa_l") else held.get("mass_kg") or 0.0
        mass = before + (read.figures.get("net") or 0.0)
        litres = mass / limit("mash_kg_l", view)
        more = f"with {plain(before, 0)} kg already in it, " if before else ""
        return litres, f"{plain(mass, 0)} kg of fruit ({more}about {plain(litres, 0)} L of mash)", "gross"
    if kind == "charge":
        wash, feints = read.values.get("wash"), read.values.get("feints") or 0.0
        if wash is None:
            return None, "", ""
        parts = f" ({plain(wash, 1)} wash and {plain(feints, 1)} feints)" if feints else ""
        return wash + feints, f"A charge of {plain(wash + feints, 1)} L{parts}", "wash"
    volume = read.values.get("volume") or read.figures.get("volume_20")
    at = "volume" if "volume" in read.values else "net_weight"
    return volume, f"{plain(volume, 1)} L" if volume is not None else "", at


def vessel_empty(read: Read, view: View) -> Iterable[Query]:
    """A reading on a vessel that the book has nothing in at that time."""
    if view.state(read.mark)["holds"] is None and emptied_by(read, view) is None:
        vessel = view.vessel(read.mark)
        name = vessel["name"] if vessel else read.mark
        words = f"The book has nothing in {name} at this time. Is it the right vessel and time? If so, log its fill."
        yield Query("vessel_empty", "ask", "", words)


def wash_strength(read: Read, view: View) -> Iterable[Query]:
    """A ferment gives hardly more than 10 % vol; low wines from a receiver may be stronger."""
    strength, mark = read.values.get("wash_strength"), read.values.get("from_vessel") or ""
    source = view.vessel(mark)
    if strength is None or not source or source.get("sort") != "fermenter":
        return
    found = slips(read, "wash_strength", 3, limit("wash_ask_pct", view))
    if strength > limit("wash_stop_pct", view):
        words = f"{typed(read, 'wash_strength')} out of {source['name']} cannot be: no ferment gives that. Look again."
        yield Query("wash_strength", "stop", "wash_strength", words, found)
    elif strength > limit("wash_ask_pct", view):
        words = (
            f"{typed(read, 'wash_strength')} out of {source['name']} is much for a ferment: 3 to "
            f"{plain(limit('wash_ask_pct', view), 0)} % is usual. Look again."
        )
        yield Query("wash_strength", "ask", "wash_strength", words, found)


def source_empty(read: Read, view: View) -> Iterable[Query]:
    """A charge out of a vessel that the book has nothing in."""
    mark = read.values.get("from_vessel") or ""
    vessel = view.vessel(mark)
    if mark and vessel and view.state(mark)["holds"] is None:
        name = vessel["name"]
        words = f"The book has nothing in {name} to charge from. Is it the right vessel? If so, log its fill."
        yield Query("source_empty", "ask", "from_vessel", words)


def vessel_not_empty(read: Read, view: View) -> Iterable[Query]:
    """A fill of a cask that by the book is not empty."""
    held, vessel = view.state(read.mark)["holds"], view.vessel(read.mark)
    if held and vessel:
        much = f"{plain(held['lpa_l'], 1)} L of pure alcohol, " if held.get("lpa_l") else ""
        words = f"{vessel['name']} is not empty by the book: {much}{held['what']}. Right cask? Was it dumped?"
        yield Query("vessel_not_empty", "ask", "", words)
