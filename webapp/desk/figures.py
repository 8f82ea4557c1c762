"""Figures on the desk in the units of the house: the filters of the templates, and charts drawn over them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from flask_wtf import FlaskForm

from webapp.access import current
from webapp.desk.chart import Chart, Series
from webapp.trade import units
from webapp.trade.uncertainty import Uncertain, expanded
from webapp.words.desk import Later, say
from webapp.words.houseunits import US, decimals_in, text_in, unit_in, value_in
from webapp.words.local import number

# On the desk's pages pure alcohol is counted in litres, and the word stands beside.
_SIGNS = {"LPA": "L"}
# Of a card's curves: title, unit, decimals.
_CURVES = {
    "gravity": (Later("desk-common-gravity"), "SG", 3), "temp": (Later("desk-figures-temperature"), "degC", 1),
    "true_strength": (Later("desk-figures-true_strength"), "pct_vol", 1),
    "lpa": (Later("desk-figures-pure_alcohol"), "LPA", 1), "fill_found": (Later("desk-figures-fill"), "pct", 1),
    "strength_found": (Later("desk-figures-strength_in_the_bottles"), "pct_vol", 1),
}
_LIMITS = {"L": "L", "kg": "kg", "°C": "degC", "L/h": "L_h"}
# [LPA from 100 of these] to [the same from 100 of the house's]
_OF = {"kg": "lb", "L": "gal"}


def sign(unit: str) -> str:
    """Return the sign of the unit in which the house shows what is kept in a canonical one."""
    shown = unit_in(unit, current.house)
    return _SIGNS.get(shown) or units.symbol(shown)


def figure(value: float | None, unit: str, decimals: int | None = 1, *, plus: bool = False, apart: bool = False) -> str:
    """Return a figure in the house's unit without its sign; empty where there is none. decimals None: as it is."""
    if value is None:
        return ""
    if decimals is None:
        return number(text_in(f"{value:g}", unit, current.house))
    shown = value_in(value, unit, current.house, is_apart=apart)
    return number(f"{shown:{'+' if plus else ''}.{decimals_in(decimals, unit, current.house)}f}")


def amount(value: float | None, unit: str, decimals: int | None = 1) -> str:
    """Return a figure with the sign of the house's unit."""
    return f"{figure(value, unit, decimals)} {sign(unit)}" if value is not None else ""


def off_by(known: Uncertain, unit: str, decimals: int = 1) -> str:
    """Return the expanded uncertainty of a figure, k = 2, in the house's unit without its sign: ± 0.41."""
    digits = decimals_in(decimals, unit, current.house)
    standard = abs(value_in(known.standard, unit, current.house, is_apart=True))
    return f"± {number(f'{expanded(standard, digits):.{digits}f}')}"


def yielded(value: float, of: str, decimals: int = 2) -> str:
    """Return pure alcohol from 100 kg or 100 L as the house counts it: from 100 lb, from 100 gal. [LPA from 100]"""
    share = float(units.to_canonical(1.0, _OF[of])) if current.house == US else 1.0
    return figure(value * share, "LPA", decimals)


def name_units(form: FlaskForm, **boxes: str) -> None:
    """Let the labels of boxes name the house's unit in the place of a canonical one: Capacity [gal]."""
    for name, unit in boxes.items():
        label = form[name].label
        label.text = str(label.text).replace(f"[{units.symbol(unit)}]", f"[{sign(unit)}]")


def typed(value: float | None, unit: str) -> float | None:
    """Return a figure that was typed in the house's unit as it is kept. [the canonical unit]"""
    return None if value is None else float(units.to_canonical(value, unit_in(unit, current.house)))


def or_us(words: str, us: str) -> str:
    """Return words, or those that stand in their place in a US house."""
    return us if current.house == US else words


def value_of(value: float, unit: str) -> float:
    """Return a figure in the unit that the house reads. [sign(unit)]"""
    return value_in(value, unit, current.house)


def curve_charts(curves: Mapping[str, Sequence[Sequence[float]]]) -> list[Chart]:
    """Return the curves of a vessel's card, those that have two points, as the house reads them."""
    made = []
    for name, points in curves.items():
        named, unit, decimals = _CURVES.get(name, (name, "plain", 1))
        title = str(named)
        chart: Chart = {"title": title, "yLabel": "", "yDecimals": decimals, "xIsTime": True, "height": 220,
                        "series": [{"label": title, "points": [list(point) for point in points]}]}
        if len(points) > 1:
            made.append(in_house(chart, unit) | ({"yLabel": say("desk-figures-of_the_label")} if unit == "pct" else {}))
    return made


def in_house(chart: Chart, unit: str) -> Chart:
    """Return a chart over a canonical unit as the house reads it: its axis, its points and what is expected."""
    made: Chart = {**chart, "yLabel": sign(unit), "series": [_series(one, unit) for one in chart["series"]]}
    if "expected" in chart:
        made["expected"] = _series(chart["expected"], unit)
    return made


def _series(series: Series, unit: str) -> Series:
    return {**series, "points": [[at, value_of(value, unit)] for at, value in series["points"]]}


def also_us(value: float | None, symbol: str) -> str:
    """Return a limit in US units beside the unit it is kept and typed in; empty in a metric house."""
    unit = _LIMITS.get(symbol)
    return f" ({amount(value, unit, None)})" if unit and value is not None and current.house == US else ""


FILTERS: dict[str, Callable[..., str]] = {
    "figure": figure, "amount": amount, "yielded": yielded, "or_us": or_us, "unit": sign,
    "also_us": also_us, "off_by": off_by,
}
