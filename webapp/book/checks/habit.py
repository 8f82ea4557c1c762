"""An entry against how its vessel was written of before, and against itself: the box, the unit, the count."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from itertools import chain

from webapp.book.before.limits import Limit, declare, limit
from webapp.book.before.view import Query
from webapp.book.checks.moves import vessel_name
from webapp.book.checks.words import figure, typed
from webapp.kinds.expected import Expected
from webapp.kinds.message import Unit, message
from webapp.kinds.read import Read, label
from webapp.kinds.spec import Field
from webapp.kinds.view import View
from webapp.trade import sums, units
from webapp.trade.errors import NotANumber, OutOfDomain

LIMITS = declare(
    Limit("glass_habit_pct", 0.3, "% vol", "A glass in the box of the corrected strength is asked about from"),
)

NEAR_20_C = 0.5  # so near a glass needs no correction worth a word
PROVED = 3  # so many of the last strengths of a vessel make how it is read
US_UNITS = frozenset(("lb", "oz", "gal", "fl_oz", "gal_h", "degF"))
METRIC_UNITS = frozenset(("kg", "g", "L", "mL", "L_h", "degC"))
FROM_PAST = ("opening", "opening_goods")  # the units of whoever wrote the papers
FROM_PAPERS = ("declared", "filled")  # what others have measured comes in their units


def glass_habit(read: Read, view: View) -> Iterable[Query]:
    """A strength typed as corrected, on a vessel whose strengths came off a glass so far."""
    temp = read.number("temp")
    if temp is None or abs(temp - 20) <= NEAR_20_C or "strength" not in read.values:
        return
    if "glass" in read.values or "density" in read.values:
        return
    true, now = glass_as_true(read), read.number("strength")
    if not now or true is None or abs(true - now) < limit("glass_habit_pct", view):
        return
    for mark in dict.fromkeys((read.mark, read.text("from_vessel") or "")):
        habits = list(_proved(mark, view)) if mark else []
        if habits and all(habits):
            said = message("glass_habit", strength=typed(read, "strength"), temp=typed(read, "temp"),
                           vessel=vessel_name(mark, view), true=figure(round(true, 1), 1, "pct_vol"))
            near = limit("glass_habit_pct", view) / 2
            expects = Expected("true_strength", true - near, true + near, true)
            yield Query("glass_habit", "ask", "strength", said, (expects,))
        if habits:
            return


def _proved(mark: str, view: View) -> Iterable[bool]:
    """Yield of the last strengths of a vessel whether each came off a glass."""
    run = view.run_on(mark)
    if run:
        lines = [line for line in run["readings"] if line.get("true_strength") is not None]
        yield from ("glass" in line for line in lines[-PROVED:])
        return
    recent = chain.from_iterable(lines[-PROVED:] for lines in view.state(mark)["recent"].values())
    read = [line for line in recent if "glass" in line["values"] or "strength" in line["values"]]
    yield from ("glass" in line["values"] for line in sorted(read, key=lambda line: line["at"])[-PROVED:])


def glass_as_true(read: Read) -> float | None:
    """Return what the figure in the box of the corrected strength would be, read as a glass. [% vol] or None"""
    temp, raw = read.number("temp"), read.raw("strength")
    if temp is None or not raw.get("raw"):
        return None
    unit = "proof_glass" if raw["unit"] == "proof" else "pct_glass"
    given = {"glass": sums.Quantity(units.parse_number(raw["raw"]), unit), "temp": sums.Quantity(temp, "degC")}
    try:
        return sums.compute("true_strength", given)
    except OutOfDomain:
        return None


def typed_oddly(read: Read, view: View) -> Iterable[Query]:
    """Half a bottle, and pounds beside kilograms: what cannot be, or stands in two systems of units at once."""
    typed_in = {value.get("unit") for value in read.entry["values"].values()}
    if "count" not in typed_in and not (typed_in & US_UNITS and typed_in & METRIC_UNITS):
        return
    seen: dict[str, dict[str, Field]] = {}
    for spec in read.kind.fields:
        if spec.sort != "number" or spec.name not in read.values:
            continue
        if spec.units == ("count",):
            yield from _not_whole(read, spec)
            continue
        unit = read.raw(spec.name).get("unit") or ""
        if unit in US_UNITS or unit in METRIC_UNITS:
            seen.setdefault(units.quantity_of(unit), {}).setdefault(unit, spec)
    if seen and read.kind.name not in FROM_PAST:
        yield from _other_units(read, seen, is_us=view.site().get("units") == "us")


def _not_whole(read: Read, spec: Field) -> Iterable[Query]:
    value = read.number(spec.name)
    if value is None or value == round(value):
        return
    low, high = spec.usual
    said = message("not_whole", label=label(read.kind, spec), typed=typed(read, spec.name))
    yield Query("not_whole", "ask", spec.name, said, (Expected(spec.name, max(low or 0.0, 1.0), high or 1e6),))


def _other_units(read: Read, seen: Mapping[str, Mapping[str, Field]], *, is_us: bool) -> Iterable[Query]:
    other, own = (METRIC_UNITS, US_UNITS) if is_us else (US_UNITS, METRIC_UNITS)
    for fields in seen.values():
        odd = next((unit for unit in fields if unit in other), "")
        beside = next((unit for unit in fields if unit in own), "")
        spec = fields.get(odd)
        if spec is None or spec.name.startswith(FROM_PAPERS):
            continue
        if beside in spec.units:  # one alone says nothing: many a house that reads in gallons has a scale in kilograms
            said = message("unit_odd", label=label(read.kind, spec), typed=Unit(odd), other=Unit(beside))
            yield Query("unit_odd", "ask", spec.name, said, tuple(_in(read, spec, beside)))


def _in(read: Read, spec: Field, unit: str) -> Iterable[Expected]:
    try:
        value = float(units.to_canonical(units.parse_number(read.raw(spec.name)["raw"]), unit))
    except (NotANumber, OutOfDomain):
        return
    yield Expected(spec.name, value, value)
