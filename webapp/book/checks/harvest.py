"""What a ferment gave against the sugar that came over the scale, and the house's own ferments of that material.

Flat rates of a tax are averages of many houses, not this fruit: none is used.
"""

from __future__ import annotations

from collections.abc import Iterable
from statistics import median

from webapp.book.before.limits import is_grain, limit
from webapp.book.before.view import Query, View
from webapp.book.checks.words import about, plain
from webapp.kinds.harvest import Promise, custom_key, promise_of
from webapp.kinds.read import Read


def ferment_yield(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol in the wash, far above or below what the fruit's sugar and the house's own years promise."""
    made, held = read.figures.get("wash_lpa"), view.state(read.mark)["holds"]
    if made is None or made <= 0 or not held:
        return
    loads = [line for line in view.recent(read.mark, "fruit_intake") if line["at"] >= held["since"]]
    promise = promise_of(loads, grain=is_grain(held.get("material")))
    if promise is None:
        return
    most, told = promise.most_l, _told(promise)
    if most and made > most:
        words = (
            f"{about(made)} L pure alcohol in the wash, {told}: all of its sugar could not give more than "
            f"{about(most)} L. Look at the strength, the dip and the weights; was sugar added?"
        )
        yield Query("ferment_yield", "ask", "wash_strength", words)
        return
    wanted, custom = _wanted(promise, str(held.get("material") or ""), view)
    share = made / wanted * 100
    if not limit("yield_low_pct", view) <= share <= limit("yield_high_pct", view):
        side = "much" if share > 100 else "little"
        low, high = (plain(limit(name, view), 0) for name in ("yield_low_pct", "yield_high_pct"))
        words = (
            f"{about(made)} L pure alcohol in the wash, {told}: about {about(wanted)} L could be expected{custom}. "
            f"That is {side}: {plain(round(share), 0)} %, where {low} to {high} % is usual. "
            "Look at strength, dip and weights."
        )
        yield Query("ferment_yield", "ask", "wash_strength", words)


def _wanted(promise: Promise, material: str, view: View) -> tuple[float, str]:
    """Return what could be expected [L], and whose word it is: the house's own past ferments, else the plain sum."""
    past = (view.get(custom_key(material)) or {"closes": []})["closes"] if material else []
    shares = [line["share"] for line in past if line["by"] == promise.by]
    if len(shares) >= limit("yield_years", view):
        return median(shares) * promise.measure, f" by your last {len(shares)} of {material}"
    if promise.by == "weight":
        return promise.kg * limit("grain_l_100kg", view) / 100, ""
    return promise.wanted_l, ""


def _told(promise: Promise) -> str:
    if promise.by == "weight":
        return f"from {plain(round(promise.kg), 0)} kg of grain"
    brix = promise.sugar_kg / promise.kg * 100
    return f"from {plain(round(promise.kg), 0)} kg of fruit at {about(brix)} °Bx"
