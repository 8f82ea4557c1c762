"""Results of a laboratory against the limits of what the spirit is sold as. It compares; paper and law decide."""

from __future__ import annotations

import json
from collections.abc import Iterable
from functools import cache
from math import inf
from pathlib import Path
from typing import NamedTuple, NotRequired, TypedDict

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.product_limits import categories_of, place_of
from webapp.book.checks.words import local_text, rounded, typed
from webapp.kinds.expected import Expected
from webapp.kinds.lab_certificate import NAMES
from webapp.kinds.message import Declared, Figure, Param, message
from webapp.kinds.read import Read
from webapp.kinds.state import NO_FILL, Fill
from webapp.kinds.view import View
from webapp.trade import units
from webapp.trade.analysis import (
    ONE_SIDED_95,
    Verdict,
    methanol_by_volume,
    per_litre,
    per_pure_alcohol,
    usual_spread_pct,
    verdict_at_least,
    verdict_at_most,
)
from webapp.trade.density import density_from_strength
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import fixed

LIMITS = declare(
    Limit("lab_off_pct", 0.5, "% vol", "Strength by a laboratory off that of the sampled vessel by"),
)
SOURCES = dict.fromkeys(
    ("lab_over", "lab_not_safely", "lab_under", "lab_strength"), "the law it names; each in lab_limits.json",
)
DATA = Path(__file__).with_name("lab_limits.json")
# What laboratories find in fruit, wine and grain spirit lies within, whatever a law allows; common practice, no source.
FOUND = {"methanol": (20.0, 2500.0), "volatile_substances": (50.0, 2000.0), "ethyl_carbamate": (0.0, 5.0)}
CALLED = {"brandy_weinbrand": "brandy", "cider_perry_spirit": "cider_or_perry_spirit"}  # others as the category is
DIGITS = {"g_hL_pa": 1, "mg_L": 2, "pct_methanol": 3}
WHOLE_FROM = 100.0  # three figures, as Regulation (EC) No 2870/2000, Annex III.2, 9.2 has results printed


class LabLimit(TypedDict):
    """A limit on one substance: where and for which category, for which fruits if not for all, and where it stands."""

    substance: str
    place: str
    category: str
    fruits: NotRequired[str]
    sense: str
    value: float
    unit: str
    sort: str
    source: str
    read: bool


class Found(NamedTuple):
    """A result in the unit of its limit, its spread between laboratories, and whether the method found it at all."""

    value: float
    spread: float
    unit: str
    is_below: bool  # nothing was found: `value` is from where on the method would have found it


@cache
def _data() -> dict[str, object]:
    made: dict[str, object] = json.loads(DATA.read_text(encoding="utf-8"))
    return made


@cache
def lab_limits() -> tuple[LabLimit, ...]:
    """Return every limit."""
    rows = _data()["limits"]
    assert isinstance(rows, list)
    return tuple(rows)


def fruits_in(what: str) -> set[str]:
    """Return the lists of lab_limits.json on which the fruits stand that a spirit's name says; a longer name first."""
    lists = _fruits()
    names = sorted(((name, which) for which in ("up_to_1350", "up_to_1200", "other") for name in lists[which]),
                   key=lambda one: (-len(one[0]), one))
    left, found = what.lower(), set()
    for name, which in names:
        if name in left:
            left = left.replace(name, " ")
            found.add(which)
    if any(name in what.lower() for name in lists["stone"]):
        found.add("stone")
    return found


def _fruits() -> dict[str, list[str]]:
    lists = _data()["fruits"]
    assert isinstance(lists, dict)
    return lists


def category_of(what: str, place: str) -> str:
    """Return the category that a spirit of this name would be sold as; of two the one with the lower limit."""
    name = what.lower()
    if place == "US":
        first = categories_of(name, place)[-1]
        return "brandy" if first in ("brandy", "grape_brandy") else first
    if ("marc" in name or "pomace" in name) and fruits_in(name) and "grape" not in name:
        return "fruit_marc_spirit"
    return categories_of(name, place)[0]


def limit_for(substance: str, what: str, place: str) -> LabLimit | None:
    """Return the limit on a substance in a spirit of this name, or None where none is known here."""
    category = category_of(what, place)
    rows = [
        row for row in lab_limits()
        if (row["substance"], row["place"], row["category"]) == (substance, place, category)
    ]
    said = fruits_in(what)
    # Of several fruits the lowest limit holds, and one that stands on no list has the general one.
    lowest = next((one for one in ("other", "up_to_1200", "up_to_1350") if one in said), "other")
    special = [row for row in rows if row.get("fruits") == lowest or (row.get("fruits") == "stone" and "stone" in said)]
    return next(iter(special), None) or next((row for row in rows if "fruits" not in row), None)


def lab_result(read: Read, view: View) -> Iterable[Query]:
    """Say of each result with a limit how it stands: under it, not safely under it, or over it."""
    held = view.state(read.mark)["holds"] if read.mark else None
    held = held or NO_FILL
    what = str(read.text("spirit") or f"{held['what']} {held['material'] or ''}".strip() or read.text("batch") or "")
    place = place_of(view.site())
    yield from _other_strength(read, view, held)
    yield from _far(read)
    for name in NAMES:
        law = limit_for(name, what, place)
        if law is None or (name not in read.values and f"{name}_below" not in read.values):
            continue
        try:
            found = found_in(read, name, law["unit"])
        except OutOfDomain:
            yield Query("lab_strength", "ask", "strength", message("lab_strength", substance=_called(name)))
            continue
        if found is not None:
            yield _query(name, found, law, read.number(name))


