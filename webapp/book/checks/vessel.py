"""Checks of a vessel: more than it holds, nothing in it, and a wash stronger than a ferment gives."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.moves import emptied_by
from webapp.book.checks.words import figure, typed
from webapp.kinds.expected import Expected
from webapp.kinds.message import Figure, Message, message
from webapp.kinds.read import Read
from webapp.kinds.rows import VesselRow
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View

LIMITS = declare(
    Limit("wash_ask_pct", 10, "% vol", "A wash is asked about above"),
    Limit("wash_stop_pct", 18, "% vol", "No ferment gives more than"),
    Limit("mash_kg_l", 1.05, "kg", "A litre of mash weighs"),
    Limit("cask_brim", 1.02, "", "A cask holds at most this times its rated size"),
)


def over_capacity(read: Read, view: View) -> Iterable[Query]:
    """Above the brim cannot be; above the working level is asked about."""
    vessel = view.vessel(read.mark)
    if not vessel:
        return
    litres, contents, at = _contents(read, view, vessel)
    if litres is None:
        return
    brim, working = vessel.get("capacity_l"), vessel.get("working_l")
    if brim and vessel.get("sort") == "cask":
        brim = brim * limit("cask_brim", view)
    if litres <= min(brim or litres, working or litres) + 0.05:
        return
    expects = (_expected(read, view, 0.05 * brim, working or brim),) if brim else ()
    if brim and litres > brim + 0.05:
        said = message("over_capacity", contents=contents, vessel=vessel["name"], holds=figure(brim, 0, "L"))
        yield Query("over_capacity", "stop", at, said, expects)
    elif working and litres > working + 0.05:
        level = figure(working, 0, "L")
        said = message("over_working_level", contents=contents, vessel=vessel["name"], level=level)
        yield Query("over_working_level", "ask", at, said, expects)


def _expected(read: Read, view: View, low_l: float, high_l: float) -> Expected:
    """Return the figure of this entry that would leave from low to high in the vessel. [L]"""
    if read.kind.name == "fruit_intake":
        mash, before = limit("mash_kg_l", view), _fruit_before(read, view)
        return Expected("net", low_l * mash - before, high_l * mash - before)
    if read.kind.name == "charge":
        feints = read.number("feints") or 0.0
        return Expected("wash", low_l - feints, high_l - feints)
    return Expected("volume" if "volume" in read.values else "volume_20", low_l, high_l)


def _fruit_before(read: Read, view: View) -> float:
    """Return the fruit that lies in a fermenter already. [kg]"""
    held = view.state(read.mark)["holds"] or NO_FILL
    return 0.0 if held.get("charged") or held["lpa_l"] else held["mass_kg"] or 0.0


def _contents(read: Read, view: View, vessel: VesselRow) -> tuple[float | None, Message | Figure | str, str]:
    """Return the resulting contents of the vessel [L], the phrase about them, and the field they came from."""
    kind = read.kind.name
    if kind == "fruit_intake":
        before = _fruit_before(read, view)
        mass = before + (read.figures.get("net") or 0.0)
        litres = mass / limit("mash_kg_l", view)
        there = figure(before, 0, "kg") if before else "none"
        fruit = message("contents-fruit", fruit=figure(mass, 0, "kg"), before=there, mash=figure(litres, 0, "L"))
        return litres, fruit, "gross"
    if kind == "charge":
        wash, feints = read.number("wash"), read.number("feints") or 0.0
        if wash is None:
            return None, "", ""
        parts = figure(feints, 1, "L") if feints else "none"
        whole = figure(wash + feints, 1, "L")
        return wash + feints, message("contents-charge", charge=whole, wash=figure(wash, 1, "L"), feints=parts), "wash"
    volume = read.number("volume") or read.figures.get("volume_20")
    at = "volume" if "volume" in read.values else "net_weight"
    if kind == "opening" and at not in read.values:
        at = "gross"
    return volume, figure(volume, 1, "L") if volume is not None else "", at


def vessel_empty(read: Read, view: View) -> Iterable[Query]:
    """A reading on a vessel that the book has nothing in at that time."""
    if view.state(read.mark)["holds"] is None and emptied_by(read, view) is None:
        vessel = view.vessel(read.mark)
        name = vessel["name"] if vessel else read.mark
        yield Query("vessel_empty", "ask", "", message("vessel_empty", vessel=name))


def wash_strength(read: Read, view: View) -> Iterable[Query]:
    """A ferment gives hardly more than 10 % vol; low wines from a receiver may be stronger."""
    strength, mark = read.number("wash_strength"), read.text("from_vessel") or ""
    source = view.vessel(mark)
    if strength is None or not source or source.get("sort") != "fermenter":
        return
    expects = (Expected("wash_strength", 3, limit("wash_ask_pct", view)),)
    if strength > limit("wash_stop_pct", view):
        said = message("wash_strength-impossible", strength=typed(read, "wash_strength"), vessel=source["name"])
        yield Query("wash_strength", "stop", "wash_strength", said, expects)
    elif strength > limit("wash_ask_pct", view):
        most = figure(limit("wash_ask_pct", view), 0, "pct_vol")
        said = message("wash_strength", strength=typed(read, "wash_strength"), vessel=source["name"], most=most)
        yield Query("wash_strength", "ask", "wash_strength", said, expects)


def source_empty(read: Read, view: View) -> Iterable[Query]:
    """A charge out of a vessel that the book has nothing in."""
    mark = read.text("from_vessel") or ""
    vessel = view.vessel(mark)
    if mark and vessel and view.state(mark)["holds"] is None:
        yield Query("source_empty", "ask", "from_vessel", message("source_empty", vessel=vessel["name"]))


def vessel_not_empty(read: Read, view: View) -> Iterable[Query]:
    """A fill of a cask that by the book is not empty."""
    held, vessel = view.state(read.mark)["holds"], view.vessel(read.mark)
    if held and vessel:
        much = figure(held["lpa_l"], 1, "LPA") if held["lpa_l"] else "none"
        said = message("vessel_not_empty", vessel=vessel["name"], held=much, what=str(held["what"]))
        yield Query("vessel_not_empty", "ask", "", said)
