"""The picture of a run's balance: two bars, what went in over what came out. Geometry alone, no page."""

from __future__ import annotations

from dataclasses import dataclass

from webapp.book.still.run_account import Balance
from webapp.words.desk import say

WIDE = 720.0


@dataclass(frozen=True, slots=True)
class Bar:
    """One part of a bar. [viewBox units]"""

    part: str
    name: str
    litres: float
    x: float
    width: float
    row: int


def bars(balance: Balance) -> list[Bar]:
    """Return the parts of both bars, left to right. The last part is the unaccounted rest, where it is a loss."""
    most = max(balance.charged, balance.came)
    found = []
    for row, parts in enumerate((balance.into, balance.out)):
        x = 0.0
        for part, litres in parts:
            width = litres / most * WIDE
            found.append(Bar(part, part.replace("_", " "), litres, x, max(width - 1.5, 0.5), row))
            x += width
    if balance.open > 0:
        x = balance.came / most * WIDE
        found.append(Bar("open", say("desk-run-not_accounted_for"), balance.open, x + 1, max(WIDE - x - 2, 1.0), 1))
    return found
