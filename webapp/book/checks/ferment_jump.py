"""A ferment against what was said of it before: its sugar, its last temperature, its last gravity, its fruit."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, is_grain, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.ferment import temp_sense
from webapp.book.checks.words import figure, like_typed, rounded, typed
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, Line, figure_in
from webapp.kinds.view import View
from webapp.trade.errors import OutOfDomain
from webapp.trade.scales import gravity_from_brix

LIMITS = declare(
    Limit("jump_mash_c", 6.0, "°C", "Mash off its last temperature by"),
    Limit("jump_mash_h", 36, "h", "where that was read within"),
    Limit("sugar_over", 0.006, "SG", "First gravity above the sugar of its fruit by"),
    Limit("sugar_under", 0.014, "SG", "First gravity below the sugar of its fruit by"),
    Limit("sugar_h", 48, "h", "First gravity read within, after the last load"),
    Limit("close_gravity", 0.004, "SG", "Final gravity off the last reading by"),
    Limit("close_volume_pct", 20, "%", "Wash off the fruit that went in, by"),
)

FRESH_H = 72.0  # a last reading older than this says little of the close


def ferment_jump(read: Read, view: View) -> Iterable[Query]:
    """A temperature far from the last one, and a first gravity that the sugar of the fruit does not give."""
    lines = _since_fill(read, view, "ferment_reading")
    temp = read.number("temp")
    last = figure_in(lines[-1]["values"], "temp") if lines else None
    if temp is not None and last is not None:
        most = limit("jump_mash_c", view)
        hours = seconds_between(lines[-1]["at"], view.at) / 3600
        if hours <= limit("jump_mash_h", view) and abs(temp - last) > most + 1e-9 and not any(temp_sense(read, view)):
            said = message("ferment_jump", temp=typed(read, "temp"), last=like_typed(read, "temp", last))
            yield Query("ferment_jump", "ask", "temp", said, (Expected("temp", last - most, last + most, last),))
    gravity, loads = read.number("gravity"), _since_fill(read, view, "fruit_intake")
    sugar = _sugar(loads)
    is_odd = any(problem.field == "gravity" for problem in read.problems)  # asked about by its range already
    if lines or gravity is None or sugar is None or is_odd or hours_since(loads, view) > limit("sugar_h", view):
        return
    low, high = sugar - limit("sugar_under", view), sugar + limit("sugar_over", view)
    if not low - 1e-9 <= gravity <= high + 1e-9:
        usual = like_typed(read, "gravity", round(sugar, 3))
        said = message("sugar_gravity", gravity=typed(read, "gravity"), usual=usual)
        yield Query("sugar_gravity", "ask", "gravity", said, (Expected("gravity", low, high, sugar),))


def ferment_close(read: Read, view: View) -> Iterable[Query]:
    """A final gravity that is not that of the last reading, and a wash that is not what the fruit makes."""
    lines, loads = _since_fill(read, view, "ferment_reading"), _since_fill(read, view, "fruit_intake")
    gravity, volume = read.number("final_gravity"), read.number("volume")
    last = figure_in(lines[-1]["values"], "gravity") if lines else None
    most = limit("close_gravity", view)
    is_fresh = hours_since(lines, view) <= FRESH_H
    if gravity is not None and last is not None and is_fresh and abs(gravity - last) > most + 1e-9:
        said = message("close_gravity", gravity=typed(read, "final_gravity"),
                       last=like_typed(read, "final_gravity", last))
        yield Query("close_gravity", "ask", "final_gravity", said,
                    (Expected("final_gravity", last - most, last + most, last),))
    held = view.state(read.mark)["holds"] or NO_FILL
    fruit = sum(line["figures"].get("net", 0.0) for line in loads)
    litres = fruit / limit("mash_kg_l", view)
    if volume is None or litres <= 0 or held.get("charged") or held.get("closed") or is_grain(held["material"]):
        return  # a mash of grain is mostly water
    share = limit("close_volume_pct", view) / 100
    if abs(volume - litres) > litres * share:
        said = message("close_volume", volume=typed(read, "volume"), usual=rounded(litres, 0, "L"),
                       fruit=figure(round(fruit), 0, "kg"))
        yield Query("close_volume", "ask", "volume", said,
                    (Expected("volume", litres * (1 - share), litres * (1 + share), litres),))


def hours_since(lines: list[Line], view: View) -> float:
    """Return the hours since the last of some lines. [h]; more than any limit where there is none"""
    return seconds_between(lines[-1]["at"], view.at) / 3600 if lines else 1e9


def _since_fill(read: Read, view: View, kind: str) -> list[Line]:
    held = view.state(read.mark)["holds"]
    return [line for line in view.recent(read.mark, kind) if held and line["at"] >= held["since"]]


def _sugar(loads: list[Line]) -> float | None:
    """Return the gravity that the sugar of the loads gives together; None where it was not read of all. [SG]"""
    whole = [(line["figures"].get("net"), figure_in(line["values"], "sugar")) for line in loads]
    if not whole or any(not net or not brix for net, brix in whole):
        return None
    kg = sum(net or 0.0 for net, _ in whole)
    try:
        return float(gravity_from_brix(sum((net or 0.0) * (brix or 0.0) for net, brix in whole) / kg))
    except OutOfDomain:
        return None
