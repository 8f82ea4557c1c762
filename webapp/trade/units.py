"""Units: what each code means, the way to the canonical unit and back, and typed numbers.

``data/units.json`` is read by the book and the phone. canonical = (value + shift) * factor, or a named curve.
"""

import math
import re
from functools import lru_cache
from typing import Protocol

from webapp.trade.datafiles import Unit, load_data
from webapp.trade.errors import NotANumber
from webapp.trade.numeric import N, as_number, fixed
from webapp.trade.proof import (
    lpa_from_proof_gallons,
    proof_from_strength,
    proof_gallons_from_lpa,
    strength_from_proof,
)
from webapp.trade.scales import (
    brix_from_gravity,
    brix_from_kmw,
    brix_from_oechsle,
    gravity_from_brix,
    gravity_from_kmw,
    gravity_from_plato,
    kmw_from_brix,
    kmw_from_gravity,
    oechsle_from_brix,
    plato_from_gravity,
)

MOST_CHARACTERS = 15
MOST_PASTED = 200
# Blanks that keyboards and pasted figures put between groups of three digits.
BLANKS = " \u00a0\u2009\u202f"
# At least one digit; groups of three may stand apart; one point or one comma.
TYPED = re.compile(r"[+-]?(?:(?:[0-9]+|[0-9]{1,3}(?: [0-9]{3})+)(?:[.,][0-9]*)?|[.,][0-9]+)")


class Curve(Protocol):
    """A way from one unit to another that is no factor."""

    def __call__(self, value: N, /) -> N: ...


# Curves named by "via" in units.json: to the canonical unit, and back.
CURVES: dict[str, tuple[Curve, Curve]] = {
    "brix": (gravity_from_brix, brix_from_gravity),
    "plato": (gravity_from_plato, plato_from_gravity),
    "kmw": (gravity_from_kmw, kmw_from_gravity),
    "oechsle_refractometer": (brix_from_oechsle, oechsle_from_brix),
    "kmw_refractometer": (brix_from_kmw, kmw_from_brix),
    "proof": (strength_from_proof, proof_from_strength),
    "proof_gallon": (lpa_from_proof_gallons, proof_gallons_from_lpa),
}


def to_canonical(value: N, unit: str) -> N:
    """Return a value in the canonical unit of its quantity.

    Parameters
    ----------
    value : float or array
        As read. [the given unit], any; curves have the range of their own function
    unit : str
        Code. [text], any key of data/units.json

    Returns
    -------
    value : float or array
        [canonical_unit(unit)]; a raw glass reading stays as it is

    Raises
    ------
    OutOfDomain
        If a curve (Brix, proof) does not reach the value.
    KeyError
        If the code is not a unit.

    Source
    ------
    data/units.json: pound, US gallon and inch by definition; curves as scales.py and proof.py.
    """
    value, facts = as_number(value), _facts(unit)
    if "via" in facts:
        return CURVES[facts["via"]][0](value)
    return (value + facts.get("shift", 0)) * facts.get("factor", 1)


def from_canonical(value: N, unit: str) -> N:
    """Return a canonical value in another unit of the same quantity.

    Parameters
    ----------
    value : float or array
        [canonical_unit(unit)], any; curves have the range of their own function
    unit : str
        Code of the unit wanted. [text], any key of data/units.json

    Returns
    -------
    value : float or array
        [the given unit], not rounded

    Raises
    ------
    OutOfDomain
        If a curve (Brix, proof) does not reach the value.
    KeyError
        If the code is not a unit.

    Source
    ------
    As to_canonical.
    """
    value, facts = as_number(value), _facts(unit)
    if "via" in facts:
        return CURVES[facts["via"]][1](value)
    return value / facts.get("factor", 1) - facts.get("shift", 0)


def canonical_unit(unit: str) -> str:
    """Return the code of the unit in which a quantity is kept.

    Parameters
    ----------
    unit : str
        Code. [text], any key of data/units.json

    Returns
    -------
    unit : str
        Code of the canonical unit.

    Source
    ------
    data/units.json.
    """
    return str(_facts(unit)["canonical"])


def quantity_of(unit: str) -> str:
    """Return the quantity that a unit measures; only units of one quantity convert into one another.

    Parameters
    ----------
    unit : str
        Code. [text], any key of data/units.json

    Returns
    -------
    quantity : str
        Its name.

    Source
    ------
    data/units.json.
    """
    return str(_facts(unit)["quantity"])


def symbol(unit: str) -> str:
    """Return how a unit is written after a figure.

    Parameters
    ----------
    unit : str
        Code. [text], any key of data/units.json

    Returns
    -------
    symbol : str
        Short text; empty for a count.

    Source
    ------
    data/units.json.
    """
    return str(_facts(unit)["symbol"])


def parse_number(text: str) -> float:
    """Return the number that a person typed, with point or comma.

    One rule: one separator, standing once, is the decimal point ("1.234" is a little over one). Both
    together, or one of them twice, are refused. Digits may stand in groups of three with blanks between.

    Parameters
    ----------
    text : str
        As typed. [text], at most 15 characters without the blanks at its ends

    Returns
    -------
    number : float
        [no unit]

    Raises
    ------
    NotANumber
        With a sentence that says what to type.

    Source
    ------
    The house's own rule; docs/numbers.md.
    """
    return _number_in(text)


@lru_cache(maxsize=4096)  # an entry is read at the book's door, in the fold, and as it may have been meant
def _number_in(text: str) -> float:
    # A pasted page is told off before anything looks at it closely.
    typed = text.strip(BLANKS + "\t\r\n") if len(text) <= MOST_PASTED else text
    if not typed:
        raise NotANumber("empty")
    if len(typed) > MOST_CHARACTERS:
        raise NotANumber("too_long")
    for blank in BLANKS[1:]:
        typed = typed.replace(blank, " ")
    typed = typed.replace("\N{MINUS SIGN}", "-")
    if typed.count(".") + typed.count(",") > 1:
        raise NotANumber("two_signs")
    if not TYPED.fullmatch(typed):
        raise NotANumber("not_plain")
    return float(typed.replace(" ", "").replace(",", ".")) + 0.0


def format_number(value: float, decimals: int) -> str:
    """Return a figure for the screen, rounded half up, with a point and no grouping.

    Parameters
    ----------
    value : float
        [any unit], finite, within 1e9 either way
    decimals : int
        Figures after the point. [1], 0 to 6

    Returns
    -------
    text : str
        Never "-0".

    Raises
    ------
    ValueError
        If the value is not such a number.

    Source
    ------
    The house's own rule; halves as 27 CFR 30.23.
    """
    if not (math.isfinite(value) and abs(value) <= 1e9 and 0 <= decimals <= 6):
        raise ValueError(f"cannot show {value!r} with {decimals!r} decimals")
    return fixed(value, decimals)


def _facts(unit: str) -> Unit:
    return load_data("units")[unit]
