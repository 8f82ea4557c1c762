"""Checks of one strength: above what can be or its class allows, off what stands there, off the glass's scale."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import Limit, declare, is_grain, limit
from webapp.book.before.view import Query, seconds_between
from webapp.book.checks.words import DAY_S, YEAR_DAYS, figure, strength_field, typed, when
from webapp.kinds.expected import Expected
from webapp.kinds.key import run_key
from webapp.kinds.message import Param, message
from webapp.kinds.read import Read, measured
from webapp.kinds.state import NO_FILL
from webapp.kinds.view import View
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

LIMITS = declare(
    Limit("ceiling_pct", 97.2, "% vol", "No still gives more than", "the azeotrope of ethanol and water"),
    Limit(
        "fruit_class_pct", 86.0, "% vol", "Fruit spirit in the EU: distilled below",
        "Regulation (EU) 2019/787, Annex I, fruit spirit: distilled at less than 86 % vol",
    ),
    Limit(
        "brandy_us_pct", 95.0, "% vol", "Brandy in the US: distilled at most at",
        "27 CFR 5.145: brandy under 190 degrees proof",
    ),
    Limit(
        "grain_us_pct", 80.0, "% vol", "Rye whisky in the US: distilled at most at",
        "27 CFR 5.143: rye whisky at not over 160 degrees proof",
    ),
    Limit("held_off_pct", 2.0, "% vol", "Strength may differ from what the book has in the vessel by"),
)

GAUGES = ("gauge", "distilled_gauge", "bottling_gauge")
OFF_THE_STILL = ("run_reading", "cut", "run_end", "fraction_gauge")


def strength_ceiling(read: Read, view: View) -> Iterable[Query]:
    """Above the azeotrope nothing can be; off the still, above its class a spirit loses its name."""
    now = read.figures.get("true_strength")
    if now is None:
        return
    at = strength_field(read)
    ceiling = limit("ceiling_pct", view)
    if now > ceiling:
        said = message("strength_impossible", now=figure(now, 1, "pct_vol"), most=figure(ceiling, 1, "pct_vol"))
        yield Query("strength_impossible", "stop", at, said, (Expected("true_strength", 0, ceiling),))
        return
    if read.kind.name not in OFF_THE_STILL:
        return
    what, grain = _what(read, view)
    us = view.site().get("units") == "us"
    name = ("grain_us_pct" if us else "ceiling_pct") if grain else ("brandy_us_pct" if us else "fruit_class_pct")
    top = limit(name, view)
    if now > top or (now == top and name == "fruit_class_pct"):
        said = message(
            "strength_class", now=figure(now, 1, "pct_vol"), what=what or "none", limit=name,
            most=figure(top, 0, "pct_vol"),
        )
        yield Query("strength_class", "ask", at, said, (Expected("true_strength", 20, top),))


def _what(read: Read, view: View) -> tuple[str, bool]:
    """What runs, and whether it is grain, from the run's name for it and from the vessel it came from."""
    still = read.text("still") if read.kind.name == "fraction_gauge" else read.mark
    run = view.run_on(still or "")
    if run is None and still:
        past = view.state(still)["runs"]
        run = view.get(run_key(past[-1])) if past else None
    if run is None:
        return "", False
    held = (view.state(run["from"])["holds"] if run["from"] else None) or NO_FILL
    what = run["what"] or held["what"]
    return what, is_grain(f"{what} {held['material'] or ''}")