def _far(read: Read) -> Iterable[Query]:
    """Ask about a result such as no spirit has: a point in the wrong place, the line above, another unit."""
    for name, (low, high) in FOUND.items():
        value, unit = read.number(name), read.raw(name).get("unit") or ""
        spec = read.kind.field(name)
        if value is None or spec is None or not units_alike(unit, spec.units[0]) or low <= value <= high:
            continue
        said = message("lab_far", found=typed(read, name), substance=_called(name),
                       low=Figure(f"{low:g}", spec.units[0]), high=Figure(f"{high:g}", spec.units[0]))
        yield Query("lab_far", "ask", name, said, (Expected(name, max(low, 0.01), high),))


def units_alike(one: str, other: str) -> bool:
    """Return whether two units are of one quantity, and so have one canonical unit."""
    return units.canonical_unit(one) == units.canonical_unit(other)


def _other_strength(read: Read, view: View, held: Fill) -> Iterable[Query]:
    """Ask about a strength that is not that of the sampled vessel, where no water went in since the sample."""
    found, booked, reduced = read.number("strength"), held["strength_pct"], held.get("reduced")
    taken = read.text("taken_on") or local_text(view.at, read)[:10]
    if found is None or booked is None or held["mash"] or held["since"][:10] > taken:
        return
    most = limit("lab_off_pct", view)
    if abs(found - booked) <= most or (reduced and reduced["at"][:10] >= taken):
        return
    said = message("lab_off", found=typed(read, "strength"), held=rounded(booked, 1, "pct_vol"),
                   vessel=vessel_name(read.mark, view))
    yield Query("lab_off", "ask", "strength", said, (Expected("strength", booked - most, booked + most, booked),))


def found_in(read: Read, name: str, unit: str) -> Found | None:
    """Return a result in the unit of a limit; OutOfDomain where that needs the strength, which is not there."""
    is_below = name not in read.values
    box = f"{name}_below" if is_below else name
    value = read.number(box)
    if value is None:
        return None
    strength = read.number("strength") or read.context.get("strength_pct") or 0.0
    found = _turned(value, read.raw(box)["unit"], unit, strength)
    widest = max(_between(name, found, unit, strength) * found / 100.0, _stated(read, name, found, unit, strength))
    return Found(found, widest, unit, is_below)


def _turned(value: float, read_in: str, unit: str, strength: float) -> float:
    own = units.canonical_unit(read_in)
    if unit == "mg_L":
        return per_litre(value, own, strength)
    if unit == own:
        return value
    pure = per_pure_alcohol(value, own, strength)
    return methanol_by_volume(pure, strength) if unit == "pct_methanol" else pure


def _between(name: str, found: float, unit: str, strength: float) -> float:
    """Return the relative standard deviation between laboratories. [%]"""
    tried = _data()["between_laboratories_pct"]
    assert isinstance(tried, dict)
    if name in tried:
        return float(tried[name])
    pct = strength or 40.0  # by so little the curve moves with the strength
    mg_l = found if unit == "mg_L" else per_litre(found, "g_hL_pa", pct)
    share = mg_l / (1000.0 * density_from_strength(pct, 20.0))
    return usual_spread_pct(max(share, 1e-12))


def _stated(read: Read, name: str, found: float, unit: str, strength: float) -> float:
    """Return the standard uncertainty that the certificate states, in the unit of the limit; 0 where it states none."""
    box = f"{name}_plus_minus"
    value = read.number(box)
    if value is None:
        return 0.0
    typed = read.raw(box)["unit"]
    wide = found * value / 100.0 if typed == "pct" else _turned(value, typed, unit, strength)
    return wide / 2.0 if read.text("coverage") == "two" else wide


def _verdict(found: Found, law: LabLimit) -> Verdict:
    if law["sense"] == "at_most":
        verdict = verdict_at_most(found.value, found.spread, law["value"])
        # Nothing was found by a method that begins above the limit: that is no proof either way.
        return "not_safely" if found.is_below and verdict == "outside" else verdict
    if found.is_below:
        return "outside" if found.value <= law["value"] else "not_safely"
    return verdict_at_least(found.value, found.spread, law["value"])


def _called(name: str) -> Declared:
    return Declared(("label", "lab_certificate", name))


def _query(name: str, found: Found, law: LabLimit, typed: float | None) -> Query:
    said, verdict = _params(name, found, law), _verdict(found, law)
    if verdict == "outside":
        return Query("lab_over", "ask", name, message("lab_over", **said), _within(name, found, law, typed))
    wide = ONE_SIDED_95 * found.spread
    at_worst = found.value + wide if law["sense"] == "at_most" else max(found.value - wide, 0.0)
    worst = _figure(at_worst, found.unit)
    if verdict == "not_safely":
        return Query("lab_not_safely", "ask", name, message("lab_not_safely", at_worst=worst, **said))
    return Query("lab_under", "note", name, message("lab_under", at_worst=worst, **said))


def _within(name: str, found: Found, law: LabLimit, typed: float | None) -> tuple[Expected, ...]:
    """Return the result that would keep to a limit. typed: it, in its own unit; None if only bounded"""
    if not typed or not found.value:
        return ()
    end = law["value"] * typed / found.value
    low, high = (0.0, end) if law["sense"] == "at_most" else (end, inf)
    return (Expected(name, low, high),)


def _params(name: str, found: Found, law: LabLimit) -> dict[str, Param]:
    return {
        "substance": _called(name), "sense": law["sense"], "below": "yes" if found.is_below else "no",
        "found": _figure(found.value, found.unit), "limit": Figure(f"{law['value']:g}", law["unit"]),
        "sort": law["sort"], "place": law["place"], "source": law["source"],
        "called": message(f"law-spirit-{CALLED.get(law['category'], law['category'])}"),
    }


def _figure(value: float, unit: str) -> Figure:
    return Figure(fixed(value, 0 if value >= WHOLE_FROM else DIGITS[unit]), unit)
