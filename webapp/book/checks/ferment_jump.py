"""A ferment against what was said of it before: its sugar, its last temperature, its last gravity, its fruit."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from webapp.book.before.limits import Limit, declare, is_grain, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.alike import alike
from webapp.book.checks.ferment import SHORTEST_DAYS, gravities, temp_sense
from webapp.book.checks.words import DAY_S, figure, like_typed, rounded, typed
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, RECENT, Line, figure_in
from webapp.kinds.view import View
from webapp.trade.errors import OutOfDomain
from webapp.trade.scales import gravity_from_brix

LIMITS = declare(
    Limit("jump_mash_c", 6.0, "°C", "Mash off its last temperature by"),
    Limit("jump_mash_h", 36, "h", "where that was read within"),
    Limit("mash_spread_c", 0.8, "°C", "Least spread that is taken of the last temperatures of a mash"),
    Limit("halt_fall", 0.006, "SG", "A gravity that fell so much a day goes on falling"),
    Limit("halt_share_pct", 20, "%", "the next day by this part of it at least"),
    Limit("again_fall", 0.004, "SG", "A ferment that has slowed falls faster again by at most, a day"),
    Limit("sugar_over", 0.006, "SG", "First gravity above the sugar of its fruit by"),
    Limit("sugar_under", 0.014, "SG", "First gravity below the sugar of its fruit by"),
    Limit("sugar_h", 48, "h", "First gravity read within, after the last load"),
    Limit("close_gravity", 0.004, "SG", "Final gravity off the last reading by"),
    Limit("close_volume_pct", 20, "%", "Wash off the fruit that went in, by"),
)

ROW = 6  # temperatures of which a row is made, at most
ROW_DAYS = 2.0  # a gravity later than this says nothing of a day
FRESH_H = 72.0  # a last reading older than this says little of the close


def ferment_jump(read: Read, view: View) -> Iterable[Query]:
    """A temperature far from the last one, and a first gravity that the sugar of the fruit does not give."""
    lines = _since_fill(read, view, "ferment_reading", ROW)
    temp = read.number("temp")
    last = figure_in(lines[-1]["values"], "temp") if lines else None
    if temp is not None and last is not None:
        yield from _temp_off(read, view, lines, temp, last)
    yield from _gravity_row(read, view)
    gravity = read.number("gravity")
    if lines or gravity is None:
        return
    loads = _since_fill(read, view, "fruit_intake")
    sugar = _sugar(loads)
    is_odd = any(problem.field == "gravity" for problem in read.problems)  # asked about by its range already
    if sugar is None or is_odd or hours_since(loads, view) > limit("sugar_h", view):
        return
    low, high = sugar - limit("sugar_under", view), sugar + limit("sugar_over", view)
    if not low - 1e-9 <= gravity <= high + 1e-9:
        usual = like_typed(read, "gravity", round(sugar, 3))
        said = message("sugar_gravity", gravity=typed(read, "gravity"), usual=usual)
        yield Query("sugar_gravity", "ask", "gravity", said, (Expected("gravity", low, high, sugar),))


def _temp_off(read: Read, view: View, lines: Sequence[Line], temp: float, last: float) -> Iterable[Query]:
    """A temperature far off the last one; or off it and the row of those before, by a spread that is this mash's own.
    """
    least, most = limit("mash_spread_c", view), limit("jump_mash_c", view)
    if abs(temp - last) <= min(limit("alike_spread", view) * least, most) + 1e-9:
        return
    if seconds_between(lines[-1]["at"], view.at) / 3600 > limit("jump_mash_h", view):
        return
    if abs(temp - last) > most + 1e-9:
        if not any(temp_sense(read, view)):
            said = message("ferment_jump", temp=typed(read, "temp"), last=like_typed(read, "temp", last))
            yield Query("ferment_jump", "ask", "temp", said, (Expected("temp", last - most, last + most, last),))
        return
    temps = [one for line in lines[-ROW:] if (one := figure_in(line["values"], "temp")) is not None]
    found = alike(temps, least, view)
    wide = found.high - found.middle if found else 0.0
    if found is None or min(abs(temp - found.middle), abs(temp - last)) <= wide:
        return
    said = message("ferment_jump-row", temp=typed(read, "temp"), readings=found.many,
                   usual=like_typed(read, "temp", round(found.middle, 1)))
    yield Query("ferment_jump", "ask", "temp", said, (Expected("temp", found.low, found.high, last),))


def _gravity_row(read: Read, view: View) -> Iterable[Query]:
    """A gravity that stands still from one day to the next, or that has slowed and plunges: misread, or copied."""
    now = read.number("gravity")
    lines = gravities(read, view, 3) if now is not None else []
    if now is None or len(lines) < 2:
        return
    share, least = limit("halt_share_pct", view) / 100, limit("halt_fall", view)
    hardly = lines[-2].gravity - lines[-1].gravity < least * SHORTEST_DAYS
    if hardly and lines[-1].gravity - now < limit("again_fall", view) * SHORTEST_DAYS:
        return  # neither of the two can be
    if lines[-1].gravity > lines[-2].gravity + limit("gravity_rise", view):
        return  # the line before was asked about: it is no row to go on from
    row = [*((line.at, line.gravity) for line in lines), (view.at, now)]
    days = [seconds_between(one[0], two[0]) / DAY_S for one, two in pairwise(row)]
    if min(days) < SHORTEST_DAYS or days[-1] > ROW_DAYS:
        return
    falls = [(one[1] - two[1]) / day for (one, two), day in zip(pairwise(row), days, strict=True)]
    before, fell, last = falls[-2], falls[-1], row[-2][1]
    if fell * days[-1] < -limit("gravity_rise", view) - 1e-9:
        return  # it rose, which is asked about as such
    if before >= least and fell < share * before:
        said = message("ferment_row", gravity=typed(read, "gravity"), before=figure(before, 3, "SG"))
    elif (len(falls) == 3 and before <= falls[0] and fell > 1.5 * before + limit("again_fall", view) + 1e-9
          and fell <= limit("fast_per_day", view)):
        said = message("ferment_row-again", gravity=typed(read, "gravity"), fell=figure(fell, 3, "SG"),
                       before=figure(before, 3, "SG"))
    else:
        return
    near = last - before * days[-1]
    yield Query("ferment_row", "ask", "gravity", said,
                (Expected("gravity", near - 0.5 * before * days[-1], last - share * before * days[-1], near),))


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


def _since_fill(read: Read, view: View, kind: str, most: int = RECENT) -> list[Line]:
    held = view.state(read.mark)["holds"]
    return [line for line in view.recent(read.mark, kind)[-most:] if held and line["at"] >= held["since"]]


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
