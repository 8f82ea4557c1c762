"""What is taken out of a vessel is as strong as what stands in it: finds a wrong vessel as well as a wrong figure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.blend import reduce_target
from webapp.book.checks.cask import past_of, usual_drift
from webapp.book.checks.instruments import apart
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.strength import gauge_earlier
from webapp.book.checks.words import DAY_S, figure, strength_field
from webapp.kinds.expected import Expected
from webapp.kinds.message import message
from webapp.kinds.read import Read
from webapp.kinds.view import View

LIMITS = declare(
    Limit("source_off_pct", 1.0, "% vol", "Strength of what is taken off that of its vessel by"),
    Limit("source_wash_pct", 0.5, "% vol", "Strength of wash off that of its closed ferment by"),
)

LATELY_DAYS = 30  # in so few days a strength in wood goes nowhere
OUT_OF = ("cask_fill", "top_up")  # of these the vessel that it comes from is named; others speak of their own


def source_strength(read: Read, view: View) -> Iterable[Query]:
    """The strength of what is taken against what the book has in the vessel that it comes from."""
    if read.kind.name == "reduce" and any(reduce_target(read, view)):
        return
    for mark, field, now in _taken(read):
        held = view.state(mark)["holds"]
        if not held or held["strength_pct"] is None or (held["mash"] and not held.get("closed")):
            continue
        booked = held["strength_pct"]
        most = limit("source_wash_pct" if held["mash"] else "source_off_pct", view)
        row = view.vessel(mark)
        past = past_of(mark, view) if row and row["sort"] == "cask" else []
        if past and seconds_between(past[-1].at, view.at) > LATELY_DAYS * DAY_S:
            most = max(most, usual_drift(past[-1], view))
        off = abs(now - booked)
        if off <= most + 1e-9 or ("true_strength" in read.figures and off <= apart(read, view, "true_strength")):
            continue
        if odd := list(gauge_earlier(read, view, mark, now)):
            yield from odd if "held_strength" not in read.kind.checks else ()
            continue
        said = message(
            "source_strength", now=figure(now, 1, "pct_vol"), held=figure(booked, 1, "pct_vol"),
            off=figure(off, 1, "pct_vol"), vessel=vessel_name(mark, view),
        )
        low, high = booked - most, booked + most
        of = "true_strength" if "true_strength" in read.figures else field
        yield Query("source_strength", "ask", field, said, (Expected(of, low, high, booked),))


def _taken(read: Read) -> Iterator[tuple[str, str, float]]:
    """Yield the vessels that this entry takes from, the fields that say a strength, and the strengths. [% vol]"""
    if read.kind.name == "charge":
        for vessel, field in (("from_vessel", "wash_strength"), ("feints_from", "feints_strength")):
            strength = read.number(field)
            if read.text(vessel) and strength is not None:
                yield str(read.text(vessel)), field, strength
        return
    if read.kind.name == "chill_filter":
        strength = read.number("strength_before")
        if strength is not None:
            yield read.mark, "strength_before", strength
        return
    now = read.figures.get("true_strength")
    if now is None or (read.kind.name == "reduce" and read.figures.get("water_mass")):
        return  # with water in the same entry nobody knows which strength is meant
    mark = str(read.text("from_vessel") or "") if read.kind.name in OUT_OF else read.mark
    if mark:
        yield mark, strength_field(read), now
