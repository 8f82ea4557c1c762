"""Figures in the units of a house: metric as they come, or US. Twin of static/trade/houseunits.js.

What was read keeps the unit it was read in; only what was worked out is said in the house's units.
"""

from __future__ import annotations

import re
from typing import Literal

from webapp.trade import units
from webapp.trade.errors import OutOfDomain
from webapp.trade.numeric import fixed

House = Literal["metric", "us"]
METRIC: House = "metric"
US: House = "us"

_US = {"kg": "lb", "L": "gal", "LPA": "proof_gal", "pct_vol": "proof", "degC": "degF", "L_h": "gal_h"}
_FINER = {"gal": 1, "gal_h": 1}  # a gallon is nearly four litres
_PLAIN = re.compile(r"[+-]?[0-9]*\.?[0-9]+")
# Of differences, and of limits of the law: proof is twice % vol, whatever the temperature.
_APART = {"pct_vol": 2.0, "degC": 1.8}


def house_of(site: object) -> House:
    """Return the units of a house by what its settings say: all but "us" is metric."""
    return US if site == US else METRIC


def unit_in(unit: str, house: House) -> str:
    """Return the unit in which a house shows what is kept in a canonical unit; the same where it has no other."""
    return _US.get(unit, unit) if house == US else unit


def value_in(value: float, unit: str, house: House, *, is_apart: bool = False) -> float:
    """Return a canonical figure in the units of a house. [unit_in(unit, house)]

    `is_apart` tells how far two figures are apart: 2 degC apart are 3.6 degF apart. Source: units.json; 27 CFR 30.11.
    """
    other = unit_in(unit, house)
    if other == unit:
        return value
    if is_apart and unit in _APART:
        return value * _APART[unit]
    try:
        return float(units.from_canonical(value, other))
    except OutOfDomain:  # no strength or amount that there can be: then its size is all that counts
        return value * (_APART.get(unit) or float(units.from_canonical(1.0, other)))


def decimals_in(decimals: int, unit: str, house: House) -> int:
    """Return with how many decimals a house shows a figure that has so many in its canonical unit."""
    return decimals + (_FINER.get(_US.get(unit, ""), 0) if house == US else 0)


def text_in(text: str, unit: str, house: House, *, is_apart: bool = False) -> str:
    """Return the digits of a canonical figure in the units of a house: the roundest that they can mean.

    A tank of 50 gal is kept as 189.3 L at its finest, and is 50 gal again. A plus sign stays, and what is no figure.
    """
    if unit_in(unit, house) == unit or not _PLAIN.fullmatch(text):
        return text
    decimals = len(text.partition(".")[2])
    finer, value = decimals_in(decimals, unit, house), value_in(float(text), unit, house, is_apart=is_apart)
    half = abs(value_in(1.0, unit, house, is_apart=True)) * 0.5 * 10**-decimals + 1e-9
    round_ones = (fixed(value, places) for places in range(finer))
    said = fixed(float(next((one for one in round_ones if abs(float(one) - value) <= half), value)), finer)
    if decimals == 0:
        said = said.removesuffix(".0")
    return f"+{said}" if text.startswith("+") else said
