"""Casks by kind of spirit and the year they were filled: how many, and how much pure alcohol, at the end of a day.

Source: 27 CFR 19.590-19.591 ask for a summary of packages by kind and season or year filled.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from webapp.book.fold.states import NEWEST, load_before_each
from webapp.book.record.store import Book
from webapp.kinds.key import vessel_key


@dataclass(frozen=True, slots=True)
class Row:
    """One kind and year. account: the tax account it stands in; lpa_ul: pure alcohol. [uL at 20 degC]"""

    kind: str
    year: str
    account: str
    wood: str
    casks: int
    lpa_ul: int


def by_kind_and_year(book: Book, until: str = "") -> list[Row]:
    """Return the rows, by kind, then year. until: UTC text without Z before which it is asked; empty for now."""
    casks: Counter[tuple[str, str, str, str]] = Counter()
    pure: Counter[tuple[str, str, str, str]] = Counter()
    vessels = book.query("SELECT mark, use FROM vessels WHERE sort = 'cask' ORDER BY mark")
    place = until or NEWEST
    states = load_before_each(book, ((vessel_key(vessel["mark"]), place) for vessel in vessels))
    for vessel in vessels:
        state = states.get((vessel_key(vessel["mark"]), place))
        held = state["holds"] if state else None
        if not held:
            continue
        wood = {"new": "new", "used": "used", "refill": "used"}.get(str(held.get("use") or vessel["use"]), "not said")
        about = (str(held.get("what") or "not said"), str(held["since"])[:4], held["account"], wood)
        casks[about] += 1
        pure[about] += held["lpa_ul"]
    return [Row(*about, casks[about], pure[about]) for about in sorted(casks)]
