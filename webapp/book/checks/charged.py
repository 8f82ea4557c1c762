"""A charge against its still, against what stands there, and against the charges before it."""

from __future__ import annotations

from collections.abc import Iterable
from statistics import median

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.instruments import dip_apart
from webapp.book.checks.likely import is_copied, is_slip
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.words import figure, like_typed, rounded, typed
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.rows import NO_ROW
from webapp.kinds.state import NO_FILL, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("still_low_pct", 20, "%", "A still is charged with at least, of what it holds"),
    Limit("wash_unlike_pct", 12, "%", "Wash off the charges before, least spread that is taken"),
    Limit("rest_pct", 3, "%", "Less than this left behind is no part kept on purpose"),
)

CHARGES = 6
SLIPPED = 0.3  # of the charges before, that a slip explains; less than it may be what there was
MAD_TO_SPREAD = 1.4826  # of a normal spread, from the median of the differences to the median


def charge_size(read: Read, view: View) -> Iterable[Query]:
    """So little that a still would burn dry, and wash far from the charges before it on this still."""
    wash, capacity = read.number("wash"), (view.vessel(read.mark) or NO_ROW).get("capacity_l")
    if wash is None:
        return
    whole, least = wash + (read.number("feints") or 0.0), (capacity or 0.0) * limit("still_low_pct", view) / 100
    lines = view.recent(read.mark, "charge")[-CHARGES:]
    past = [one for line in lines if (one := figure_in(line["values"], "wash"))]
    if whole < least and not any(one < least for one in past):
        said = message("charge_low", charge=rounded(whole, 0, "L"), still=vessel_name(read.mark, view),
                       holds=figure(capacity or 0.0, 0, "L"))
        yield Query("charge_low", "ask", "wash", said, (Expected("wash", least, capacity or least),
                                                        *_there(read, view), *_as_before(past)))
    elif past:
        middle = median(past)
        spread = max(MAD_TO_SPREAD * median(abs(one - middle) for one in past),
                     middle * limit("wash_unlike_pct", view) / 100)
        if abs(wash - middle) > limit("alike_spread", view) * spread or _is_odd(read, view, past):
            said = message("charge_unlike", wash=typed(read, "wash"), usual=like_typed(read, "wash", middle))
            yield Query("charge_unlike", "ask", "wash", said, (*_as_before(past), *_there(read, view)))


def _is_odd(read: Read, view: View, past: list[float]) -> bool:
    """Return whether the volume of wash fits neither past charges nor the full vessel, and a slip explains it."""
    wash, expects = read.number("wash") or 0.0, (*_as_before(past), *_there(read, view))
    if any(one.low <= wash <= one.high for one in expects):
        return False
    return abs(wash - median(past)) > median(past) * SLIPPED and is_slip(read, "wash", expects)


def _there(read: Read, view: View) -> Iterable[Expected]:
    """Yield all the wash that stands in the vessel it comes from."""
    held = view.state(read.text("from_vessel") or "")["holds"] or NO_FILL
    litres = held["volume_l"] if held.get("closed") or not held["mash"] else None
    if litres:
        yield Expected("wash", litres * 0.98, litres * 1.01, litres)


def _as_before(past: list[float]) -> Iterable[Expected]:
    for one in dict.fromkeys(past[-2:]):
        yield Expected("wash", one * 0.99, one * 1.01, one)


def feints_part(read: Read, view: View) -> Iterable[Query]:
    """Feints named and not measured, or less of them than there are where a slip or the line before explains that."""
    source, feints = read.text("feints_from") or "", read.number("feints")
    held = view.state(source)["holds"] if source else None
    if not source:
        return
    if feints is None and not read.raw("feints").get("raw"):
        yield Query("feints_unread", "ask", "feints", message("feints_unread", vessel=vessel_name(source, view)))
        return
    there = held["volume_l"] if held and not held["mash"] else None
    if not feints or not there:
        return
    capacity = (view.vessel(source) or NO_ROW).get("capacity_l")
    wide = max(there * limit("rest_pct", view) / 100, dip_apart(there, capacity))
    if feints >= there - wide:
        return
    expects = (Expected("feints", there - wide, there + wide, there),)
    if is_slip(read, "feints", expects) or is_copied(read, view, "feints") or _took_all(read, view, source):
        said = message("feints_part", feints=typed(read, "feints"), vessel=vessel_name(source, view),
                       there=like_typed(read, "feints", round(there, 1)))
        yield Query("feints_part", "ask", "feints", said, expects)


def _took_all(read: Read, view: View, source: str) -> bool:
    """Return whether the last two charges emptied that can or receiver, as its next gauge after each shows."""
    lines = [line for line in view.recent(read.mark, "charge")[-2:] if line["values"].get("feints_from") == source]
    gauged = view.recent(source, "fraction_gauge")
    if len(lines) < 2:
        return False
    after = [next((one for one in gauged if one["at"] > line["at"]), None) for line in lines]
    return all(one is not None and not one["values"].get("remnant") for one in after)
