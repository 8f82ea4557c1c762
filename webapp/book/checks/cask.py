"""Checks of a cask against its own past: nothing grows in wood, and its strength hardly moves."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query, kept_once, seconds_between
from webapp.book.checks.alike import alike, years_between
from webapp.book.checks.habit import NEAR_20_C, glass_as_true
from webapp.book.checks.instruments import apart
from webapp.book.checks.run import MOST_BELOW
from webapp.book.checks.words import DAY_S, YEAR_DAYS, figure, like_typed, strength_field, typed, when
from webapp.kinds.expected import Expected
from webapp.kinds.message import Figure, Message, Param, message
from webapp.kinds.read import Read
from webapp.kinds.state import Fill, Vessel, figure_in
from webapp.kinds.view import View

LIMITS = declare(
    Limit("cask_grew_pct", 1.0, "%", "Pure alcohol in a cask may seem to grow by"),
    Limit("gross_step_kg", 0.2, "kg", "Gross weight of a cask may seem to grow by"),
    Limit("drift_pct", 1.5, "% vol", "Strength of a cask may differ from its last by"),
    Limit("drift_pct_year", 1.2, "% vol", "and for each year between, by"),
    Limit("drift_look_pct", 0.8, "% vol", "Strength of a cask off its last is held against casks like it above"),
    Limit("drift_spread_pct", 0.3, "% vol", "Least spread that is taken of how strengths go in a year"),
)

GAUGE_KINDS = ("cask_fill", "gauge", "distilled_gauge", "opening", "cask_regauge")
LEAST_LEFT = 0.85  # a weight is looked for no further below the last one than this part of it
LEAST_YEARS = 0.25  # a strength that went for less says nothing of a year
BOOKED_L = 0.01  # what rounding of a gauge may leave [L]


@dataclass(frozen=True, slots=True)
class Past:
    """One earlier gauge of this fill: when, pure alcohol [L], strength [% vol], net and gross mass [kg] or None."""

    at: str
    lpa: float
    strength: float
    net: float | None
    gross: float | None
    moved: float = 0.0  # pure alcohol that the book has moved in (or, negative, out) since then [L]


def past_gauges(read: Read, view: View) -> list[Past]:
    """Return the gauges and regauges of what this entry's cask now holds, oldest first."""
    return past_of(read.mark, view)


def past_of(mark: str, view: View) -> list[Past]:
    """Return the fill, gauges and regauges of what a cask now holds, oldest first.

    The last one is as the book has it today: what was topped up, drawn as a sample or lost since is counted with it.
    """
    return _past_in(view.state(mark))


@kept_once
def _past_in(state: Vessel) -> list[Past]:
    held = state["holds"]
    if not held:
        return []
    lines = [line for kind in GAUGE_KINDS for line in state["recent"].get(kind, ())]
    found = [past] if (past := _at_fill(held)) else []
    for line in lines:
        lpa, strength = line["figures"].get("lpa"), line["figures"].get("true_strength")
        if line["at"] >= held["since"] and lpa is not None and strength is not None:
            net = line["figures"].get("net", figure_in(line["values"], "net_weight"))
            found.append(Past(line["at"], lpa, strength, net, figure_in(line["values"], "gross")))
    found.sort(key=lambda past: past.at)
    booked = held.get("lpa_ul", 0) / 1e6
    if found and booked and abs(booked - found[-1].lpa) > BOOKED_L:
        found[-1] = replace(found[-1], lpa=booked, moved=booked - found[-1].lpa, gross=None, net=None)
    return found


def _at_fill(held: Fill) -> Past | None:
    """Return the gauge at the fill where that was before this book, and its papers say it."""
    lpa, strength = held.get("filled_lpa_l"), held.get("fill_strength_pct")
    return Past(held["since"], lpa, strength, None, None) if lpa and strength else None


def cask_grew(read: Read, view: View) -> Iterable[Query]:
    """Pure alcohol or weight above the last gauge."""
    past = past_gauges(read, view)
    if not past:
        return
    last, lpa, gross = past[-1], read.figures.get("lpa"), read.number("gross")
    if earlier_at_fault(past, read, view):
        return
    more = lpa is not None and lpa > last.lpa * (1 + limit("cask_grew_pct", view) / 100)
    if more and lpa is not None and lpa - last.lpa > apart(read, view, "lpa"):
        said = message(
            "cask_grew", now=figure(lpa, 1, "LPA"), strength=figure(read.figures["true_strength"], 1, "pct_vol"),
            last=figure(last.lpa, 1, "LPA"), last_strength=figure(last.strength, 1, "pct_vol"),
            at=when(last.at, read, view), **told_moved(last),
        )
        is_odd = abs(read.figures["true_strength"] - last.strength) > usual_drift(last, view)
        expects = Expected("lpa", last.lpa * LEAST_LEFT, last.lpa * (1 + limit("cask_grew_pct", view) / 100), last.lpa)
        yield Query("cask_grew", "stop", strength_field(read) if is_odd else "gross", said, (expects,))
    elif gross is not None and last.gross is not None and gross > last.gross + limit("gross_step_kg", view) + 1e-9:
        before = like_typed(read, "gross", last.gross)
        said = message("cask_grew-gross", gross=typed(read, "gross"), last=before, at=when(last.at, read, view))
        expects = Expected("gross", last.gross * LEAST_LEFT, last.gross, last.gross)
        yield Query("cask_grew", "ask", "gross", said, (expects,))


