"""What published law allows a cask to lose, where a house wants it beside its own: a caution level, no proof.

loss_allowances.json has the figures, each with where it was read. A law counts losses of its own stock: per year of the
average stock, or per month of the stock at its end. A cask that loses at a constant rate loses in a year that rate of
its average stock, so both become a rate in logarithms, as the house's own.
"""

from __future__ import annotations

import json
import math
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import NotRequired, TypedDict

from webapp.kinds.rows import SiteSettings

FILE = Path(__file__).with_name("loss_allowances.json")
CHOICES = (("", "none"), ("de", "Germany"), ("cz", "Czech Republic"))


class _Law(TypedDict):
    name: str
    read_at: str
    wood_pct: float
    wood_large_pct: NotRequired[float]
    large_above_l: NotRequired[float]
    per: str
    base: str
    wood: str
    also: NotRequired[str]


@dataclass(frozen=True, slots=True)
class Allowance:
    """What a law allows one cask. rate_pct: [% a year, in logarithms]"""

    rate_pct: float
    words: str


@cache
def load_laws() -> dict[str, _Law]:
    """Return the laws by their short name."""
    laws: dict[str, _Law] = json.loads(FILE.read_text(encoding="utf-8"))["laws"]
    return laws


def allowance_of(site: SiteSettings, capacity_l: float | None) -> Allowance | None:
    """Return the loss that the house's law allows a cask; None where it chose none. capacity_l: rated size [L]"""
    law = load_laws().get(str(site.get("loss_allowance") or ""))
    if law is None:
        return None
    size = capacity_l or 200.0
    pct = law["wood_pct"]
    if size > law.get("large_above_l", math.inf):
        pct = law.get("wood_large_pct", pct)
    rate = pct if law["per"] == "year" else 1200 * math.log(1 + pct / 100)
    said = f"{pct:g} % a {law['per']} of {law['base']}, for {law['wood']} ({law['name']})"
    return Allowance(rate, f"{said}. {law['also']}" if "also" in law else f"{said}.")
