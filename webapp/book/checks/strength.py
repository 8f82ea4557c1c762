"""Checks of one strength: above what spirit can be, above what its class allows, out of the glass's own scale."""

from __future__ import annotations

from collections.abc import Iterable

from webapp.book.before.limits import is_grain, limit
from webapp.book.before.view import Query, View
from webapp.book.checks.run import strength_slips
from webapp.book.checks.words import plain, typed
from webapp.kinds.read import Read
from webapp.trade import units
from webapp.trade.errors import OutOfDomain

OFF_THE_STILL = ("run_reading", "cut", "run_end", "fraction_gauge")


def strength_ceiling(read: Read, view: View) -> Iterable[Query]:
    """Above the azeotrope nothing can be; off the still, above its class a spirit loses its name."""
    now = read.figures.get("true_strength")
    if now is None:
        return
    at = "strength" if "strength" in read.values else "glass"
    ceiling = limit("ceiling_pct", view)
    if now > ceiling:
        words = f"True strength {plain(now, 1)} % cannot be: none is above {plain(ceiling, 1)} % vol. Look again."
        yield Query("strength_impossible", "stop", at, words, strength_slips(read, at, 0, ceiling, None))
        return
    if read.kind.name not in OFF_THE_STILL:
        return
    what, grain = _what(read, view)
    us = view.site().get("units") == "us"
    name = ("grain_us_pct" if us else "ceiling_pct") if grain else ("brandy_us_pct" if us else "fruit_class_pct")
    top = limit(name, view)
    if now > top or (now == top and name == "fruit_class_pct"):
        classes = {
            "fruit_class_pct": f"at {plain(top, 0)} % or more it is no fruit spirit in the EU (Regulation 2019/787)",
            "brandy_us_pct": f"above {plain(top, 0)} % (190 proof) it is no brandy in the US (27 CFR 5.145)",
            "grain_us_pct": f"above {plain(top, 0)} % (160 proof) it is no rye whisky in the US (27 CFR 5.143)",
        }
        words = f"True strength {plain(now, 1)} % off {what or 'fruit'}: {classes[name]}. Look at it again."
        yield Query("strength_class", "ask", at, words, strength_slips(read, at, 20, top, None))


def _what(read: Read, view: View) -> tuple[str, bool]:
    """What runs, and whether it is grain, from the run's name for it and from the vessel it came from."""
    still = read.values.get("still") if read.kind.name == "fraction_gauge" else read.mark
    run = view.run_on(still or "")
    if run is None and still:
        past = view.state(still)["runs"]
        run = view.get(f"r:{past[-1]}") if past else None
    if run is None:
        return "", False
    held = (view.state(run["from"])["holds"] or {}) if run["from"] else {}
    what = str(run.get("what") or held.get("what") or "")
    return what, is_grain(f"{what} {held.get('material') or ''}")


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
        shown = [plain(end, spec.decimals or 0) for end in (low, high) if end is not None]
        words = (
            f"{raw['instrument']} shows {' to '.join(shown)}; {typed(read, spec.name)} cannot be read on it. "
            "Which instrument was it?"
        )
        yield Query("glass_scale", "ask", spec.name, words)


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