def earlier_at_fault(past: Sequence[Past], read: Read, view: View) -> bool:
    """Return whether the last gauge stands alone: the one before it and this one go together, and it with neither."""
    lpa, now = read.figures.get("lpa"), read.figures.get("true_strength")
    if len(past) < 2 or lpa is None or now is None or past[-1].moved:
        return False
    before, last = past[-2:]
    grown = 1 + limit("cask_grew_pct", view) / 100
    fits = before.lpa * LEAST_LEFT <= lpa <= before.lpa * grown
    fits = fits and abs(now - before.strength) <= usual_drift(before, view)
    drift = usual_drift(last, view)
    is_odd = abs(now - last.strength) > drift and abs(before.strength - last.strength) > drift
    return fits and (is_odd or (lpa > last.lpa * grown and last.lpa < before.lpa * LEAST_LEFT))


def cask_earlier(read: Read, view: View) -> Iterable[Query]:
    """An earlier gauge that neither the one before it nor this one goes together with: that one is asked about."""
    past = past_gauges(read, view)
    if not earlier_at_fault(past, read, view):
        return
    before, last = past[-2:]
    said = message(
        "cask_earlier", odd=figure(last.strength, 1, "pct_vol"), odd_pure=figure(last.lpa, 1, "LPA"),
        at=when(last.at, read, view), before=figure(before.strength, 1, "pct_vol"),
        before_pure=figure(before.lpa, 1, "LPA"), now=figure(read.figures["true_strength"], 1, "pct_vol"),
        now_pure=figure(read.figures["lpa"], 1, "LPA"),
    )
    yield Query("cask_earlier", "ask", "", said)


def told_moved(past: Past) -> dict[str, Param]:
    """Return the amount that the book has moved since a gauge, and its direction, as parameters of a message."""
    way = "added" if past.moved > 0 else "drawn" if past.moved < 0 else "none"
    return {"moved": figure(round(abs(past.moved), 2), 2, "LPA"), "way": way}


def usual_drift(last: Past, view: View) -> float:
    """Return the largest usual difference between a strength and that of the last gauge. [% vol]"""
    return drift_in(seconds_between(last.at, view.at) / DAY_S / YEAR_DAYS, view)


def drift_in(years: float, view: View) -> float:
    """Return by how much the strength of a cask usually differs after so many years at most. [% vol]"""
    return limit("drift_pct", view) + limit("drift_pct_year", view) * years


def cask_strength_slip(read: Read, view: View) -> Iterable[Query]:
    """A strength far from the last one: a misread glass, swapped digits, or a raw reading taken for a true one."""
    past, now, lpa = past_gauges(read, view), read.figures.get("true_strength"), read.figures.get("lpa")
    if not past or now is None or any(p.code == "raw_equals_corrected" for p in read.problems):
        return
    last = past[-1]
    if earlier_at_fault(past, read, view):
        return
    odd = usual_drift(last, view)
    if limit("drift_look_pct", view) < abs(now - last.strength) <= odd:
        yield from _unlike_others(read, view, last, now)
    grew = lpa is not None and lpa > last.lpa * (1 + limit("cask_grew_pct", view) / 100)
    if grew or abs(now - last.strength) <= odd:  # what grew is asked about already, with the same suggestion
        return
    low, high = max(last.strength - min(odd, MOST_BELOW), 0), last.strength + odd
    said = message(
        "cask_strength_slip", now=figure(now, 1, "pct_vol"), off=figure(abs(now - last.strength), 1, "pct_vol"),
        side="below" if now < last.strength else "above", last=figure(last.strength, 1, "pct_vol"),
        at=when(last.at, read, view), hint=_as_glass(read, low, high),
    )
    expects = Expected("true_strength", low, high, last.strength)
    yield Query("cask_strength_slip", "ask", strength_field(read), said, (expects,))


def _unlike_others(read: Read, view: View, last: Past, now: float) -> Iterable[Query]:
    """Ask about a strength that went otherwise than those of casks like it, though it would be usual by itself."""
    years = max(years_between(last.at, view.at), LEAST_YEARS)
    found = alike(list(_drifts(read.mark, view)), limit("drift_spread_pct", view), view)
    moved = now - last.strength
    if found is None or found.low <= moved / years <= found.high:
        return
    end = found.high if moved / years > found.high else found.low
    if abs(moved - end * years) <= apart(read, view, "true_strength"):
        return
    said = message(
        "cask_unlike", last=figure(last.strength, 1, "pct_vol"),
        off=figure(abs(round(moved, 2)), 1, "pct_vol"), side="below" if moved < 0 else "above",
        at=when(last.at, read, view), casks=found.many, usual=Figure(f"{found.middle:+.1f}", "pct_vol"),
    )
    low, high = last.strength + found.low * years, last.strength + found.high * years
    expects = Expected("true_strength", low, high, last.strength + found.middle * years)
    yield Query("cask_unlike", "ask", strength_field(read), said, (expects,))


def _drifts(mark: str, view: View) -> Iterable[float]:
    """Yield how the strength of casks like one went in a year, between their last two gauges. [% vol a year]"""
    for row in view.neighbours(mark):
        past = past_of(row["mark"], view)[-2:]
        years = years_between(past[0].at, past[1].at) if len(past) == 2 else 0.0
        if years >= LEAST_YEARS:
            yield (past[1].strength - past[0].strength) / years


def _as_glass(read: Read, low: float, high: float) -> Message | str:
    """Say what a strength typed as true would be as a glass reading, where that lies from low to high; else "none"."""
    temp = read.number("temp")
    if strength_field(read) != "strength" or temp is None or abs(temp - 20) <= NEAR_20_C:
        return "none"
    true = glass_as_true(read)
    if true is None or not low <= true <= high:
        return "none"
    return message("slip-glass", temp=typed(read, "temp"), true=figure(true, 1, "pct_vol"))
