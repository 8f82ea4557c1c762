"""The unit that somebody wrote in a head or behind a figure."""

from __future__ import annotations

import re
from collections.abc import Sequence

# Each way of writing with the units that it may mean; which of them, the column says.
_WRITTEN: dict[str, tuple[str, ...]] = {
    "kg": ("kg",), "kgs": ("kg",), "kilo": ("kg",), "kilos": ("kg",), "kilograms": ("kg",),
    "lb": ("lb",), "lbs": ("lb",), "pounds": ("lb",), "pound": ("lb",),
    "l": ("L",), "ltr": ("L",), "ltrs": ("L",), "litre": ("L",), "litres": ("L",), "liter": ("L",), "liters": ("L",),
    "ml": ("mL",), "cl": ("cL",), "gal": ("gal",), "gals": ("gal",), "gallon": ("gal",), "gallons": ("gal",),
    "wg": ("gal",), "wine gallons": ("gal",), "wine gal": ("gal",), "us gal": ("gal",),
    "c": ("degC",), "°c": ("degC",), "degc": ("degC",), "deg c": ("degC",), "celsius": ("degC",),
    "f": ("degF",), "°f": ("degF",), "degf": ("degF",), "deg f": ("degF",), "fahrenheit": ("degF",),
    "%": ("pct_vol", "pct_glass"), "% vol": ("pct_vol", "pct_glass"), "vol": ("pct_vol", "pct_glass"),
    "abv": ("pct_vol",), "% abv": ("pct_vol",), "vol %": ("pct_vol", "pct_glass"), "vol.%": ("pct_vol", "pct_glass"),
    "proof": ("proof", "proof_glass"), "°proof": ("proof", "proof_glass"), "us proof": ("proof", "proof_glass"),
    "lpa": ("LPA",), "la": ("LPA",), "l pure": ("LPA",), "pg": ("proof_gal",), "proof gal": ("proof_gal",),
    "proof gallons": ("proof_gal",), "pgs": ("proof_gal",),
}
_PARTS = re.compile(r"[(\[,;/]|[)\]]|\bin\b")
US = frozenset(("gal", "lb", "degF", "proof", "proof_glass", "proof_gal"))
CENTILITRE = "cL"  # sizes of bottles are written so; no entry is


def unit_written(text: str, units: Sequence[str] | None) -> str:
    """Return the unit that a text is, of those a column has, or an empty text. Without units any unit counts."""
    found = _WRITTEN.get(" ".join(text.lower().replace(".", "").split()), ())
    if units is None:
        return found[0] if found else ""
    allowed = (*units, CENTILITRE) if "mL" in units else units
    return next((unit for unit in found if unit in allowed), "")


def unit_in(text: str, units: Sequence[str] | None) -> str:
    """Return the unit that stands in a head, in brackets or as its last words, or an empty text."""
    for part in [*_PARTS.split(text)[1:], text]:
        words = part.strip().removesuffix("at 20").strip().split()
        for many in (2, 1):
            if found := unit_written(" ".join(words[-many:]), units):
                return found
    return ""


def unit_of_house(units: Sequence[str], *, is_us: bool) -> str:
    """Return the unit of a column where neither head nor cell names one."""
    return next((unit for unit in units if unit in US), units[0]) if is_us else units[0]