def held_strength(read: Read, view: View) -> Iterable[Query]:
    """A strength far from that of what stands in the vessel by the book. Twin of static/form/jumps.js."""
    now, held = read.figures.get("true_strength"), view.state(read.mark)["holds"]
    is_empty = 0 in (read.number("volume"), read.number("net_weight"))  # then a strength says nothing
    if now is None or is_empty or not held or held["strength_pct"] is None or now > limit("ceiling_pct", view):
        return
    row = view.vessel(read.mark)
    years = seconds_between(held["since"], view.at) / DAY_S / YEAR_DAYS if row and row["sort"] == "cask" else 0.0
    booked, most = held["strength_pct"], limit("held_off_pct", view) + limit("drift_pct_year", view) * years
    if abs(now - booked) <= most + 1e-9:
        return
    if odd := list(gauge_earlier(read, view, read.mark, now)):
        yield from odd
        return
    at = strength_field(read)
    said = message(
        "held_strength", now=figure(now, 1, "pct_vol"), held=figure(booked, 1, "pct_vol"),
        off=figure(abs(now - booked), 1, "pct_vol"), side="below" if now < booked else "above",
    )
    yield Query("held_strength", "ask", at, said, (Expected("true_strength", booked - most, booked + most, booked),))


def gauge_earlier(read: Read, view: View, mark: str, now: float) -> Iterable[Query]:
    """The last gauge of a tank stands alone: the one before it and this strength go together. That one is asked about.

    now: the strength of this entry. [% vol] Nothing that is taken out changes a strength; what goes in would not bring
    it back to what it was.
    """
    held = view.state(mark)["holds"] or NO_FILL
    lines = sorted((line for kind in GAUGES for line in view.recent(mark, kind) if line["at"] >= held["since"]),
                   key=lambda line: line["at"])[-2:]
    read_pct = [line["figures"].get("true_strength") for line in lines]
    if len(lines) < 2 or any(pct is None for pct in read_pct):
        return
    before, odd = (pct or 0.0 for pct in read_pct)
    most = limit("held_off_pct", view)
    if abs(now - before) <= most / 2 and min(abs(odd - before), abs(odd - now)) > most:
        said = message("gauge_earlier", odd=figure(odd, 1, "pct_vol"), at=when(lines[1]["at"], read, view),
                       before=figure(before, 1, "pct_vol"), now=figure(now, 1, "pct_vol"))
        yield Query("gauge_earlier", "ask", "", said)


def glass_scale(read: Read, view: View) -> Iterable[Query]:
    """A figure that the named instrument has no mark for: either the figure or the instrument is wrong."""
    for spec in read.kind.fields:
        raw = read.raw(spec.name)
        if spec.sort != "number" or not raw.get("raw") or not raw.get("instrument") or spec.name not in read.values:
            continue
        instrument = view.instrument(raw["instrument"])
        if not instrument or not instrument.get("unit"):
            continue
        low, high, unit = instrument.get("low"), instrument.get("high"), instrument["unit"]
        value = _in_unit(read, spec.name, unit)
        if value is None or ((low is None or value >= low - 1e-6) and (high is None or value <= high + 1e-6)):
            continue
        ends = [figure(end, spec.decimals or 0, unit) for end in (low, high) if end is not None]
        scale: dict[str, Param] = {"low": ends[0], "high": ends[1] if len(ends) > 1 else "none"}
        said = message("glass_scale", instrument=raw["instrument"], figure=typed(read, spec.name), **scale)
        yield Query("glass_scale", "ask", spec.name, said, _on_scale(spec.name, low, high, unit))


def _on_scale(name: str, low: float | None, high: float | None, unit: str) -> tuple[Expected, ...]:
    """Return what an instrument can show, as ranges look at it. low, high: the ends of its scale [unit]"""
    if low is None or high is None:
        return ()
    try:
        ends = [measured(float(units.to_canonical(end, unit)), unit) for end in (low, high)]
    except OutOfDomain:
        return ()
    return (Expected(name, ends[0], ends[1]),)


def _in_unit(read: Read, name: str, unit: str) -> float | None:
    raw = read.raw(name)
    if raw["unit"] == unit:
        return units.parse_number(raw["raw"])
    try:
        same = units.quantity_of(raw["unit"]) == units.quantity_of(unit)
        shown = units.to_canonical(units.parse_number(raw["raw"]), raw["unit"])  # on its scale stands what it showed
        return float(units.from_canonical(shown, unit)) if same else None
    except (OutOfDomain, KeyError):
        return None
